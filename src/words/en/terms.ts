/** Words of the trade that stay on screens, each with what it means. */
import type { Figures } from '../figures.ts';

export const terms = (_f: Figures) => ({
  fibre: {
    word: 'Crude fibre',
    help: 'What is left of plant fibre after boiling in acid and lye. Pack labels and ranges for hamsters mean this.',
  },
  dietaryFibre: {
    word: 'Dietary fibre',
    help: 'All fibre in a food, as tables of human food count it. It is always more than the crude fibre, often twice as much, so the two are never mixed.',
  },
  asFed: {
    word: 'As fed',
    help: 'The food as it lies in the bowl, with the water that is in it.',
  },
  dryMatter: {
    word: 'Dry matter',
    help: 'What would be left of a food without its water. It makes fresh and dried foods comparable.',
  },
  ash: {
    word: 'Ash',
    help: 'The minerals: what is left when a food is burnt.',
  },
  protein: {
    word: 'Crude protein',
    help: 'Protein as labels count it: nitrogen times 6.25.',
  },
  ration: {
    word: 'Whole ration',
    help: 'All that your animal gets in a day: the mix, the pellets and whatever else, by weight.',
  },
  share: {
    word: 'Share',
    help: 'How much of the mix a food is, by weight: 5 % of 300 g are 15 g.',
  },
  sure: {
    word: 'How sure to be',
    help: 'Bags vary. The surer you want to be that the food you pour is in range, the further the mix keeps from the limits.',
  },
  mayBeLeft: {
    word: 'Any food may be left',
    help: 'Checks that what is eaten stays in range when your animal leaves any one food of the mix.',
  },
  pack: {
    word: 'Pack',
    help: 'One pack as you bought it, with its own date. So you know what was in which batch.',
  },
  batch: {
    word: 'Batch',
    help: 'What you weigh out and mix in one go.',
  },
  freezing: {
    word: 'Freezing',
    help: 'A few days in the freezer kill insects and their eggs in grain and seeds.',
  },
});

export type Terms = ReturnType<typeof terms>;

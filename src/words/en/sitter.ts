/** The card for a sitter. */
import type { Figures } from '../figures.ts';

export const sitter = (f: Figures) => ({
  title: 'For the sitter',
  lead: 'One page to print: what each animal gets, what to look at, and whom to call.',
  print: 'Print the card',
  nobody: 'No animal lives here yet, so there is nothing for a sitter to do.',
  working: 'Gathering what each animal is fed…',
  tooLong: 'The card does not fit on one page. Make your own words shorter.',
  own: 'In your own words',
  ownHint: 'Habits, where things are, what the sitter must not open. It is printed on the card.',
  save: 'Keep these words',
  vetMissing:
    'The vet’s name and numbers are not written down: the card has lines to write them on. <keep>Write them down</keep>',
  onCard: {
    asOf: (day: string) => `As of ${day}`,
    from: 'From',
    until: 'until',
    vet: 'Vet',
    phone: 'Phone',
    emergency: 'At night and on weekends',
    reach: 'The keeper can be reached at',
    ofMix: (grams: number, name: string) => `${f.grams(grams)} of “${name}”`,
    ofOld: (grams: number, name: string) => `${f.grams(grams)} of “${name}”, the batch before`,
    ofFood: (grams: number, food: string) => `${f.grams(grams)} ${food}`,
    someOf: (food: string) => `${food}, grams:`,
    someMix: (name: string) => `“${name}”, grams:`,
    nothingKnown: 'What and how much, grams:',
    together: (grams: number) => `together ${f.grams(grams)}`,
    weighs: (grams: number) => `weighs about ${f.grams(grams, 0)}`,
    never: 'Never',
    leaves: 'Leaves',
    sweet: 'anything sweet, fruit too (prone to diabetes)',
    conditions: {
      pregnant: 'pregnant',
      nursing: 'nursing: leave the nest alone, feed as much as is eaten',
      diabetes: 'prone to diabetes',
      teeth: 'trouble with its teeth: look that it eats',
      weight: 'its weight is being watched',
      old: 'old',
      other: 'under a vet’s eye',
    },
    everyDay: 'Every day',
    daily: [
      'Fresh water. Press the bottle’s ball: a drop must come.',
      'Food in the evening: weigh it, scatter it over the bedding. An empty bowl does not mean that it was eaten; food is stored.',
      'Take fresh food of the day before out again, also from the nest if you can see it.',
      'See each animal move at least once a day. Do not wake it by day.',
      'Wash your hands before and after.',
    ],
    look: 'Look whether',
    looks: [
      'it comes out in the evening and walks as always',
      'it eats, and droppings are there, dry and formed',
      'eyes, nose and bottom are clean and dry',
      'it breathes without a sound',
    ],
    call: 'Call the vet at once if',
    calls: [
      'it has not eaten since yesterday, or droppings are missing',
      'it has diarrhoea or a wet bottom',
      'it lies still, feels cold, sways or cannot be woken. Cold and stiff may be a deep sleep: warm it slowly in your hands and call',
      'it breathes hard, bleeds, has fallen, or has a swelling',
    ],
    nothingElse:
      'Give nothing that is not on this card: no sweets, no chocolate, nothing salted, no onion, no food of ours.',
    words: 'From the keeper',
  },
});

export type Sitter = ReturnType<typeof sitter>;

/** Animals: whom the mixes are for, what each needs, is fed and refuses. */
import type { Figures } from '../figures.ts';

export const animals = (f: Figures) => ({
  title: 'Animals',
  one: 'Animal',
  all: '‹ All animals',
  new: 'New animal',
  none: 'No animal is kept yet.',
  addFirst: 'Add an animal to say what it needs and what it refuses.',
  invented: 'invented',
  thisOne: 'This animal',
  stages: { adult: 'adult', growing: 'growing', breeding: 'pregnant or nursing', old: 'old' },
  /** The species that are offered, by the name under which they are kept. */
  species: {
    'golden hamster': 'golden hamster',
    'dwarf hamster': 'dwarf hamster',
    hamster: 'hamster',
    mouse: 'mouse',
    gerbil: 'gerbil',
  },
  /** "golden hamster, adult". */
  kind: (species: string, stage: string) => `${species}, ${stage}`,
  needs: 'Needs',
  foodADay: 'Food a day',
  notKnown: 'not known',
  edit: 'Edit',
  askDelete: (name: string) => `Delete ${name} for good?`,
  keep: (name: string) => `Keep ${name}`,
  lose: (name: string) => `Delete ${name}`,
  whatGoes: 'What it refuses is forgotten. The mixes made for it stay.',
  notAVet:
    'What is shown here is no veterinary advice. See a vet when an animal loses weight, eats less or seems ill.',
  form: {
    edit: (name: string) => `Edit ${name}`,
    species: 'Species',
    other: 'Another, in words',
    inWords: 'Species in words',
    stage: 'Life stage',
    goldenADay: `Dry food, mix and pellets together. Vets’ handouts commonly say ${f.grams(10)} to ${f.grams(12)} for an adult golden hamster.`,
    aDay: 'Dry food, mix and pellets together, as you weigh it. Leave it empty when you do not know.',
    otherTarget: (name: string) => `This animal would start from other needs: “${name}”.`,
    use: (name: string) => `Use “${name}”`,
    nameless: 'Name is empty; give the animal a name.',
    kindless: 'Species is empty; say what animal it is.',
    save: 'Save animal',
  },
  mixes: {
    title: 'Mixes it is fed',
    section: 'Mixes',
    none: 'No mix is kept yet.',
  },
  refusals: {
    title: 'What it refuses',
    none: 'Nothing so far.',
    takeBack: 'Take back',
    takeBackOf: (food: string) => `Take back ${food}`,
    which: 'A food it will not eat',
    choose: 'Choose…',
    add: 'Refuses it',
    all: 'It refuses every food there is to choose.',
    noneToChoose: 'Tick a mix it is fed, or add a food of your own; then choose from those foods here.',
    outOf: (mixes: readonly string[]) => `out of ${f.list(mixes)}`,
    inNone: 'in none of its mixes',
    added: (food: string, where: string) => `${food}: ${where}.`,
    again: (animal: string, food: string) => `${animal} may be fed ${food} again.`,
  },
});

export type Animals = ReturnType<typeof animals>;

/** What mix, pellet and whole ration hold: the pictures of the ranges, minerals and vitamins, the table of all. */
import type { Figures } from '../figures.ts';

export const nutrients = (f: Figures) => ({
  lane: { pellet: 'pellet', mix: 'mix', ration: 'ration' },
  unknown: 'unknown',
  state: {
    in: 'in range',
    if: 'in range, if …',
    out: 'out of range',
    unknown: 'not known yet',
  },
  ofMix: 'of the mix',
  readAs: (title: string, state: string) => `Read as ${title}: ${state}`,
  as: (title: string, note: string) => `As ${title}: ${note}`,
  chance: (percent: number) => `${f.percent(percent, 0)} chance to be in range`,
  figuresFor: (percent: number) => `figures for ${f.percent(percent, 0)} of the whole ration`,
  between: (low: number, high: number) => `whole ration between ${f.figure(low)} and ${f.figure(high)}`,
  estimated: 'partly estimated',
  unproven: 'not proven: some figures are missing',
  lanes: {
    value: (lane: string, value: string) => `${lane} ${value}`,
    atLeast: (value: string) => `≥ ${value}`,
  },
  picture: {
    mix: (title: string, range: string, state: string, lanes: string) =>
      `${title}, ${range} in the mix: ${state}. ${lanes}.`,
    ration: (title: string, range: string, state: string, lanes: string) =>
      `${title}, ${range} in the whole ration: ${state}. ${lanes}.`,
    other: (title: string, state: string, lanes: string) => ` Read as ${title}: ${state}. ${lanes}.`,
  },
  micro: {
    title: (rows: number) => `Minerals and vitamins (${f.number(rows)})`,
    parts: {
      mineral: 'Minerals',
      vitamin: 'Vitamins',
      fat: 'Essential fats',
      'amino acid': 'Amino acids',
    },
    part: (name: string, rows: number) => `${name} (${f.number(rows)})`,
    per: {
      asFed: (unit: string) => `${unit} per 100 g`,
      dryMatter: (unit: string) => `${unit} per 100 g dry matter`,
      perEnergy: (unit: string) => `${unit} per 1000 kcal`,
    },
    toOne: 'to 1',
    ratio: 'Calcium to phosphorus',
    judged: {
      meets: 'meets the needs',
      short: 'too little',
      over: 'too much',
      untold: 'cannot tell',
    },
    comparedWith: 'Compared with',
    fromMemory: (n: number) =>
      f.form(n, {
        one: 'One of its figures is from memory, and you have not confirmed it: look, but do not rely on it.',
        other: `${f.number(n)} of its figures are from memory, and you have not confirmed them: look, but do not rely on them.`,
      }),
    onlyPellet: (names: readonly string[]) =>
      `The mix by itself may not hold enough ${f.list(names)}: there the animal depends on the pellet.`,
    knownFor: (percent: number) => `known for ${f.percent(percent, 0)}`,
    atLeast: (value: number) => `at least ${f.figure(value)}`,
    between: (low: number, high: number) => `${f.figure(low)} to ${f.figure(high)}`,
    picture: (target: number, mix: number, pellet: number) =>
      `Needed ${f.figure(target)}. From the mix ${f.figure(mix)}, from the pellet ${f.figure(pellet)}.`,
  },
  table: {
    title: (rows: number) => `All nutrients (${f.number(rows)})`,
    caption: 'Per 100 g as fed. “≥” means at least: figures are missing for a part.',
    nutrient: 'Nutrient',
    mix: 'Mix',
    ration: 'Whole ration',
    known: 'Known for, of the whole ration',
  },
});

export type Nutrients = ReturnType<typeof nutrients>;

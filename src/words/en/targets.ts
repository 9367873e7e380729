/** Needs of animals: their names, each bound with its source, and how own ones are made. */
import type { Figures } from '../figures.ts';

const PRACTICE = 'Protein 17-19 %, fat 4-7 %, fibre 6-15 % of the whole ration as fed.';
const NO_FIGURES = 'How much calcium and sugar may be at most: no figures.';

export const targets = (f: Figures) => ({
  title: 'Needs',
  list: 'Needs to choose from',
  one: 'Needs of an animal',
  inThisMix: 'in this mix',
  own: 'own',
  fromMemory: 'from memory',
  /** "hamster, adult"; "hamster, adult, own". */
  kind: (parts: readonly string[]) => parts.join(', '),
  use: 'Use in the mix',
  used: 'Used in the mix',
  copy: 'Copy and edit',
  copyName: (name: string) => `${name} (own)`,
  usedIn: (names: readonly string[]) => `Used in ${f.list(names)}, so it cannot be deleted yet.`,
  askDelete: (name: string) => `Delete “${name}” for good?`,
  keep: 'Keep it',
  lose: 'Delete it',
  whatGoes: 'Its figures and their sources are gone then. Published needs stay.',
  profiles: {
    'hamster-adult-crude': {
      name: 'Adult hamster',
      about: `${PRACTICE} Fibre is read as crude fibre, the measure that pet food labels, keepers and veterinary texts mean; food tables rarely give it, so much of it is estimated from dietary fibre.`,
    },
    'hamster-adult': {
      name: 'Adult hamster, dietary fibre',
      about: `${PRACTICE} Fibre is read as total dietary fibre, which food tables give; a label prints crude fibre, which is never more and often less than half of it.`,
    },
    'hamster-adult-limits': {
      name: 'Adult hamster, with limits',
      about: `${PRACTICE} Fibre is crude fibre. Calcium is tied to phosphorus, and retinol, vitamin D and selenium have a most. ${NO_FIGURES}`,
    },
    'hamster-nrc': {
      name: 'Hamster, NRC needs',
      about: `Least amounts of the National Research Council for laboratory hamsters, written down from memory of the edition of 1978; of linoleic acid and of energy none is known here. ${NO_FIGURES}`,
    },
    'mouse-nrc': {
      name: 'Mouse, NRC needs',
      about: `Least amounts of the National Research Council for growing laboratory mice (1995, table 3-3), for diets of ${f.number(3.8)} to ${f.number(4.1)} kcal per g. Its chloride and molybdenum are in no food table. ${NO_FIGURES}`,
    },
    'mouse-nrc-breeding': {
      name: 'Mouse, NRC needs, pregnant or nursing',
      about: `Least amounts of the National Research Council for laboratory mice (1995, table 3-3), with what its notes ask for pregnant and nursing mice of magnesium, copper, zinc and pantothenic acid. ${NO_FIGURES}`,
    },
    gerbil: {
      name: 'Gerbil',
      about: `${PRACTICE} These are ranges of hamsters, taken for want of figures for gerbils. Magnesium is the gerbil’s own: it needs more than a hamster, for its coat and against fits (National Research Council 1995). ${NO_FIGURES}`,
    },
    rat: {
      name: 'Rat',
      about: `Least amounts of protein, fat, linoleic acid and thiamin that were looked up for rats; there are no figures for all else. The full list is under “Rat, NRC needs”, from memory. ${NO_FIGURES}`,
    },
    'rat-nrc': {
      name: 'Rat, NRC needs',
      about: `Least amounts of the National Research Council for growing laboratory rats, written down from memory of the edition of 1995. ${NO_FIGURES}`,
    },
  },
  /** Stages for which published needs hold, by the name under which they are kept. */
  stages: {
    adult: 'adult',
    growth: 'growth',
    'growth and adult': 'growth and adult',
    'pregnant or nursing': 'pregnant or nursing',
  },
  startNotes: {
    dwarf:
      'No figures for dwarf hamsters are in the program: the published needs were found with golden hamsters. Ask a vet what to change for this one.',
    mouse:
      'The published needs of mice are least amounts for growing laboratory mice; they set no most for protein or fat.',
    mouseBreeding:
      'The published needs of mice, with the extra magnesium, copper, zinc and pantothenic acid that their notes ask for while a mouse is pregnant or nursing. Ask a vet before you change its food.',
    gerbil:
      'Only magnesium is a gerbil’s own figure: more than a hamster needs. For all else there are no figures for gerbils, and the ranges of hamsters stand in. Give fresh water or juicy food beside dry food always. Ask a vet what to change.',
    rat: 'Few needs of rats were looked up: protein, fat, linoleic acid and thiamin. No figures for minerals and most vitamins are in these needs; “Rat, NRC needs” has them from memory, and a mix can follow those once you have confirmed them. Ask a vet what else it needs.',
    growingOther: 'No figures for the growth of this animal are in the program; ask a vet.',
    growing: `For growth one figure is known: golden hamsters needed between 15 and 20 % protein from common feeds (Banta and others 1975, J. Nutr. 105:38-45), and the adult range lies within that. For all else that growth needs there are no figures; ask a vet.`,
    breeding:
      'No figures for pregnant or nursing animals are in the program; ask a vet before you change its food.',
    old: 'No figures for old animals are in the program; ask a vet whether the adult ranges suit this one.',
    otherSpecies: (species: string) =>
      `The program has no needs for a ${species}. These needs of a hamster are only a place to start; copy them under Needs and change them as a vet advises.`,
    noSpecies:
      'The program has no needs for this animal. These needs of a hamster are only a place to start; copy them under Needs and change them as a vet advises.',
  },
  fibre: {
    FIBTG: 'Its fibre range means total dietary fibre; a label’s crude fibre counts as the least it can be.',
    FIBC: 'Its fibre range means crude fibre, as pet food labels print it.',
    none: 'It sets no limit on fibre.',
  },
  basis: {
    'as fed': 'per 100 g as fed',
    DM: 'per 100 g dry matter',
    'per 1000 kcal': 'per 1000 kcal',
  },
  table: {
    nutrient: 'Nutrient',
    range: 'Range',
    source: 'Source',
    nothing: 'Nothing',
    each: 'for each 1',
    checked: (against: string, day: string) => `you checked it against ${against} on ${day}`,
  },
  editor: {
    least: (what: string) => `${what}, at least`,
    most: (what: string) => `${what}, at most`,
    counted: (what: string) => `${what}, counted`,
    sourceOf: (what: string) => `Source of ${what}`,
    remove: (what: string) => `Remove ${what}`,
    none: 'none',
    add: 'Add a nutrient',
    choose: 'Choose…',
    nameless: 'Name is empty; give these needs a name.',
    save: 'Save these needs',
    saved: 'Saved',
    notYet: 'Not saved yet',
    ownChoice: 'own choice',
  },
  confirm: {
    title: 'From memory',
    compare: 'Compare each figure that is from memory with the publication that its source names.',
    against: 'I have checked these figures against',
    example: 'title, edition, page',
    on: 'on',
    day: 'Say on which day.',
    empty: 'Say what you checked them against; figures that nobody has checked stay out of every mix.',
    confirm: 'Confirm the figures',
    saveFirst: 'Save the needs first.',
  },
  unconfirmed: {
    option: (name: string) => `${name} (from memory, not confirmed)`,
    look: 'Look at them',
    here: (n: number, name: string) =>
      f.form(n, {
        one: `One figure of “${name}” is from memory. A mix can follow it once you have confirmed it below.`,
        other: `${f.number(n)} figures of “${name}” are from memory. A mix can follow it once you have confirmed them below.`,
      }),
    there: (n: number, name: string) =>
      f.form(n, {
        one: `One figure of “${name}” is from memory. A mix can follow it once you have confirmed it under Needs.`,
        other: `${f.number(n)} figures of “${name}” are from memory. A mix can follow it once you have confirmed them under Needs.`,
      }),
  },
});

export type Targets = ReturnType<typeof targets>;

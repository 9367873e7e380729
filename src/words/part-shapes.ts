/** The parts of the catalogue, and what stands in each. */
import type { answers } from './en/parts/answers.ts';
import type { care } from './en/parts/care.ts';
import type { days } from './en/parts/days.ts';
import type { dried } from './en/parts/dried.ts';
import type { first } from './en/parts/first.ts';
import type { home } from './en/parts/home.ts';
import type { house } from './en/parts/house.ts';
import type { mixes } from './en/parts/mixes.ts';
import type { scale } from './en/parts/scale.ts';
import type { solving } from './en/parts/solving.ts';
import type { stock } from './en/parts/stock.ts';
import type { warnings } from './en/parts/warnings.ts';
import type { RoomsIn } from './words-of.ts';

interface EnglishParts {
  readonly first: typeof first;
  readonly days: typeof days;
  readonly scale: typeof scale;
  readonly solving: typeof solving;
  readonly answers: typeof answers;
  readonly warnings: typeof warnings;
  readonly stock: typeof stock;
  readonly dried: typeof dried;
  readonly home: typeof home;
  readonly care: typeof care;
  readonly mixes: typeof mixes;
  readonly house: typeof house;
}

export type Part = keyof EnglishParts;

/** The rooms of a part, in any language. */
export type PartOf<P extends Part> = RoomsIn<EnglishParts[P]>;

/** The part in which each room stands. */
export const PART_OF: { readonly [P in Part as keyof EnglishParts[P]]: P } = {
  common: 'first',
  shared: 'first',
  frame: 'first',
  today: 'first',
  store: 'first',
  kitchen: 'first',
  pairing: 'first',
  nutrition: 'first',
  steps: 'days',
  feeding: 'days',
  freezing: 'days',
  supply: 'days',
  weighing: 'scale',
  hands: 'scale',
  batch: 'scale',
  foodForms: 'scale',
  formulation: 'solving',
  verdict: 'solving',
  advice: 'answers',
  foods: 'answers',
  label: 'answers',
  search: 'answers',
  cautions: 'warnings',
  calendar: 'stock',
  cupboard: 'stock',
  pelletStock: 'stock',
  shopping: 'stock',
  drying: 'dried',
  trimming: 'home',
  animals: 'care',
  sitter: 'care',
  vetPage: 'care',
  lifeline: 'care',
  trials: 'care',
  leftovers: 'care',
  dailyFood: 'care',
  bodyWeight: 'care',
  start: 'mixes',
  terms: 'mixes',
  long: 'mixes',
  mix: 'mixes',
  rows: 'mixes',
  beside: 'mixes',
  limits: 'mixes',
  nutrients: 'mixes',
  why: 'mixes',
  wishes: 'mixes',
  refusals: 'mixes',
  versions: 'mixes',
  tradeOff: 'mixes',
  sharing: 'mixes',
  changeOver: 'mixes',
  feedingChange: 'mixes',
  hurts: 'mixes',
  targets: 'mixes',
  keeping: 'house',
  exchange: 'house',
  access: 'house',
  ownTable: 'house',
  household: 'house',
};

/** The parts of the catalogue, and what stands in each. */
import type { care } from './en/parts/care.ts';
import type { first } from './en/parts/first.ts';
import type { house } from './en/parts/house.ts';
import type { kitchen } from './en/parts/kitchen.ts';
import type { mixes } from './en/parts/mixes.ts';
import type { stock } from './en/parts/stock.ts';
import type { RoomsIn } from './words-of.ts';

interface EnglishParts {
  readonly first: typeof first;
  readonly stock: typeof stock;
  readonly kitchen: typeof kitchen;
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
  feeding: 'stock',
  freezing: 'stock',
  pelletStock: 'stock',
  calendar: 'stock',
  batch: 'stock',
  cupboard: 'stock',
  verdict: 'stock',
  shopping: 'kitchen',
  drying: 'kitchen',
  weighing: 'kitchen',
  hands: 'kitchen',
  formulation: 'kitchen',
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
  hurts: 'mixes',
  advice: 'mixes',
  targets: 'mixes',
  foods: 'mixes',
  label: 'mixes',
  cautions: 'mixes',
  foodForms: 'kitchen',
  search: 'mixes',
  keeping: 'house',
  exchange: 'house',
  access: 'house',
  ownTable: 'house',
  household: 'house',
};

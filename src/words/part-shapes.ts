/** The parts of the catalogue, and what stands in each. */
import type { care } from './en/parts/care.ts';
import type { first } from './en/parts/first.ts';
import type { house } from './en/parts/house.ts';
import type { kitchen } from './en/parts/kitchen.ts';
import type { mixes } from './en/parts/mixes.ts';
import type { RoomsIn } from './words-of.ts';

interface EnglishParts {
  readonly first: typeof first;
  readonly kitchen: typeof kitchen;
  readonly care: typeof care;
  readonly mixes: typeof mixes;
  readonly house: typeof house;
}

export type Part = keyof EnglishParts;

/** The rooms of a part, in any language. */
export type PartOf<P extends Part> = RoomsIn<EnglishParts[P]>;

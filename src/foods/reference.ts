/**
 * The reference foods: every row of the open tables, in one compact file.
 * `reference.bin` is made by `npm run reference`; this module only reads it, in Node and in the browser.
 */
import type { Tag } from '../nutrition/nutrients.ts';
import type { Food, FoodGroup } from './food.ts';

export interface ReferenceFood extends Food {
  /** Name as the table prints it. */
  readonly tableName: string;
  /** Other plain words for it. */
  readonly also: readonly string[];
  /** Whether it is one of the foods keepers really use (plain name and group by hand). */
  readonly plain: boolean;
  /** Group of the table itself: first two digits of the NDB number, IFCT group name, or our own group. */
  readonly tableGroup: string;
}

/** All reference foods with look-up by reference number. */
export interface Reference {
  readonly size: number;
  /** The food with that reference number ("sr28:20038"), or undefined. */
  get(ref: string): ReferenceFood | undefined;
  /** The food at a row, 0 to size - 1, in file order. */
  at(row: number): ReferenceFood;
  /** Largest amount known of a nutrient in a group (table group, or our own group), per 100 g; undefined if none. */
  largest(tag: Tag, group: string): number | undefined;
  /** Foods keepers really use, in the order of the hand-made list. */
  plainFoods(): readonly ReferenceFood[];
}

export type { FoodGroup };

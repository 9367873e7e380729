/** A food as every part of Pouchful sees it: a name, a group and what 100 g of it holds, as fed. */
import { type Amount, asFed, UNKNOWN } from '../nutrition/amount.ts';
import { nutrient, type Tag } from '../nutrition/nutrients.ts';
import { namesOf } from '../words/names-of.ts';
import { words } from '../words/words.ts';

export type FoodGroup = 'seed' | 'legume' | 'vegetable' | 'herb' | 'animal' | 'nut' | 'fruit';

const GROUPS: readonly FoodGroup[] = ['seed', 'legume', 'vegetable', 'herb', 'animal', 'nut', 'fruit'];

/** The name of each group, in the language spoken. */
export const FOOD_GROUPS = namesOf(GROUPS, (group) => words().foods.groups[group]);

/** Amounts per 100 g as fed, in the unit of the tagname; a tag that is absent is unknown, never zero. */
export type Composition = Partial<Record<Tag, number>>;

/** Amounts of 100 g of a food as fed, from a table, a label or a keeper. A tag in none of these is unknown. */
export interface Figures {
  readonly composition: Composition;
  /** Standard deviations, same units. */
  readonly sd: Composition;
  /** Guaranteed least and most of an amount (a label's "min." and "max."); a bound is not a value. */
  readonly low?: Composition;
  readonly high?: Composition;
  /**
   * Nitrogen factor that `composition.PROCNT` was counted with (oats 5.83, nuts and seeds 5.30; Jones 1931). Crude
   * protein, which labels and targets mean, is nitrogen x 6.25. Absent where nobody says: then the amount may be off
   * by the range of factors. A label's protein has 6.25.
   */
  readonly proteinFactor?: number;
}

export interface Food extends Figures {
  /** Reference number ("sr28:20038", "ifct:A010", "pub:mealworm-dried") or the keeper's own id. */
  readonly ref: string;
  /** The plain name a keeper would say. */
  readonly name: string;
  readonly group?: FoodGroup;
  readonly source: string;
}

/** A food's amount of one nutrient as a typed amount. */
export function amountOf(food: Food, tag: Tag): Amount<'as fed'> {
  const value = food.composition[tag];
  if (value === undefined) return UNKNOWN;
  return asFed(value, nutrient(tag).unit, { sd: food.sd[tag], source: food.source });
}

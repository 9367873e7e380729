import type { Composition, Food } from '../../src/foods/food.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';

/** What a rule counts of a table's food, per 100 g as fed: of protein nitrogen x 6.25, whatever factor the table used. */
export function crudeAmount(food: Food, tag: Tag): number | undefined {
  return crude(food, food.composition, tag);
}

/** The standard deviation of that, where the table gives one. */
export function crudeSd(food: Food, tag: Tag): number | undefined {
  return crude(food, food.sd, tag);
}

function crude({ proteinFactor = 6.25 }: Food, amounts: Composition, tag: Tag): number | undefined {
  const amount = amounts[tag];
  return amount === undefined || tag !== 'PROCNT' ? amount : (amount / proteinFactor) * 6.25;
}

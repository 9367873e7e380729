import type { Food } from '../../src/foods/food.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';

/** What a rule counts of a table's food, per 100 g as fed: of protein nitrogen x 6.25, whatever factor the table used. */
export function crudeAmount({ composition, proteinFactor = 6.25 }: Food, tag: Tag): number | undefined {
  const amount = composition[tag];
  return amount === undefined || tag !== 'PROCNT' ? amount : (amount / proteinFactor) * 6.25;
}

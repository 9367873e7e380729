import type { ReferenceFood } from '../../src/foods/reference.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';

/** A table's amount as the machine interface counts it: protein as nitrogen x 6.25, from the food's own factor. */
export function asCounted(food: ReferenceFood, tag: Tag): number | undefined {
  const printed = food.composition[tag];
  return printed === undefined || tag !== 'PROCNT'
    ? printed
    : (printed * 6.25) / (food.proteinFactor ?? 6.25);
}

/** Its standard deviation, as it is counted. */
export function sdAsCounted(food: ReferenceFood, tag: Tag): number | undefined {
  const printed = food.sd[tag];
  return printed === undefined || tag !== 'PROCNT'
    ? printed
    : (printed * 6.25) / (food.proteinFactor ?? 6.25);
}

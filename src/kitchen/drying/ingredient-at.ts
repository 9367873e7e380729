/** An ingredient at the moisture that its lot was measured to have. */

import type { Figures } from '../../foods/food.ts';
import { atMoisture } from '../../foods/forms/dried-composition.ts';
import type { Reference } from '../../foods/reference.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';

/**
 * An ingredient at the moisture its lot really has: every amount moves with the dry matter. An ingredient whose
 * moisture is unknown only gets the measured one, since nobody can say how its other amounts move.
 * @param moisture g water per 100 g, 0 to below 100
 */
export function ingredientAt(
  food: Ingredient,
  moisture: number,
  reference: Pick<Reference, 'get'>,
): Ingredient {
  const ref = food.ref === undefined ? undefined : reference.get(food.ref);
  const own = food.composition ?? {};
  const figures: Figures = {
    composition: { ...ref?.composition, ...own },
    // An own amount without an sd does not take that of the table's amount.
    sd: {
      ...Object.fromEntries(Object.entries(ref?.sd ?? {}).filter(([tag]) => !(tag in own))),
      ...food.sd,
    },
    ...(food.low && { low: food.low }),
    ...(food.high && { high: food.high }),
  };
  if (figures.composition.WATER === undefined) return { ...food, composition: { ...own, WATER: moisture } };
  const { composition, sd, low, high } = atMoisture(figures, moisture);
  const { WATER: _, ...spread } = sd;
  return { ...food, composition, sd: spread, ...(low && { low }), ...(high && { high }) };
}

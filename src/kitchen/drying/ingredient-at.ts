/** An ingredient at the moisture that its lot was measured to have. */

import { atMoisture } from '../../foods/forms/dried-composition.ts';
import type { Reference } from '../../foods/reference.ts';
import { fedFigures } from '../../formulation/problem/fed-figures.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';

/**
 * An ingredient at the moisture its lot really has: every amount moves with the dry matter. An ingredient whose
 * moisture is unknown, or that is said to be nothing but water, only gets the measured one, since nobody can say how its other amounts move.
 * @param moisture g water per 100 g, 0 to below 100
 */
export function ingredientAt(
  food: Ingredient,
  moisture: number,
  reference: Pick<Reference, 'get'>,
): Ingredient {
  const ref = food.ref === undefined ? undefined : reference.get(food.ref);
  const own = food.composition ?? {};
  const figures = fedFigures(food, ref);
  const { WATER: water } = figures.composition;
  if (water === undefined || water >= 100) return { ...food, composition: { ...own, WATER: moisture } };
  const { composition, sd, low, high } = atMoisture(figures, moisture);
  const { WATER: _, ...spread } = sd;
  // The table's protein is written among the food's own amounts now, so its nitrogen factor goes along.
  const tableFactor = own.PROCNT === undefined ? ref?.proteinFactor : undefined;
  const factor = tableFactor !== undefined && { protein_factor: food.protein_factor ?? tableFactor };
  return { ...food, ...factor, composition, sd: spread, ...(low && { low }), ...(high && { high }) };
}

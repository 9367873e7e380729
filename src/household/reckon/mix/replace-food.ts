/** One food of a mix in the place of another, with what is asked of it. */
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../model.ts';
import { removeFood, withProblem } from './mix-edits.ts';

/** A food that is in the mix already takes the other's place by that one going. */
export function replaceFood(mix: Mix, id: string, food: Ingredient): Mix {
  const at = mix.problem.foods.findIndex((f) => f.id === id);
  const before = mix.problem.foods[at];
  if (!before || food.id === id) return mix;
  const without = removeFood(mix, id);
  if (without.problem.foods.some((f) => f.id === food.id || (f.ref && f.ref === food.ref))) return without;
  const { want, min, max } = before;
  const asked = {
    ...food,
    ...(want !== undefined && { want }),
    ...(min !== undefined && { min }),
    ...(max !== undefined && { max }),
  };
  return {
    ...withProblem(without, { foods: without.problem.foods.toSpliced(at, 0, asked) }),
    shares: { ...without.shares, [food.id]: mix.shares[id] ?? 0 },
  };
}

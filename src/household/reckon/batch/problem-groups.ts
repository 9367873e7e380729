/** The groups of the foods of a problem. */
import type { FoodGroup } from '../../../foods/food.ts';
import type { Reference } from '../../../foods/reference.ts';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { asGroup } from '../cupboard/foods-beside.ts';

/** Groups of a problem's foods: as its own say, else as their rows in the tables do. */
export function groupsOfFoods(
  problem: Problem,
  { reference }: { readonly reference: Reference },
): (food: string) => FoodGroup | undefined {
  const groups = new Map(
    problem.foods.map((f) => [
      f.id,
      asGroup(f.group ?? (f.ref === undefined ? undefined : reference.get(f.ref)?.group)),
    ]),
  );
  return (food) => groups.get(food);
}

/** The foods that a lot may be of, with their groups. */
import { FOOD_GROUPS, type FoodGroup } from '../../foods/food.ts';
import type { Household } from '../model.ts';

export interface CupboardFood {
  readonly id: string;
  readonly name: string;
  readonly group?: FoodGroup;
}

/** Foods that a lot may be of: those of every mix, and the keeper's own for a mix. By name; each id once. */
export function cupboardFoods(house: Household): CupboardFood[] {
  const foods = new Map<string, CupboardFood>();
  const add = (id: string, name: string, group: string | undefined) => {
    const known = group !== undefined && group in FOOD_GROUPS ? (group as FoodGroup) : undefined;
    const before = foods.get(id);
    if (!before || (!before.group && known)) foods.set(id, { id, name, ...(known && { group: known }) });
  };
  for (const food of house.foods) if (food.kind === 'mix') add(food.id, food.name, food.group);
  for (const mix of house.mixes) for (const f of mix.problem.foods) add(f.id, f.name ?? f.id, f.group);
  return [...foods.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

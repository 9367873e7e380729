/** What foods are called that records name by an id. */
import type { Household } from '../../../household/model.ts';
import { foodKeys } from '../../../household/reckon/foods/same-food.ts';

/** By the ids of mixes and batches, by what all ids of one food share, and of the keeper's own foods. */
export function foodNames(house: Household): (food: string) => string {
  const keyOf = foodKeys(house);
  const names = new Map<string, string>();
  for (const { problem } of [...house.batches, ...house.mixes])
    for (const { id, name } of [...problem.foods, ...problem.beside])
      if (name !== undefined) names.set(id, name).set(keyOf(id), name);
  for (const { id, name } of house.foods) names.set(id, name);
  return (food) => names.get(food) ?? names.get(keyOf(food)) ?? food;
}

/** Foods of the tables that may be offered for a dry mix, for advice on what to bring in. */

import { isFedDry } from '../../foods/fed-dry.ts';
import { foodName } from '../../foods/food-name.ts';
import type { Reference, ReferenceFood } from '../../foods/reference.ts';
import { isCautioned } from '../amounts/apply-cautions.ts';
import { type FoodAmounts, foodAmounts } from '../amounts/food-amounts.ts';
import type { Problem } from '../problem/problem.ts';

export interface DryFood {
  readonly food: ReferenceFood;
  readonly amounts: FoodAmounts;
}

const all = new WeakMap<Reference, Map<string, readonly DryFood[]>>();
const usual = new WeakMap<Reference, Map<string, readonly DryFood[]>>();

/** Every food that may be offered, with its amounts; gathered once for a reference. */
export function dryFoods(reference: Reference, variation: Problem['variation']): readonly DryFood[] {
  return kept(all, reference, variation ?? 'given', () =>
    Array.from({ length: reference.size }, (_, row) => reference.at(row))
      .filter(isFedDry)
      .map(withAmounts(reference, variation)),
  );
}

/** Those that keepers really use and that the caution list leaves free; gathered once for a species. */
export function usualDryFoods(problem: Problem, reference: Reference): readonly DryFood[] {
  const { variation, species } = problem;
  return kept(usual, reference, JSON.stringify([variation, species]), () =>
    reference
      .plainFoods()
      .filter((food) => isFedDry(food) && !isCautioned(food.ref, problem, reference))
      .map(withAmounts(reference, variation)),
  );
}

/** Whether advice may name a food: neither its number nor one of its names is among those left out. */
export function mayBeOffered({
  not_offered = [],
}: Pick<Problem, 'not_offered'>): (food: ReferenceFood) => boolean {
  const out = new Set(not_offered.map((name) => name.toLowerCase()));
  return (food) =>
    out.size === 0 ||
    ![food.ref, food.name, food.tableName, foodName(food)].some((name) => out.has(name.toLowerCase()));
}

const withAmounts = (reference: Reference, variation: Problem['variation']) => (food: ReferenceFood) => ({
  food,
  amounts: foodAmounts({ id: food.ref, ref: food.ref, group: food.group }, reference, variation),
});

function kept<T>(
  store: WeakMap<Reference, Map<string, T>>,
  reference: Reference,
  key: string,
  make: () => T,
): T {
  const made = store.get(reference) ?? new Map<string, T>();
  store.set(reference, made);
  const value = made.get(key) ?? make();
  made.set(key, value);
  return value;
}

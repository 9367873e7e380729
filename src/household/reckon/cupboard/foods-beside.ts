/** Foods that are fed from the pack, beside a mix: pellets, and what else dry the mixes have beside them. */
import { FOOD_GROUPS, type FoodGroup } from '../../../foods/food.ts';
import { AIR_DRY } from '../../../formulation/problem/problem.ts';
import type { LotGroup } from '../../../kitchen/freezing/freeze-treatment.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household } from '../../model.ts';

/** A food that a lot may be of. */
export interface CupboardFood {
  readonly id: string;
  readonly name: string;
  readonly group?: LotGroup;
}

/**
 * The keeper's pellets, then what else is fed beside a mix; by name, each id once. Fresh food is bought as it is needed
 * and is no pack.
 */
export function foodsBeside(house: Pick<Household, 'foods' | 'mixes'>): readonly CupboardFood[] {
  return besideOf(house.foods, house.mixes);
}

/** Whether a food is fed from the pack; one that is in a mix too is weighed out with it. */
export function isFedBeside(house: Pick<Household, 'foods' | 'mixes'>, food: string): boolean {
  return foodsBeside(house).some((f) => f.id === food);
}

const besideOf = remembered((own: Household['foods'], mixes: Household['mixes']): readonly CupboardFood[] => {
  const foods = new Map<string, CupboardFood>();
  const mixed = new Set(mixes.flatMap((m) => m.problem.foods.map((f) => f.id)));
  for (const { id, name, kind } of own) if (kind === 'pellet') foods.set(id, { id, name, group: 'pellet' });
  for (const { problem } of mixes)
    for (const b of problem.beside) {
      if (b.counts_as === AIR_DRY || foods.has(b.id) || mixed.has(b.id)) continue;
      const group = asGroup(own.find((f) => f.id === b.id)?.group);
      foods.set(b.id, { id: b.id, name: b.name ?? b.id, ...(group && { group }) });
    }
  return [...foods.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
});

/** The food group of that name; undefined for any other text. */
export function asGroup(text: string | undefined): FoodGroup | undefined {
  return text !== undefined && Object.hasOwn(FOOD_GROUPS, text) ? (text as FoodGroup) : undefined;
}

/** The foods that a lot may be of, with their groups. */
import type { LotGroup } from '../../../kitchen/freezing/freeze-treatment.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Household } from '../../model.ts';
import { foodKeys } from '../foods/same-food.ts';
import { asGroup, type CupboardFood, foodsBeside } from './foods-beside.ts';

/** Foods that a lot may be of: those of every mix, and the keeper's own for a mix. By name; each id once. */
export function cupboardFoods(house: Pick<Household, 'foods' | 'mixes'>): readonly CupboardFood[] {
  return foodsNamed(house.foods, house.mixes);
}

const foodsNamed = remembered((own: Household['foods'], mixes: Household['mixes']) => {
  const foods = new Map<string, CupboardFood>();
  const add = (id: string, name: string, group: string | undefined) => {
    const known = asGroup(group);
    const before = foods.get(id);
    if (!before || (!before.group && known)) foods.set(id, { id, name, ...(known && { group: known }) });
  };
  for (const food of own) if (food.kind === 'mix') add(food.id, food.name, food.group);
  for (const mix of mixes) for (const f of mix.problem.foods) add(f.id, f.name ?? f.id, f.group);
  return [...foods.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
});

/** As {@link cupboardFoods}, and what is fed beside the mixes; each food once, whatever ids it goes by. */
export function foodsForLots(house: Pick<Household, 'foods' | 'mixes'>): readonly CupboardFood[] {
  const keyOf = foodKeys(house);
  const all = [...cupboardFoods(house), ...foodsBeside(house)];
  return [...new Map(all.toReversed().map((f) => [keyOf(f.id), f])).values()]
    .reverse()
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

const foodsById = remembered((foods: readonly CupboardFood[]) => new Map(foods.map((f) => [f.id, f])));

/** The food of that id, as a lot names it: in a mix or beside one; undefined where nothing has it. */
export function cupboardFood(
  house: Pick<Household, 'foods' | 'mixes'>,
  id: string,
): CupboardFood | undefined {
  return foodsById(cupboardFoods(house)).get(id) ?? foodsById(foodsBeside(house)).get(id);
}

/** Group of a food by its id; undefined where none is known. */
export type GroupOf = (food: string) => LotGroup | undefined;

/** The groups of a household's foods, as its mixes and its own foods say them. */
export function groupsIn(house: Pick<Household, 'foods' | 'mixes'>): GroupOf {
  const foods = foodsById(cupboardFoods(house));
  const beside = foodsById(foodsBeside(house));
  return (food) => (foods.get(food) ?? beside.get(food))?.group;
}

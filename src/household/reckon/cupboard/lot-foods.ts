/** The foods that a lot may be of, with their groups. */
import { FOOD_GROUPS, type FoodGroup } from '../../../foods/food.ts';
import type { Household } from '../../model.ts';

export interface CupboardFood {
  readonly id: string;
  readonly name: string;
  readonly group?: FoodGroup;
}

/** Foods that a lot may be of: those of every mix, and the keeper's own for a mix. By name; each id once. */
export function cupboardFoods(house: Pick<Household, 'foods' | 'mixes'>): CupboardFood[] {
  const foods = new Map<string, CupboardFood>();
  const add = (id: string, name: string, group: string | undefined) => {
    const known = asGroup(group);
    const before = foods.get(id);
    if (!before || (!before.group && known)) foods.set(id, { id, name, ...(known && { group: known }) });
  };
  for (const food of house.foods) if (food.kind === 'mix') add(food.id, food.name, food.group);
  for (const mix of house.mixes) for (const f of mix.problem.foods) add(f.id, f.name ?? f.id, f.group);
  return [...foods.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** Group of a food by its id; undefined where none is known. */
export type GroupOf = (food: string) => FoodGroup | undefined;

/** The groups of a household's foods, as its mixes and its own foods say them. */
export function groupsIn(house: Pick<Household, 'foods' | 'mixes'>): GroupOf {
  const groups = new Map(cupboardFoods(house).map((f) => [f.id, f.group]));
  return (food) => groups.get(food);
}

/** The food group of that name; undefined for any other text. */
export function asGroup(text: string | undefined): FoodGroup | undefined {
  return text !== undefined && Object.hasOwn(FOOD_GROUPS, text) ? (text as FoodGroup) : undefined;
}

/** A food that mixes, packs and lists name by its id, as far as hands and allergies need it. */
import type { Handled } from '../../../care/hands/allergens.ts';
import type { FoodGroup } from '../../../foods/food.ts';
import { printedTexts } from '../../../foods/printed-texts.ts';
import { isReferenceNumber } from '../../../foods/reference-number.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Household } from '../../model.ts';

/** @param name as it is shown there @param among foods that are known there by this id, a batch's say */
export function handledOf(
  house: Pick<Household, 'foods' | 'mixes'>,
  food: { readonly id: string; readonly name: string },
  among: readonly Ingredient[] = [],
): Handled & { readonly group?: FoodGroup } {
  const { id, name } = food;
  const own = house.foods.find((f) => f.id === id);
  if (own) return { name, also: [own.name], group: own.group, lists: printedTexts(own.evidence) };
  if (isReferenceNumber(id)) return { name, ref: id };
  const named = [...among, ...house.mixes.flatMap((m) => m.problem.foods)].find((f) => f.id === id);
  const mine = house.foods.find((f) => f.id === named?.ref);
  if (mine) return { name, also: [mine.name], group: mine.group, lists: printedTexts(mine.evidence) };
  const { ref, group, ingredients, name: called } = named ?? {};
  return {
    name,
    ...(called !== undefined && { also: [called] }),
    ...(ref !== undefined && { ref }),
    ...(group !== undefined && { group: group as FoodGroup }),
    ...(ingredients && { lists: ingredients }),
  };
}

/** Foods that are bought fresh and dried at home: which fresh food each is made of, and how to find that. */
import type { Food } from '../../../foods/food.ts';
import { PAIRS } from '../../../foods/forms/pairs.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { FreshFood } from '../../../kitchen/drying/yields.ts';
import type { DriedAtHome } from '../../../kitchen/model.ts';
import type { Household, OwnFood } from '../../model.ts';
import { foodKeys } from './same-food.ts';

/** What a food dried at home holds, as planned, g of water per 100 g (common practice, no source). */
export const PLANNED_MOISTURE = 10;

/** How the keeper dries a food at home; undefined where it is bought as it is mixed. */
export function driedAtHome(
  house: Pick<Household, 'kitchen' | 'foods' | 'mixes'>,
  food: string,
): DriedAtHome | undefined {
  const all = house.kitchen[0]?.driedAtHome ?? [];
  const keyOf = foodKeys(house);
  return all.find((d) => d.food === food) ?? all.find((d) => keyOf(d.food) === keyOf(food));
}

/** How foods are dried at home, with one changed; `undefined` for bought as it is mixed. */
export function withDried(
  all: readonly DriedAtHome[],
  food: string,
  dried: Omit<DriedAtHome, 'food'> | undefined,
): DriedAtHome[] {
  const others = all.filter((d) => d.food !== food);
  return dried ? [...others, { food, ...dried }] : others;
}

/** The same food dried from another fresh one: what was weighed of one says nothing of the other. */
export function driedFrom(before: DriedAtHome | undefined, fresh: string): Omit<DriedAtHome, 'food'> {
  const trimLoss = before?.fresh === fresh ? before.trimLoss : undefined;
  return {
    fresh,
    moisture: before?.moisture ?? PLANNED_MOISTURE,
    ...(trimLoss !== undefined && { trimLoss }),
  };
}

/** A fresh food by the id that is kept: an own food or a reference number; undefined where it is not known (yet). */
export function freshFoodOf(
  id: string,
  own: readonly OwnFood[],
  known: ReadonlyMap<string, FreshFood>,
): FreshFood | undefined {
  const mine = own.find((f) => f.id === id);
  return mine ? ownFresh(mine) : known.get(id);
}

/** An own food as one that may be dried. Nobody has said what is trimmed off it. */
export function ownFresh({ id, name, source, composition, sd, low, high, group }: OwnFood): FreshFood {
  return {
    ref: id,
    name,
    source,
    composition,
    sd,
    ...(low && { low }),
    ...(high && { high }),
    ...(group && { group }),
  };
}

/** Reference numbers of fresh foods that USDA SR28 holds dried under this number. */
export function freshPairsOf(ref: string | undefined): string[] {
  return [...new Set(PAIRS.filter((p) => p.dried === ref).map((p) => p.fresh))];
}

/** Fresh foods that a food may be dried from, by the tables, or by the row that an own food was made from. */
export function freshSuggested(
  house: Pick<Household, 'foods'>,
  food: string,
  ref: string | undefined,
): string[] {
  const [source, ...others] = house.foods.find((f) => f.id === food)?.evidence?.sources ?? [];
  return source?.ref !== undefined && others.length === 0 ? [source.ref] : freshPairsOf(ref);
}

/** What to search the reference foods for: the dried food's name without its form, raw. */
export function freshWords(name: string): string {
  const bare = name
    .replace(/\b(freeze[- ]?)?(dried|dry|dehydrated|flakes?|powder(ed)?|ground)\b/gi, ' ')
    .replace(/\b(gefrier)?(getrocknete?[rsnm]?|gemahlene?[rsnm]?|(ge)?(vries)?gedroogde?|gemalen)\b/gi, ' ');
  return `${bare
    .replace(/[,;()]/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()} raw`;
}

/** Water above which a food counts as fresh, g per 100 g (common practice, no source). */
const FRESH_WATER = 40;

/** Whether a food may be what a dried one is made of. */
export function looksFresh(food: Food): boolean {
  const water = food.composition.WATER;
  return water === undefined || water > FRESH_WATER;
}

/**
 * Whether a food of a mix is fresh, cooked or live: wet, as its figures have it. Where nobody says how wet it is, it is not.
 * @param table foods of the tables by reference number
 */
export function isFreshIn(
  food: Pick<Ingredient, 'ref' | 'composition'>,
  table: ReadonlyMap<string, Pick<Food, 'composition'>>,
): boolean {
  const looked = food.ref === undefined ? undefined : table.get(food.ref);
  const water = food.composition?.WATER ?? looked?.composition.WATER;
  return water !== undefined && water > FRESH_WATER;
}

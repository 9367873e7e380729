/** What is asked for a shopping list: the mix, what the cupboard holds, and who sells what. */
import type { Ingredient, Problem } from '../../../formulation/problem/problem.ts';
import { leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import type { FreshFood } from '../../../kitchen/drying/yields.ts';
import type { Day, DriedAtHome } from '../../../kitchen/model.ts';
import type { BatchSize } from '../../../kitchen/shopping/batch-grams.ts';
import type { PackAim } from '../../../kitchen/shopping/packs.ts';
import type { ShoppingQuestion } from '../../../kitchen/shopping/shopping-list.ts';
import type { Household, Mix } from '../../model.ts';
import { usedShares } from '../batch/used-shares.ts';
import { asNamed } from '../cupboard/as-named.ts';
import { contentsOf } from '../cupboard/contents.ts';
import { onTrays } from '../drying/on-trays.ts';
import { ownFresh } from '../foods/fresh-food.ts';
import { foodKeys } from '../foods/same-food.ts';
import type { BesideNeeds } from './beside-needs.ts';

/** The question for the worker. @param size of the batch @param nameOf the name of a food for people */
export function shoppingQuestion(
  all: Household,
  mix: Mix,
  p: {
    readonly size: BatchSize;
    readonly aim: PackAim;
    readonly on: Day;
    /** What is fed beside the mix and what there is of it; left out where nobody knows. */
    readonly beside?: BesideNeeds | undefined;
    nameOf(food: Ingredient): string;
  },
): ShoppingAsked {
  const { foods, shares } = eachFoodOnce(all, mix);
  const house = asNamed(all, foods);
  const wanted = new Set(foods.map((f) => f.id));
  const beside = (p.beside?.foods ?? []).filter((b) => !wanted.has(b.food));
  const sold = new Set([...wanted, ...beside.map((b) => b.food)]);
  const kitchen = house.kitchen[0];
  const driedAtHome = (kitchen?.driedAtHome ?? []).filter((d) => wanted.has(d.food));
  return {
    problem: mix.problem,
    foods: foods.map((f) => ({ food: f.id, name: p.nameOf(f) })),
    shares,
    batch:
      'grams' in p.size
        ? p.size
        : {
            ...p.size,
            // What else is known of an animal does not change the list.
            animals: p.size.animals.map(({ name, dailyGrams }) => ({
              name,
              ...(dailyGrams !== undefined && { dailyGrams }),
            })),
          },
    ...(beside.length > 0 && { beside }),
    cupboard: [
      ...leftOver(contentsOf(house))
        .filter(({ lot }) => wanted.has(lot.food))
        // More may have been put back than was taken: then the lot holds what came in.
        .map(({ lot, grams }) => ({ lot, left: Math.min(grams, lot.grams) })),
      ...(p.beside?.cupboard ?? []).filter(({ lot }) => !wanted.has(lot.food)),
    ],
    drying: onTrays(house).filter(({ lot }) => wanted.has(lot.food)),
    driedAtHome,
    own: house.foods.filter((f) => driedAtHome.some((d) => d.fresh === f.id)).map(ownFresh),
    offers: house.offers.filter((o) => sold.has(o.food)),
    sellers: kitchen?.sellers ?? [],
    aim: p.aim,
    on: p.on,
  };
}

/** The foods that have a share, each once: ids of the same food share one line, their shares together. */
function eachFoodOnce(house: Household, mix: Mix) {
  const { shares: used } = usedShares(mix);
  const keyOf = foodKeys(house);
  const first = new Map<string, Ingredient>();
  const shares: Record<string, number> = {};
  for (const food of mix.problem.foods) {
    const share = used[food.id];
    if (share === undefined) continue;
    const { id } = first.get(keyOf(food.id)) ?? food;
    if (id === food.id) first.set(keyOf(id), food);
    shares[id] = (shares[id] ?? 0) + share;
  }
  return { foods: [...first.values()], shares };
}

/** Plain data; the worker finds the fresh foods by itself. */
export interface ShoppingAsked extends Omit<ShoppingQuestion, 'foods'> {
  readonly problem: Problem;
  readonly foods: readonly { readonly food: string; readonly name: string }[];
  readonly driedAtHome: readonly DriedAtHome[];
  /** The keeper's own foods among the fresh ones. */
  readonly own: readonly FreshFood[];
}

/** Lots, offers and home drying under the ids by which somebody names their foods. */
import type { Batch, Lot } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { type FoodKey, foodKeys } from '../foods/same-food.ts';
import { withLists } from '../with-lists.ts';

type Kept = Pick<Household, 'foods' | 'mixes' | 'batches' | 'lots' | 'offers' | 'kitchen'>;

/**
 * The household with its lots, offers and home drying named as these foods are: what is the same food under another id
 * counts as theirs. Of two ids of the same food the first takes it. Foods that are not among them keep their ids.
 * @param foods ids, or things known by their id
 */
export function asNamed<H extends Kept>(house: H, foods: readonly (string | { readonly id: string })[]): H {
  const keyOf = foodKeys(house);
  const ids = foods.map((f) => (typeof f === 'string' ? f : f.id));
  const own = new Set(ids);
  const byKey = new Map<string, string>();
  for (const id of ids) if (!byKey.has(keyOf(id))) byKey.set(keyOf(id), id);
  const idOf = (food: string) => (own.has(food) ? food : (byKey.get(keyOf(food)) ?? food));
  const renamed = house.lots.some((l) => idOf(l.food) !== l.food);
  const [kitchen] = house.kitchen;
  const dried = kitchen?.driedAtHome?.some((d) => idOf(d.food) !== d.food);
  const lists: Partial<Kept> = {
    ...(renamed && { lots: house.lots.map((l) => named(l, idOf)) }),
    offers: house.offers.map((o) => named(o, idOf)),
    ...(dried && {
      kitchen: [
        {
          ...kitchen!,
          // Said of the id itself, it goes before what is said of another.
          driedAtHome: unique(
            [...kitchen!.driedAtHome!]
              .sort((a, b) => Number(own.has(b.food)) - Number(own.has(a.food)))
              .map((d) => named(d, idOf)),
          ),
        },
      ],
    }),
  };
  return withLists(house, lists as Partial<H>);
}

/** All lots and pours with one id for each food, whatever they are named by; see {@link foodKeys}. */
export function asOneFood<H extends Pick<Kept, 'foods' | 'mixes' | 'batches' | 'lots'>>(house: H): H {
  const keyOf = foodKeys(house);
  const lists: Partial<Kept> = {
    lots: lotsByKey(house.lots, keyOf),
    batches: poursByKey(house.batches, keyOf),
  };
  return withLists(house, lists as Partial<H>);
}

const lotsByKey = (lots: readonly Lot[], keyOf: FoodKey) => lots.map((l) => named(l, keyOf));

const poursByKey = (batches: readonly Batch[], keyOf: FoodKey) =>
  batches.map((b) =>
    b.pours.some((p) => keyOf(p.food) !== p.food) ? { ...b, pours: b.pours.map((p) => named(p, keyOf)) } : b,
  );

function named<T extends { readonly food: string }>(thing: T, idOf: (food: string) => string): T {
  const food = idOf(thing.food);
  return food === thing.food ? thing : { ...thing, food };
}

function unique<T extends { readonly food: string }>(things: readonly T[]): T[] {
  return [...new Map(things.toReversed().map((t) => [t.food, t])).values()].reverse();
}

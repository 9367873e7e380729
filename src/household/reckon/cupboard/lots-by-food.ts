/** All lots by food, in the order in which they are used. */
import { type LotStock, leftByFood, lotsInTurn, totals } from '../../../kitchen/cupboard/cupboard.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { foodKeys } from '../foods/same-food.ts';
import { asNamed } from './as-named.ts';
import { contentsOf } from './contents.ts';
import { cupboardFood, groupsIn } from './lot-foods.ts';
import { type LotState, lotState } from './lot-state.ts';
import { isWeighableOn } from './weighable.ts';

export interface LotLine extends LotStock {
  readonly state: LotState;
  /** The next to be weighed out of its food. */
  readonly first: boolean;
}

export interface FoodLots {
  readonly food: string;
  readonly name: string;
  /** g that may be weighed out today. */
  readonly ready: number;
  /** g of it in all, but what is barred. */
  readonly all: number;
  /** In the order in which they are used; those that may not be used behind them. */
  readonly lots: readonly LotLine[];
}

/** All lots by food, foods by name; ids of the same food are one food, called by the first of its lots. */
export function lotsByFood(all: Household, day: Day): FoodLots[] {
  const keyOf = foodKeys(all);
  const firsts = new Map<string, string>();
  for (const { food } of all.lots) if (!firsts.has(keyOf(food))) firsts.set(keyOf(food), food);
  const house = asNamed(all, [...firsts.values()]);
  const kept = contentsOf(house);
  const left = leftByFood(kept);
  const ready = isWeighableOn(day, groupsIn(house));
  return totals(kept, ready)
    .map((total): FoodLots => {
      const food = cupboardFood(house, total.food);
      const order = lotsInTurn(kept, total.food, ready).map((l) => l.lot.id);
      const places = new Map(order.map((id, i) => [id, i]));
      const place = (l: LotStock) => places.get(l.lot.id) ?? order.length;
      const mine = [...(left.get(total.food) ?? [])].sort((a, b) => place(a) - place(b));
      return {
        food: total.food,
        name: food?.name ?? mine[0]?.lot.name ?? total.food,
        ready: total.ready,
        all: total.ready + total.waiting + total.fresh,
        lots: mine.map((l) => ({
          ...l,
          state: lotState(l, day, food?.group),
          first: mine.length > 1 && l.lot.id === order[0],
        })),
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** All lots by food, in the order in which they are used. */
import { allocate, type Left, leftOver, totals } from '../../kitchen/cupboard/cupboard.ts';
import { mayBeWeighed } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import type { Household } from '../model.ts';
import { keptOf } from './contents.ts';
import { cupboardFoods } from './lot-foods.ts';
import { type LotState, lotState } from './lot-state.ts';

export interface LotLine extends Left {
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

/** All lots by food, foods by name. */
export function lotsByFood(house: Household, day: Day): FoodLots[] {
  const kept = keptOf(house);
  const foods = new Map(cupboardFoods(house).map((f) => [f.id, f]));
  const left = leftOver(kept);
  const ready = readyIn(house, day);
  return totals(kept, ready)
    .map((total): FoodLots => {
      const order = allocate(kept, total.food, Number.MAX_VALUE, ready).takes.map((t) => t.lot.id);
      const place = (l: Left) => (order.includes(l.lot.id) ? order.indexOf(l.lot.id) : order.length);
      const mine = left.filter((l) => l.lot.food === total.food).sort((a, b) => place(a) - place(b));
      return {
        food: total.food,
        name: foods.get(total.food)?.name ?? mine[0]!.lot.name,
        ready: total.ready,
        all: total.ready + total.waiting + total.fresh,
        lots: mine.map((l) => ({
          ...l,
          state: lotState(l, day, foods.get(total.food)?.group),
          first: mine.length > 1 && l.lot.id === order[0],
        })),
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** Whether a lot of this household may be weighed out on a day. */
export function readyIn(house: Household, day: Day) {
  const groups = new Map(cupboardFoods(house).map((f) => [f.id, f.group]));
  return (lot: Lot) => mayBeWeighed(lot, day, groups.get(lot.food));
}

/**
 * Batches that are not fed, since a lot in them is not used any more: recalled, infested or spoiled. It follows from the
 * lots alone: with the bar taken off a lot, its batches are as they were.
 */
import { reachOf } from '../../../kitchen/batch/trace.ts';
import type { DayAt } from '../../../kitchen/days.ts';
import type { Batch, Day, Lot } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import { CRUMB } from '../../../kitchen/tolerances.ts';
import type { Household } from '../../model.ts';
import { asOneFood } from './as-named.ts';
import { contentsOf } from './contents.ts';

/** A barred lot that is, or may be, in a batch. */
export interface StoppedLot {
  readonly lot: Lot;
  /** Why, as it is kept (see `kitchen/cupboard/barred.ts`), and since when. */
  readonly barred: NonNullable<Lot['barred']>;
  /**
   * It is in it. Else it may be: the same food was poured in without naming its packs, or all of it was taken out again.
   */
  readonly sure: boolean;
  /** g of it as poured, where it is known. */
  readonly grams?: number;
}

/** Why a batch is not to be fed, or had better not be until it is known. */
export interface Stop {
  /** At least one barred lot is in it; else one may be. */
  readonly sure: boolean;
  /** Those that are in it first. */
  readonly lots: readonly StoppedLot[];
  /** The first day on which it was not to be fed any more. */
  readonly since: Day;
}

/** Why a batch is not to be fed; undefined where none of its lots is barred. */
export function stopOf(house: Household, batch: Pick<Batch, 'id'>, dayAt: DayAt): Stop | undefined {
  // Most households never bar anything.
  if (!house.lots.some((l) => l.barred)) return undefined;
  return stopsOf(house.lots, house.dryingRuns, house.batches, house.foods, house.mixes, dayAt).get(batch.id);
}

const stopsOf = remembered(
  (
    lots: Household['lots'],
    dryingRuns: Household['dryingRuns'],
    batches: Household['batches'],
    foods: Household['foods'],
    mixes: Household['mixes'],
    dayAt: DayAt,
  ): ReadonlyMap<string, Stop> => {
    const named = asOneFood({ lots, dryingRuns, batches, foods, mixes });
    const kept = contentsOf({ ...named, feedings: [] });
    const stops = new Map<string, StoppedLot[]>();
    const add = (id: string, stopped: StoppedLot) => {
      const there = stops.get(id);
      if (there) there.push(stopped);
      else stops.set(id, [stopped]);
    };
    for (const lot of lots) {
      const { barred } = lot;
      if (!barred) continue;
      const reach = reachOf(lot.id, kept, dayAt);
      for (const { batch, grams } of reach.batches)
        add(batch.id, grams > CRUMB ? { lot, barred, sure: true, grams } : { lot, barred, sure: false });
      for (const batch of reach.maybe) add(batch.id, { lot, barred, sure: false });
    }
    return new Map(
      [...stops].map(([id, all]) => {
        const sure = all.filter((s) => s.sure);
        const counted = sure.length > 0 ? sure : all;
        const [since = ''] = counted.map((s) => s.barred.on).sort();
        return [id, { sure: sure.length > 0, lots: [...sure, ...all.filter((s) => !s.sure)], since }];
      }),
    );
  },
);

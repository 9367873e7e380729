/** Lots that something may be wrong with: past their best before, or barred and in a batch that may still be fed. */
import { reachOf } from '../../../kitchen/batch/trace.ts';
import { leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import type { DayAt } from '../../../kitchen/days.ts';
import type { Batch, Day, Lot } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { isUsedUp } from '../batch/batches.ts';
import { contentsOf } from './contents.ts';
import { isPastBest } from './lot-state.ts';

/** Lots that hold some, are not barred, and whose best before lies before a day. */
export function lotsPastBest(house: Household, day: Day): Lot[] {
  return leftOver(contentsOf(house)).flatMap(({ lot, grams }) =>
    grams > 0 && !lot.barred && isPastBest(lot, day) ? [lot] : [],
  );
}

interface BarredInUse {
  readonly lot: Lot;
  readonly barred: NonNullable<Lot['barred']>;
  /** Batches it went into that are being weighed or fed. */
  readonly batches: readonly Batch[];
}

/** Barred lots in batches that may still be fed. @param fed batches that are being fed, or would be but for such a lot */
export function barredInUse(house: Household, fed: readonly Batch[], dayAt: DayAt): BarredInUse[] {
  const kept = contentsOf(house);
  const ids = new Set(fed.map((b) => b.id));
  return house.lots.flatMap((lot): BarredInUse[] => {
    if (!lot.barred) return [];
    const batches = reachOf(lot.id, kept, dayAt)
      .batches.map(({ batch }) => batch)
      .filter(
        (batch) =>
          !batch.givenUp && !isUsedUp(batch) && (batch.finishedAt === undefined || ids.has(batch.id)),
      );
    return batches.length > 0 ? [{ lot, barred: lot.barred, batches }] : [];
  });
}

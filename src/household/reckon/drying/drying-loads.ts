/** What comes next of a lot that is dried in several loads. */
import { leftOver, takenBy } from '../../../kitchen/cupboard/cupboard.ts';
import type { Lot } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { contentsOf } from '../cupboard/contents.ts';

/** What comes next of a lot that was to be dried in several loads. */
interface NextLoad {
  /** g of the lot for what is still to come, with trimmings, and g of it ready to dry. */
  readonly taken: number;
  readonly ready: number;
  /** Loads that were, of how many. */
  readonly done: number;
  readonly of: number;
}

/** The rest of a lot dried in loads; undefined where no load of it is to come. */
export function nextLoadOf(house: Household, lot: Lot): NextLoad | undefined {
  const runs = house.dryingRuns.flatMap((run) =>
    run.lot === lot.id && run.load ? [{ run, load: run.load }] : [],
  );
  const last = runs.sort((a, b) => a.load.n - b.load.n).at(-1);
  if (!last || last.load.n >= last.load.of) return undefined;
  const left = leftOver(contentsOf(house)).find((l) => l.lot.id === lot.id)?.grams ?? 0;
  const each = takenBy(last.run);
  const taken = Math.min(left, each * (last.load.of - last.load.n));
  if (!(taken > 0)) return undefined;
  return { taken, ready: (taken * last.run.gramsBefore) / each, done: last.load.n, of: last.load.of };
}

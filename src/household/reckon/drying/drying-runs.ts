/** What is to dry, and where each drying run stands. */
import { type LotStock, leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import type { DryingRun, Lot } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Household } from '../../model.ts';
import { contentsOf } from '../cupboard/contents.ts';
import { driedIn, lotById } from '../cupboard/lot-index.ts';

/** "weighed": nobody has said yet what becomes of it; "lost": thrown away. */
export type RunState = 'drying' | 'weighed' | 'done' | 'lost';

export interface RunLine {
  readonly run: DryingRun;
  readonly name: string;
  readonly state: RunState;
  /** The fresh food it is made of. */
  readonly lot?: Lot;
  /** What it left in the cupboard or the freezer. */
  readonly dried?: Lot;
}

/** Fresh lots that hold some, not those barred; what thaws or spoils first is the keeper's to say. */
export function lotsToDry(house: Household): LotStock[] {
  return leftOver(contentsOf(house)).filter((l) => l.lot.form === 'fresh' && l.grams > 0 && !l.lot.barred);
}

/** All runs, the last begun first. */
export function runLines(house: Household): RunLine[] {
  return house.dryingRuns
    .map((run): RunLine => {
      const lot = lotById(house, run.lot);
      const dried = driedIn(house, run.id);
      const t = words().supply;
      const food = lot?.name ?? t.goneFood;
      return {
        run,
        name: run.load && run.load.of > 1 ? t.load(food, run.load.n, run.load.of) : food,
        state: runState(run),
        ...(lot && { lot }),
        ...(dried && { dried }),
      };
    })
    .sort((a, b) => (a.run.startedAt < b.run.startedAt ? 1 : a.run.startedAt > b.run.startedAt ? -1 : 0));
}

function runState(run: DryingRun): RunState {
  if (run.endedAt !== undefined) return run.gramsAfter === undefined ? 'lost' : 'done';
  return run.gramsAfter === undefined ? 'drying' : 'weighed';
}

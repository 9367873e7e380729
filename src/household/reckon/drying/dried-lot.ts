/** The lot that a drying run leaves, or the run dried on. */
import { driedLot } from '../../../kitchen/drying/finished-run.ts';
import type { Day, DryingRun, Lot, Moment } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Household } from '../../model.ts';
import { cupboardFood } from '../cupboard/lot-foods.ts';
import { lotName } from '../cupboard/lot-name.ts';
import { lotOf } from './drying-outcome.ts';

/** The id of the lot that a run leaves: kept twice, it is still one lot. */
const lotIdOf = (run: DryingRun) => `${run.id}-dried`;

/**
 * The lot that a run leaves in the cupboard. What is too damp to keep comes as a fresh lot in the freezer: it is not
 * weighed out, and may be dried on another day.
 */
export function lotFrom(
  house: Household,
  run: DryingRun,
  p: { readonly moisture: number; readonly on: Day; readonly frozen?: 'dry' | 'damp' },
): Lot {
  const t = words().drying;
  const fresh = lotOf(house, run);
  const food = fresh?.food ?? '';
  const plain = cupboardFood(house, food)?.name ?? fresh?.name ?? t.food;
  const taken = house.lots.filter((l) => l.id !== lotIdOf(run)).map((l) => l.name);
  const name = p.frozen === 'damp' ? t.halfDried(plain) : plain;
  const lot = driedLot(run, {
    id: lotIdOf(run),
    food,
    name: lotName(name, p.on, taken),
    on: p.on,
    moisture: Number(p.moisture.toFixed(2)),
  });
  if (p.frozen === undefined) return lot;
  return { ...lot, frozen: true, ...(p.frozen === 'damp' && { form: 'fresh' as const }) };
}

/** The run dried on: what it weighed is kept as a check, and the next check is due as long after it as after any other. */
export function driedOn(run: DryingRun, at: Moment): DryingRun {
  const { gramsAfter, endedAt: _, ...rest } = run;
  if (gramsAfter === undefined) return run;
  return {
    ...rest,
    checks: [...run.checks, { at, grams: gramsAfter, note: words().drying.weighedAndDriedOn }],
  };
}

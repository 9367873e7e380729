/** What came of a drying run: its water, and whether it keeps. */
import type { Food } from '../../../foods/food.ts';
import { capital } from '../../../formulation/explain/sentences.ts';
import { type DryKind, dryKindOf } from '../../../kitchen/drying/drying-practice.ts';
import { type DriedRun, finishedRun } from '../../../kitchen/drying/finished-run.ts';
import { freshMoistureBySample } from '../../../kitchen/drying/moisture.ts';
import type { FreshFood } from '../../../kitchen/drying/yields.ts';
import type { DryingRun } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import type { Household } from '../../model.ts';
import { cupboardFood } from '../cupboard/lot-foods.ts';
import { lotById } from '../cupboard/lot-index.ts';

/** How the food of a lot behaves on the tray, by group and name of the fresh food, else by those of the mix's. */
export function kindOf(house: Household, food: string, fresh: Food | undefined): DryKind {
  const named = cupboardFood(house, food);
  const byFresh = dryKindOf(fresh?.group, fresh?.name);
  const group = named?.group === 'pellet' ? undefined : named?.group;
  return byFresh === 'vegetable' ? dryKindOf(group, named?.name) : byFresh;
}

export type Outcome =
  | { readonly ok: true; readonly value: DriedRun }
  | {
      readonly ok: false;
      /** A sentence for the keeper. */
      readonly fault: string;
      /** The water of the fresh food is not known: a dried-out sample says it. */
      readonly needsSample?: boolean;
    };

/**
 * What the weights of a run say. A sample goes before what the lot was measured to hold, and that before the table.
 * @param grams g that it weighs; the run's own weight after where absent
 */
export function outcomeOf(
  house: Household,
  run: DryingRun,
  fresh: FreshFood | undefined,
  p: { readonly scaleStep: number; readonly grams?: number },
): Outcome {
  if (!fresh) return { ok: false, fault: words().drying.fault.sayFreshFirst };
  try {
    const known = measuredWater(house, run, fresh, p.scaleStep, new Set());
    if (!known && fresh.composition.WATER === undefined)
      return {
        ok: false,
        needsSample: true,
        fault: words().drying.fault.waterNotKnown(fresh.name),
      };
    const weighed = p.grams === undefined ? run : { ...run, gramsAfter: p.grams };
    // A sample of the very food that is judged says its water by itself: how the whole was weighed has no part in it.
    const direct = run.sample?.of !== undefined && run.sample.of === weighed.gramsAfter;
    const value = finishedRun(weighed, fresh, {
      kind: run.kind ?? kindOf(house, lotOf(house, run)?.food ?? '', fresh),
      scaleStep: direct ? 0 : p.scaleStep,
      ...(known && { freshMoisture: known.moisture, freshSd: known.sd }),
    });
    return { ok: true, value };
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, fault: sentence(error.message) };
    throw error;
  }
}

export const lotOf = (house: Household, run: DryingRun) => lotById(house, run.lot);

/** Water of this very fresh food, where it was measured: by a sample, or because it is half dried already. */
function measuredWater(
  house: Household,
  run: DryingRun,
  fresh: FreshFood,
  scaleStep: number,
  seen: ReadonlySet<string>,
): { readonly moisture: number; readonly sd: number } | undefined {
  if (run.sample) return freshMoistureBySample(run.sample, run.gramsBefore);
  const lot = lotOf(house, run);
  if (lot?.moisture === undefined) return undefined;
  const before = house.dryingRuns.find((r) => r.id === lot.driedIn);
  if (!before || before.gramsAfter === undefined || seen.has(before.id))
    return { moisture: lot.moisture, sd: 0 };
  // Half dried in a run before: its doubt goes with it.
  const inner = measuredWater(house, before, fresh, scaleStep, new Set([...seen, run.id]));
  try {
    const { sd } = finishedRun(before, fresh, {
      scaleStep,
      ...(inner && { freshMoisture: inner.moisture, freshSd: inner.sd }),
    });
    return { moisture: lot.moisture, sd };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { moisture: lot.moisture, sd: 0 };
  }
}

/** Begun with a capital letter, ended with a full stop. */
export function sentence(text: string): string {
  const whole = capital(text);
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
}

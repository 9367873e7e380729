/** What a finished drying run comes to: its moisture, whether it keeps, its composition, and the lot it leaves. */

import type { Food } from '../../foods/food.ts';
import { atMoisture, type DriedFigures, driedForm } from '../../foods/forms/dried-composition.ts';
import { spreadOf } from '../../foods/variation.ts';
import type { Day, DryingRun, Lot } from '../model.ts';
import { type DryVerdict, dryEnough } from './dry-enough.ts';
import { type DryKind, dryKindOf } from './drying-practice.ts';
import { type ActualMoisture, actualMoisture } from './moisture.ts';

/** What a finished run came to. */
export interface DriedRun extends ActualMoisture {
  readonly keep: DryVerdict;
  /** What 100 g of the dried food hold, at its actual moisture. */
  readonly figures: DriedFigures;
}

/**
 * What a finished run says: moisture from the weights, whether it keeps, and the dried food's composition at it.
 * @param fresh the fresh food; where it prints no sd of its moisture, the published variation of its group counts
 * @param p.freshMoisture of this very fresh food, g per 100 g, where a sample was dried out; it then counts as exact,
 *   or as good as `p.freshSd` says
 * @throws RangeError where a weight or the fresh moisture is missing, or the weights contradict each other
 */
export function finishedRun(
  run: DryingRun,
  fresh: Food,
  p: {
    readonly kind?: DryKind;
    readonly scaleStep?: number;
    readonly freshMoisture?: number;
    readonly freshSd?: number;
  } = {},
): DriedRun {
  if (run.gramsAfter === undefined)
    throw new RangeError(`drying run ${run.id}: gramsAfter is missing; weigh the food when it is dry`);
  const food = p.freshMoisture === undefined ? fresh : measured(fresh, p.freshMoisture);
  const freshMoisture = food.composition.WATER;
  if (freshMoisture === undefined)
    throw new RangeError(
      `${fresh.name} (${fresh.ref}): composition.WATER is unknown; give the moisture of the fresh food, or dry a small sample till it loses no more weight`,
    );
  const actual = actualMoisture({
    before: run.gramsBefore,
    after: run.gramsAfter,
    freshMoisture,
    freshSd:
      p.freshMoisture === undefined
        ? (fresh.sd.WATER ?? spreadOf(freshMoisture, 'WATER', fresh.group))
        : (p.freshSd ?? 0),
    ...(p.scaleStep !== undefined && { scaleStep: p.scaleStep }),
  });
  const keep = dryEnough(actual, p.kind ?? run.kind ?? dryKindOf(fresh.group, fresh.name));
  return { ...actual, keep, figures: driedForm(food, actual.moisture) };
}

/** The fresh food at the moisture it was measured to have. */
function measured(fresh: Food, moisture: number): Food {
  if (fresh.composition.WATER === undefined)
    return { ...fresh, composition: { ...fresh.composition, WATER: moisture } };
  return { ...fresh, ...atMoisture(fresh, moisture) };
}

/** The lot that a finished run leaves in the cupboard. */
export function driedLot(
  run: DryingRun,
  p: {
    readonly id: string;
    readonly food: string;
    readonly name: string;
    readonly on: Day;
    readonly moisture: number;
  },
): Lot {
  if (run.gramsAfter === undefined)
    throw new RangeError(`drying run ${run.id}: gramsAfter is missing; weigh the food when it is dry`);
  return {
    id: p.id,
    food: p.food,
    name: p.name,
    grams: run.gramsAfter,
    form: 'dried',
    boughtOn: p.on,
    frozen: false,
    cold: [],
    driedIn: run.id,
    moisture: p.moisture,
  };
}

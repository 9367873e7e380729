/** How often the trays must be filled to dry some fresh grams. */

import { words } from '../../words/words.ts';
import { WHOLE } from '../tolerances.ts';
import {
  type Device,
  type DryingCaution,
  type DryingWay,
  type DryKind,
  dryingCautions,
  type TrayLoad,
  trayLoads,
  waysToDry,
} from './drying-practice.ts';
import { above0 } from './moisture.ts';

export interface Trays {
  readonly count: number;
  /** Area of one tray, dm2 (a tray of 40 x 30 cm has 12). */
  readonly dm2: number;
}

/** The runs that one tray load makes of some fresh grams. */
export interface TrayRuns {
  readonly load: TrayLoad;
  /** Most that fits on the trays at once, g. */
  readonly capacity: number;
  /** g of each run; the runs are alike, since a thinner layer dries faster. */
  readonly grams: readonly number[];
}

export interface DryingPlan {
  readonly kind: DryKind;
  readonly ways: readonly DryingWay[];
  /** By the loads known of: common practice, published, or the keeper's own alone. */
  readonly runs: readonly TrayRuns[];
  readonly cautions: readonly DryingCaution[];
}

/**
 * How often the trays must be filled.
 * @param p.grams fresh food ready to dry, g, above 0
 * @param p.gramsPerDm2 the keeper's own load, instead of those listed
 * @throws RangeError naming what is out of range
 */
export function planDrying(p: {
  readonly grams: number;
  readonly kind: DryKind;
  readonly device: Device;
  readonly trays: Trays;
  readonly gramsPerDm2?: number;
}): DryingPlan {
  const { grams, kind, device, trays } = p;
  above0(grams, 'grams');
  above0(trays.dm2, 'trays.dm2');
  if (!(Number.isInteger(trays.count) && trays.count > 0))
    throw new RangeError(`number of trays must be a whole number above 0, not ${trays.count}`);
  const loads: readonly TrayLoad[] =
    p.gramsPerDm2 === undefined
      ? trayLoads(kind)
      : [{ kind, known: 'own', gramsPerDm2: p.gramsPerDm2, source: words().kitchen.saidByKeeper }];
  return {
    kind,
    ways: waysToDry(kind, device),
    runs: loads.map((load) => {
      const capacity = above0(load.gramsPerDm2, 'gramsPerDm2') * trays.dm2 * trays.count;
      // A hair too much (a rounding in the last place) is no reason for another run.
      const count = Math.max(1, Math.ceil(grams / capacity - WHOLE));
      return { load, capacity, grams: Array.from({ length: count }, () => grams / count) };
    }),
    cautions: dryingCautions(device),
  };
}

/** Lots whose freeze treatment is still to come or goes on, and the steps of it that are due. */
import { leftOver } from '../../kitchen/cupboard/cupboard.ts';
import { tickedStep } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import type { Household } from '../model.ts';
import { keptOf } from './contents.ts';
import { cupboardFoods } from './lot-foods.ts';
import { coldState, waitsForCold } from './lot-state.ts';

/** Lots that still have to go through the cold, as much as is left of each; not those barred, empty or overruled. */
export function lotsForCold(house: Household, day: Day): Lot[] {
  const groups = new Map(cupboardFoods(house).map((f) => [f.id, f.group]));
  return leftOver(keptOf(house)).flatMap(({ lot, grams }) => {
    const begun = lot.cold.length > 0;
    if (lot.barred || grams === 0 || (lot.overruled && !begun)) return [];
    return waitsForCold(lot, day, groups.get(lot.food)) ? [{ ...lot, grams }] : [];
  });
}

/** Lots of which the open step has lasted long enough by `day`. */
export function dueInCold(house: Household, day: Day): Lot[] {
  const waiting = new Set(lotsForCold(house, day).map((l) => l.id));
  return house.lots.filter((lot) => waiting.has(lot.id) && coldState(lot, day).kind === 'due');
}

/** The lot with its open step ticked off. @throws RangeError as `ticked` */
export function tickedNext(lot: Lot, day: Day): Lot {
  return tickedStep(
    lot,
    lot.cold.findIndex((step) => step.doneOn === undefined),
    day,
  );
}

/** Lots whose freeze treatment is still to come or goes on, and the steps of it that are due. */
import { leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import { tickedStep } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { contentsOf } from './contents.ts';
import { groupsIn } from './lot-foods.ts';
import { awaitsTreatment, openStep } from './lot-state.ts';

/** Lots that still have to go through the treatment, as much as is left of each; not those barred, empty or overruled. */
export function lotsToFreeze(house: Household, day: Day): Lot[] {
  const groupOf = groupsIn(house);
  return leftOver(contentsOf(house)).flatMap(({ lot, grams }) => {
    const begun = lot.cold.length > 0;
    if (lot.barred || grams === 0 || (lot.overruled && !begun)) return [];
    return awaitsTreatment(lot, day, groupOf(lot.food)) ? [{ ...lot, grams }] : [];
  });
}

/** Lots of which the open step has lasted long enough by `day`, as they are kept. */
export function lotsToTick(house: Household, day: Day): Lot[] {
  const waiting = new Set(lotsToFreeze(house, day).map((l) => l.id));
  return house.lots.filter((lot) => {
    const step = openStep(lot);
    return waiting.has(lot.id) && step !== undefined && step.to <= day;
  });
}

/** The lot with its open step ticked off. @throws RangeError as `tickedStep` */
export function tickedNext(lot: Lot, day: Day): Lot {
  return tickedStep(
    lot,
    lot.cold.findIndex((step) => step.doneOn === undefined),
    day,
  );
}

/** The days of the freeze treatment that suit all lots of a household. */
import {
  type Freezer,
  type FreezerSchedule,
  planFreezer,
} from '../../../kitchen/freezing/freezer-schedule.ts';
import type { Day, FreezeStep, Lot } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { groupsIn } from './lot-foods.ts';
import { lotsToFreeze } from './lots-to-freeze.ts';

/** The dates that suit all those lots today, or the sentence that says why there are none. */
export function freezerDays(
  house: Household,
  freezer: Freezer,
  day: Day,
): { readonly plan: FreezerSchedule } | { readonly fault: string } {
  const groupOf = groupsIn(house);
  const { freeze, thaw } = house.kitchen[0]?.stepDays ?? {};
  try {
    return {
      plan: planFreezer(lotsToFreeze(house, day), freezer, {
        notBefore: day,
        ...(freeze !== undefined && { freezeDays: freeze }),
        ...(thaw !== undefined && { thawDays: thaw }),
        groupOf: (lot) => {
          const group = groupOf(lot.food);
          return group === 'pellet' ? undefined : group;
        },
      }),
    };
  } catch (error) {
    if (error instanceof RangeError) return { fault: error.message };
    throw error;
  }
}

/** Lots whose kept steps are not those of the plan, with the plan's. */
export function changedByPlan(house: Household, plan: FreezerSchedule): Lot[] {
  const steps = new Map(plan.lots.map((l) => [l.lot, l.steps]));
  return house.lots.flatMap((lot) => {
    const planned = steps.get(lot.id);
    return planned && !sameSteps(planned, lot.cold) ? [{ ...lot, cold: planned }] : [];
  });
}

function sameSteps(a: readonly FreezeStep[], b: readonly FreezeStep[]): boolean {
  return (
    a.length === b.length &&
    a.every((s, i) => {
      const other = b[i];
      return (
        s.kind === other?.kind && s.from === other.from && s.to === other.to && s.doneOn === other.doneOn
      );
    })
  );
}

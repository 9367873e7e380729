/** What a calendar has to say beside its steps: lots without days, steps overdue, foods that are ready. */
import type { KitchenPlan, PlannedStep } from '../../../kitchen/calendar/kitchen-plan.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';

/** Lots of the plan that wait for the freeze treatment and have no days in the freezer, by name. */
export function lotsWithoutDays(house: Household, plan: KitchenPlan): string[] {
  const ids = new Set(
    plan.steps.flatMap((s) =>
      s.kind === 'freeze' || s.kind === 'thaw' ? s.goods.flatMap((g) => g.lot ?? []) : [],
    ),
  );
  return house.lots.flatMap((l) => (ids.has(l.id) && l.cold.length === 0 ? [l.name] : []));
}

/** Steps of the freeze treatment that should be over and are not ticked off. */
export function overdueFreezeSteps(plan: KitchenPlan, today: Day): PlannedStep[] {
  return plan.steps.filter(
    (s) => s.state === 'begun' && (s.kind === 'freeze' || s.kind === 'thaw') && s.end <= today,
  );
}

/** Foods that only wait to be weighed out. */
export function readyFoods(plan: KitchenPlan): string[] {
  return plan.input.supplies.flatMap((supply) =>
    plan.steps.every((s) => s.supply !== supply.id || s.state === 'done')
      ? supply.goods.map((g) => g.name)
      : [],
  );
}

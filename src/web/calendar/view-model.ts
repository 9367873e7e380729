/** The picture and the list of the calendar: rows, days, and spans of time in words. */
import { capital } from '../../formulation/explain/sentences.ts';
import type { KitchenPlan, PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { STEP_WORDS } from '../../kitchen/calendar/step-words.ts';
import { dayInWords, dayNumber } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { named } from '../shared/words/named.ts';

export interface Row {
  readonly id: string;
  readonly title: string;
  readonly bars: readonly PlannedStep[];
}

/** Rows of the picture, each supply's steps in one, then what is done with all of them; not what is ready. */
export function rowsOf(plan: KitchenPlan): Row[] {
  const supplies = plan.input.supplies.flatMap((supply): Row[] => {
    const bars = plan.steps.filter((s) => s.supply === supply.id);
    if (bars.every((s) => s.state === 'done')) return [];
    return [{ id: supply.id, title: named(supply.goods.map((g) => g.name)), bars }];
  });
  const shared = plan.steps.filter((s) => s.supply === undefined);
  return [...supplies, ...shared.map((s) => ({ id: s.id, title: capital(STEP_WORDS[s.kind]), bars: [s] }))];
}

/** Whether a day lost with a step is a day lost for all: it has the least time to spare, or lies on the longest chain. */
export function isCritical(plan: KitchenPlan, step: PlannedStep): boolean {
  return step.critical || plan.criticalPath.includes(step.id);
}

/** The days that the picture spans, as numbers: from today or what goes on, to the end or the day by which it has to. */
export function spanOf(plan: KitchenPlan, today: Day): readonly [number, number] {
  const pending = plan.steps.filter((s) => s.state !== 'done');
  const first = Math.min(dayNumber(today), ...pending.map((s) => dayNumber(s.start)));
  const end = Math.max(dayNumber(plan.end), first + 7);
  const deadline = plan.deadline === undefined ? end : dayNumber(plan.deadline);
  // A day far behind the end would press all else together.
  return [first, Math.max(end, deadline <= end + (end - first) ? deadline : end) + 1];
}

const WEEKDAYS = ['Sunday', 'Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday'] as const;

/** "Saturday, 14 March". */
export function dayWithWeekday(day: Day, beside: Day): string {
  // 1 January 1970 was a Thursday.
  return `${WEEKDAYS[(((dayNumber(day) + 4) % 7) + 7) % 7]}, ${dayInWords(day, beside)}`;
}

/** "4 March to 8 March"; "on 4 March" for a step of no days. */
export function spanInWords({ start, end, days }: PlannedStep, beside: Day): string {
  return days === 0
    ? `on ${dayInWords(start, beside)}`
    : `${dayInWords(start, beside)} to ${dayInWords(end, beside)}`;
}

/** Steps that are not done by the day on which they begin. */
export function byDay(plan: KitchenPlan): { readonly day: Day; readonly steps: readonly PlannedStep[] }[] {
  const days = new Map<Day, PlannedStep[]>();
  for (const s of plan.steps) if (s.state !== 'done') days.set(s.start, [...(days.get(s.start) ?? []), s]);
  return [...days].sort(([a], [b]) => (a < b ? -1 : 1)).map(([day, steps]) => ({ day, steps }));
}

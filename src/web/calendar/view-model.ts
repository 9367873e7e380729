/** The picture and the list of the calendar: rows, days, and spans of time in words. */
import type { KitchenPlan, PlannedStep } from '../../kitchen/calendar/kitchen-plan.ts';
import { dayInWords, dayNumber } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { named } from '../shared/words/named.ts';

export interface Strand {
  readonly id: string;
  readonly title: string;
  readonly steps: readonly PlannedStep[];
}

/** Lines of the picture: goods that go the same way in one, and not what is ready; then the bowl, for all of them. */
export function strandsOf(plan: KitchenPlan): { readonly strands: readonly Strand[]; readonly bowl: Strand } {
  const strands = plan.input.supplies.flatMap((supply): Strand[] => {
    const steps = plan.steps.filter((s) => s.supply === supply.id);
    if (steps.every((s) => s.state === 'done')) return [];
    return [{ id: supply.id, title: named([...new Set(supply.goods.map((g) => g.name))]), steps }];
  });
  const shared = plan.steps.filter((s) => s.supply === undefined);
  return { strands, bowl: { id: 'bowl', title: words().calendar.picture.bowl, steps: shared } };
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

/** "Saturday, 14 March". */
export function dayWithWeekday(day: Day, beside: Day): string {
  const { calendar, figures } = words();
  return calendar.list.onDay(figures.weekday(day), dayInWords(day, beside));
}

/** "4 March to 8 March"; "on 4 March" for a step of no days. */
export function spanInWords({ start, end, days }: PlannedStep, beside: Day): string {
  const t = words().calendar.list;
  const from = dayInWords(start, beside);
  return days === 0 ? t.on(from) : t.span(from, dayInWords(end, beside));
}

/** Steps that are not done by the day on which they begin. */
export function byDay(plan: KitchenPlan): { readonly day: Day; readonly steps: readonly PlannedStep[] }[] {
  const days = new Map<Day, PlannedStep[]>();
  for (const s of plan.steps) if (s.state !== 'done') days.set(s.start, [...(days.get(s.start) ?? []), s]);
  return [...days].sort(([a], [b]) => (a < b ? -1 : 1)).map(([day, steps]) => ({ day, steps }));
}

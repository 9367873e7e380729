/** What else happened round a day: a change of weight can be read beside a change of food. */
import type { TrendPoint } from '../../../care/weight/model.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { LeftNight } from './left-nights.ts';
import type { LifeEvent, Lifeline } from './lifeline.ts';

export interface AroundDay {
  /** Smoothed weight at the beginning, on the day itself, and at the end, g; absent where nothing was weighed near it. */
  readonly weight?: { readonly before: number; readonly at: number; readonly after: number };
  /** Part that was left on the average of the nights before, and of those from the day on; absent where nobody weighed. */
  readonly left?: { readonly before: number; readonly after: number };
  /** Other events, by day. */
  readonly events: readonly LifeEvent[];
}

/**
 * @param day that is looked at @param days before and after it @param event that is looked at: it is no other
 */
export function aroundDay(
  life: Lifeline,
  trend: readonly TrendPoint[],
  p: { readonly day: Day; readonly days: number; readonly event?: string },
): AroundDay {
  const { day, days } = p;
  const [from, to] = [plusDays(day, -days), plusDays(day, days)];
  const weight = weightAround(trend, { from, day, to });
  const nights = life.left.filter((n) => n.on >= from && n.on <= to);
  const before = mean(nights.filter((n) => n.on < day));
  const after = mean(nights.filter((n) => n.on >= day));
  return {
    ...(weight && { weight }),
    ...(before !== undefined && after !== undefined && { left: { before, after } }),
    events: life.events.filter((e) => e.id !== p.event && e.on >= from && e.on <= to),
  };
}

function weightAround(
  trend: readonly TrendPoint[],
  { from, day, to }: { readonly from: Day; readonly day: Day; readonly to: Day },
): AroundDay['weight'] {
  const within = trend.filter((p) => p.day >= from && p.day <= to);
  const [first] = within;
  const last = within.at(-1);
  const at = within.find((p) => p.day === day);
  if (!first || !last || !at || first.day === last.day) return undefined;
  return { before: first.grams, at: at.grams, after: last.grams };
}

/** Of the nights of which it is known. */
function mean(nights: readonly LeftNight[]): number | undefined {
  const parts = nights.flatMap((n) => n.part ?? []);
  return parts.length === 0 ? undefined : parts.reduce((sum, part) => sum + part, 0) / parts.length;
}

/** Days from the day looked at; below 0 before it. */
export const daysFrom = (day: Day, event: LifeEvent) => daysBetween(day, event.on);

/** The stretch of days that a picture shows: a day, a month, a quarter, a year, moved back and forth. */
import { dayNumber, dayOf } from '../../../kitchen/days.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';

/** Days of each; a month and more are never shorter than the calendar's. */
const DAYS = { day: 1, month: 31, quarter: 92, year: 366 } as const;

export type Span = keyof typeof DAYS;

export interface TimeWindow {
  readonly span: Span;
  /** Both shown. */
  readonly first: Day;
  readonly last: Day;
}

/** The stretch that ends on a day. */
export function windowUntil(span: Span, last: Day): TimeWindow {
  return { span, first: dayOf(dayNumber(last) - DAYS[span] + 1), last };
}

/** The stretch with a day in its middle, as far as no more than today is shown. */
export function windowAround(span: Span, day: Day, today: Day): TimeWindow {
  const ahead = Math.floor(DAYS[span] / 2);
  const last = Math.min(dayNumber(day) + ahead, Math.max(dayNumber(today), dayNumber(day)));
  return windowUntil(span, dayOf(last));
}

/** The stretch before or after; never beyond today. @param by stretches, below 0 for earlier */
export function moved(window: TimeWindow, by: number, today: Day): TimeWindow {
  const last = dayNumber(window.last) + by * DAYS[window.span];
  return windowUntil(window.span, dayOf(Math.min(last, Math.max(dayNumber(today), dayNumber(window.last)))));
}

export function isIn({ first, last }: TimeWindow, day: Day): boolean {
  return day >= first && day <= last;
}

/** Whether the stretch, moved on, would show a later day. */
export const canGoOn = (window: TimeWindow, today: Day) => window.last < today;

/** Whether anything lies before it. @param start first day of which something is known */
export const canGoBack = (window: TimeWindow, start: Day | undefined) =>
  start !== undefined && start < window.first;

/** Where a moment lies: its day's number and the part of the day that is over, by the clock where the keeper is. */
export function placeOf(at: Moment, dayAt: (moment: Moment) => Day): number {
  const time = new Date(at);
  return dayNumber(dayAt(at)) + (time.getHours() + time.getMinutes() / 60) / 24;
}

export interface Tick {
  /** Day number, with the part of the day. */
  readonly at: number;
  /** What it says: a day, or an hour of the day. */
  readonly day?: Day;
  readonly hour?: number;
}

const HOURS = [0, 6, 12, 18];

/** Days, or hours of a single one, that the axis names. @param most how many names have room */
export function ticksOf({ span, first, last }: TimeWindow, most: number): readonly Tick[] {
  const from = dayNumber(first);
  if (span === 'day') return HOURS.map((hour) => ({ at: from + hour / 24, hour }));
  const days = Array.from({ length: dayNumber(last) - from + 1 }, (_, i) => dayOf(from + i));
  const firsts = days.filter((day) => day.endsWith('-01'));
  const named =
    span === 'month' ? days.filter((_, i) => i % Math.max(7, Math.ceil(days.length / most)) === 0) : firsts;
  const every = Math.max(1, Math.ceil(named.length / most));
  return named.filter((_, i) => i % every === 0).map((day) => ({ at: dayNumber(day), day }));
}

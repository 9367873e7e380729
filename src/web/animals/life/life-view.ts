/** What the picture of a life shows of a stretch of time: spans in rows, nights in bars, and days in words. */
import type { WeightPoint, WeightStory } from '../../../care/weight/model.ts';
import type { LeftNight } from '../../../household/reckon/care/left-nights.ts';
import type { LifeEvent, Lifeline, LifeSpan } from '../../../household/reckon/care/lifeline.ts';
import { dayNumber, dayOf } from '../../../kitchen/days.ts';
import { groupedBy } from '../../../kitchen/grouped-by.ts';
import type { Day } from '../../../kitchen/model.ts';
import { isIn, type TimeWindow } from '../timeline/time-window.ts';

const WEEK = 7;

/** A span as far as it is in sight. */
export interface ShownSpan {
  readonly span: LifeSpan;
  /** Day numbers; `end` is the end of the last day. */
  readonly start: number;
  readonly end: number;
  /** It goes on beyond the stretch, or has no end yet. */
  readonly open: boolean;
  /** From the top. */
  readonly row: number;
}

/** Spans of a lane that are in sight, each in the first row that is free: what overlaps lies below. */
export function spansIn(
  life: Lifeline,
  lane: LifeSpan['lane'],
  window: TimeWindow,
  today: Day,
): readonly ShownSpan[] {
  const [first, last] = [dayNumber(window.first), dayNumber(window.last)];
  /** Where each row is free again. */
  const free: number[] = [];
  return life.spans.flatMap((span) => {
    if (span.lane !== lane || span.from > window.last) return [];
    const to = span.to === undefined ? Math.max(dayNumber(today), dayNumber(span.from)) : dayNumber(span.to);
    const [start, end] = [Math.max(dayNumber(span.from), first), Math.min(to, last) + 1];
    if (end <= start) return [];
    const found = free.findIndex((at) => at <= start);
    const row = found < 0 ? free.length : found;
    free[row] = end;
    return [{ span, start, end, open: span.to === undefined || to > last, row }];
  });
}

/** Rows that the spans of a lane take. */
export function rowsOf(spans: readonly ShownSpan[]): number {
  return spans.reduce((most, s) => Math.max(most, s.row + 1), 0);
}

export function eventsIn(life: Lifeline, window: TimeWindow): readonly LifeEvent[] {
  return life.events.filter((e) => isIn(window, e.on));
}

/** What was left in a night, or on the average of a week's. */
export interface LeftBar {
  /** Day numbers. */
  readonly start: number;
  readonly end: number;
  /** 0 to 1 of what was offered. */
  readonly part: number;
  /** More may lie in hoards. */
  readonly atLeast: boolean;
}

/** Nights of which it is known; weeks in a year. */
export function leftBars(nights: readonly LeftNight[], window: TimeWindow): readonly LeftBar[] {
  const known = nights.flatMap(({ on, part, atLeast }) =>
    part === undefined || !isIn(window, on) ? [] : [{ at: dayNumber(on), part, atLeast }],
  );
  if (window.span !== 'year') return known.map(({ at, ...night }) => ({ start: at, end: at + 1, ...night }));
  const first = dayNumber(window.first);
  const weeks = new Map<number, (typeof known)[number][]>();
  for (const night of known) {
    const week = Math.floor((night.at - first) / WEEK);
    weeks.set(week, [...(weeks.get(week) ?? []), night]);
  }
  return [...weeks].map(([week, of]) => ({
    start: first + week * WEEK,
    end: Math.min(first + (week + 1) * WEEK, dayNumber(window.last) + 1),
    part: of.reduce((sum, n) => sum + n.part, 0) / of.length,
    atLeast: of.some((n) => n.atLeast),
  }));
}

/** A day on which something happened. */
export interface DayOfLife {
  readonly day: Day;
  readonly events: readonly LifeEvent[];
  readonly weighings: readonly WeightPoint[];
  readonly left?: LeftNight;
}

/** The newest first; of a year the events alone. */
export function daysIn(life: Lifeline, story: WeightStory, window: TimeWindow): readonly DayOfLife[] {
  const events = groupedBy(life.events, (e) => e.on);
  const each = window.span !== 'year';
  const weighings = groupedBy(each ? story.points : [], (p) => p.day);
  const left = new Map(each ? life.left.map((n) => [n.on, n] as const) : []);
  const [first, last] = [dayNumber(window.first), dayNumber(window.last)];
  return Array.from({ length: last - first + 1 }, (_, i) => dayOf(last - i)).flatMap((day) => {
    const one = {
      day,
      events: events.get(day) ?? [],
      weighings: weighings.get(day) ?? [],
      left: left.get(day),
    };
    return one.events.length + one.weighings.length > 0 || one.left ? [one] : [];
  });
}

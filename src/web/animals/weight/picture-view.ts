/** What the picture of weights shows: marks by day or by week, and how far its scale reaches. */
import type { TrendPoint, WeightPoint, WeightStory } from '../../../care/weight/model.ts';
import { dayNumber, dayOf } from '../../../kitchen/days.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';
import { placeOf, type TimeWindow } from '../timeline/time-window.ts';

const WEEK = 7;
/** The scale reaches at least so far above and below, as a part of the weight: else ups and downs of a gram look wild. */
const LEAST_REACH = 0.05;
/** Room left above and below, as a part of what the scale spans. */
const ROOM = 0.12;

/** One weighing, or those of a week that count. */
export interface Mark {
  readonly id: string;
  /** The day, or the first of the week. */
  readonly day: Day;
  /** Where it lies in time: day number. */
  readonly at: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
  readonly unlikely: boolean;
  /** Of the same day, or of the middle of the week. */
  readonly trend?: TrendPoint;
}

/** By time; a year's weighings by the week, since single ones would lie on each other. */
export function marksOf(
  story: WeightStory,
  window: TimeWindow,
  dayAt: (moment: Moment) => Day,
): readonly Mark[] {
  const trends = new Map(story.trend.map((p) => [p.day, p]));
  const within = story.points.filter((p) => p.day >= window.first && p.day <= window.last);
  const single = (p: WeightPoint): Mark => ({
    id: p.id,
    day: p.day,
    at: placeOf(p.at, dayAt),
    low: p.grams,
    high: p.grams,
    count: 1,
    unlikely: p.unlikely,
    trend: trends.get(p.day),
  });
  if (window.span !== 'year') return within.map(single);
  const from = dayNumber(window.first);
  const weeks = new Map<number, WeightPoint[]>();
  for (const p of within) {
    if (p.unlikely) continue;
    const week = Math.floor((dayNumber(p.day) - from) / WEEK);
    const points = weeks.get(week);
    if (points) points.push(p);
    else weeks.set(week, [p]);
  }
  const marks = [...weeks].map(([week, points]): Mark => {
    const first = from + week * WEEK;
    const grams = points.map((p) => p.grams);
    const middle = points[Math.floor(points.length / 2)];
    return {
      id: dayOf(first),
      day: dayOf(first),
      at: first + WEEK / 2,
      low: Math.min(...grams),
      high: Math.max(...grams),
      count: points.length,
      unlikely: false,
      trend: middle && trends.get(middle.day),
    };
  });
  return [...marks, ...within.filter((p) => p.unlikely).map(single)].sort((a, b) => a.at - b.at);
}

/** g from the foot to the top of the picture; undefined where nothing in it counts. */
export function scaleOf(
  marks: readonly Mark[],
  trend: readonly TrendPoint[],
  { first, last }: TimeWindow,
): readonly [number, number] | undefined {
  const band = trend.filter((p) => p.day >= first && p.day <= last);
  const counted = marks.filter((m) => !m.unlikely);
  const all = [
    ...counted.flatMap((m) => [m.low, m.high]),
    ...band.flatMap((p) => [p.low, p.high]),
    // What is doubtful shows at the edge, unless there is nothing else.
    ...(counted.length === 0 && band.length === 0 ? marks.map((m) => m.low) : []),
  ];
  if (all.length === 0) return undefined;
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const middle = (low + high) / 2;
  const reach = Math.max((high - low) * (0.5 + ROOM), middle * LEAST_REACH);
  return [middle - reach, middle + reach];
}

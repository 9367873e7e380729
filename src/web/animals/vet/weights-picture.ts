/** Geometry of the small picture of weights: dots, the smoothed line between its ends, and days on which the food changed. */
import { scaleLinear } from 'd3-scale';
import type { VetPage } from '../../../household/reckon/care/vet-page.ts';
import { dayNumber, dayOf, daysBetween } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';

export const WIDTH = 640;
export const HEIGHT = 150;
const LEFT = 44;
const RIGHT = 8;
const TOP = 8;
const BOTTOM = 22;

interface Mark {
  readonly at: number;
  readonly key: string;
}

export interface WeightsPicture {
  readonly dots: readonly { readonly x: number; readonly y: number; readonly key: string }[];
  /** SVG paths; empty where there are too few weighings. */
  readonly trend: string;
  readonly band: string;
  /** Upright lines where a batch or food was new. */
  readonly changes: readonly Mark[];
  readonly grams: readonly { readonly y: number; readonly grams: number }[];
  readonly days: readonly { readonly x: number; readonly day: Day }[];
  readonly lowest: number;
  readonly highest: number;
  readonly base: number;
  readonly left: number;
}

/** Of the days that the page looks back; undefined where it was not weighed on any of them. */
export function weightsPicture({ weights, changes, from, today }: VetPage): WeightsPicture | undefined {
  const points = weights.story.points.filter((p) => p.day >= from && !p.unlikely);
  if (points.length === 0) return undefined;
  const trend = weights.story.trend.filter((p) => p.day >= from);
  const all = [...points.map((p) => p.grams), ...trend.flatMap((p) => [p.low, p.high])];
  const lowest = Math.min(...points.map((p) => p.grams));
  const highest = Math.max(...points.map((p) => p.grams));
  const x = scaleLinear()
    .domain([0, Math.max(1, daysBetween(from, today))])
    .range([LEFT, WIDTH - RIGHT]);
  const y = scaleLinear()
    .domain(spread(Math.min(...all), Math.max(...all)))
    .nice(4)
    .range([HEIGHT - BOTTOM, TOP]);
  const at = (day: Day) => round(x(daysBetween(from, day)));
  const line = (ends: readonly (readonly [number, number])[]) =>
    ends.map(([px, py], i) => `${i === 0 ? 'M' : 'L'}${px} ${py}`).join('');
  const ends = (of: 'grams' | 'low' | 'high') => trend.map((p) => [at(p.day), round(y(p[of]))] as const);
  return {
    dots: points.map((p) => ({ x: at(p.day), y: round(y(p.grams)), key: p.id })),
    trend: trend.length > 1 ? line(ends('grams')) : '',
    band: trend.length > 1 ? `${line([...ends('high'), ...ends('low').reverse()])}Z` : '',
    changes: [
      ...new Set(
        changes.shown.flatMap((c) =>
          c.kind === 'batch' || c.kind === 'beside' || c.kind === 'pack' ? [c.on] : [],
        ),
      ),
    ].map((on) => ({ at: at(on), key: on })),
    grams: y.ticks(4).map((grams) => ({ y: round(y(grams)), grams })),
    days: firstsOfMonths(from, today).map((day) => ({ x: at(day), day })),
    lowest,
    highest,
    base: HEIGHT - BOTTOM,
    left: LEFT,
  };
}

/** Some room around the weights: a picture of a steady weight is a flat line, not a saw. */
function spread(low: number, high: number): [number, number] {
  const room = Math.max(0.05 * high - (high - low) / 2, 0.01 * high);
  return [low - room, high + room];
}

function firstsOfMonths(from: Day, to: Day): Day[] {
  const days: Day[] = [];
  for (let n = dayNumber(from); n <= dayNumber(to); n++) {
    const day = dayOf(n);
    if (day.endsWith('-01') || day.endsWith('-15')) days.push(day);
  }
  return days;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}

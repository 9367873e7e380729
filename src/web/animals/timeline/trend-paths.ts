/** The line of the trend and the band round it, as paths of a picture. */
import type { TrendPoint } from '../../../care/weight/model.ts';
import { dayNumber } from '../../../kitchen/days.ts';
import type { TimeWindow } from './time-window.ts';

/** Of each day the middle. */
const NOON = 0.5;

/**
 * Of the days shown and one more on each side, so that the line goes on to the edge.
 * @param x,y pixels of a place in time (day number) and of a weight (g)
 */
export function trendPaths(
  trend: readonly TrendPoint[],
  window: TimeWindow,
  x: (at: number) => number,
  y: (grams: number) => number,
): { readonly line: string; readonly band: string } {
  const [from, to] = [dayNumber(window.first) - 1, dayNumber(window.last) + 1];
  const points = trend.map((p) => ({ ...p, at: dayNumber(p.day) })).filter((p) => p.at >= from && p.at <= to);
  const at = (place: number, grams: number) => `${px(x(place + NOON))} ${px(y(grams))}`;
  const [first] = points;
  const last = points.at(-1);
  if (!first || !last) return { line: '', band: '' };
  if (first === last) {
    // A single day is a short stroke, or there would be nothing to see.
    const [left, right] = [px(x(first.at)), px(x(first.at + 1))];
    const edge = (grams: number) => px(y(grams));
    return {
      line: `M${left} ${edge(first.grams)}H${right}`,
      band: `M${left} ${edge(first.high)}H${right}V${edge(first.low)}H${left}Z`,
    };
  }
  const along = (grams: (p: TrendPoint) => number) => points.map((p) => at(p.at, grams(p))).join('L');
  const back = [...points].reverse().map((p) => at(p.at, p.low));
  return { line: `M${along((p) => p.grams)}`, band: `M${along((p) => p.high)}L${back.join('L')}Z` };
}

const px = (value: number) => Math.round(value * 10) / 10;

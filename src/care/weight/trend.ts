/**
 * The course of the weight for the picture: a straight line through the neighbours of each day, near ones counting for
 * more and those far off the line for less (Cleveland 1979, J. Am. Stat. Assoc. 74:829-836). Its band says where the
 * animal's level is in 19 of 20 cases; between weighings that are far apart it is wider.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */
import { ALIKE, median, type Reading, readingSd } from './level/reading.ts';

/** Neighbours: so many days to either side, or as many as hold so many readings. */
const DAYS = 9;
const LEAST = 5;
const RIDGE = 25;
const BISQUARE = 6;
const IN_19_OF_20 = 1.96;
/** How far the level wanders in a day that nobody weighed, standard deviation. */
const WANDER = 0.004;

export interface TrendDay {
  readonly day: number;
  readonly y: number;
  /** Half the width of the band. */
  readonly within: number;
}

/** @param readings one a day, by time; a day each comes back, from the first to the last */
export function trendOf(readings: readonly Reading[]): TrendDay[] {
  const [first, last] = [readings[0], readings.at(-1)];
  if (!first || !last) return [];
  const even = readings.map(() => 1);
  const rough = readings.map((r, i) => Math.abs(r.y - local(readings, even, r.day, i).y));
  const scale = Math.max(median(rough) * BISQUARE, 0.01);
  const trust = rough.map((off) => Math.max(0.01, 1 - Math.min(1, off / scale) ** 2) ** 2);
  const sd = scatter(rough, readings);
  const days: TrendDay[] = [];
  let near = 0;
  for (let day = first.day; day <= last.day; day++) {
    while (near + 1 < readings.length && distance(readings, near + 1, day) <= distance(readings, near, day))
      near++;
    const { y, leverage } = local(readings, trust, day, near);
    const unseen = Math.max(0, distance(readings, near, day) - 1);
    const within = IN_19_OF_20 * Math.sqrt(sd ** 2 * Math.min(1, ALIKE * leverage) + WANDER ** 2 * unseen);
    days.push({ day, y, within });
  }
  return days;
}

function distance(readings: readonly Reading[], i: number, day: number): number {
  const r = i < 0 ? undefined : readings[i];
  return r ? Math.abs(r.day - day) : Number.POSITIVE_INFINITY;
}

/** Root mean square of the differences, each cut where a normal one hardly goes; no less than most of what is usual. */
function scatter(rough: readonly number[], readings: readonly Reading[]): number {
  const usual = readingSd(readings.reduce((sum, { y }) => sum + y, 0) / readings.length);
  const cut = 3 * usual;
  const squares = rough.reduce((sum, off) => sum + Math.min(off, cut) ** 2, 0);
  // As many readings of the usual scatter as a line has neighbours stand for what few readings cannot tell.
  return Math.max(0.7 * usual, Math.sqrt((squares + LEAST * usual ** 2) / (readings.length + LEAST)));
}

/** @param near the place of a reading next to the day */
function local(
  readings: readonly Reading[],
  trust: readonly number[],
  day: number,
  near: number,
): { y: number; leverage: number } {
  let from = near;
  let to = near;
  let reach = distance(readings, near, day);
  let before = distance(readings, from - 1, day);
  let after = distance(readings, to + 1, day);
  for (;;) {
    const next = Math.min(before, after);
    if (next === Number.POSITIVE_INFINITY || (next > DAYS && to - from + 1 >= LEAST)) break;
    reach = next;
    if (before <= after) before = distance(readings, --from - 1, day);
    else after = distance(readings, ++to + 1, day);
  }
  const width = Math.max(DAYS, reach) + 1;
  let w0 = 0;
  let w1 = 0;
  // A little ridge, so that two readings of neighbouring days do not point far away.
  let w2 = RIDGE;
  let v0 = 0;
  let v1 = 0;
  for (let i = from; i <= to; i++) {
    const r = readings[i];
    if (!r) continue;
    const x = r.day - day;
    const u = Math.abs(x / width);
    const falls = 1 - u * u * u;
    const w = falls * falls * falls * (trust[i] ?? 1);
    w0 += w;
    w1 += w * x;
    w2 += w * x * x;
    v0 += w * r.y;
    v1 += w * x * r.y;
  }
  const det = w0 * w2 - w1 * w1;
  return { y: (w2 * v0 - w1 * v1) / det, leverage: w2 / det };
}

/**
 * The animal's weight, followed from weighing to weighing: what is known on each day from the readings up to it, and which
 * alerts stand. Nothing of a later day bears on an earlier one.
 */

import { ALERT_RULES, type Alarm, type Sight } from './alarms.ts';
import type { Circumstances } from './circumstances.ts';
import { median, type Reading, readingSd } from './level/reading.ts';
import { robustLine } from './level/robust-line.ts';
import { Sums } from './sums.ts';

/** The base rests on readings at least so many days back, so that a fall does not hide itself in it. */
const BASE_LAG = 10;
/** A change that lasts so many days becomes the base. */
const ACCEPTED_AFTER = 42;
const BASE_MEMORY = 25;
const BASE_READINGS = 120;
const BASE_SLOPE_SD = 0.0015;
/** Without young, season or pregnancy a healthy weight falls no steeper than this, a day: some 11 % in half a year. */
const AGEING_SLOPE = 0.0006;
/** The steepest that the season takes, a day; and what it takes at the least of an animal that has just begun. */
const SEASON_STEEPEST = 0.0055;
const SEASON_USUAL = 0.002;
const SEASON_LEAST = 0.0005;
const SEASON_ROOM = 0.01;
const SEASON_LAG = 16;
/** The level of now: the median of the readings of so many days, or of the last few where they are sparse. */
const NOW_DAYS = 6;
const NOW_LEAST = 2;
const NOW_MOST = 5;
const STEADY_DAYS = 10;
const STEADY_LEAST = 3;
const SCATTER_MEMORY = 40;

export interface Standing extends Alarm {
  /** Day number on which it was found. */
  readonly on: number;
}
export interface Ended extends Standing {
  readonly until: number;
}

/** @param days one reading a day, by time, of those that count */
export function follow(
  days: readonly Reading[],
  about: { circumstances: Circumstances; usualGrams?: number; adultLow?: number; adultHigh?: number },
): { standing: Standing[]; ended: Ended[] } {
  const { circumstances: c } = about;
  const sums = new Sums();
  const standing = new Map<string, Standing>();
  const ended: Ended[] = [];
  /** The readings outside pregnancies, on which the base rests; and the steady level at each. */
  const plain: Reading[] = [];
  const steady: { day: number; y: number }[] = [];
  let squares = 1;

  days.forEach((r, i) => {
    const carries = c.carries(r.day);
    const sd = readingSd(r.y) * Math.sqrt(Math.max(0.6, squares));
    const base = plain.length < 3 ? undefined : baseOf(plain, r.day, sums.since, sd, c);
    if (base) {
      const unit = Math.hypot(sd, base.error);
      const off = (r.y - base.low) / unit;
      sums.take({ day: r.day, below: off, above: (r.y - base.high) / unit });
      if (!sums.away) squares += (Math.min(2.5, Math.abs(off)) ** 2 - squares) / SCATTER_MEMORY;
    }
    if (!carries) {
      plain.push(r);
      const lately = lastOf(plain, r.day, STEADY_DAYS, STEADY_LEAST, 99);
      if (lately.length >= STEADY_LEAST) steady.push({ day: r.day, y: median(lately.map(({ y }) => y)) });
    }
    const sight: Sight = {
      ...about,
      day: r.day,
      sd,
      readings: days,
      place: i,
      now: median(
        lastOf(days.slice(Math.max(0, i - 12), i + 1), r.day, NOW_DAYS, NOW_LEAST, NOW_MOST).map(
          ({ y }) => y,
        ),
      ),
      base,
      sums,
      steady,
      carries,
    };
    for (const [name, rule] of Object.entries(ALERT_RULES)) {
      const before = standing.get(name);
      const alarm = rule(sight, before);
      if (alarm)
        standing.set(name, { ...alarm, since: before?.since ?? alarm.since, on: before?.on ?? r.day });
      else if (before) {
        standing.delete(name);
        ended.push({ ...before, until: r.day });
      }
    }
  });
  return { standing: [...standing.values()], ended };
}

/** Where the weight ought to be on a day, from readings before. `low` is the least that is expected, `high` the most. */
export interface Base {
  readonly low: number;
  readonly high: number;
  /** The level at the last of the readings it rests on, and their day. */
  readonly level: number;
  readonly day: number;
  readonly error: number;
}

function baseOf(
  plain: readonly Reading[],
  day: number,
  away: number | undefined,
  sd: number,
  c: Circumstances,
): Base | undefined {
  const inSeason = c.fallingDays(day - SEASON_LAG, day) > 0;
  const cut = inSeason
    ? day - SEASON_LAG
    : Math.min(day - BASE_LAG, Math.max(away ?? Number.POSITIVE_INFINITY, day - ACCEPTED_AFTER));
  let to = plain.length;
  while (to > 0 && (plain[to - 1]?.day ?? 0) >= cut) to--;
  // A short record has nothing older: its first readings are the base.
  if (to < 3) to = Math.min(plain.length, 3);
  const from = Math.max(0, to - BASE_READINGS);
  const last = plain[to - 1]?.day ?? day;
  const line = robustLine(plain, { from, to, day: last, memory: BASE_MEMORY, slopeSd: BASE_SLOPE_SD, sd });
  let top = Number.NEGATIVE_INFINITY;
  for (let j = Math.max(from, to - 12); j < to; j++) top = Math.max(top, plain[j]?.y ?? top);
  const level = Math.min(line.level, top);
  const elapsed = Math.max(0, day - last);
  const falling = c.fallingDays(last, day);
  const ownFall = Math.max(0, -line.slope);
  const begun = c.beginningDays(last, day);
  const season =
    begun * Math.min(SEASON_STEEPEST, Math.max(SEASON_USUAL, ownFall)) +
    (falling - begun) * Math.min(SEASON_STEEPEST, Math.max(SEASON_LEAST, ownFall)) +
    (inSeason ? SEASON_ROOM : 0);
  const ageing = (elapsed - falling) * Math.min(AGEING_SLOPE, ownFall);
  return {
    low: level - season - ageing,
    high: line.level + Math.max(0, line.slope) * Math.min(elapsed, 28),
    level,
    day: last,
    error: line.error,
  };
}

/** The readings of the last days, but never fewer than `least` or more than `most`. */
function lastOf(
  readings: readonly Reading[],
  day: number,
  within: number,
  least: number,
  most: number,
): readonly Reading[] {
  let from = readings.length;
  while (
    from > 0 &&
    readings.length - from < most &&
    (readings.length - from < least || (readings[from - 1]?.day ?? 0) > day - within)
  )
    from--;
  return readings.slice(from);
}

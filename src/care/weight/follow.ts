/**
 * The animal's weight, followed from weighing to weighing: what is known on each day from the readings up to it, and which
 * alerts stand. Nothing of a later day bears on an earlier one.
 */

import type { SpeciesKind } from '../animal/species.ts';
import { ALERT_RULES, type Alarm, type Sight } from './alarms.ts';
import { baseOf, type Level } from './base.ts';
import type { Circumstances } from './circumstances.ts';
import { median, type Reading, readingSd } from './level/reading.ts';
import { Sums } from './sums.ts';

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
  about: {
    species: SpeciesKind;
    circumstances: Circumstances;
    usualGrams?: number;
    adultLow?: number;
    adultHigh?: number;
  },
): { standing: Standing[]; ended: Ended[]; steady: readonly Level[] } {
  const { circumstances: c } = about;
  const sums = new Sums();
  const standing = new Map<string, Standing>();
  const ended: Ended[] = [];
  /** The readings outside pregnancies, on which the base rests; and the steady level at each. */
  const plain: Reading[] = [];
  const steady: Level[] = [];
  let squares = 1;

  days.forEach((r, i) => {
    const carries = c.carries(r.day);
    const sd = readingSd(r.y) * Math.sqrt(Math.max(0.6, squares));
    const base = baseOf({ plain, day: r.day, away: sums.since, sd, circumstances: c, steady });
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
  return { standing: [...standing.values()], ended, steady };
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

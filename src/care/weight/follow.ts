/**
 * The animal's weight, followed from weighing to weighing: what is known on each day from the readings up to it, and which
 * alerts stand. Nothing of a later day bears on an earlier one.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */

import type { SpeciesKind } from '../animal/species.ts';
import { ALERT_RULES, type Alarm, type Sight } from './alarms.ts';
import { baseOf, type Level } from './base.ts';
import type { Circumstances } from './circumstances.ts';
import { median, type Reading, readingSd } from './level/reading.ts';
import { ownFall } from './own-fall.ts';
import { Sums } from './sums.ts';

/** The level of now: the median of the readings of so many days, or of the last few where they are sparse. */
const NOW = { days: 6, least: 2, most: 5 };
/** The level for comparing with weeks ago. */
const STEADY = { days: 10, least: 3, most: 10 };
/** The scatter of this animal's readings is learned over so many, each cut at so many standard deviations. */
const SCATTER_MEMORY = 40;
const SCATTER_CUT = 2.5;
const SCATTER_MOST = 6;
/** A scatter so much above the usual one asks for more of a shift. */
const RESTLESS = 1.15;
const RESTLESS_MOST = 1.6;

const RULES = Object.entries(ALERT_RULES);

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
  const { species, circumstances: c, usualGrams, adultLow, adultHigh } = about;
  const sums = new Sums();
  const standing = new Map<string, Standing>();
  const ended: Ended[] = [];
  /** The readings outside pregnancies, on which the base rests; and the steady level at each. */
  const plain: Reading[] = [];
  const steady: Level[] = [];
  let squares = 1;

  days.forEach((r, i) => {
    const carries = c.carries(r.day);
    const usual = readingSd(r.y);
    const sd = usual * Math.sqrt(Math.max(0.6, squares));
    const base = baseOf({ plain, day: r.day, away: sums.since, sd, circumstances: c, steady });
    if (base) {
      const unit = Math.hypot(sd, base.error);
      const off = (r.y - base.low) / unit;
      sums.take({ day: r.day, below: off, above: (r.y - base.high) / unit });
      if (!sums.away) {
        const cut = SCATTER_CUT * Math.sqrt(squares);
        const seen = Math.min(cut, Math.abs(r.y - base.low) / Math.hypot(usual, base.error)) ** 2;
        squares = Math.min(SCATTER_MOST, squares + (seen - squares) / SCATTER_MEMORY);
      }
    }
    if (!carries) {
      plain.push(r);
      const { y, of } = lately(plain, plain.length - 1, STEADY);
      if (of >= STEADY.least) steady.push({ day: r.day, y });
    }
    const sight: Sight = {
      species,
      circumstances: c,
      usualGrams,
      adultLow,
      adultHigh,
      day: r.day,
      restless: Math.max(1, Math.min(RESTLESS_MOST, sd / usual / RESTLESS)),
      readings: days,
      place: i,
      now: lately(days, i, NOW).y,
      base,
      own: carries ? undefined : ownFall({ plain, day: r.day, sd, circumstances: c }),
      sums,
      steady,
      carries,
    };
    for (const [name, rule] of RULES) {
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

/** Middle of the readings of the last days up to a place, but of never fewer than `least` or more than `most`. */
function lately(
  readings: readonly Reading[],
  place: number,
  { days, least, most }: { days: number; least: number; most: number },
): { y: number; of: number } {
  const since = (readings[place]?.day ?? 0) - days;
  const ys: number[] = [];
  for (let i = place; i >= 0 && ys.length < most; i--) {
    const r = readings[i];
    if (!r || (ys.length >= least && r.day <= since)) break;
    ys.push(r.y);
  }
  return { y: median(ys), of: ys.length };
}

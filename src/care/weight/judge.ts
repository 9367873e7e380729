/**
 * Which weighings are unlikely: so far from where the readings before it point to that somebody should look again. Such a
 * one counts for nothing until the keeper says that it is right, or until the next ones bear it out: a true rapid loss is
 * believed at its second weighing.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */
import type { SpeciesKind } from '../animal/species.ts';
import { ADULT_WEIGHTS } from '../figures/adult-weights.ts';
import type { Circumstances } from './circumstances.ts';
import { DAY_SD, type Reading, ROUNDING_GRAMS, readingSd } from './level/reading.ts';
import { robustLine } from './level/robust-line.ts';

/** Limits of what is likely, in standard deviations: a healthy animal's reading is asked about once in some 2,000. */
const WIDTH = 3.5;
/** How far a healthy level wanders in a day, standard deviation. */
const WANDER = 0.005;
/** How much more than that a young one may gain, one that carries, one that has given birth lose, one in autumn; from memory. */
const GROWTH_A_DAY = 0.08;
const YOUNG_STEEPEST = 0.08;
const YOUNG_SLOPE_SD = 0.03;
const GROWTH_MOST = 0.9;
const CARRYING_A_DAY = 0.05;
const CARRYING_MOST = 0.5;
const BIRTH = 0.4;
const SEASON_A_DAY = 0.004;
/** A course goes on for some days as it went, but is not taken to be steeper than this. */
const STEEPEST_LINE = 0.015;
const SLOPE_SD = 0.003;
const SLOPE_DAYS = 7;
/** g that rounding to the gram may hide. */
const HALF_STEP = 0.5;
const MEMORY = 6;
/** Readings that are as unlikely bear it out within so many days. */
const BORNE_OUT_WITHIN = 21;
/** A figure half as much again, or less than half, takes two others to bear it out: a slip may be made twice. */
const ABSURD = { gain: Math.log(1.5), loss: Math.log(2) };
/** What the scale of errors is worth before any: so many readings of the usual scatter. */
const PRIOR_READINGS = 8;
/** Of the squares of normal errors, the part that is left when each is cut at 2 standard deviations. */
const CUT = 2;
const LEFT_OF_CUT = 0.92;

/** Of a grown animal's least weight, what one just born weighs at the least. */
const YOUNG_PART = 60;

interface Expected {
  readonly y: number;
  /** Standard deviation of a reading of the usual scatter around it. */
  readonly sd: number;
  readonly low: number;
  readonly high: number;
}

export interface Judgement {
  /** Of each reading, in order. */
  readonly unlikely: readonly boolean[];
  /** Between which logarithms of g a reading of a day is likely; undefined where nothing is known. */
  likely(day: number): { readonly low: number; readonly high: number } | undefined;
  /** The readings that count. */
  readonly counted: readonly Reading[];
}

/** @param readings by time */
export function judge(
  readings: readonly Reading[],
  about: { species: SpeciesKind; usualGrams?: number; circumstances: Circumstances },
): Judgement {
  const unlikely = readings.map(() => false);
  const counted: Reading[] = [];
  /** Places of those that count, and of those that wait to be borne out. */
  const places: number[] = [];
  let waiting: number[] = [];
  let squares = PRIOR_READINGS;
  let errors = PRIOR_READINGS;

  const expected = (day: number): Expected | undefined => {
    const last = counted.at(-1);
    if (last === undefined) return firstExpected(about, day);
    const scatter = Math.sqrt(squares / errors);
    const sd = readingSd(last.y);
    const { circumstances: c } = about;
    const young = c.young(day);
    const line = robustLine(counted, {
      to: counted.length,
      least: 2,
      day: last.day,
      memory: MEMORY,
      slopeSd: young ? YOUNG_SLOPE_SD : SLOPE_SD,
      sd,
    });
    const gap = Math.max(0, day - last.day);
    const slope = Math.max(-STEEPEST_LINE, Math.min(young ? YOUNG_STEEPEST : STEEPEST_LINE, line.slope));
    const y = line.level + slope * Math.min(gap, SLOPE_DAYS);
    const around = Math.sqrt(DAY_SD ** 2 + line.error ** 2 + WANDER ** 2 * gap);
    const step = HALF_STEP / Math.exp(y);
    const growth = young ? Math.min(GROWTH_A_DAY * gap, GROWTH_MOST) : 0;
    const carrying = c.carries(day) ? Math.min(CARRYING_A_DAY * Math.max(gap, 2), CARRYING_MOST) : 0;
    const birth = c.carries(day) || c.afterBirth(day) ? BIRTH : 0;
    const season = SEASON_A_DAY * c.fallingDays(last.day, day);
    return {
      y,
      sd: Math.hypot(around, ROUNDING_GRAMS / Math.exp(y)),
      low: y - WIDTH * scatter * around - step - birth - season,
      high: y + WIDTH * scatter * around + step + growth + carrying,
    };
  };
  const count = (place: number, reading: Reading) => {
    counted.push(reading);
    places.push(place);
  };

  /** Where the readings that agree are as likely without the last that counted, that one was the slip. */
  const takeBackSlip = (agreeing: readonly number[]) => {
    const last = counted.at(-1);
    const place = places.at(-1);
    if (!last || place === undefined || last.sure) return;
    counted.pop();
    places.pop();
    const fits = agreeing.every((w) => {
      const r = readings[w];
      const at = r && expected(r.day);
      return r && (at === undefined || (r.y >= at.low && r.y <= at.high));
    });
    if (fits) unlikely[place] = true;
    else count(place, last);
  };

  readings.forEach((r, place) => {
    const at = expected(r.day);
    const off = at === undefined ? 0 : r.y - at.y;
    if (r.sure || at === undefined || (r.y >= at.low && r.y <= at.high)) {
      if (at !== undefined && counted.length > 2) {
        squares += Math.min(CUT, Math.abs(off) / at.sd) ** 2 / LEFT_OF_CUT;
        errors += 1;
      }
      count(place, r);
      waiting = [];
      return;
    }
    unlikely[place] = true;
    const before = waiting.filter((w) => {
      const other = readings[w];
      return (
        other !== undefined &&
        r.day - other.day <= BORNE_OUT_WITHIN &&
        agree(other.y - at.y, off, readingSd(r.y))
      );
    });
    waiting.push(place);
    const needed = off > ABSURD.gain || off < -ABSURD.loss ? 2 : 1;
    if (before.length < needed) return;
    takeBackSlip([...before, place]);
    for (const w of [...before, place]) {
      unlikely[w] = false;
      const reading = readings[w];
      if (reading) count(w, reading);
    }
    waiting = [];
  });

  return {
    unlikely,
    counted,
    likely: expected,
  };
}

/** Two readings that are off to the same side, and nearer to each other than to where they were expected. */
function agree(one: number, other: number, sd: number): boolean {
  if (one * other < 0) return false;
  const apart = Math.abs(one - other);
  return apart <= Math.max(WIDTH * Math.SQRT2 * sd, Math.min(Math.abs(one), Math.abs(other)) / 2);
}

/** What the first weighing may be: twice either side of what such animals weigh grown, or half around its usual weight. */
function firstExpected(
  about: { species: SpeciesKind; usualGrams?: number; circumstances: Circumstances },
  day: number,
): Expected | undefined {
  const { usualGrams, circumstances } = about;
  const young = circumstances.young(day);
  if (usualGrams !== undefined && !young) {
    const y = Math.log(usualGrams);
    return { y, sd: 0.12, low: y - 0.4, high: y + 0.4 };
  }
  const range = ADULT_WEIGHTS[about.species];
  if (range === undefined) return undefined;
  const [low, high] = [Math.log(range.low / (young ? YOUNG_PART : 2)), Math.log(range.high * 2)];
  return { y: (Math.log(range.low) + Math.log(range.high)) / 2, sd: (high - low) / 6, low, high };
}

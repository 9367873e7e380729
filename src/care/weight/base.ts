/**
 * Where an animal's weight ought to be on a day, from its readings some time before.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */
import type { Circumstances } from './circumstances.ts';
import type { Reading } from './level/reading.ts';
import { robustLine } from './level/robust-line.ts';

export interface Base {
  /** The least that is expected: the season and age may have taken some. */
  readonly low: number;
  /** The most, where it goes on as it went. */
  readonly high: number;
  /** The level at the last of the readings it rests on. */
  readonly level: number;
  readonly error: number;
}

/** The base rests on readings at least so many days back, so that a fall does not hide itself in it. */
const LAG = 10;
/** A change that lasts so many days becomes the base. */
const ACCEPTED_AFTER = 42;
const MEMORY = 25;
const SLOPE_SD = 0.0015;
const LEAST_READINGS = 3;
/** The level is no higher than the highest of so many readings: growth that slows down does not go on as it went. */
const TOP_READINGS = 12;
/** A healthy weight falls no steeper with age alone, a day: 11 % in half a year (from memory). */
const AGEING_SLOPE = 0.0006;
/** A rise goes on as it went for so many days at the most. */
const RISE_DAYS = 28;

/** In the season that takes weight the course bends, so that only the last weeks tell where it goes. */
const SEASON = { lag: 12, memory: 14, slopeSd: 0.003 };
/** How much steeper than before it may grow, a day, and how steep at the most. */
const STEEPER = 0.0008;
const STEEPEST = 0.0065;
/** One that falls by so much a day is losing for the season; one seen for so few days may be. */
const LOSING_SLOPE = 0.0007;
const SEEN_DAYS = 21;
/** The season takes no more than this of the summer's highest level: 34 %. */
const DEEPEST = -Math.log(1 - 0.34);
const SUMMER_DAYS = 330;

/**
 * @param p.plain readings outside pregnancies, by time @param p.away since when the weight seems to have left its base: it
 * rests on what was before @param p.steady levels so far, by time
 * @returns undefined before there are three readings
 */
export function baseOf(p: {
  plain: readonly Reading[];
  day: number;
  away?: number;
  sd: number;
  circumstances: Circumstances;
  steady: readonly Level[];
}): Base | undefined {
  const { plain, day, away, sd, circumstances: c, steady } = p;
  if (plain.length < LEAST_READINGS) return undefined;
  const autumn = c.autumn(day, SEASON.lag);
  const spring = autumn === undefined && c.rising(day) === 'spring';
  const cut = autumn
    ? day - SEASON.lag
    : Math.min(day - LAG, Math.max(away ?? Number.POSITIVE_INFINITY, day - ACCEPTED_AFTER));
  let to = plain.length;
  while (to > 0 && (plain[to - 1]?.day ?? 0) >= cut) to--;
  // A short record has nothing older: its first readings are the base.
  if (to < LEAST_READINGS) to = LEAST_READINGS;
  const last = plain[to - 1]?.day ?? day;
  const line = robustLine(plain, {
    to,
    least: LEAST_READINGS,
    day: last,
    memory: autumn || spring ? SEASON.memory : MEMORY,
    slopeSd: autumn || spring ? SEASON.slopeSd : SLOPE_SD,
    sd,
  });
  let top = Number.NEGATIVE_INFINITY;
  for (let j = Math.max(0, to - TOP_READINGS); j < to; j++) top = Math.max(top, plain[j]?.y ?? top);
  const level = Math.min(line.level, top);
  const elapsed = Math.max(0, day - last);
  const highest = autumn ? highestOf(steady, day - SUMMER_DAYS) : Number.NEGATIVE_INFINITY;
  const falling = Math.max(0, -line.slope);
  let low = level;
  if (autumn) {
    const losing = falling > LOSING_SLOPE || last - (plain[0]?.day ?? 0) < SEEN_DAYS;
    const steep = Math.max(losing ? autumn.losing : autumn.beginning, (falling + STEEPER) * autumn.own);
    low = Math.max(level - elapsed * Math.min(STEEPEST, steep), Math.min(level, highest - DEEPEST));
  } else low -= elapsed * Math.min(AGEING_SLOPE, falling);
  return {
    low,
    high: line.level + Math.max(0, line.slope) * Math.min(elapsed, RISE_DAYS),
    level,
    error: line.error,
  };
}

export interface Level {
  readonly day: number;
  readonly y: number;
}

/** @param since day number */
function highestOf(levels: readonly Level[], since: number): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = levels.length - 1; i >= 0; i--) {
    const level = levels[i];
    if (!level || level.day < since) break;
    highest = Math.max(highest, level.y);
  }
  return highest;
}

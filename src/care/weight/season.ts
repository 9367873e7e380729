/**
 * What the length of the day may do to an animal's weight on a day: figures in `figures/season.ts`.
 *
 * Figures that name no source here are our own choice (no source), held by `test/care/weight-simulation.test.ts`.
 */
import { dayNumber } from '../../kitchen/days.ts';
import { GOLDEN, type Stretch, WINTER_WHITE } from '../figures/season.ts';

/** Of a season that takes weight: parts of it a day. */
export interface Autumn {
  /** Of one that is losing. */
  readonly losing: number;
  /** Of one that may be about to begin. */
  readonly beginning: number;
  /** How much of the slope it had goes on. */
  readonly own: number;
  /** What one must fall in two weeks, as a difference of logarithms: one that loses slowly, and one that has stopped. */
  readonly leastOfSlow: number;
  readonly leastOfFlat: number;
}

export interface Season {
  /** Undefined where the season has taken nothing within so many days. */
  autumn(day: number, within: number): Autumn | undefined;
  /** Days after one and up to another on which the season may be taking weight. */
  fallingDays(from: number, to: number): number;
  rising(day: number): 'spring' | 'short days' | undefined;
  /** The spring of an animal that surely lives by it. */
  springs(day: number): 'begins' | 'lasts' | undefined;
}

const YEAR = 365.2425;
const HALF_YEAR = 183;
const FIRST_OF_JULY = dayNumber('1970-07-01');

/** @param kind that the seasons move; undefined for all others @param sure whether kind and light were said, not supposed */
export function seasonOf(kind: 'winter-white' | 'golden' | undefined, south: boolean, sure: boolean): Season {
  const shift = south ? HALF_YEAR : 0;
  const falling = kind === 'winter-white' ? daysWithin(WINTER_WHITE.falling, shift) : () => 0;
  const spring = kind === 'winter-white' ? daysWithin(WINTER_WHITE.rising, shift) : () => 0;
  const begins = kind === 'winter-white' ? daysWithin(WINTER_WHITE.beginsToRise, shift) : () => 0;
  const short = kind === 'golden' ? daysWithin(GOLDEN.shortDays, shift) : () => 0;
  return {
    fallingDays: falling,
    rising: (day) =>
      spring(day - 1, day) > 0 ? 'spring' : short(day - 1, day) > 0 ? 'short days' : undefined,
    springs: (day) => {
      if (!sure || spring(day - 1, day) === 0) return undefined;
      return begins(day - 1, day) > 0 ? 'begins' : 'lasts';
    },
    autumn: (day, within) => {
      if (falling(day - within, day) === 0) return undefined;
      const middle = day - within / 2;
      const since = (((middle - FIRST_OF_JULY - shift) % YEAR) + YEAR) % YEAR;
      return {
        losing: along(WINTER_WHITE.losing, since),
        beginning: along(WINTER_WHITE.beginning, since),
        own: along(WINTER_WHITE.own, since),
        leastOfSlow: along(WINTER_WHITE.leastOfSlow, since),
        leastOfFlat: along(WINTER_WHITE.leastOfFlat, since),
      };
    },
  };
}

/** On the straight lines between points, and flat outside them. */
function along(points: readonly (readonly [x: number, y: number])[], x: number): number {
  let [left, level] = points[0] ?? [0, Number.NaN];
  for (const [right, next] of points) {
    if (x <= right)
      return right === left ? next : level + ((next - level) * Math.max(0, x - left)) / (right - left);
    [left, level] = [right, next];
  }
  return level;
}

/** How many of the days after `from` up to `to` lie in the stretch of each year. */
function daysWithin(stretch: Stretch, shift: number): (from: number, to: number) => number {
  const start = dayNumber(`1970-${stretch.from}`) + shift;
  const end = dayNumber(`1970-${stretch.to}`) + shift;
  const length = end - start + 1 + (end < start ? YEAR : 0);
  const upTo = (day: number) => {
    const since = day - start + 1;
    const years = Math.floor(since / YEAR);
    return years * length + Math.min(length, since - years * YEAR);
  };
  return (from, to) => Math.max(0, upTo(to) - upTo(from));
}

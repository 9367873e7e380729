/**
 * A weighing among the others, on the scale of logarithms, on which a part of the weight is the same distance for a mouse
 * and for a rat.
 */

export interface Reading {
  /** Days since 1 January 1970. */
  readonly day: number;
  /** Natural logarithm of g. */
  readonly y: number;
  /** The keeper said that it is right. */
  readonly sure: boolean;
}

/** Day-to-day standard deviation of a healthy animal's weight, as a part of it: what the simulated series have. */
export const DAY_SD = 0.015;
/** Standard deviation of rounding to the gram of a scale with that step. */
export const ROUNDING_GRAMS = 1 / Math.sqrt(12);

/** Standard deviation of the logarithm of one reading: the animal from day to day, and the scale's step. */
export function readingSd(y: number): number {
  return Math.hypot(DAY_SD, ROUNDING_GRAMS / Math.exp(y));
}

/** Several readings of a day become one, their median. @param readings by time */
export function dayValues(readings: readonly Reading[]): Reading[] {
  const days: Reading[][] = [];
  for (const r of readings) {
    const last = days.at(-1);
    if (last?.[0]?.day === r.day) last.push(r);
    else days.push([r]);
  }
  return days.map((of) => ({
    day: of[0]?.day ?? Number.NaN,
    y: median(of.map(({ y }) => y)),
    sure: of.some(({ sure }) => sure),
  }));
}

/** Of an even number of values the mean of the two in the middle; NaN of none. */
export function median(values: readonly number[]): number {
  const sorted = values.length > FEW ? new Float64Array(values).sort() : fewInOrder(values);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : (upper + (sorted[half - 1] ?? Number.NaN)) / 2;
}

/** So many are put in their places one by one sooner than a sort has begun: a story asks some ten thousand times. */
const FEW = 12;

function fewInOrder(values: readonly number[]): number[] {
  const sorted: number[] = [];
  for (const value of values) {
    let place = sorted.length;
    for (let left = sorted[place - 1]; left !== undefined && left > value; left = sorted[place - 1])
      sorted[place--] = left;
    sorted[place] = value;
  }
  return sorted;
}

/** Readings of neighbouring days are alike: the variance of a mean of them is so many times that of independent ones. */
export const ALIKE = 2;

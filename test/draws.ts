/** How many random draws a test takes: a part of them in `npm test`, every one in `npm run test:long`. */

/** Whether every draw is asked for: `npm run test:long`, which sets TEST_DRAWS=all. */
export const LONG = process.env.TEST_DRAWS === 'all';
const PART = 1 / 20;

/**
 * The draws a test takes of `all`: in the long run every one, else a twentieth, but never fewer than `least`, so that
 * every kind of case is met. What a test expects to have met is a fraction of what this gives.
 */
export function draws(all: number, least: number): number {
  return LONG ? all : Math.min(all, Math.max(least, Math.ceil(all * PART)));
}

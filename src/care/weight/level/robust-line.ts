/**
 * A straight line through the readings before a day, which later readings count for more in and far ones for less: weighted
 * least squares with Huber's weights (Huber 1964, Ann. Math. Statist. 35:73-101) and a slope that is drawn to 0, so that a
 * few readings do not make a steep one.
 */
import { ALIKE, type Reading } from './reading.ts';

export interface Line {
  /** At the day asked for. */
  readonly level: number;
  /** A day. */
  readonly slope: number;
  /** Standard error of the level. */
  readonly error: number;
}

const HUBER = 1.5;
const TURNS = 3;

/**
 * @param p.from and `p.to`: which of the readings count, the last not included; at least one
 * @param p.day at which the level is asked for @param p.memory days after which a reading counts for 1/e
 * @param p.slopeSd how steep a slope is to be expected, a day @param p.sd of a reading
 */
export function robustLine(
  readings: readonly Reading[],
  p: { from: number; to: number; day: number; memory: number; slopeSd: number; sd: number },
): Line {
  const { from, to, day, memory, sd } = p;
  const ridge = (sd / p.slopeSd) ** 2 * ALIKE;
  let [level, slope, error] = [Number.NaN, 0, Number.NaN];
  for (let turn = 0; turn < TURNS; turn++) {
    let [w0, w1, w2, v0, v1] = [0, 0, ridge, 0, 0];
    for (let i = from; i < to; i++) {
      const r = readings[i];
      if (r === undefined) continue;
      const x = r.day - day;
      let w = Math.exp(-Math.abs(x) / memory);
      if (turn > 0) {
        const off = Math.abs(r.y - level - slope * x) / (HUBER * sd);
        if (off > 1) w /= off;
      }
      w0 += w;
      w1 += w * x;
      w2 += w * x * x;
      v0 += w * r.y;
      v1 += w * x * r.y;
    }
    const det = w0 * w2 - w1 * w1;
    level = (w2 * v0 - w1 * v1) / det;
    slope = (w0 * v1 - w1 * v0) / det;
    error = sd * Math.sqrt((ALIKE * w2) / det);
  }
  return { level, slope, error };
}

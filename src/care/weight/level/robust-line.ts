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
const TURNS = 2;
/** Readings of more than so many memories before count for nothing. */
const FORGOTTEN = 4;
/** Days, logarithms and weights of the readings that count: room that each call uses anew, for there are thousands of calls. */
let room = roomFor(256);
function roomFor(readings: number) {
  return {
    at: new Float64Array(readings),
    ys: new Float64Array(readings),
    weights: new Float64Array(readings),
  };
}

/** What a reading so many whole days away counts for, by memory: the few memories there are, asked for by each reading. */
const fades = new Map<number, Float64Array>();
function fadedBy(memory: number): Float64Array {
  const known = fades.get(memory);
  if (known) return known;
  const faded = Float64Array.from({ length: FORGOTTEN * memory + 1 }, (_, days) => Math.exp(-days / memory));
  fades.set(memory, faded);
  return faded;
}

/**
 * @param p.to place after the last of the readings that count; those before it count as far back as memory goes, and the
 * last `least` of them in any case
 * @param p.day at which the level is asked for @param p.memory days after which a reading counts for 1/e
 * @param p.slopeSd how steep a slope is to be expected, a day @param p.sd of a reading
 */
export function robustLine(
  readings: readonly Reading[],
  p: { to: number; least: number; day: number; memory: number; slopeSd: number; sd: number },
): Line {
  const { to, day, memory, sd } = p;
  const ridge = (sd / p.slopeSd) ** 2 * ALIKE;
  const oldest = day - FORGOTTEN * memory;
  if (to > room.at.length) room = roomFor(2 * to);
  const { at, ys, weights } = room;
  const faded = fadedBy(memory);
  let of = 0;
  for (let i = to - 1; i >= 0; i--) {
    const r = readings[i];
    if (!r || (r.day < oldest && of >= p.least)) break;
    at[of] = r.day - day;
    ys[of] = r.y;
    const days = Math.abs(r.day - day);
    weights[of] = faded[days] ?? Math.exp(-days / memory);
    of++;
  }
  let level = 0;
  let slope = 0;
  let error = 0;
  for (let turn = 0; turn < TURNS; turn++) {
    let w0 = 0;
    let w1 = 0;
    let w2 = ridge;
    let v0 = 0;
    let v1 = 0;
    for (let i = 0; i < of; i++) {
      const x = at[i] ?? 0;
      const y = ys[i] ?? 0;
      let w = weights[i] ?? 0;
      if (turn > 0) {
        const off = Math.abs(y - level - slope * x) / (HUBER * sd);
        if (off > 1) w /= off;
      }
      const wx = w * x;
      w0 += w;
      w1 += wx;
      w2 += wx * x;
      v0 += w * y;
      v1 += wx * y;
    }
    const det = w0 * w2 - w1 * w1;
    level = (w2 * v0 - w1 * v1) / det;
    slope = (w0 * v1 - w1 * v0) / det;
    error = sd * Math.sqrt((ALIKE * w2) / det);
  }
  return { level, slope, error };
}

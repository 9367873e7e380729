/**
 * Shares to grams on the scale: whole steps, the batch exact, every rule kept, nearest to the shares (least sum of
 * squares). Mixes of whole steps are tried in order of their distance, so the first that keeps the rules is the
 * nearest. Where many rules are tight that takes too many tries: steps are then exchanged between foods until the
 * rules are kept, and as near as exchanges bring them; a mixed-integer program has the last word on "there are none".
 */
import { Heap } from './heap.ts';
import type { Highs } from './highs.ts';
import { solveLinearWith } from './linear-program.ts';
import { WHOLE_STEP } from './tolerances.ts';

export interface GramsQuestion {
  /** Shares in percent. */
  readonly shares: ArrayLike<number>;
  readonly lower: ArrayLike<number>;
  readonly upper: ArrayLike<number>;
  readonly batchGrams: number;
  readonly stepGrams: number;
  /** Whether shares keep every rule. */
  readonly holds: (shares: ArrayLike<number>) => boolean;
  /** Linear rows `g . x >= h` over shares, for the program of last resort. */
  readonly rows: readonly { readonly g: ArrayLike<number>; readonly h: number }[];
}

type GramsAnswer = { readonly steps: number[] } | { readonly conflict: string };

/** How many mixes of whole steps are tried before the program is asked. */
const MOST_TRIES = 250;
/**
 * Simplex iterations of the program. Of 700 problems measured 21 come to it, and take 850 at most; a second is some
 * 8,000.
 */
const MOST_ITERATIONS = 10_000;

/** @returns whole steps per food adding up to the batch, or why there are none */
export function roundToSteps(question: GramsQuestion, highs: Highs): GramsAnswer {
  const { shares, lower, upper, batchGrams, stepGrams } = question;
  const total = Math.round(batchGrams / stepGrams);
  if (Math.abs(total * stepGrams - batchGrams) > 1e-9 * batchGrams || total === 0) {
    return {
      conflict: `a batch of ${batchGrams} g is no whole number of ${stepGrams} g steps; choose a multiple of the step`,
    };
  }
  const steps = (percent: number) => (percent / 100) * total;
  const low = Array.from(lower, (percent) => Math.ceil(steps(percent) - WHOLE_STEP));
  const high = Array.from(upper, (percent) => Math.floor(steps(percent) + WHOLE_STEP));
  const target = Array.from(shares, steps);
  const back = (k: readonly number[]) => Float64Array.from(k, (v) => (100 * v) / total);
  const found = nearestFirst(target, low, high, total, (k) => question.holds(back(k)));
  if (found) return { steps: found };
  const mended = byExchange(question, { target, low, high, total, back });
  if (mended) return { steps: mended };
  return byProgram(question, highs, { target, low, high, total, back });
}

interface Branch {
  readonly low: number[];
  readonly high: number[];
  readonly steps: number[];
  readonly cost: number;
}

/** Lawler's partition: pops the nearest allotment, then splits what is left of its box into disjoint boxes. */
function nearestFirst(
  target: readonly number[],
  low: number[],
  high: number[],
  total: number,
  keeps: (steps: readonly number[]) => boolean,
): number[] | undefined {
  const first = allot(target, low, high, total);
  if (!first) return undefined;
  const queue = new Heap<Branch>();
  queue.push({ low, high, ...first });
  for (let tries = 0; tries < MOST_TRIES; tries++) {
    const nearest = queue.pop();
    if (!nearest) return undefined;
    const { steps, low: lo, high: hi } = nearest;
    if (keeps(steps)) return steps;
    const boxLow = lo.slice();
    const boxHigh = hi.slice();
    for (const [i, k] of steps.entries()) {
      for (const up of [false, true]) {
        const l = boxLow.slice();
        const h = boxHigh.slice();
        if (up) l[i] = k + 1;
        else h[i] = k - 1;
        const next = l[i]! <= h[i]! ? allot(target, l, h, total) : undefined;
        if (next) queue.push({ low: l, high: h, ...next });
      }
      boxLow[i] = k;
      boxHigh[i] = k;
    }
  }
  return undefined;
}

/** The allotment of whole steps in a box with the least sum of squared distances; greedy is exact as the cost is convex. */
function allot(target: readonly number[], low: readonly number[], high: readonly number[], total: number) {
  const steps = target.map((t, i) => Math.min(high[i]!, Math.max(low[i]!, Math.round(t))));
  let missing = total - steps.reduce((a, b) => a + b, 0);
  while (missing !== 0) {
    const move = Math.sign(missing);
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let i = 0; i < steps.length; i++) {
      const next = steps[i]! + move;
      if (next < low[i]! || next > high[i]!) continue;
      const cost = (next - target[i]!) ** 2 - (steps[i]! - target[i]!) ** 2;
      if (cost < least - 1e-12) {
        least = cost;
        best = i;
      }
    }
    if (best < 0) return undefined;
    steps[best]! += move;
    missing -= move;
  }
  return { steps, cost: steps.reduce((sum, s, i) => sum + (s - target[i]!) ** 2, 0) };
}

interface Grid {
  readonly target: number[];
  readonly low: number[];
  readonly high: number[];
  readonly total: number;
  readonly back: (steps: readonly number[]) => Float64Array;
}

/**
 * From the nearest steps: moves one step from one food to another, first whichever exchange leaves the rules least
 * missed, then, once they are kept, whichever brings the steps nearest to the shares. Ends where no exchange helps.
 */
function byExchange(question: GramsQuestion, { target, low, high, total, back }: Grid): number[] | undefined {
  const steps = allot(target, low, high, total)?.steps;
  if (!steps) return undefined;
  const { rows } = question;
  const n = steps.length;
  const perStep = 100 / total;
  const room = rows.map((r) => steps.reduce((sum, k, i) => sum + r.g[i]! * k * perStep, 0) - r.h);
  const missed = (from = -1, to = -1) => {
    let sum = 0;
    for (const [r, { g }] of rows.entries()) {
      const left = from < 0 ? room[r]! : room[r]! + (g[to]! - g[from]!) * perStep;
      if (left < 0) sum -= left;
    }
    return sum;
  };
  const nearer = (from: number, to: number) =>
    (steps[from]! - 1 - target[from]!) ** 2 -
    (steps[from]! - target[from]!) ** 2 +
    (steps[to]! + 1 - target[to]!) ** 2 -
    (steps[to]! - target[to]!) ** 2;
  for (let moves = 0; moves < 4 * n; moves++) {
    const now = missed();
    let best: { from: number; to: number; miss: number; distance: number } | undefined;
    for (let from = 0; from < n; from++) {
      if (steps[from]! <= low[from]!) continue;
      for (let to = 0; to < n; to++) {
        if (to === from || steps[to]! >= high[to]!) continue;
        const miss = missed(from, to);
        const distance = nearer(from, to);
        const helps = miss < now - 1e-12 || (miss <= now && now <= 1e-9 && distance < -1e-9);
        if (!helps) continue;
        if (!best || miss < best.miss - 1e-12 || (miss <= best.miss + 1e-12 && distance < best.distance))
          best = { from, to, miss, distance };
      }
    }
    if (!best) break;
    const { from, to } = best;
    steps[from]!--;
    steps[to]!++;
    rows.forEach((r, k) => {
      room[k]! += (r.g[to]! - r.g[from]!) * perStep;
    });
  }
  return question.holds(back(steps)) ? steps : undefined;
}

/** The integer program: columns are steps above the lower bound, cost the distance from the shares in its linear pieces. */
function byProgram(question: GramsQuestion, highs: Highs, grid: Grid): GramsAnswer {
  const { target, low, high, total, back } = grid;
  const n = target.length;
  const none = {
    conflict: `no whole steps of ${question.stepGrams} g keep every rule in ${question.batchGrams} g; weigh a larger batch or use a finer scale`,
  };
  if (low.some((l, i) => l > high[i]!)) return none;
  const perStep = 100 / total;
  const answer = solveLinearWith(highs, {
    // Columns: steps of each food, then how far each is above and below its share.
    cost: [...new Array<number>(n).fill(0), ...new Array<number>(2 * n).fill(1)],
    lower: [...low, ...new Array<number>(2 * n).fill(0)],
    upper: [...high, ...new Array<number>(2 * n).fill(total)],
    whole: [...new Array<boolean>(n).fill(true), ...new Array<boolean>(2 * n).fill(false)],
    rows: [
      { coefficients: unit(n, 3 * n, () => 1), min: total, max: total },
      ...target.map((t, i) => {
        const coefficients = new Array<number>(3 * n).fill(0);
        coefficients[i] = 1;
        coefficients[n + i] = -1;
        coefficients[2 * n + i] = 1;
        return { coefficients, min: t, max: t };
      }),
      ...question.rows.map((r) => ({ coefficients: unit(n, 3 * n, (i) => r.g[i]! * perStep), min: r.h })),
    ],
    mostIterations: MOST_ITERATIONS,
  });
  const steps = answer.x.slice(0, n).map(Math.round);
  return steps.length === n && steps.reduce((a, b) => a + b, 0) === total && question.holds(back(steps))
    ? { steps }
    : none;
}

function unit(n: number, length: number, of: (i: number) => number): number[] {
  return Array.from({ length }, (_, i) => (i < n ? of(i) : 0));
}

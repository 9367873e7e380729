/** What is still to be poured, in whole steps of the scale: the bowl stays as it is, the total is exact. */

import { type HalfSpace, type Row, shortfall, tangent } from '../../formulation/solve/bounds.ts';
import { roundToSteps } from '../../formulation/solve/grams.ts';
import { dot } from '../../formulation/solve/vectors.ts';
import { withoutFloatNoise } from '../rounding.ts';
import { SAME, WHOLE } from '../tolerances.ts';
import { type BatchRules, sum } from './batch-rules.ts';

export interface StepsQuestion {
  /** g that lie in the bowl, by column. */
  readonly bowl: Float64Array;
  /** Least and most grams of each food in the end; where both are the bowl's, nothing is added. */
  readonly lower: ArrayLike<number>;
  readonly upper: ArrayLike<number>;
  /** g in all; the bowl and a whole number of steps. */
  readonly total: number;
  readonly stepGrams: number;
  /** Whether grams keep every rule. */
  readonly holds: (grams: ArrayLike<number>) => boolean;
}

/** At the scale an answer in time is worth more than one that is proven the nearest. */
const MOST_BOXES = { toFind: 4000, toProve: 400 };

/** Columns to which steps are added, with the steps that each may get. */
interface Grid {
  readonly columns: readonly number[];
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly steps: number;
}

/**
 * The whole steps nearest to `target` (g, by column), rules aside: least sum of squares. Greedy is exact, as the cost
 * is convex. Undefined where the bounds leave no such steps.
 */
export function nearestSteps(question: StepsQuestion, target: ArrayLike<number>): Float64Array | undefined {
  const { bowl, stepGrams } = question;
  const { columns, low, high, steps } = gridOf(question);
  const wish = columns.map((i) => (target[i]! - bowl[i]!) / stepGrams);
  const k = wish.map((w, j) => Math.min(high[j]!, Math.max(low[j]!, Math.round(w))));
  let missing = steps - sum(k);
  while (missing !== 0) {
    const move = Math.sign(missing);
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let j = 0; j < k.length; j++) {
      const next = k[j]! + move;
      if (next < low[j]! || next > high[j]!) continue;
      const cost = move * (2 * (k[j]! - wish[j]!)) + 1;
      if (cost < least - 1e-12) {
        least = cost;
        best = j;
      }
    }
    if (best < 0) return undefined;
    k[best]! += move;
    missing -= move;
  }
  if (k.some((v, j) => v < low[j]! || v > high[j]!)) return undefined;
  return poured(question, columns, k);
}

/**
 * Whole steps that keep every rule, near `target`: those near `exact` (the nearest mix of any fineness), then steps
 * exchanged between two foods as long as that comes nearer. Undefined where none were found.
 */
export function keptSteps(
  question: StepsQuestion,
  exact: ArrayLike<number>,
  target: ArrayLike<number>,
  spaces: readonly HalfSpace[],
): Float64Array | undefined {
  const { bowl, lower, upper, total, stepGrams } = question;
  const { columns } = gridOf(question);
  const rest = total - sum(bowl);
  // Parts of the rest, percent: what the rounding of shares deals in.
  const part = (grams: number) => (100 * grams) / rest;
  const grams = (parts: ArrayLike<number>) => {
    const y = bowl.slice();
    columns.forEach((i, j) => {
      y[i]! += (parts[j]! * rest) / 100;
    });
    return y;
  };
  const shares = (parts: ArrayLike<number>) => grams(parts).map((y) => (100 * y) / total);
  /** A row over the shares of the batch as one over the parts of the rest. */
  const toParts = ({ g, h }: Row): Row => ({
    g: Float64Array.from(columns, (i) => (g[i]! * rest) / total),
    h: h - (100 * dot(g, bowl)) / total,
  });
  const answer = roundToSteps({
    shares: columns.map((i) => Math.max(0, part(exact[i]! - bowl[i]!))),
    lower: columns.map((i) => part(lower[i]! - bowl[i]!)),
    upper: columns.map((i) => part(Math.min(upper[i]!, total) - bowl[i]!)),
    batchGrams: withoutFloatNoise(Math.round(rest / stepGrams) * stepGrams),
    stepGrams,
    holds: (parts) => question.holds(grams(parts)),
    rows: spaces.map(toParts),
    curves: spaces
      .filter((space) => space.cone)
      .map((space) => ({
        shortfall: (parts) => shortfall(space, shares(parts)),
        tangent(parts) {
          const plane = tangent(space, shares(parts));
          return plane && toParts(plane);
        },
      })),
    mostBoxes: MOST_BOXES,
  });
  if ('conflict' in answer) return undefined;
  return nearer(question, poured(question, columns, answer.steps), target);
}

/**
 * Planned shares in whole steps of the scale, g by column: steps that keep every rule where there are such, the
 * nearest steps otherwise. A batch that is no whole number of steps is rounded to one.
 */
export function plannedSteps(
  rules: BatchRules,
  shares: Float64Array,
  batchGrams: number,
  stepGrams: number,
): Float64Array {
  const total = withoutFloatNoise(Math.max(1, Math.round(batchGrams / stepGrams)) * stepGrams);
  const exact = shares.map((s) => (s * total) / 100);
  const question: StepsQuestion = {
    bowl: new Float64Array(shares.length),
    lower: new Float64Array(shares.length),
    upper: exact.map((g) => (g > 0 ? total : 0)),
    total,
    stepGrams,
    holds: (grams) => rules.hold(grams),
  };
  const plain = nearestSteps(question, exact) ?? question.bowl;
  // Shares that are out of range themselves have no steps that keep the rules nearby: they stay as they are.
  if (rules.hold(plain) || !rules.hold(exact)) return plain;
  return keptSteps(question, exact, exact, rules.spaces) ?? plain;
}

/** Exchanges single steps between two foods while the rules hold and the grams come nearer to `target`. */
function nearer(question: StepsQuestion, grams: Float64Array, target: ArrayLike<number>): Float64Array {
  const { stepGrams, lower, upper, holds } = question;
  const { columns } = gridOf(question);
  const y = grams.slice();
  for (let moves = 0; moves < 200; moves++) {
    const gains: { from: number; to: number; gain: number }[] = [];
    for (const from of columns) {
      if (y[from]! - stepGrams < lower[from]! - SAME) continue;
      for (const to of columns) {
        if (to === from || y[to]! + stepGrams > upper[to]! + SAME) continue;
        // d/dstep of the squares: taken from `from`, given to `to`.
        const gain = 2 * (y[from]! - target[from]! - (y[to]! - target[to]!)) - 2 * stepGrams;
        if (gain > 1e-9) gains.push({ from, to, gain });
      }
    }
    gains.sort((a, b) => b.gain - a.gain);
    const taken = gains.find(({ from, to }) => {
      y[from]! -= stepGrams;
      y[to]! += stepGrams;
      if (holds(y)) return true;
      y[from]! += stepGrams;
      y[to]! -= stepGrams;
      return false;
    });
    if (!taken) break;
  }
  return y.map(withoutFloatNoise);
}

/** Exchanges single steps between two foods as long as that makes `cost` less. */
export function cheaperSteps(
  question: StepsQuestion,
  grams: Float64Array,
  cost: (grams: ArrayLike<number>) => number,
): Float64Array {
  const { stepGrams, lower, upper } = question;
  const { columns } = gridOf(question);
  const y = grams.slice();
  for (let moves = 0; moves < 100; moves++) {
    const now = cost(y);
    let best = { from: -1, to: -1, cost: now - 1e-9 };
    for (const from of columns) {
      if (y[from]! - stepGrams < lower[from]! - SAME) continue;
      for (const to of columns) {
        if (to === from || y[to]! + stepGrams > upper[to]! + SAME) continue;
        y[from]! -= stepGrams;
        y[to]! += stepGrams;
        const tried = cost(y);
        if (tried < best.cost) best = { from, to, cost: tried };
        y[from]! += stepGrams;
        y[to]! -= stepGrams;
      }
    }
    if (best.from < 0) break;
    y[best.from]! -= stepGrams;
    y[best.to]! += stepGrams;
  }
  return y.map(withoutFloatNoise);
}

function gridOf({ bowl, lower, upper, total, stepGrams }: StepsQuestion): Grid {
  const columns = Array.from(bowl.keys()).filter((i) => upper[i]! > bowl[i]! + SAME);
  return {
    columns,
    low: columns.map((i) => Math.ceil((lower[i]! - bowl[i]!) / stepGrams - WHOLE)),
    high: columns.map((i) => Math.floor((Math.min(upper[i]!, total) - bowl[i]!) / stepGrams + WHOLE)),
    steps: Math.round((total - sum(bowl)) / stepGrams),
  };
}

function poured({ bowl, stepGrams }: StepsQuestion, columns: readonly number[], k: readonly number[]) {
  const y = bowl.slice();
  columns.forEach((i, j) => {
    y[i] = withoutFloatNoise(y[i]! + k[j]! * stepGrams);
  });
  return y;
}

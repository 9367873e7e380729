/**
 * Two goals against each other: the mixes that are best in one for what they are in the other. Goal A is held at no
 * more than each of a row of values between its best and what the best of B needs, and B is made best under it (the
 * epsilon-constraint method: Haimes, Lasdon and Wismer 1971, IEEE Trans. Syst. Man Cybern. SMC-1:296-297), so every
 * point is a true best, also where foods are counted.
 */

import type { Aim } from '../problem/problem.ts';
import type { Tell } from '../problem/progress.ts';
import { type AimLine, aimLines } from '../solve/aims.ts';
import type { MixModel } from '../solve/mix-model.ts';
import { exact } from '../solve/mix-solver.ts';
import { OuterApproximation } from '../solve/outer-approximation.ts';
import { elementAt, squaredDistance } from '../solve/vectors.ts';

/** An aim of the problem, or nearness to the wanted shares, or variety (both as sums of squares, made least). */
export type Goal = Aim | { readonly aim: 'near' | 'varied' };

export interface FrontierPoint {
  /** Percent by column. */
  readonly x: Float64Array;
  /** Each goal's own number; for "near" and "varied" the sum of squares. */
  readonly a: number;
  readonly b: number;
}

/** How many mixes are shown at most, both ends among them. */
const POINTS = 15;
/** Slack on a held goal, relatively, so that the solver's last digits do not rule. */
const SLACK = 1e-7;
/** Points closer than this part of the whole range are one. */
const SAME = 1e-4;

interface Measured {
  /** What is made least. */
  cost(x: Float64Array): number;
  /** In its own direction. */
  value(x: Float64Array): number;
  readonly target?: Float64Array;
  readonly line?: AimLine;
}

/** Told of the mixes so far, in order. */
type Met = (mixes: readonly Float64Array[]) => void;

/**
 * @param tell told of the points so far
 * @returns points from the best of A to the best of B, each with its mix; empty where no mix keeps the rules
 */
export function frontier(model: MixModel, a: Goal, b: Goal, tell?: Tell<FrontierPoint[]>): FrontierPoint[] {
  const [first, second] = [measured(a, model), measured(b, model)];
  const backwards = first.target !== undefined && second.target === undefined;
  const pointsOf = (mixes: readonly Float64Array[]) => {
    const inOrder = backwards ? [...mixes].reverse() : mixes;
    return distinct(inOrder.map((x) => ({ x, a: first.value(x), b: second.value(x) })));
  };
  const met: Met = (mixes) => {
    const found = mixes.length > 0 ? { found: pointsOf(mixes) } : {};
    tell?.({ doing: 'points', ...found, done: mixes.length, of: POINTS });
  };
  met([]);
  return pointsOf(
    first.target && second.target
      ? between(model, first.target, second.target, met)
      : backwards
        ? along(model, second, first, met)
        : along(model, first, second, met),
  );
}

/** Mixes from the best of a linear goal, which is held step by step, to the best of any other. */
function along(model: MixModel, held: Measured, other: Measured, met: Met): Float64Array[] {
  const from = lexicographic(model, held, other);
  if (!from) return [];
  met([from]);
  const to = lexicographic(model, other, held);
  if (!to) return [];
  const [least, most] = [held.cost(from), held.cost(to)];
  if (Math.abs(most - least) <= SAME * Math.max(1, Math.abs(least))) return [from, to];
  const mixes = [from, to];
  for (let k = 1; k < POINTS - 1; k++) {
    met(mixes);
    const inner = under(model, held, least + ((most - least) * k) / (POINTS - 1), other);
    if (inner) mixes.splice(-1, 0, inner);
  }
  return mixes;
}

/**
 * Two sums of squares against each other: their weighted sum is the distance from a point between both targets. Where
 * foods are counted this finds the points that some weight favours, which are all of them but for dents.
 */
function between(model: MixModel, first: Float64Array, second: Float64Array, met: Met): Float64Array[] {
  const mixes: Float64Array[] = [];
  for (let k = 0; k < POINTS; k++) {
    const part = k / (POINTS - 1);
    const target = first.map((t, i) => (1 - part) * t + part * elementAt(second, i));
    const mix = ask(model, (search) => cleaned(search.nearest(target)));
    if (mix) mixes.push(mix);
    met(mixes);
  }
  return mixes;
}

/** The best of one goal, and among those of the other. */
function lexicographic(model: MixModel, first: Measured, second: Measured): Float64Array | undefined {
  const best = ask(model, (search) => least(search, first));
  // The nearest mix is the only one as near.
  if (!best || first.target) return best;
  return under(model, first, first.cost(best), second) ?? best;
}

/** The best of `second` with `first`, which is linear, costing no more than `most`, and no more of it than that needs. */
function under(model: MixModel, first: Measured, most: number, second: Measured): Float64Array | undefined {
  const x = ask(model, (search) => {
    hold(search, first, most);
    return least(search, second);
  });
  if (!x || second.target) return x;
  // Several mixes may be as good: only the one that is best in the first is on the frontier.
  const back = ask(model, (search) => {
    hold(search, second, second.cost(x));
    return least(search, first);
  });
  return back ?? x;
}

function ask<T>({ question }: MixModel, work: (search: OuterApproximation) => T): T {
  const search = new OuterApproximation({ ...question, aims: [] });
  try {
    return work(search);
  } finally {
    search.dispose();
  }
}

function least(search: OuterApproximation, { target, line }: Measured): Float64Array | undefined {
  if (target) return cleaned(search.nearest(target));
  if (line!.shares) return cleaned(search.cheapest(line!.shares));
  const picked = search.least(line!);
  return picked && cleaned(search.settle(picked));
}

function cleaned(found: { x: Float64Array; lower: Float64Array; upper: Float64Array } | undefined) {
  return found && exact(found.x, found.lower, found.upper);
}

function hold(search: OuterApproximation, { line }: Measured, most: number): void {
  search.hold(line!, most - line!.constant + SLACK * Math.max(1, Math.abs(most)));
}

function measured(goal: Goal, { problem, ration, open, question }: MixModel): Measured {
  if (goal.aim === 'near' || goal.aim === 'varied') {
    const target = goal.aim === 'near' ? question.wants : new Float64Array(question.wants.length);
    const squares = (x: Float64Array) => squaredDistance(x, target);
    return { cost: squares, value: squares, target };
  }
  const line = elementAt(aimLines({ ...problem, aims: [goal as Aim] }, ration, open), 0);
  return { cost: (x) => line.sign * line.value(x), value: line.value, line };
}

function distinct(points: readonly FrontierPoint[]): FrontierPoint[] {
  const apart = (of: (p: FrontierPoint) => number) => {
    const values = points.map(of);
    const [least, most] = [Math.min(...values), Math.max(...values)];
    return SAME * Math.max(most - least, 0.01 * Math.max(1, Math.abs(most)));
  };
  const [wide, high] = [apart((p) => p.a), apart((p) => p.b)];
  const kept: FrontierPoint[] = [];
  for (const p of points) {
    const last = kept.at(-1);
    if (!last || Math.abs(p.a - last.a) > wide || Math.abs(p.b - last.b) > high) kept.push(p);
  }
  return kept;
}

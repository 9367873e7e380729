/** All spans and the nearest mix of a mix of 30 foods, beside the naive way: the same questions in one process. */
import type { Reference } from '../../src/foods/reference.ts';
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { linearBounds } from '../../src/formulation/solve/bounds.ts';
import { buildRation } from '../../src/formulation/solve/build-ration.ts';
import { ContinuousMixSolver } from '../../src/formulation/solve/continuous-mix-solver.ts';
import type { Highs } from '../../src/formulation/solve/highs.ts';
import { demoProblem } from '../../src/household/demo.ts';
import { naiveWay } from './naive.ts';

const FOODS = 30;
const ROUNDS = 15;

/** The demo's mix and further usual dry foods. */
function mixOf30(reference: Reference): Problem {
  const demo = demoProblem();
  const taken = new Set(demo.foods.map((f) => f.ref));
  const further = reference
    .plainFoods()
    .filter((f) => !taken.has(f.ref) && (f.composition.WATER ?? 100) <= 15)
    .slice(0, FOODS - demo.foods.length)
    .map((f) => ({ id: f.ref, ref: f.ref, name: f.name, group: f.group, max: 15 }));
  return {
    ...demo,
    variation: 'given',
    cautions: 'report',
    foods: [...demo.foods.map(({ want: _, ...f }) => f), ...further],
  };
}

export interface SpansRun {
  readonly foods: number;
  /** ms of each round. */
  readonly spans: readonly number[];
  readonly nearest: readonly number[];
  readonly naiveSpans: readonly number[];
  readonly naiveNearest: readonly number[];
  /** Largest difference of any share, percent. */
  readonly apart: number;
}

export function spansRun(reference: Reference, highs: Highs): SpansRun {
  const problem = mixOf30(reference);
  const { ration, open, caps, z } = buildRation(problem, { reference, highs });
  const n = open.length;
  const question = {
    highs,
    lower: new Float64Array(n),
    upper: Float64Array.from(problem.foods, (f) => f.max ?? 100),
    bounds: linearBounds(problem, ration, open, z, caps).filter((s) => s.pointer.startsWith('/rules/')),
    counts: [],
    aims: [],
    onHand: new Float64Array(n),
    objective: 'nearest' as const,
    wants: new Float64Array(n).fill(100 / n),
    prices: new Float64Array(n),
  };
  const naive = naiveWay(highs, reference, problem);
  const times = {
    spans: [] as number[],
    nearest: [] as number[],
    naiveSpans: [] as number[],
    naiveNearest: [] as number[],
  };
  let widest = 0;
  const mixes = new ContinuousMixSolver(question);
  mixes.best();
  for (let k = 0; k < ROUNDS; k++) {
    // Holding another food changes every span, so all are worked out anew.
    const column = k % n;
    const held = new Map([[column, 100 / n + (k % 3) / 10]]);
    timed(() => mixes.spans(held), times.spans);
    const free = timed(() => naive.spans(), times.naiveSpans);
    const ours = mixes.spans(new Map());
    free.forEach(([low, high], i) => {
      widest = Math.max(widest, Math.abs(ours[i]![0] - low), Math.abs(ours[i]![1] - high));
    });
    const target = question.wants.map((w, i) => w + ((i * 7 + k * 3) % 11) - 5);
    const near = timed(() => mixes.nearest(target, new Map()), times.nearest)!;
    const plain = timed(() => naive.nearest([...target]), times.naiveNearest);
    plain.forEach((v, i) => {
      widest = Math.max(widest, Math.abs(near.x[i]! - v));
    });
  }
  mixes.dispose();
  return { foods: n, ...times, apart: widest };
}

/** Does the work and adds its milliseconds to `into`. */
function timed<T>(work: () => T, into: number[]): T {
  const start = performance.now();
  const result = work();
  into.push(performance.now() - start);
  return result;
}

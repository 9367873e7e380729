/**
 * Least cost or distance under half-spaces and cones by a primal logarithmic barrier (Boyd and Vandenberghe 2004, Convex
 * Optimization, ch. 11), for a handful of columns: a second opinion that says how far from the least it can be.
 */

/** a . v - b >= |q v|. */
export interface Constraint {
  readonly a: readonly number[];
  readonly b: number;
  readonly q?: readonly number[];
}

export interface BarrierQuestion {
  /** Made least: `cost . v`, and where there is a target, the sum of squared distances over its columns. */
  readonly cost: readonly number[];
  readonly target?: readonly number[];
  readonly constraints: readonly Constraint[];
  /** Columns whose sum stays what it is at the start. */
  readonly summed: readonly boolean[];
  /** Columns that stay where they start. */
  readonly still: readonly boolean[];
  /** Inside every constraint. */
  readonly start: readonly number[];
}

const FIRST = 1;
const GROWTH = 8;
const NEAR = 1e-10;
const MOST_STEPS = 200;
/** Twice what a Newton step could still gain, at the centre. */
const CENTRED = 1e-8;
const NEARLY_CENTRED = 1e-3;

/** @returns the columns found, and how far at most their cost may lie above the least */
export function leastInside(question: BarrierQuestion): { v: number[]; gap: number } {
  const { constraints } = question;
  const degree = constraints.reduce((sum, c) => sum + (c.q ? 2 : 1), 0);
  let v = [...question.start];
  let gap = Number.POSITIVE_INFINITY;
  for (let weight = FIRST; ; weight *= GROWTH) {
    let centred = false;
    for (let step = 0; step < MOST_STEPS && !centred; step++) {
      const next = newton(question, weight, v);
      if (!next) break;
      ({ v, centred } = next);
    }
    // Off the centre nothing is known of the gap: what was known before still holds.
    if (!centred) return { v, gap };
    gap = degree / weight;
    if (gap <= NEAR * (1 + Math.abs(costAt(question, v)))) return { v, gap };
  }
}

/** How much room a constraint leaves. */
export function roomIn({ a, b, q }: Constraint, v: readonly number[]): number {
  return times(a, v) - b - (q ? Math.hypot(...q.map((f, k) => f * v[k]!)) : 0);
}

const times = (a: readonly number[], v: readonly number[]) => a.reduce((s, f, k) => s + f * v[k]!, 0);

function costAt({ cost, target }: BarrierQuestion, v: readonly number[]): number {
  return times(cost, v) + (target ?? []).reduce((s, t, k) => s + (v[k]! - t) ** 2, 0);
}

/** Product of the room in both nappes of the cone, or the room in the half-space; infinite outside. */
function barrierAt({ a, b, q }: Constraint, v: readonly number[]): number {
  const head = times(a, v) - b;
  if (!(head > 0)) return Number.POSITIVE_INFINITY;
  if (!q) return -Math.log(head);
  const tail = Math.hypot(...q.map((f, k) => f * v[k]!));
  return head > tail ? -Math.log((head - tail) * (head + tail)) : Number.POSITIVE_INFINITY;
}

/** One damped Newton step; undefined where it comes to nothing. */
function newton(
  question: BarrierQuestion,
  weight: number,
  v: number[],
): { v: number[]; centred: boolean } | undefined {
  const { cost, target, constraints, summed, still } = question;
  const n = v.length;
  const gradient = cost.map(
    (c, k) => weight * (c + (target && k < target.length ? 2 * (v[k]! - target[k]!) : 0)),
  );
  const hessian = v.map((_, i) =>
    v.map((__, j) => (i === j && target && i < target.length ? 2 * weight : 0)),
  );
  const add = (u: readonly number[], by: number) => {
    for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) hessian[i]![j]! += by * u[i]! * u[j]!;
  };
  for (const { a, b, q } of constraints) {
    const head = times(a, v) - b;
    if (!q) {
      for (let k = 0; k < n; k++) gradient[k]! -= a[k]! / head;
      add(a, 1 / head ** 2);
      continue;
    }
    const tail = Math.hypot(...q.map((f, k) => f * v[k]!));
    const inside = (head - tail) * (head + tail);
    const slope = a.map((f, k) => 2 * (head * f - (q[k] ?? 0) ** 2 * v[k]!));
    for (let k = 0; k < n; k++) gradient[k]! -= slope[k]! / inside;
    add(slope, 1 / inside ** 2);
    add(a, -2 / inside);
    for (let k = 0; k < n; k++) hessian[k]![k]! += (2 * (q[k] ?? 0) ** 2) / inside;
  }
  for (let i = 0; i < n; i++) {
    if (!still[i]) continue;
    gradient[i] = 0;
    for (let j = 0; j < n; j++) {
      hessian[i]![j] = Number(i === j);
      hessian[j]![i] = Number(i === j);
    }
  }
  const system = hessian.map((row, i) => [...row, Number(summed[i])]);
  system.push([...summed.map(Number), 0]);
  const solved = eliminated(system, [...gradient.map((g) => -g), 0]);
  if (!solved) return undefined;
  const step = solved.slice(0, n);
  const gain = -times(gradient, step);
  if (Number.isNaN(gain)) return undefined;
  if (gain <= CENTRED) return { v, centred: true };
  const value = (at: readonly number[]) =>
    constraints.reduce((s, c) => s + barrierAt(c, at), weight * costAt(question, at));
  const before = value(v);
  for (let length = 1; length > 1e-12; length /= 2) {
    const next = v.map((x, k) => x + length * step[k]!);
    if (value(next) <= before - 0.1 * length * gain) return { v: next, centred: false };
  }
  // The function's own digits are spent: as near to the centre as can be told.
  return gain <= NEARLY_CENTRED ? { v, centred: true } : undefined;
}

/** Gaussian elimination with pivoting. */
function eliminated(matrix: number[][], right: number[]): number[] | undefined {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    if (rows[k]![k] === 0) return undefined;
    for (let i = k + 1; i < n; i++) {
      const factor = rows[i]![k]! / rows[k]![k]!;
      for (let j = k; j <= n; j++) rows[i]![j]! -= factor * rows[k]![j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = rows[i]![n]!;
    for (let j = i + 1; j < n; j++) sum -= rows[i]![j]! * x[j]!;
    x[i] = sum / rows[i]![i]!;
  }
  return x.every(Number.isFinite) ? x : undefined;
}

/**
 * The point of a polytope nearest to a target, from linear questions alone (Wolfe 1976, Finding the nearest point in
 * a polytope, Mathematical Programming 11:128-149). Slower than a quadratic solver, but it holds where the polytope is
 * all but a single point, which defeats active-set methods.
 */

import { dot } from './vectors.ts';

const MOST_ROUNDS = 500;

/**
 * @param extreme gives the point of the polytope with the least `cost . x`
 * @returns a point whose squared distance is within about 1e-9 of the least
 */
export function nearestPoint(
  extreme: (cost: Float64Array) => Float64Array,
  target: Float64Array,
): Float64Array {
  let x = extreme(target.map((t) => -t));
  let corners = [x];
  let weights = [1];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const away = x.map((v, i) => v - target[i]!);
    const corner = extreme(away);
    const gain = dot(away, x) - dot(away, corner);
    if (gain <= 1e-10 * (1 + dot(away, away))) return x;
    corners.push(corner);
    weights.push(0);
    for (;;) {
      const flat = flattest(corners, target);
      if (!flat) return x;
      if (flat.every((w) => w > 1e-12)) {
        weights = flat;
        break;
      }
      // As far towards the nearest point of the corners' plane as their hull reaches; corners left behind are dropped.
      let step = 1;
      flat.forEach((w, i) => {
        if (w <= 1e-12 && weights[i]! > w) step = Math.min(step, weights[i]! / (weights[i]! - w));
      });
      weights = weights.map((w, i) => (1 - step) * w + step * flat[i]!);
      const kept = weights.map((w) => w > 1e-12);
      if (kept.every(Boolean)) kept[weights.indexOf(Math.min(...weights))] = false;
      corners = corners.filter((_, i) => kept[i]);
      weights = weights.filter((_, i) => kept[i]);
      const sum = weights.reduce((a, b) => a + b, 0);
      weights = weights.map((w) => w / sum);
    }
    x = x.map((_, i) => corners.reduce((sum, c, k) => sum + weights[k]! * c[i]!, 0));
  }
  return x;
}

/** Weights, adding up to 1, of the point of the corners' plane nearest to the target; undefined where they degenerate. */
function flattest(corners: readonly Float64Array[], target: Float64Array): number[] | undefined {
  const from = corners.map((c) => c.map((v, i) => v - target[i]!));
  const matrix = from.map((a) => from.map((b) => 1 + dot(a, b)));
  const y = solved(
    matrix,
    corners.map(() => 1),
  );
  const sum = y?.reduce((a, b) => a + b, 0);
  return y && sum ? y.map((v) => v / sum) : undefined;
}

/** Gaussian elimination with pivoting; undefined for a singular matrix. */
function solved(matrix: number[][], right: number[]): number[] | undefined {
  const n = right.length;
  const rows = matrix.map((row, i) => [...row, right[i]!]);
  for (let k = 0; k < n; k++) {
    let pivot = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[pivot]![k]!)) pivot = i;
    [rows[k], rows[pivot]] = [rows[pivot]!, rows[k]!];
    if (Math.abs(rows[k]![k]!) < 1e-14) return undefined;
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

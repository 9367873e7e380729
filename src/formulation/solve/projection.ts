/** The nearest mix worked out directly, once the solver has told which bounds and rows it stands at. */
import type { Row } from './bounds.ts';
import { dot } from './vectors.ts';

/** A share or a row this near to its bound is taken for one that stands at it. */
const MET = 1e-6;

/**
 * The point nearest to `target` among those that stand at every bound and row at which `x` stands; undefined where
 * these degenerate.
 * @param within bounds of the shares, the row that is always met, and the rows that may be
 */
export function polished(
  x: Float64Array,
  target: ArrayLike<number>,
  within: {
    readonly lower: Float64Array;
    readonly upper: Float64Array;
    readonly sum: Row;
    readonly rows: readonly Row[];
  },
): Float64Array | undefined {
  const { lower, upper, sum, rows } = within;
  const fixed = Array.from(x, (v, i) =>
    v - lower[i]! < MET ? lower[i]! : upper[i]! - v < MET ? upper[i]! : undefined,
  );
  const tight = rows.filter((r) => Math.abs(dot(r.g, x) - r.h) < MET);
  return projected(target, fixed, [sum, ...tight]);
}

/**
 * Projection of `target` onto `rows` (as equations) with some shares fixed: x = target + G' y over the free shares,
 * G G' y = h - G target. Rows that depend on others are passed over by the pivoting. Undefined where it degenerates.
 */
function projected(
  target: ArrayLike<number>,
  fixed: readonly (number | undefined)[],
  rows: readonly Row[],
): Float64Array | undefined {
  const free = fixed.flatMap((v, i) => (v === undefined ? [i] : []));
  const start = Float64Array.from(fixed, (v, i) => v ?? target[i]!);
  // Gram-Schmidt on the rows, twice for accuracy; each kept direction carries its right-hand side along.
  const basis: { u: Float64Array; r: number }[] = [];
  for (const row of rows) {
    const u = Float64Array.from(free, (i) => row.g[i]!);
    let r = row.h - dot(row.g, start);
    const before = Math.sqrt(dot(u, u));
    for (let pass = 0; pass < 2; pass++) {
      for (const b of basis) {
        const c = dot(b.u, u);
        for (let i = 0; i < u.length; i++) u[i]! -= c * b.u[i]!;
        r -= c * b.r;
      }
    }
    const norm = Math.sqrt(dot(u, u));
    if (norm <= 1e-9 * Math.max(1, before)) continue;
    basis.push({ u: u.map((v) => v / norm), r: r / norm });
  }
  const x = start.slice();
  for (const b of basis)
    free.forEach((i, k) => {
      x[i]! += b.r * b.u[k]!;
    });
  return x.every(Number.isFinite) ? x : undefined;
}

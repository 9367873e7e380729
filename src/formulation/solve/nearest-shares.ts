/**
 * The shares nearest to a target, from the prices of the rows alone: at given prices each share stands where target and
 * prices put it, cut off at its bounds, so only as many numbers are sought as rows matter, however many foods there are.
 * The prices are best where every row is kept and none that has room costs anything; towards that it goes by Newton's
 * steps over the pieces on which the same shares are cut off (semismooth Newton, as for the nearest correlation matrix:
 * Qi and Sun 2006, SIAM J. Matrix Anal. Appl. 28:360-385), each as far as it pays.
 *
 * What is found is proven from the rows themselves: prices bound the distance of every mix from below, and the answer's
 * own distance is that bound.
 */
import type { Row } from './bounds.ts';
import { cholesky } from './cholesky.ts';
import { dot } from './vectors.ts';

interface NearestQuestion {
  readonly target: ArrayLike<number>;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** What the shares come to together. */
  readonly total: number;
  readonly rows: readonly Row[];
}

/** "none": no shares keep the rows, which is proven. "open": it came to no answer that it could prove. */
type NearestAnswer =
  | {
      readonly status: 'optimal';
      readonly x: Float64Array;
      /** What the sum of squares would gain if a row gave way by one, and if a share's bound did. */
      readonly rows: Float64Array;
      readonly shares: Float64Array;
    }
  | { readonly status: 'none' | 'open' };

/** A row is kept when it is missed by no more than this; steps go on until it is missed by less than the finer one. */
const KEPT = 1e-9;
const FINE = 1e-11;
/** How far, relatively, the distance found may lie above the bound that the prices prove. */
const PROVEN = 1e-11;
/** Part of the prices' own size by which a bound must exceed the farthest shares there are: what rounding may add up to. */
const SURE = 1e-9;
/** What keeps Newton's equations solvable, as a part of their diagonal; more of it where they are not. */
const RIDGES = [1e-14, 1e-11, 1e-8, 1e-5] as const;
const MOST_STEPS = 200;

/** The nearest shares, where that can be proven. */
export function nearestShares(question: NearestQuestion): NearestAnswer {
  return new Ascent(question).run();
}

class Ascent {
  private readonly n: number;
  private readonly target: ArrayLike<number>;
  private readonly lower: Float64Array;
  private readonly upper: Float64Array;
  /** The rows, the sum first, which alone may have a price below 0. */
  private readonly rows: readonly Row[];
  private readonly price: Float64Array;
  /** Where target and prices put each share, and where its bounds leave it. */
  private readonly wish: Float64Array;
  private readonly x: Float64Array;
  /** How far each row is missed. */
  private readonly missed: Float64Array;
  private readonly bends: Float64Array;

  constructor({ target, lower, upper, total, rows }: NearestQuestion) {
    this.n = lower.length;
    this.target = target;
    this.lower = lower;
    this.upper = upper;
    this.rows = [{ g: new Float64Array(this.n).fill(1), h: total }, ...rows];
    this.price = new Float64Array(this.rows.length);
    this.wish = Float64Array.from(target);
    this.x = new Float64Array(this.n);
    this.missed = new Float64Array(this.rows.length);
    this.bends = new Float64Array(2 * this.n);
  }

  run(): NearestAnswer {
    for (let step = 0; step < MOST_STEPS; step++) {
      this.stand();
      if (this.beyondAll()) return { status: 'none' };
      const working = this.working();
      if (working.length === 0) break;
      const way = this.way(working);
      if (!way || !this.go(working, way)) break;
    }
    this.stand();
    if (!this.isProven()) return { status: 'open' };
    // The steps are those of half the squares.
    const { x, price, wish } = this;
    const shares = x.map((share, j) => 2 * (share - wish[j]!));
    return { status: 'optimal', x, rows: price.subarray(1).map((p) => 2 * p), shares };
  }

  /** Shares and what is missed, at the prices as they are. */
  private stand(): void {
    const { n, rows, price, wish, x, target, lower, upper, missed } = this;
    for (let j = 0; j < n; j++) wish[j] = target[j]!;
    for (let r = 0; r < rows.length; r++) {
      const p = price[r]!;
      if (p === 0) continue;
      const { g } = rows[r]!;
      for (let j = 0; j < n; j++) wish[j]! += p * g[j]!;
    }
    for (let j = 0; j < n; j++) x[j] = Math.min(upper[j]!, Math.max(lower[j]!, wish[j]!));
    for (let r = 0; r < rows.length; r++) missed[r] = rows[r]!.h - dot(rows[r]!.g, x);
  }

  /** Rows that have a price or are missed; none where nothing is left to do. */
  private working(): number[] {
    const { missed, price } = this;
    const list: number[] = [];
    let most = 0;
    for (let r = 0; r < price.length; r++) {
      if (r > 0 && price[r] === 0 && missed[r]! <= FINE) continue;
      list.push(r);
      most = Math.max(most, Math.abs(missed[r]!));
    }
    return most <= FINE ? [] : list;
  }

  /** Newton's step of the working rows' prices, as far as the shares that are not cut off tell; takes out of `working` what it would make negative. */
  private way(working: number[]): Float64Array | undefined {
    const { n, rows, wish, lower, upper, missed, price } = this;
    const free: number[] = [];
    for (let j = 0; j < n; j++) if (wish[j]! > lower[j]! && wish[j]! < upper[j]!) free.push(j);
    for (;;) {
      const m = working.length;
      const matrix = new Float64Array(m * m);
      for (let a = 0; a < m; a++) {
        const one = rows[working[a]!]!.g;
        for (let b = 0; b <= a; b++) {
          const other = rows[working[b]!]!.g;
          let sum = 0;
          for (const j of free) sum += one[j]! * other[j]!;
          matrix[a * m + b] = sum;
        }
      }
      const by = solved(
        matrix,
        Float64Array.from(working, (r) => missed[r]!),
      );
      if (!by) return undefined;
      const down = working.findIndex((r, a) => r > 0 && price[r] === 0 && by[a]! <= 0);
      if (down < 0) return by;
      for (let a = m - 1; a >= down; a--) {
        const r = working[a]!;
        if (r > 0 && price[r] === 0 && by[a]! <= 0) working.splice(a, 1);
      }
      if (working.every((r) => Math.abs(missed[r]!) <= FINE)) return undefined;
    }
  }

  /** Goes that way as far as it pays, at most to where a price is used up. @returns whether it got anywhere */
  private go(working: readonly number[], by: Float64Array): boolean {
    const { n, rows, price, wish, lower, upper, x, bends } = this;
    const along = new Float64Array(n);
    let gain = 0;
    let most = Number.POSITIVE_INFINITY;
    let last = -1;
    for (let a = 0; a < by.length; a++) {
      const r = working[a]!;
      const d = by[a]!;
      const { g, h } = rows[r]!;
      for (let j = 0; j < n; j++) along[j]! += d * g[j]!;
      gain += d * h;
      if (r > 0 && d < 0 && -price[r]! / d < most) {
        most = -price[r]! / d;
        last = r;
      }
    }
    gain -= dot(along, x);
    if (!(gain > 0)) return false;
    // Where shares begin to move and where they are cut off what a step gains bends.
    let curve = 0;
    let count = 0;
    for (let j = 0; j < n; j++) {
      const s = along[j]!;
      if (s === 0) continue;
      const from = ((s > 0 ? lower[j]! : upper[j]!) - wish[j]!) / s;
      const to = ((s > 0 ? upper[j]! : lower[j]!) - wish[j]!) / s;
      if (from <= 0 && to > 0) curve += s * s;
      if (from > 0) bends[count++] = from;
      if (to > 0) bends[count++] = to;
    }
    const marks = bends.subarray(0, count).sort();
    let at = 0;
    for (let k = 0; at < most; k++) {
      const next = k < count ? Math.min(most, marks[k]!) : most;
      const rest = gain - curve * (next - at);
      if (rest <= 0) {
        at += gain / curve;
        break;
      }
      if (next === Number.POSITIVE_INFINITY) {
        // Prices that may rise for ever: at the next step they prove that there are none.
        at += (4 * this.farthest()) / gain;
        break;
      }
      gain = rest;
      at = next;
      curve = 0;
      for (let j = 0; j < n; j++) {
        const s = along[j]!;
        if (s === 0) continue;
        const from = ((s > 0 ? lower[j]! : upper[j]!) - wish[j]!) / s;
        const to = ((s > 0 ? upper[j]! : lower[j]!) - wish[j]!) / s;
        if (from <= at && to > at) curve += s * s;
      }
    }
    for (let a = 0; a < by.length; a++) {
      const r = working[a]!;
      price[r] = r === 0 ? price[r]! + at * by[a]! : Math.max(0, price[r]! + at * by[a]!);
    }
    if (last >= 0 && at >= most) price[last] = 0;
    return true;
  }

  /** Half the squared distance of the farthest shares within their bounds. */
  private farthest(): number {
    let sum = 1;
    for (let j = 0; j < this.n; j++) {
      const t = this.target[j]!;
      sum += Math.max((this.lower[j]! - t) ** 2, (this.upper[j]! - t) ** 2) / 2;
    }
    return sum;
  }

  /** Whether the prices prove every mix to be farther off than any shares within their bounds are. */
  private beyondAll(): boolean {
    const { price, rows, missed } = this;
    let bound = this.distance();
    let size = 0;
    for (let r = 0; r < rows.length; r++) {
      bound += price[r]! * missed[r]!;
      size += Math.abs(price[r]!) * Math.max(1, Math.abs(rows[r]!.h));
    }
    return bound > this.farthest() + SURE * size;
  }

  private distance(): number {
    let sum = 0;
    for (let j = 0; j < this.n; j++) sum += (this.x[j]! - this.target[j]!) ** 2 / 2;
    return sum;
  }

  /** Whether every row is kept, and the distance is what the prices prove it to be at the least. */
  private isProven(): boolean {
    const { price, missed, x } = this;
    if (Math.abs(missed[0]!) > KEPT || !x.every(Number.isFinite)) return false;
    let above = 0;
    for (let r = 0; r < price.length; r++) {
      if (missed[r]! > KEPT) return false;
      above -= price[r]! * missed[r]!;
    }
    return Math.abs(above) <= PROVEN * (1 + this.distance());
  }
}

/** Solves a symmetric system given by its lower triangle, with as little added to its diagonal as makes it solvable. */
function solved(matrix: Float64Array, right: Float64Array): Float64Array | undefined {
  const m = right.length;
  let largest = 0;
  for (let a = 0; a < m; a++) largest = Math.max(largest, matrix[a * m + a]!);
  if (largest === 0) return right;
  for (const ridge of RIDGES) {
    const factor = matrix.slice();
    for (let a = 0; a < m; a++) factor[a * m + a]! += ridge * largest;
    if (!cholesky(factor, m)) continue;
    const y = right.slice();
    for (let a = 0; a < m; a++) {
      for (let b = 0; b < a; b++) y[a]! -= factor[a * m + b]! * y[b]!;
      y[a]! /= factor[a * m + a]!;
    }
    for (let a = m - 1; a >= 0; a--) {
      for (let b = a + 1; b < m; b++) y[a]! -= factor[b * m + a]! * y[b]!;
      y[a]! /= factor[a * m + a]!;
    }
    return y;
  }
  return undefined;
}

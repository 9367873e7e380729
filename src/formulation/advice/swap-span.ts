/**
 * How much of one food can take the place of another with everything kept, worked out without a solver: all shares are
 * straight lines in the share s that is added, so each rule bounds s from one side (a confidence, from one or both, by
 * a square root).
 */
import { NO_SHARE, SOLVER_TOLERANCE } from '../solve/tolerances.ts';
import type { SwapModel } from './swap-model.ts';

/**
 * The shares s of food j, on top of what it has, that keep everything once all of food i is out; undefined for none.
 * With rest = 100 - x_i - x_j, the others are scaled by t(s) = (100 - x_j - s) / rest.
 */
export function spanOf(
  model: SwapModel,
  x: Float64Array,
  mix: readonly number[],
  i: number,
  j: number,
): readonly [number, number] | undefined {
  const { lower, upper, used, advised, spaces, leaving } = model;
  const had = x[j]!;
  const rest = 100 - x[i]! - had;
  const alone = rest <= NO_SHARE;
  const t0 = alone ? 0 : (100 - had) / rest;
  const t1 = alone ? 0 : 1 / rest;
  const s = new Span(alone ? 100 - had : 0, 100 - had);
  s.keep(had - Math.max(lower[j]!, used[j]!), 1);
  s.keep(Math.min(upper[j]!, advised[j]!) - had, -1);
  for (const k of mix) {
    if (k === i || k === j || alone) continue;
    const share = x[k]!;
    const least = Math.max(lower[k]!, used[k]!);
    s.keep(share * t0 - least, -share * t1);
    s.keep(upper[k]! - share * t0, share * t1);
  }
  for (const { g, h, cone } of spaces) {
    if (s.empty) break;
    const others = sumOver(mix, g, x, i, j);
    const p = others * t0 + g[j]! * had - h;
    const q = g[j]! - others * t1;
    if (!cone) {
      s.keep(p, q);
      continue;
    }
    let squares = 0;
    for (const k of mix) if (k !== i && k !== j) squares += (cone.q[k]! * x[k]!) ** 2;
    const own = cone.q[j]! ** 2;
    s.keepBeyondRoot(p, q, {
      constant: cone.q0 ** 2 + squares * t0 * t0 + own * had * had,
      linear: 2 * own * had - 2 * squares * t0 * t1,
      square: squares * t1 * t1 + own,
    });
  }
  for (const { g, h } of leaving) {
    if (s.empty) break;
    const others = sumOver(mix, g, x, i, j);
    // Of the foods that keep their proportions, the one that the row can spare least decides for all of them.
    let most = 0;
    for (const k of mix) if (k !== i && k !== j) most = Math.max(most, g[k]! * x[k]!);
    s.keep((others - most) * t0 + g[j]! * had - h, g[j]! - (others - most) * t1);
    s.keep(others * t0 - h, -others * t1);
  }
  return s.empty ? undefined : [s.low, s.high];
}

/** What the foods that keep their proportions add to a row now. */
function sumOver(mix: readonly number[], g: Float64Array, x: Float64Array, i: number, j: number): number {
  let sum = 0;
  for (const k of mix) if (k !== i && k !== j) sum += g[k]! * x[k]!;
  return sum;
}

/** A span of s that conditions narrow. */
class Span {
  low: number;
  high: number;

  constructor(low: number, high: number) {
    this.low = low;
    this.high = high;
  }

  /** Ends that have crossed by no more than the arithmetic's own error are one point. */
  get empty(): boolean {
    return this.low > this.high + SOLVER_TOLERANCE;
  }

  /** Keeps the s with p + q s >= 0. */
  keep(p: number, q: number): void {
    const room = p + SOLVER_TOLERANCE;
    if (Math.abs(q) <= 1e-13) {
      if (room < 0) this.none();
    } else if (q > 0) this.low = Math.max(this.low, -room / q);
    else this.high = Math.min(this.high, -room / q);
  }

  /**
   * Keeps the s with p + q s >= sqrt(v(s)), v a quadratic that is nowhere negative. The root is convex, so these s are
   * one span; it ends where the square of the line meets v.
   */
  keepBeyondRoot(p: number, q: number, v: Quadratic): void {
    const room = p + SOLVER_TOLERANCE;
    const a = q * q - v.square;
    const b = 2 * room * q - v.linear;
    const c = room * room - v.constant;
    this.keep(p, q);
    if (a === 0) {
      if (Math.abs(b) <= 1e-15) {
        if (c < 0) this.none();
      } else if (b > 0) this.low = Math.max(this.low, -c / b);
      else this.high = Math.min(this.high, -c / b);
      return;
    }
    const inner = b * b - 4 * a * c;
    if (inner < 0) {
      if (a < 0) this.none();
      return;
    }
    // The two ends without cancellation (Press et al., Numerical Recipes, 5.6).
    const half = -(b + (b < 0 ? -1 : 1) * Math.sqrt(inner)) / 2;
    const ends = half === 0 ? [0, 0] : [half / a, c / half];
    const [first, last] = [Math.min(...ends), Math.max(...ends)];
    if (a < 0) {
      this.low = Math.max(this.low, first);
      this.high = Math.min(this.high, last);
    } else if (q > 0) this.low = Math.max(this.low, last);
    else this.high = Math.min(this.high, first);
  }

  none(): void {
    this.low = Number.POSITIVE_INFINITY;
  }
}

/** constant + linear s + square s^2. */
interface Quadratic {
  readonly constant: number;
  readonly linear: number;
  readonly square: number;
}

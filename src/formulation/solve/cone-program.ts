/**
 * Linear and least-squares questions over shares under half-spaces and cones, by a primal-dual interior-point method
 * with Nesterov and Todd's scaling and Mehrotra's corrector (Nesterov and Todd 1997, Math. Oper. Res. 22:1-42; the
 * formulas for cones as in Vandenberghe 2010, The CVXOPT linear and quadratic cone program solvers). Some 15 to 30
 * steps, each one factorisation; HiGHS knows no cones, and cutting them by planes takes hundreds of solves an end.
 */
import type { Row, Spread } from './bounds.ts';
import { cholesky } from './cholesky.ts';
import {
  coneReach,
  hyperbolic,
  jordan,
  jordanInverse,
  type Scaling,
  scaled,
  tailLength,
  unscaled,
} from './cone-algebra.ts';
import { dot } from './vectors.ts';

/** `g . x - h >= length of (q x, q0)`. */
export interface ConeRow extends Row {
  readonly cone: Spread;
}

export interface ConeQuestion {
  /** Made least: `cost . x`, with `square` times half the sum of the squares. */
  readonly cost: ArrayLike<number>;
  readonly square: number;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly rows: readonly Row[];
  readonly cones: readonly ConeRow[];
  /** How many columns, from the first, are shares that add up to 100; all of them unless written. Others are slacks. */
  readonly shares?: number;
  /** The gap, relatively, at which an answer that gets no better is still taken for the optimum. */
  readonly near?: number;
}

export interface ConeAnswer {
  /** "open" where neither an optimum nor its impossibility was come to. */
  readonly status: 'optimal' | 'infeasible' | 'open';
  readonly x: Float64Array;
  /** What the cost would lose if a row, a cone, or a share's bound gave way by one. */
  readonly rows: Float64Array;
  readonly cones: Float64Array;
  readonly shares: Float64Array;
  /** The same for the sum of 100. */
  readonly sum: number;
}

const MOST_STEPS = 150;
/** Half-spaces and cones are widened by this, scaled, so that a mix that is the only one is inside. */
const ROOM = 1e-9;
/** The gap between cost and bound, relatively, at which an optimum is taken; and at which one that stalls still is. */
const GAP = 1e-10;
const GAP_STALLED = 1e-7;
/** How far equations and slacks may be off. */
const RESIDUE = 1e-9;
/** Part of the way to the edge of the cones that a step goes at most. */
const SHORT_OF_EDGE = 0.99;
/** A proof that there is no mix must be beyond the rounding of what it is made of. */
const PROOF = 1e-11;
/** Weight of the sum's square among the squares that a step is found by. */
const SUM_WEIGHT = 1;
/** Parts of its diagonal added to a matrix that cannot be factored as it is, and rounds that undo them. */
const TRIFLES = [1e-15, 1e-13, 1e-11];
const REFINED = 1;
/** A share whose bounds are this near is settled. */
const SETTLED = 1e-12;
/** Steps without progress after which the method is at the end of its digits. */
const MOST_STALLED = 20;

/** A second-order cone's part of a vector: head, then one entry for each free share, then the constant spread. */
interface Cone extends Scaling {
  readonly g: Float64Array;
  readonly h: number;
  readonly q: Float64Array;
  readonly q0: number;
  s: Float64Array;
  z: Float64Array;
  lambda: Float64Array;
}

export function solveConeProgram(question: ConeQuestion): ConeAnswer {
  return new InteriorPoint(question).solve();
}

class InteriorPoint {
  private readonly question: ConeQuestion;
  /** Shares that are not settled, and how many. */
  private readonly free: readonly number[];
  private readonly n: number;
  private readonly cost: Float64Array;
  private readonly square: number;
  private readonly total: number;
  /** What each column counts in the sum: 1 for a share, 0 for a slack. */
  private readonly inSum: Float64Array;
  /** Linear slacks: first above the lower bounds, then below the upper ones, then of the rows. */
  private readonly m: number;
  private readonly low: Float64Array;
  private readonly high: Float64Array;
  private readonly g: readonly Float64Array[];
  private readonly h: Float64Array;
  private readonly cones: Cone[];
  private readonly x: Float64Array;
  private y = 0;
  private readonly s: Float64Array;
  private readonly z: Float64Array;
  private readonly matrix: Float64Array;
  private readonly factor: Float64Array;

  constructor(question: ConeQuestion) {
    this.question = question;
    const { lower, upper, rows, cones } = question;
    const all = Array.from(lower);
    this.free = all.flatMap((low, i) => (upper[i]! - low > SETTLED ? [i] : []));
    const settled = Float64Array.from(all, (low, i) => (upper[i]! - low > SETTLED ? 0 : low));
    const n = this.free.length;
    const pick = (v: ArrayLike<number>) => Float64Array.from(this.free, (i) => v[i]!);
    this.n = n;
    this.cost = pick(question.cost);
    this.square = question.square;
    const shares = question.shares ?? all.length;
    this.inSum = Float64Array.from(this.free, (i) => Number(i < shares));
    this.total = 100 - settled.subarray(0, shares).reduce((a, b) => a + b, 0);
    this.low = pick(lower);
    this.high = pick(upper);
    this.g = rows.map((r) => pick(r.g));
    this.h = Float64Array.from(rows, (r) => r.h - dot(r.g, settled) - ROOM);
    this.m = 2 * n + rows.length;
    this.cones = cones.map(({ g, h, cone }) => {
      const fixed = cone.q.reduce((sum, q, i) => sum + (q * settled[i]!) ** 2, cone.q0 ** 2);
      return {
        g: pick(g),
        h: h - dot(g, settled) - ROOM,
        q: pick(cone.q),
        q0: Math.sqrt(fixed),
        s: new Float64Array(n + 2),
        z: new Float64Array(n + 2),
        w: new Float64Array(n + 2),
        eta: 1,
        lambda: new Float64Array(n + 2),
      };
    });
    this.x = new Float64Array(n);
    this.s = new Float64Array(this.m);
    this.z = new Float64Array(this.m);
    this.matrix = new Float64Array(n * n);
    this.factor = new Float64Array(n * n);
  }

  solve(): ConeAnswer {
    const { n, cones } = this;
    if (n === 0) return this.nothingFree();
    this.start();
    const degree = this.m + cones.length;
    let best = Number.POSITIVE_INFINITY;
    let nearest = this.answer('open');
    let stalled = 0;
    for (let step = 0; step < MOST_STEPS; step++) {
      const residue = this.residues();
      const gap = this.gap();
      const size = 1 + Math.abs(this.costAt());
      const short = (gap + this.closing(residue.dualRow)) / size;
      const worst = Math.max(residue.primal, short);
      if (residue.primal <= RESIDUE && short <= GAP) return this.answer('optimal');
      if (worst < best) {
        const near = residue.primal <= 10 * RESIDUE && short <= (this.question.near ?? GAP_STALLED);
        nearest = this.answer(near ? 'optimal' : 'open');
      }
      if (this.impossible()) return this.answer('infeasible');
      stalled = worst < 0.9 * best ? 0 : stalled + 1;
      best = Math.min(best, worst);
      if (stalled > MOST_STALLED || !Number.isFinite(worst)) break;
      this.scale();
      if (!this.factorise()) break;
      const mu = gap / degree;
      const affine = this.direction(residue, 0, undefined);
      const reach = this.reach(affine);
      const sigma = (1 - Math.min(1, reach)) ** 3;
      const full = this.direction(residue, sigma * mu, affine);
      const length = Math.min(1, SHORT_OF_EDGE * this.reach(full));
      this.step(full, length);
    }
    return nearest;
  }

  /** From even shares within the bounds, every slack inside its cone. */
  private start(): void {
    const { n, x, s, z, low, high, inSum, cones } = this;
    const room = Math.max(SETTLED, dot(inSum, high) - dot(inSum, low));
    const part = Math.min(1, Math.max(0, (this.total - dot(inSum, low)) / room));
    for (let i = 0; i < n; i++) x[i] = low[i]! + part * (high[i]! - low[i]!);
    const size = Math.max(1, ...this.cost.map((c, i) => Math.abs(c + this.square * x[i]!)));
    for (let i = 0; i < n; i++) {
      s[i] = Math.max(x[i]! - low[i]!, 1e-3);
      s[n + i] = Math.max(high[i]! - x[i]!, 1e-3);
    }
    for (const [r, g] of this.g.entries()) s[2 * n + r] = Math.max(Math.abs(dot(g, x) - this.h[r]!), 1);
    for (let k = 0; k < this.m; k++) z[k] = Math.min(size, Math.max(size / s[k]!, 1e-3 * size));
    for (const c of cones) {
      for (let i = 0; i < n; i++) c.s[i + 1] = c.q[i]! * x[i]!;
      c.s[n + 1] = c.q0;
      const tail = tailLength(c.s);
      c.s[0] = Math.max(dot(c.g, x) - c.h, tail + Math.max(1, tail));
      c.z[0] = size / c.s[0]!;
    }
  }

  private nothingFree(): ConeAnswer {
    const kept =
      Math.abs(this.total) <= 1e-7 &&
      this.h.every((h) => h <= 1e-8) &&
      this.cones.every((c) => c.h + c.q0 <= 1e-8);
    return this.answer(kept ? 'optimal' : 'infeasible');
  }

  private costAt(): number {
    const { x } = this;
    return dot(this.cost, x) + (this.square / 2) * dot(x, x);
  }

  private gap(): number {
    let sum = dot(this.s, this.z);
    for (const c of this.cones) sum += dot(c.s, c.z);
    return sum;
  }

  /** What it costs to close the prices' own equations: the shares' bounds take over what is missing, at their slack. */
  private closing(missing: Float64Array): number {
    let sum = 0;
    for (let i = 0; i < this.n; i++) {
      const v = missing[i]!;
      sum += v > 0 ? v * this.s[i]! : -v * this.s[this.n + i]!;
    }
    return sum;
  }

  private residues() {
    const { n, x, s, z, y, inSum } = this;
    const dual = Float64Array.from(
      this.cost,
      (c, i) => c + this.square * x[i]! - z[i]! + z[n + i]! - y * inSum[i]!,
    );
    const slack = new Float64Array(this.m);
    let primal = 0;
    for (let i = 0; i < n; i++) {
      slack[i] = x[i]! - this.low[i]! - s[i]!;
      slack[n + i] = this.high[i]! - x[i]! - s[n + i]!;
    }
    for (const [r, g] of this.g.entries()) {
      slack[2 * n + r] = dot(g, x) - this.h[r]! - s[2 * n + r]!;
      const price = z[2 * n + r]!;
      for (let i = 0; i < n; i++) dual[i]! -= price * g[i]!;
    }
    for (const v of slack) primal = Math.max(primal, Math.abs(v));
    const cones = this.cones.map((c) => {
      const off = coneImage(c, x, -c.h, c.q0);
      for (let i = 0; i < off.length; i++) {
        off[i]! -= c.s[i]!;
        primal = Math.max(primal, Math.abs(off[i]!));
      }
      for (let i = 0; i < n; i++) dual[i]! -= c.g[i]! * c.z[0]! + c.q[i]! * c.z[i + 1]!;
      return off;
    });
    const sum = dot(inSum, x) - this.total;
    return { dualRow: dual, slack, cones, sum, primal: Math.max(primal, Math.abs(sum)) };
  }

  /** Whether the prices prove that no mix exists: they make a row that no shares of 0 or more, 100 in all, can keep. */
  private impossible(): boolean {
    const { n, z, y } = this;
    const row = this.inSum.map((part) => part * y);
    let worth = this.total * y;
    // Prices grow without end where there is no mix; what their rounding comes to must not pass for a proof.
    let size = Math.abs(worth);
    const count = (value: number) => {
      worth += value;
      size += Math.abs(value);
    };
    for (let i = 0; i < n; i++) {
      row[i]! += z[i]! - z[n + i]!;
      count(z[i]! * this.low[i]!);
      count(-z[n + i]! * this.high[i]!);
    }
    for (const [r, g] of this.g.entries()) {
      const price = z[2 * n + r]!;
      count(price * this.h[r]!);
      for (let i = 0; i < n; i++) row[i]! += price * g[i]!;
    }
    for (const c of this.cones) {
      count(c.z[0]! * c.h);
      count(-c.z[n + 1]! * c.q0);
      for (let i = 0; i < n; i++) row[i]! += c.g[i]! * c.z[0]! + c.q[i]! * c.z[i + 1]!;
    }
    // Whatever is left of the row can be worth this much at most within the shares' bounds.
    let off = 0;
    for (let i = 0; i < n; i++) off += Math.max(row[i]! * this.low[i]!, row[i]! * this.high[i]!);
    return worth > off + PROOF * size;
  }

  /** Nesterov and Todd's scaling points. */
  private scale(): void {
    for (const c of this.cones) {
      const [ss, zz] = [hyperbolic(c.s), hyperbolic(c.z)];
      const [rs, rz] = [Math.sqrt(ss), Math.sqrt(zz)];
      c.eta = Math.sqrt(rs / rz);
      const gamma = Math.sqrt((1 + dot(c.s, c.z) / (rs * rz)) / 2);
      for (let i = 0; i < c.w.length; i++)
        c.w[i] = (c.s[i]! / rs + ((i === 0 ? 1 : -1) * c.z[i]!) / rz) / (2 * gamma);
      c.lambda = scaled(c, c.z);
    }
  }

  /** Cholesky's factor of square + F' W^-2 F. */
  private factorise(): boolean {
    const { n, matrix: a, s, z } = this;
    // The sum's own square changes no answer that keeps the sum, and holds the matrix up where the rest is flat.
    for (let i = 0; i < n; i++)
      for (let j = 0; j < n; j++) a[i * n + j] = SUM_WEIGHT * this.inSum[i]! * this.inSum[j]!;
    for (let i = 0; i < n; i++) a[i * n + i]! += this.square + z[i]! / s[i]! + z[n + i]! / s[n + i]!;
    const add = (v: Float64Array, weight: number) => {
      for (let i = 0; i < n; i++) {
        const f = weight * v[i]!;
        if (f === 0) continue;
        const at = i * n;
        for (let j = 0; j <= i; j++) a[at + j]! += f * v[j]!;
      }
    };
    for (const [r, g] of this.g.entries()) add(g, z[2 * n + r]! / s[2 * n + r]!);
    for (const c of this.cones) {
      // The scaling's square by its eigenvectors: head with tail, head against tail, and across; without them the
      // difference of two large squares would cost the digits that decide at the edge of the cone.
      const weight = 1 / c.eta ** 2;
      const tail = tailLength(c.w);
      const k = Float64Array.from(c.q, (q, i) => (tail > 0 ? (q * c.w[i + 1]!) / tail : 0));
      const stretch = (c.w[0]! + tail) ** 2;
      add(
        c.g.map((g, i) => g - k[i]!),
        (weight * stretch) / 2,
      );
      add(
        c.g.map((g, i) => g + k[i]!),
        weight / stretch / 2,
      );
      add(k, -weight);
      for (let i = 0; i < n; i++) a[i * n + i]! += weight * c.q[i]! ** 2;
    }
    // Where rounding has left the matrix short of positive definite a trifle on its diagonal mends it; see solveRefined.
    for (const part of [0, ...TRIFLES]) {
      this.factor.set(a);
      for (let i = 0; i < n; i++) this.factor[i * n + i]! *= 1 + part;
      if (cholesky(this.factor, n)) return true;
    }
    return false;
  }

  /** Solves with the factor, and again for what rounding and trifles left over. */
  private solveRefined(right: Float64Array): Float64Array {
    const { n, matrix: a } = this;
    const found = this.solveFactored(right);
    for (let round = 0; round < REFINED; round++) {
      const left = right.slice();
      for (let i = 0; i < n; i++) {
        const at = i * n;
        for (let j = 0; j < i; j++) {
          const value = a[at + j]!;
          left[i]! -= value * found[j]!;
          left[j]! -= value * found[i]!;
        }
        left[i]! -= a[at + i]! * found[i]!;
      }
      const more = this.solveFactored(left);
      for (let i = 0; i < n; i++) found[i]! += more[i]!;
    }
    return found;
  }

  private solveFactored(right: Float64Array): Float64Array {
    const { n, factor: a } = this;
    const v = right.slice();
    for (let i = 0; i < n; i++) {
      let sum = v[i]!;
      const at = i * n;
      for (let j = 0; j < i; j++) sum -= a[at + j]! * v[j]!;
      v[i] = sum / a[at + i]!;
    }
    for (let i = n - 1; i >= 0; i--) {
      const at = i * n;
      const value = v[i]! / a[at + i]!;
      v[i] = value;
      for (let j = 0; j < i; j++) v[j]! -= a[at + j]! * value;
    }
    return v;
  }

  /** Newton's direction towards products of `centre`, with Mehrotra's correction for what `affine` would leave. */
  private direction(
    residue: ReturnType<InteriorPoint['residues']>,
    centre: number,
    affine: Direction | undefined,
  ): Direction {
    const { n, s, z, inSum } = this;
    const right = residue.dualRow.map((v) => -v);
    // What the linear slacks' products are to become, over the slack: dz = aim - (z/s) (ds), ds = F dx + residue.
    const aim = new Float64Array(this.m);
    for (let k = 0; k < this.m; k++) {
      const correction = affine ? affine.s[k]! * affine.z[k]! : 0;
      aim[k] = (centre - correction) / s[k]! - z[k]!;
    }
    const bring = (k: number) => aim[k]! - (z[k]! / s[k]!) * residue.slack[k]!;
    for (let i = 0; i < n; i++) right[i]! += bring(i) - bring(n + i);
    for (const [r, g] of this.g.entries()) {
      const v = bring(2 * n + r);
      for (let i = 0; i < n; i++) right[i]! += v * g[i]!;
    }
    const aims = this.cones.map((c, k) => {
      const product = jordan(c.lambda, c.lambda).map((v) => -v);
      product[0]! += centre;
      if (affine) {
        const extra = jordan(unscaled(c, affine.coneS[k]!), scaled(c, affine.coneZ[k]!));
        for (let i = 0; i < product.length; i++) product[i]! -= extra[i]!;
      }
      const v = unscaled(c, jordanInverse(c.lambda, product));
      const back = unscaled(c, unscaled(c, residue.cones[k]!));
      const told = v.map((value, i) => value - back[i]!);
      for (let i = 0; i < n; i++) right[i]! += c.g[i]! * told[0]! + c.q[i]! * told[i + 1]!;
      return v;
    });
    for (let i = 0; i < n; i++) right[i]! -= SUM_WEIGHT * residue.sum * inSum[i]!;
    const toward = this.solveRefined(right);
    const ones = this.solveRefined(inSum);
    const dy = (-residue.sum - dot(inSum, toward)) / dot(inSum, ones);
    const dx = toward.map((v, i) => v + dy * ones[i]!);
    const ds = new Float64Array(this.m);
    for (let i = 0; i < n; i++) {
      ds[i] = dx[i]! + residue.slack[i]!;
      ds[n + i] = -dx[i]! + residue.slack[n + i]!;
    }
    for (const [r, g] of this.g.entries()) ds[2 * n + r] = dot(g, dx) + residue.slack[2 * n + r]!;
    const dz = aim.map((v, k) => v - (z[k]! / s[k]!) * ds[k]!);
    const coneS = this.cones.map((c, k) => {
      const out = coneImage(c, dx, 0, 0);
      const off = residue.cones[k]!;
      return out.map((v, i) => v + off[i]!);
    });
    const coneZ = this.cones.map((c, k) => {
      const back = unscaled(c, unscaled(c, coneS[k]!));
      return aims[k]!.map((v, i) => v - back[i]!);
    });
    return { x: dx, y: dy, s: ds, z: dz, coneS, coneZ };
  }

  /** How far a direction may be followed, 1 being all of it, before a slack or a price leaves its cone. */
  private reach(d: Direction): number {
    let reach = Number.POSITIVE_INFINITY;
    for (let k = 0; k < this.m; k++) {
      if (d.s[k]! < 0) reach = Math.min(reach, -this.s[k]! / d.s[k]!);
      if (d.z[k]! < 0) reach = Math.min(reach, -this.z[k]! / d.z[k]!);
    }
    for (const [k, c] of this.cones.entries()) {
      reach = Math.min(reach, coneReach(c.s, d.coneS[k]!), coneReach(c.z, d.coneZ[k]!));
    }
    return reach;
  }

  private step(d: Direction, length: number): void {
    const move = (v: Float64Array, by: Float64Array) => {
      for (let i = 0; i < v.length; i++) v[i]! += length * by[i]!;
    };
    move(this.x, d.x);
    move(this.s, d.s);
    move(this.z, d.z);
    this.y += length * d.y;
    for (const [k, c] of this.cones.entries()) {
      move(c.s, d.coneS[k]!);
      move(c.z, d.coneZ[k]!);
    }
  }

  private answer(status: ConeAnswer['status']): ConeAnswer {
    const { n } = this;
    const x = Float64Array.from(this.question.lower);
    const shares = new Float64Array(x.length);
    for (const [k, i] of this.free.entries()) {
      x[i] = this.x[k]!;
      shares[i] = this.z[k]! - this.z[n + k]!;
    }
    return {
      status,
      x,
      rows: this.z.slice(2 * n),
      cones: Float64Array.from(this.cones, (c) => c.z[0]!),
      shares,
      sum: this.y,
    };
  }
}

interface Direction {
  readonly x: Float64Array;
  readonly y: number;
  readonly s: Float64Array;
  readonly z: Float64Array;
  readonly coneS: readonly Float64Array[];
  readonly coneZ: readonly Float64Array[];
}

/** (g . x + head, q x, last). */
function coneImage({ g, q }: Cone, x: Float64Array, head: number, last: number): Float64Array {
  const out = new Float64Array(x.length + 2);
  out[0] = dot(g, x) + head;
  for (let i = 0; i < x.length; i++) out[i + 1] = q[i]! * x[i]!;
  out[x.length + 1] = last;
  return out;
}

/**
 * All mixes that keep every rule: shares x with sum 100, column bounds and half-spaces, and where a confidence is
 * asked, cones. One HiGHS model for linear costs stays alive and is re-solved warm: only bounds and costs change. The
 * nearest mix comes from the rows' prices, and where those prove nothing from a quadratic model of HiGHS. Cones are asked
 * of an interior-point method; where that comes to nothing they are cut by tangent planes as they are met.
 */

import { type HalfSpace, type LinearBound, type Row, shortfall, tangent } from './bounds.ts';
import { type ConeAnswer, type ConeQuestion, type ConeRow, solveConeProgram } from './cone-program.ts';
import { type Highs, NoAnswer } from './highs.ts';
import { nearestPoint } from './min-norm.ts';
import { nearestShares } from './nearest-shares.ts';
import { polished } from './projection.ts';
import {
  COARSE_TOLERANCE,
  CONE_TOLERANCE,
  SMALLEST_FACTOR,
  SOLVER_TOLERANCE,
  SPAN_TOLERANCE,
} from './tolerances.ts';
import { dot, elementAt, entries, sparse, squaredDistance } from './vectors.ts';

/** Given shares keep a bound or a row that they miss by no more than this. */
const HELD = 1e-7;
/** A polished mix counts where it keeps everything this well, and is no further off than this, relatively. */
const POLISHED = 1e-8;
const NO_FURTHER = 1e-6;
const MOST_CUTS = 400;
/** A share this near to its bound, percent, may stand at it. */
const DUST = 1e-4;
/** How much more, relatively, a mix may cost whose shares stand at their bounds. */
const NO_DEARER = 1e-9;
/** A cone missed by more than this, scaled, is asked of the interior-point method, which keeps what it is asked as well. */
const NOT_MISSED = 1e-9;
/** A mix this near to a cone, scaled, stands on it. */
const TOUCHED = 1e-6;
/** How nearly the shares that miss cones least are found, relatively, and the most, scaled, that any may miss one by. */
const NEAR_MISS = 1e-5;
const MOST_MISSED = 1000;
/**
 * The solver's names for its simplex methods. From one linear cost to the next the last mix stays a mix, which is where
 * the primal method goes on from: all spans take half the time of the dual. Afresh the dual is the surer one.
 */
const PRIMAL = 4;
const DUAL = 1;
/** The quadratic solver can go round in circles where hardly any mix is left; a mix takes it some hundred steps. */
const MOST_QP_STEPS = 3000;

type Model = ReturnType<Highs['createModel']>;
type Answer = { readonly status: 'optimal'; readonly x: Float64Array } | { readonly status: 'infeasible' };

/** A cone, and which of the base half-spaces it is. */
interface ConeBound {
  readonly space: HalfSpace & ConeRow;
  readonly of: number;
}

/** What the last answer would gain if a bound gave way by one: for each bound (scaled as its row is), and each share. */
export interface Prices {
  readonly bounds: Float64Array;
  readonly shares: Float64Array;
}

/** A convex bound that is no single half-space, kept by tangent planes laid where it is missed. */
export interface Curve {
  /** How far it is missed; at most 0 where it is kept. */
  shortfall(x: ArrayLike<number>): number;
  /** A plane that every mix keeps and that cuts x off. */
  tangent(x: ArrayLike<number>): Row | undefined;
}

export class Polytope {
  readonly n: number;
  private readonly highs: Highs;
  /** The bounds' half-spaces, then rows and planes in the order in which they came up. */
  private readonly allRows: Row[];
  private readonly base: readonly HalfSpace[];
  private readonly curves: (Curve & { readonly of: number })[];
  private readonly required: Row[] = [];
  /** Which of the base half-spaces each row belongs to; -1 for rows that came in later on their own. */
  private readonly rowOf: number[];
  /** Rows that are no tangent planes of cones, and which base half-space each is; -1 for none. */
  private readonly straight: { readonly row: Row; readonly of: number }[];
  private readonly cones: readonly ConeBound[];
  /** The cones that any answer so far has missed: most are kept by themselves. */
  private readonly asked: ConeBound[] = [];
  private lastPrices: Prices | undefined;
  private lower: Float64Array;
  private upper: Float64Array;
  private linear?: Model;
  private quadratic?: Model;
  /** Lowest and highest shares among all mixes met so far under the present bounds. */
  private seen: { low: Float64Array; high: Float64Array } | undefined;

  /**
   * @param lower least shares, percent @param upper most shares, percent
   * @param bounds of rules; those of foods belong in `lower` and `upper`
   */
  constructor(highs: Highs, lower: Float64Array, upper: Float64Array, bounds: readonly LinearBound[]) {
    this.highs = highs;
    this.n = lower.length;
    this.lower = lower;
    this.upper = upper;
    this.base = bounds.map((s) => s.halfSpace(s.bound));
    this.allRows = [...this.base];
    this.rowOf = this.base.map((_, k) => k);
    this.straight = this.base.flatMap((row, of) => (row.cone ? [] : [{ row, of }]));
    this.cones = this.base.flatMap((space, of) =>
      space.cone ? [{ space: { ...space, cone: space.cone }, of }] : [],
    );
    this.curves = this.base.flatMap((space, k) =>
      space.cone ? [{ of: k, shortfall: (x) => shortfall(space, x), tangent: (x) => tangent(space, x) }] : [],
    );
  }

  /** All rows beyond the sum that have come up so far: they hold for every mix. The list only grows. */
  get rows(): readonly Row[] {
    return this.allRows;
  }

  /** Whether anything beyond rows bounds the mixes. */
  get isCurved(): boolean {
    return this.curves.length > 0;
  }

  /** Prices of the last answer, from the solver's duals; undefined before there is one. */
  prices(): Prices | undefined {
    return this.lastPrices;
  }

  /** Adds a row that every mix must keep from now on. */
  require(row: Row): void {
    this.required.push(row);
    this.cut(row);
  }

  /** Adds a convex bound that every mix must keep from now on. */
  requireCurve(curve: Curve): void {
    this.curves.push({ ...curve, of: -1 });
  }

  /** Lays tangent planes wherever the shares miss what is curved. @returns whether any was laid */
  separate(x: ArrayLike<number>, tolerance = CONE_TOLERANCE): boolean {
    return this.lay(x, tolerance, () => true);
  }

  /** Lays the tangent planes of the cones on which a mix stands: no plane says more of the mixes around it. */
  touch(x: ArrayLike<number>): void {
    this.lay(x, -TOUCHED, (of) => of >= 0);
  }

  /**
   * Where no mix is left: lays the tangent planes of the cones at the shares that miss them least, which no mix of these
   * bounds keeps, and hardly any of bounds like them. @returns whether such shares were found
   */
  touchNearest(): boolean {
    if (this.cones.length === 0) return false;
    const { n } = this;
    const wide = (v: Float64Array, last: number) => Float64Array.from([...v, last]);
    const answer = solveConeProgram({
      cost: wide(new Float64Array(n), 1),
      square: 0,
      shares: n,
      near: NEAR_MISS,
      lower: wide(this.lower, 0),
      upper: wide(this.upper, MOST_MISSED),
      rows: this.straight.map(({ row }) => ({ g: wide(row.g, 0), h: row.h })),
      cones: this.cones.map(({ space: { g, h, cone } }) => ({
        g: wide(g, 1),
        h,
        cone: { q: wide(cone.q, 0), q0: cone.q0 },
      })),
    });
    if (answer.status !== 'optimal') return false;
    this.lay(answer.x.subarray(0, n), -TOUCHED, (of) => of >= 0);
    return true;
  }

  private lay(x: ArrayLike<number>, tolerance: number, concerns: (of: number) => boolean): boolean {
    let laid = false;
    for (const curve of this.curves) {
      if (!concerns(curve.of)) continue;
      const plane = curve.shortfall(x) > tolerance ? curve.tangent(x) : undefined;
      if (!plane) continue;
      laid = true;
      this.cut(plane, curve.of);
    }
    return laid;
  }

  /** Narrows or widens the column bounds, keeping the basis. */
  setBounds(lower: Float64Array, upper: Float64Array): void {
    this.lower = lower;
    this.upper = upper;
    this.seen = undefined;
    for (const model of [this.linear, this.quadratic]) {
      model?.changeColsBounds({ kind: 'range', from: 0, to: this.n - 1 }, lower, upper);
    }
  }

  /** A mix of least linear cost. @param clean whether shares that stand at a bound must do so to the last digit */
  cheapest(cost: ArrayLike<number>, clean = false): Answer {
    const answer = this.insideCones(cost, 0, clean) ?? this.cheapestByPlanes(cost);
    if (answer.status === 'optimal') this.remember(answer.x);
    return answer;
  }

  /** The mix with the least sum of squared distances from `target`. */
  nearest(target: ArrayLike<number>): Answer {
    const cost = Float64Array.from(target, (t) => -2 * t);
    const inside = this.insideCones(cost, 2, true);
    if (inside?.status === 'optimal') return { status: 'optimal', x: this.polish(inside.x, target) };
    if (inside) return inside;
    const proven = this.nearestByPrices(target);
    if (proven) return proven;
    this.quadratic ??= this.create(true);
    const model = this.quadratic;
    model.changeColsCost({ kind: 'range', from: 0, to: this.n - 1 }, cost);
    try {
      const answer = this.cutUntilKept(model);
      if (answer.status !== 'optimal') return answer;
      return { status: 'optimal', x: this.polish(answer.x, target) };
    } catch {
      return this.nearestByCorners(target);
    }
  }

  /** The nearest mix by {@link nearestShares}; undefined where that is left open. */
  private nearestByPrices(target: ArrayLike<number>): Answer | undefined {
    const { lower, upper, allRows } = this;
    for (let round = 0; round <= MOST_CUTS; round++) {
      const answer = nearestShares({ target, lower, upper, total: 100, rows: allRows });
      if (answer.status === 'none') return { status: 'infeasible' };
      if (answer.status !== 'optimal') return undefined;
      if (this.separate(answer.x)) continue;
      this.lastPrices = this.pricesOf(answer.shares, answer.rows);
      return { status: 'optimal', x: this.polish(answer.x, target) };
    }
    return undefined;
  }

  private cheapestByPlanes(cost: ArrayLike<number>): Answer {
    this.linear ??= this.create(false);
    const model = this.linear;
    model.changeColsCost({ kind: 'range', from: 0, to: this.n - 1 }, Float64Array.from(cost));
    return this.cutUntilKept(model);
  }

  /** The answer of the interior-point method; undefined where there are no cones, or it comes to none. */
  private insideCones(cost: ArrayLike<number>, square: number, clean: boolean): Answer | undefined {
    if (this.cones.length === 0) return undefined;
    for (let round = 0; round < MOST_CUTS; round++) {
      const { lower, upper, asked } = this;
      const rows = this.straight.map(({ row }) => row);
      const cones = asked.map(({ space }) => space);
      const question = { cost, square, lower, upper, rows, cones };
      const answer = solveConeProgram(question);
      if (answer.status === 'open') {
        if (this.ask(this.cones)) continue;
        // Planes about where it came to leave little for further ones to do.
        this.touch(answer.x);
        return undefined;
      }
      if (answer.status === 'infeasible') return { status: 'infeasible' };
      if (this.ask(this.missedBy(answer.x))) continue;
      // What is curved and no cone is kept by planes here too.
      if (this.lay(answer.x, CONE_TOLERANCE, (of) => of < 0)) continue;
      const bounds = new Float64Array(this.base.length);
      for (const [k, { of }] of this.straight.entries()) if (of >= 0) bounds[of] = elementAt(answer.rows, k);
      for (const [k, { of }] of asked.entries()) bounds[of] = elementAt(answer.cones, k);
      this.lastPrices = { bounds, shares: answer.shares };
      const x = clean ? this.cleaned(question, answer) : answer.x;
      const isKept = this.missedBy(x).every((cone) => asked.includes(cone));
      return { status: 'optimal', x: isKept ? x : answer.x };
    }
    return undefined;
  }

  private missedBy(x: ArrayLike<number>): ConeBound[] {
    return this.cones.filter(({ space }) => shortfall(space, x) > NOT_MISSED);
  }

  /** Takes cones among those that are asked. @returns whether any was new */
  private ask(cones: readonly ConeBound[]): boolean {
    const fresh = cones.filter((cone) => !this.asked.includes(cone));
    this.asked.push(...fresh);
    return fresh.length > 0;
  }

  /**
   * The method comes near to a bound and never stands on it: shares that their bounds' prices hold there are put there,
   * and the rest is asked again. Kept only where it costs no more.
   */
  private cleaned(question: ConeQuestion, { x, shares }: ConeAnswer): Float64Array {
    const { cost, square } = question;
    const value = (v: Float64Array) => dot(cost, v) + (square / 2) * dot(v, v);
    const lower = question.lower.slice();
    const upper = question.upper.slice();
    for (const [i, share] of x.entries()) {
      const price = elementAt(shares, i);
      const [least, most] = [elementAt(lower, i), elementAt(upper, i)];
      if (share - least < DUST && price > share - least) upper[i] = least;
      else if (most - share < DUST && -price > most - share) lower[i] = most;
    }
    const answer = solveConeProgram({ ...question, lower, upper });
    const dearer = value(answer.x) - value(x);
    return answer.status === 'optimal' && dearer <= NO_DEARER * (1 + Math.abs(value(x))) ? answer.x : x;
  }

  /** Where the quadratic solver comes to no answer: the same mix from linear questions, slower and surer. */
  private nearestByCorners(target: ArrayLike<number>): Answer {
    if (this.cheapest(new Float64Array(this.n)).status !== 'optimal') return { status: 'infeasible' };
    const corner = (cost: Float64Array) => {
      const answer = this.cheapest(cost);
      if (answer.status !== 'optimal') throw new NoAnswer();
      return answer.x;
    };
    return { status: 'optimal', x: this.polish(nearestPoint(corner, Float64Array.from(target)), target) };
  }

  /** Lowest and highest share of one food over all mixes. The polytope must not be empty. */
  span(i: number): readonly [number, number] {
    const end = (sign: 1 | -1): number => {
      const limit = elementAt(sign === 1 ? this.lower : this.upper, i);
      const met = sign === 1 ? this.seen?.low[i] : this.seen?.high[i];
      const atLimit = (share: number) =>
        Math.abs(share - limit) <= (this.cones.length > 0 ? SPAN_TOLERANCE : SOLVER_TOLERANCE);
      // A mix already met that stands at the share's own bound proves that end without a solve.
      if (met !== undefined && atLimit(met)) return limit;
      const cost = new Float64Array(this.n);
      cost[i] = sign;
      const answer = this.cheapest(cost);
      if (answer.status !== 'optimal') return Number.NaN;
      const share = elementAt(answer.x, i);
      return atLimit(share) ? limit : share;
    };
    return [end(1), end(-1)];
  }

  /** Whether given shares keep every row, bound and cone, and add up to 100. */
  holds(x: ArrayLike<number>, tolerance = HELD): boolean {
    let sum = 0;
    for (let i = 0; i < this.n; i++) {
      if (x[i]! < this.lower[i]! - tolerance || x[i]! > this.upper[i]! + tolerance) return false;
      sum += x[i]!;
    }
    return (
      Math.abs(sum - 100) <= tolerance &&
      this.base.every((space) => shortfall(space, x) <= tolerance) &&
      this.required.every((row) => row.h - dot(row.g, x) <= tolerance)
    );
  }

  dispose(): void {
    this.linear?.dispose();
    this.quadratic?.dispose();
    this.linear = undefined;
    this.quadratic = undefined;
  }

  private create(quadratic: boolean): Model {
    const rows = [{ g: new Float64Array(this.n).fill(1), h: 100 }, ...this.allRows];
    const { n } = this;
    const model = this.highs.createModel({
      numCols: n,
      numRows: rows.length,
      colCost: new Float64Array(n),
      colLower: this.lower,
      colUpper: this.upper,
      rowLower: rows.map((r) => r.h),
      rowUpper: rows.map((_, i) => (i === 0 ? 100 : Number.POSITIVE_INFINITY)),
      matrix: sparse(
        rows.map((r) => r.g),
        n,
      ),
      ...(quadratic
        ? {
            hessian: {
              format: 'triangular' as const,
              dimension: n,
              starts: Array.from({ length: n + 1 }, (_, i) => i),
              indices: Array.from({ length: n }, (_, i) => i),
              values: new Float64Array(n).fill(2),
            },
          }
        : {}),
    });
    model.options.set({
      output_flag: false,
      presolve: 'off',
      primal_feasibility_tolerance: SOLVER_TOLERANCE,
      dual_feasibility_tolerance: SOLVER_TOLERANCE,
      ...(quadratic
        ? { qp_iteration_limit: MOST_QP_STEPS }
        : { solver: 'simplex', simplex_strategy: PRIMAL, small_matrix_value: SMALLEST_FACTOR }),
    });
    return model;
  }

  /** Runs a model, adding a tangent plane wherever a cone is missed, until none is. */
  private cutUntilKept(model: Model): Answer {
    for (let round = 0; ; round++) {
      const x = this.run(model);
      if (!x) return { status: 'infeasible' };
      if (!this.separate(x) || round >= MOST_CUTS) return { status: 'optimal', x };
    }
  }

  /** A tangent plane is valid for every mix, so both models may keep it. */
  private cut(plane: Row, of = -1): void {
    this.allRows.push(plane);
    this.rowOf.push(of);
    if (of < 0) this.straight.push({ row: plane, of });
    const kept = entries(plane.g);
    for (const model of [this.linear, this.quadratic]) {
      model?.addRow(plane.h, Number.POSITIVE_INFINITY, kept);
    }
  }

  private run(model: Model): Float64Array | undefined {
    const { modelStatus: code } = this.highs.constants;
    const last = 2;
    for (let attempt = 0; attempt <= last; attempt++) {
      // A basis left from another question can trip the solver; it then starts afresh.
      if (attempt > 0) {
        model.clearSolver();
        model.options.set('simplex_strategy', DUAL);
      }
      // Where almost no mix is left (a share held at the end of its span) the finest tolerance defeats it.
      if (attempt === last) model.options.set('primal_feasibility_tolerance', COARSE_TOLERANCE);
      try {
        const { modelStatus } = model.run();
        if (modelStatus === code.optimal) {
          const { colValue, colDual, rowDual } = model.getSolution();
          // The sum comes first.
          this.lastPrices = this.pricesOf(colDual, rowDual.subarray(1));
          return colValue;
        }
        if (modelStatus === code.infeasible && attempt > 0) return undefined;
      } catch (error) {
        if (attempt === last) throw new NoAnswer(error);
      } finally {
        if (attempt > 0) model.options.set('simplex_strategy', PRIMAL);
        if (attempt === last) model.options.set('primal_feasibility_tolerance', SOLVER_TOLERANCE);
      }
    }
    throw new NoAnswer();
  }

  private pricesOf(shares: Float64Array, rows: Float64Array): Prices {
    const bounds = new Float64Array(this.base.length);
    // A tangent plane's price is its bound's.
    for (const [row, k] of this.rowOf.entries()) {
      if (k >= 0) bounds[k] = elementAt(bounds, k) + (rows[row] ?? 0);
    }
    return { bounds, shares };
  }

  /** The nearest mix to full precision; kept only where it is a mix and no further off. */
  private polish(x: Float64Array, target: ArrayLike<number>): Float64Array {
    const sum = { g: new Float64Array(this.n).fill(1), h: 100 };
    const planes = this.cones.flatMap(({ space }) =>
      shortfall(space, x) > -TOUCHED ? (tangent(space, x) ?? []) : [],
    );
    const rows = [...(this.cones.length > 0 ? this.straight.map(({ row }) => row) : this.allRows), ...planes];
    const better = polished(x, target, { lower: this.lower, upper: this.upper, sum, rows });
    if (!better) return x;
    const before = squaredDistance(x, target);
    const nearer = squaredDistance(better, target) <= before + NO_FURTHER * (1 + before);
    return nearer && this.holds(better, POLISHED) ? better : x;
  }

  private remember(x: Float64Array): void {
    if (!this.seen) {
      this.seen = { low: x.slice(), high: x.slice() };
      return;
    }
    for (let i = 0; i < this.n; i++) {
      this.seen.low[i] = Math.min(this.seen.low[i]!, x[i]!);
      this.seen.high[i] = Math.max(this.seen.high[i]!, x[i]!);
    }
  }
}

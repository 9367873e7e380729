/**
 * All batches that keep the rules, in grams, their total left open: the questions that have no fixed total (how small
 * or large a batch can be, between which grams the next food may lie, by how little rules must be missed). One HiGHS
 * model stays alive; only bounds and costs change. What a confidence makes curved is cut by tangent planes as it is
 * met; a cone in the shares is one in the grams.
 */

import { type HalfSpace, shortfall, tangent } from '../../formulation/solve/bounds.ts';
import type { Highs } from '../../formulation/solve/highs.ts';
import { elementAt, entries, sparse } from '../../formulation/solve/vectors.ts';
import { type BatchRules, partOfBound, sharesOf } from './batch-rules.ts';

const TOLERANCE = 1e-9;
/** How far (scaled) grams may lie outside a cone before another tangent plane is laid. */
const CONE_TOLERANCE = 1e-8;
const MOST_CUTS = 400;

interface GramBounds {
  /** Least and most grams of each food. */
  readonly lower: ArrayLike<number>;
  readonly upper: ArrayLike<number>;
  /** Least and most of the whole batch, g. */
  readonly total: readonly [number, number];
}

/** A row `a . y >= 0` over grams: of a rule's side, or of a food's least or most share. */
interface Row {
  readonly a: Float64Array;
  /** What a miss of one (as the row is scaled) in a batch of 100 g is in parts of the bound. */
  readonly weight: number;
}

type Model = ReturnType<Highs['createModel']>;

export class GramSpace {
  private readonly highs: Highs;
  private readonly n: number;
  private readonly spaces: readonly HalfSpace[];
  /** The rules' rows, then those of the foods' least and most shares. Each has a column for its miss. */
  private readonly rows: readonly Row[];
  private readonly model: Model;
  private readonly cost: Float64Array;

  /** @param least shares, percent, that the foods may not fall below (with what counting rules need) */
  constructor(highs: Highs, rules: BatchRules, least: ArrayLike<number>) {
    this.highs = highs;
    this.n = rules.size;
    this.spaces = rules.spaces;
    const ruled = rules.spaces.map((space, k) =>
      row(homogeneous(space), partOfBound(space.scale, elementAt(rules.bounds, k).bound)),
    );
    const shares = rules.ids.flatMap((_, i) => {
      const bound = (share: number, sign: 1 | -1) =>
        row(
          Float64Array.from({ length: this.n }, (_, j) => sign * ((i === j ? 1 : 0) - share / 100)),
          partOfBound(1, share),
        );
      const [from, to] = [elementAt(least, i), elementAt(rules.upper, i)];
      return [...(from > 0 ? [bound(from, 1)] : []), ...(to < 100 ? [bound(to, -1)] : [])];
    });
    this.rows = [...ruled, ...shares];
    this.cost = new Float64Array(this.n + this.rows.length);
    this.model = this.create();
  }

  dispose(): void {
    this.model.dispose();
  }

  /** Grams of least cost; undefined where none keep the rules. */
  least(cost: (column: number) => number, bounds: GramBounds): Float64Array | undefined {
    const m = this.rows.length;
    for (let i = 0; i < this.n; i++) this.cost[i] = cost(i);
    this.cost.fill(0, this.n);
    return this.ask(bounds, new Float64Array(m));
  }

  /** The wanted total; else the next larger one that serves, else the next smaller; undefined where none does. */
  total(wanted: number, bounds: GramBounds): number | undefined {
    const [low, high] = bounds.total;
    const end = (sign: 1 | -1, total: readonly [number, number]) =>
      this.least(() => sign, { ...bounds, total })?.reduce((a, b) => a + b, 0);
    const larger = end(1, [Math.max(low, wanted), high]);
    if (larger !== undefined) return larger <= wanted + 1e-6 ? Math.max(wanted, low) : larger;
    return end(-1, [low, Math.min(high, wanted)]);
  }

  /**
   * Grams of a given total by which the rules are missed least, each miss in parts of its bound.
   * @returns undefined where not even the grams' own bounds can be kept
   */
  leastMiss(
    bounds: Omit<GramBounds, 'total'>,
    total: number,
  ): { grams: Float64Array; miss: number } | undefined {
    const m = this.rows.length;
    this.cost.fill(0, 0, this.n);
    this.rows.forEach((r, k) => {
      this.cost[this.n + k] = (r.weight * 100) / total;
    });
    const grams = this.ask(
      { ...bounds, total: [total, total] },
      new Float64Array(m).fill(Number.POSITIVE_INFINITY),
    );
    return grams && { grams, miss: this.model.getObjectiveValue() };
  }

  private ask(bounds: GramBounds, misses: Float64Array): Float64Array | undefined {
    if (bounds.total[0] > bounds.total[1]) return undefined;
    const { model, n } = this;
    const m = this.rows.length;
    const last = n + m - 1;
    model.changeColsCost({ kind: 'range', from: 0, to: last }, this.cost);
    const lower = new Float64Array(n + m);
    const upper = new Float64Array(n + m);
    lower.set(bounds.lower);
    upper.set(bounds.upper);
    upper.set(misses, n);
    model.changeColsBounds({ kind: 'range', from: 0, to: last }, lower, upper);
    model.changeRowBounds(0, bounds.total[0], bounds.total[1]);
    for (let round = 0; ; round++) {
      if (!this.run()) return undefined;
      const values = model.getSolution().colValue;
      const y = values.slice(0, n);
      if (!this.separate(y, values.subarray(n)) || round >= MOST_CUTS) return y;
    }
  }

  /** Tangent planes where a cone is missed by more than is allowed for. @returns whether any was laid */
  private separate(y: Float64Array, missed: ArrayLike<number>): boolean {
    const shares = sharesOf(y);
    if (!shares) return false;
    const total = y.reduce((a, b) => a + b, 0);
    let laid = false;
    this.spaces.forEach((space, k) => {
      if (!space.cone) return;
      const scale = largest(homogeneous(space));
      const allowed = (elementAt(missed, k) * scale * 100) / total;
      if (shortfall(space, shares) - allowed <= CONE_TOLERANCE) return;
      const plane = tangent(space, shares);
      if (!plane) return;
      laid = true;
      const cut = entries(homogeneous(plane).map((v) => v / scale));
      this.model.addRow(0, Number.POSITIVE_INFINITY, {
        indices: [...cut.indices, this.n + k],
        values: [...cut.values, 1],
      });
    });
    return laid;
  }

  /** @returns false where there are none, or where the solver finds none whichever way it is asked */
  private run(): boolean {
    const { optimal, infeasible } = this.highs.constants.modelStatus;
    const { options } = this.model;
    // A basis left from another question can trip the solver; it then starts afresh, and at last less finely.
    for (const attempt of [0, 1, 2]) {
      if (attempt > 0) this.model.clearSolver();
      if (attempt === 2) options.set({ primal_feasibility_tolerance: 1e-7, presolve: 'on' });
      try {
        const { modelStatus } = this.model.run();
        if (modelStatus === optimal) return true;
        if (modelStatus === infeasible && attempt > 0) return false;
      } catch {
        // It is asked again, another way.
      } finally {
        if (attempt === 2) options.set({ primal_feasibility_tolerance: TOLERANCE, presolve: 'off' });
      }
    }
    return false;
  }

  private create(): Model {
    const { n, rows } = this;
    const m = rows.length;
    const whole = [
      Float64Array.from({ length: n + m }, (_, j) => Number(j < n)),
      ...rows.map(({ a }, k) => Float64Array.from([...a, ...rows.map((_, j) => Number(j === k))])),
    ];
    const model = this.highs.createModel({
      numCols: n + m,
      numRows: m + 1,
      colCost: new Float64Array(n + m),
      colLower: new Float64Array(n + m),
      colUpper: new Float64Array(n + m),
      rowLower: new Float64Array(m + 1),
      rowUpper: new Float64Array(m + 1).fill(Number.POSITIVE_INFINITY),
      matrix: sparse(whole, n + m),
    });
    model.options.set({
      output_flag: false,
      presolve: 'off',
      solver: 'simplex',
      small_matrix_value: 1e-12,
      primal_feasibility_tolerance: TOLERANCE,
      dual_feasibility_tolerance: TOLERANCE,
    });
    return model;
  }
}

/** A half-space over shares as a row over grams of any total. */
function homogeneous({ g, h }: { readonly g: Float64Array; readonly h: number }): Float64Array {
  return g.map((v) => v - h / 100);
}

function largest(a: Float64Array): number {
  let most = 0;
  for (const v of a) most = Math.max(most, Math.abs(v));
  return most || 1;
}

function row(a: Float64Array, weight: number): Row {
  const scale = largest(a);
  return { a: a.map((v) => v / scale), weight: weight * scale };
}

/**
 * The problem with every bound made elastic: each may be missed at a price. One HiGHS model answers, warm, whether
 * any chosen set of bounds can be kept together, which bounds are missed, by how little one bound must give way, and
 * what a further food would change. Only "shares add up to 100" and "no share below 0" stay rigid.
 */

import type { FoodAmounts } from '../amounts/food-amounts.ts';
import { type HalfSpace, type LinearBound, shortfall, tangent } from '../solve/bounds.ts';
import type { Highs } from '../solve/highs.ts';
import { CONE_TOLERANCE, SMALLEST_FACTOR, SOLVER_TOLERANCE } from '../solve/tolerances.ts';
import { elementAt, entries, sparse } from '../solve/vectors.ts';

/** A bound counts as kept when it is missed by no more than this (scaled): twice what a cone may be missed by. */
export const KEPT = 2e-8;
const MOST_CUTS = 300;

type Model = ReturnType<Highs['createModel']>;

interface ElasticAnswer {
  readonly x: Float64Array;
  /** How far each bound is missed, scaled. */
  readonly missed: Float64Array;
  /** Sum of what the bounds are missed by, as the solver has it: also where a further food takes part. */
  readonly total: number;
  /** Price of each model row (the sum first), for pricing further foods. */
  readonly prices: Float64Array;
}

export interface Trial {
  readonly share?: number;
  readonly prices?: Float64Array;
  readonly worth: number;
}

export class Elastic {
  readonly bounds: readonly LinearBound[];
  private readonly highs: Highs;
  private readonly model: Model;
  private readonly n: number;
  private readonly spaces: HalfSpace[];
  /** Which bound each model row after the sum belongs to, and its multiplier for a further food's content. */
  private readonly boundOfRow: number[];

  constructor(highs: Highs, n: number, bounds: readonly LinearBound[]) {
    this.highs = highs;
    this.bounds = bounds;
    this.n = n;
    this.spaces = bounds.map((s) => s.halfSpace(s.bound));
    this.boundOfRow = bounds.map((_, k) => k);
    this.model = this.create();
  }

  get hasCones(): boolean {
    return this.spaces.some((space) => space.cone !== undefined);
  }

  /** What one unit of a bound's scaled row is in its bound's own unit. */
  scaleOf(k: number): number {
    return elementAt(this.spaces, k).scale;
  }

  dispose(): void {
    this.model.dispose();
  }

  /**
   * Least total miss with the bounds in `required` kept, the rest priced by `price` (1 each unless given).
   * @returns undefined when the required bounds alone cannot be kept
   */
  solve(required: ReadonlySet<number>, price: (k: number) => number = () => 1): ElasticAnswer | undefined {
    const m = this.bounds.length;
    const at = { kind: 'range' as const, from: this.n, to: this.n + m - 1 };
    if (m > 0) {
      this.model.changeColsCost(
        at,
        Float64Array.from({ length: m }, (_, k) => price(k)),
      );
      this.model.changeColsBounds(
        at,
        new Float64Array(m),
        Float64Array.from({ length: m }, (_, k) => (required.has(k) ? 0 : Number.POSITIVE_INFINITY)),
      );
    }
    for (let round = 0; ; round++) {
      if (!this.run()) return undefined;
      const solution = this.model.getSolution();
      const x = solution.colValue.slice(0, this.n);
      const slack = solution.colValue.slice(this.n, this.n + m);
      let cut = false;
      this.spaces.forEach((space, k) => {
        if (!space.cone || (!required.has(k) && price(k) === 0)) return;
        if (shortfall(space, x) - elementAt(slack, k) <= CONE_TOLERANCE) return;
        const plane = tangent(space, x);
        if (!plane) return;
        cut = true;
        this.addRow(plane.g, plane.h, k);
      });
      if (cut && round < MOST_CUTS) continue;
      const missed = Float64Array.from(this.spaces, (space) => Math.max(0, shortfall(space, x)));
      return { x, missed, total: slack.reduce((a, b) => a + b, 0), prices: solution.rowDual.slice() };
    }
  }

  /** Whether a set of bounds can be kept together. */
  possible(required: ReadonlySet<number>): boolean {
    return this.solve(required, () => 0) !== undefined;
  }

  /** Puts another number in a bound's place: its row changes with it. */
  rebound(k: number, bound: number): void {
    const space = elementAt(this.bounds, k).halfSpace(bound);
    this.spaces[k] = space;
    // The slack keeps its column; only the content's coefficients and the bound change.
    for (const [i, v] of space.g.entries()) this.model.changeCoefficient(k + 1, i, v);
    this.model.changeRowBounds(k + 1, space.h, Number.POSITIVE_INFINITY);
    // Planes that touched the old cone say nothing about the new one.
    this.boundOfRow.forEach((bound, row) => {
      if (bound === k && row >= this.bounds.length) {
        this.model.changeRowBounds(row + 1, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY);
      }
    });
  }

  /** What one percent of a further food adds to the sum and to each bound, scaled as the rows are. */
  contentOf(candidate: FoodAmounts): Float64Array {
    const content = new Float64Array(this.bounds.length + 1);
    content[0] = 1;
    this.bounds.forEach((bound, k) => {
      content[k + 1] = bound.coefficient(bound.bound, candidate) / this.scaleOf(k);
    });
    return content;
  }

  /** Prices of the model's rows, those of tangent planes added to their bound's: one for the sum and one for each bound. */
  byBound(prices: ArrayLike<number>): Float64Array {
    const told = new Float64Array(this.bounds.length + 1);
    told[0] = elementAt(prices, 0);
    for (const [row, k] of this.boundOfRow.entries())
      told[k + 1] = elementAt(told, k + 1) + elementAt(prices, row + 1);
    return told;
  }

  /**
   * Least share of a further food with every bound kept, undefined when it does not help; and prices, by bound,
   * with their worth, that bound the share of any other food (see `price-foods.ts`).
   */
  leastShare(content: ArrayLike<number>): Trial {
    const { model, n } = this;
    const m = this.bounds.length;
    // -1 stands for the sum, which comes first.
    const column = Float64Array.from([-1, ...this.boundOfRow], (k) => elementAt(content, k + 1));
    model.addCol(1, 0, Number.POSITIVE_INFINITY, entries(column));
    try {
      const least = this.solve(new Set(this.bounds.keys()), () => 0);
      if (least) {
        const share = elementAt(model.getSolution().colValue, n + m);
        return { share, prices: this.byBound(least.prices), worth: share };
      }
      // It does not help; what would still be missing with it tells how little others can do.
      model.changeColsCost({ kind: 'range', from: n + m, to: n + m }, [0]);
      const short = this.solve(new Set());
      return short ? { prices: this.byBound(short.prices), worth: short.total } : { worth: 0 };
    } finally {
      model.deleteCols({ kind: 'range', from: n + m, to: n + m });
    }
  }

  private addRow(g: Float64Array, h: number, bound: number): void {
    const indices = [...g.keys(), this.n + bound];
    this.model.addRow(h, Number.POSITIVE_INFINITY, { indices, values: [...g, 1] });
    this.boundOfRow.push(bound);
  }

  private run(): boolean {
    const { optimal, infeasible } = this.highs.constants.modelStatus;
    for (const fresh of [false, true]) {
      if (fresh) this.model.clearSolver();
      const { modelStatus } = this.model.run();
      if (modelStatus === optimal) return true;
      if (modelStatus === infeasible && fresh) return false;
    }
    return false;
  }

  private create(): Model {
    const { n } = this;
    const m = this.bounds.length;
    const sum = Float64Array.from({ length: n + m }, (_, j) => (j < n ? 1 : 0));
    const elastic = this.spaces.map((space, k) =>
      Float64Array.from([...space.g, ...this.spaces.map((_, j) => Number(j === k))]),
    );
    const model = this.highs.createModel({
      numCols: n + m,
      numRows: m + 1,
      colCost: new Float64Array(n + m),
      colLower: new Float64Array(n + m),
      colUpper: Float64Array.from({ length: n + m }, () => Number.POSITIVE_INFINITY),
      rowLower: [100, ...this.spaces.map((s) => s.h)],
      rowUpper: [100, ...this.spaces.map(() => Number.POSITIVE_INFINITY)],
      matrix: sparse([sum, ...elastic], n + m),
    });
    model.options.set({
      output_flag: false,
      presolve: 'off',
      solver: 'simplex',
      small_matrix_value: SMALLEST_FACTOR,
      primal_feasibility_tolerance: SOLVER_TOLERANCE,
      dual_feasibility_tolerance: SOLVER_TOLERANCE,
    });
    return model;
  }
}

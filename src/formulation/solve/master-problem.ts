/**
 * The mixed-integer program behind {@link OuterApproximation}, which chooses the foods that are used, counted and
 * bought. What is curved it knows by tangents alone.
 */

import type { Row } from './bounds.ts';
import { NoAnswer } from './highs.ts';
import type { IntegerQuestion } from './integer-question.ts';
import { endingAfter, type SearchWatch } from './iteration-limit.ts';
import { type Cost, MasterLayout, type MasterRow } from './master-layout.ts';
import type { Polytope } from './polytope.ts';
import { PROVEN_GAP, SMALLEST_FACTOR, SOLVER_TOLERANCE } from './tolerances.ts';
import { dot, elementAt, entries, sparse } from './vectors.ts';

export interface Picked {
  readonly x: Float64Array;
  /** Cost of this choice, without the constant. */
  readonly value: number;
  /** No choice costs less; with the constant. */
  readonly bound: number;
  readonly proven: boolean;
  /** All columns. */
  readonly columns: Float64Array;
}

/**
 * A choice not proven best after so many simplex iterations is taken with the gap that is left. Of 150 mixes measured,
 * of 4 to 38 foods with counting rules and aims, none takes more than 2,000; a second is some 7,000.
 */
const MOST_ITERATIONS = 40_000;
/** Where the tangents of each square are laid at first, as parts of the greatest share. */
const FIRST_TANGENTS = [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1];
/** Tangents closer to each other than this, percent, are as good as one. */
const SAME_TANGENT = 1e-6;

type Model = ReturnType<IntegerQuestion['highs']['createModel']>;

export class MasterProblem {
  private readonly question: IntegerQuestion;
  private readonly polytope: Polytope;
  private readonly n: number;
  private readonly layout: MasterLayout;
  private readonly model: Model;
  /** Columns that are 0 or 1 and not yet decided. */
  private readonly binaries: readonly number[];
  /** How many of the polytope's rows the model has. */
  private rowsTaken: number;
  private readonly tangents: number[][];

  /** @param polytope whose rows, with the tangent planes it gathers, hold here too */
  constructor(question: IntegerQuestion, polytope: Polytope) {
    this.question = question;
    this.polytope = polytope;
    this.n = question.lower.length;
    this.layout = new MasterLayout(question);
    const { width } = this.layout;
    this.tangents = Array.from({ length: this.n }, () => []);
    const rows = [...this.layout.firstRows(), ...polytope.rows.map((r) => this.layout.polytopeRow(r))];
    this.rowsTaken = polytope.rows.length;
    const { lower, upper } = this.layout.columnBounds();
    this.binaries = this.layout.binaries({ lower, upper });
    const binary = new Set(this.binaries);
    this.model = question.highs.createModel({
      numCols: width,
      numRows: rows.length,
      colCost: new Float64Array(width),
      colLower: lower,
      colUpper: upper,
      rowLower: rows.map((r) => r.min),
      rowUpper: rows.map((r) => r.max),
      matrix: sparse(
        rows.map((r) => r.g),
        width,
      ),
      ...(this.binaries.length > 0
        ? { integrality: Array.from({ length: width }, (_, c) => (binary.has(c) ? 1 : 0) as 0 | 1) }
        : {}),
    });
    this.model.options.set({
      output_flag: false,
      mip_rel_gap: 0,
      mip_abs_gap: PROVEN_GAP,
      mip_feasibility_tolerance: SOLVER_TOLERANCE,
      primal_feasibility_tolerance: SOLVER_TOLERANCE,
      dual_feasibility_tolerance: SOLVER_TOLERANCE,
      small_matrix_value: SMALLEST_FACTOR,
      // Restarts cost these small programs more than they bring (measured: up to twice the time).
      mip_allow_restart: false,
    });
  }

  dispose(): void {
    this.model.dispose();
  }

  /**
   * A choice of least cost; undefined where there is none.
   * @param watch told of a bound with the cost's constant, and of the shares of ever better choices, not yet settled
   */
  solve(cost: Cost, watch?: SearchWatch): Picked | undefined {
    const { rows } = this.polytope;
    for (const row of rows.slice(this.rowsTaken)) this.addRow(this.layout.polytopeRow(row));
    this.rowsTaken = rows.length;
    const { model } = this;
    const { highs } = this.question;
    model.changeColsCost({ kind: 'range', from: 0, to: this.layout.width - 1 }, this.layout.costRow(cost));
    const { modelStatus: code } = highs.constants;
    const watched: SearchWatch | undefined = watch && {
      bound: (value) => watch.bound?.(value + (cost.constant ?? 0)),
      better: (columns) => watch.better?.(columns.slice(0, this.n)),
    };
    for (const fresh of [false, true]) {
      if (fresh) model.clearSolver();
      const modelStatus = this.run(watched);
      const known = modelStatus === code.optimal || modelStatus === code.interrupted;
      if (known && model.info.get('primal_solution_status') === 2)
        return this.picked(cost, modelStatus === code.optimal);
      // A basis left from another question can trip the solver; it then starts afresh.
      if (modelStatus === code.infeasible && fresh) return undefined;
    }
    throw new NoAnswer();
  }

  /** Status of a run; undefined where the solver broke off. */
  private run(watch: SearchWatch | undefined): number | undefined {
    try {
      return this.model.run(endingAfter(this.question.highs, MOST_ITERATIONS, watch)).modelStatus;
    } catch {
      return undefined;
    }
  }

  /** The cost of the distance from a target: the sum of (x - target) squared. */
  near(target: Float64Array): Cost {
    for (const [i, most] of this.question.upper.entries()) {
      for (const part of FIRST_TANGENTS) this.lay(i, part * most);
    }
    this.touch(target);
    return { shares: target.map((t) => -2 * t), squares: 1, constant: dot(target, target) };
  }

  /** Lays the tangents of the squares at given shares, so that the distance is known exactly there. */
  touch(x: ArrayLike<number>): void {
    if (this.tangents.some((t) => t.length > 0)) for (let i = 0; i < this.n; i++) this.lay(i, x[i]!);
  }

  /** No choice may cost more than this from now on; for costs that are not about shares alone. */
  hold(cost: Cost, most: number): void {
    this.addRow({ g: this.layout.costRow(cost), min: Number.NEGATIVE_INFINITY, max: most });
  }

  /** Never this choice of foods again. */
  forbid({ columns }: Picked): void {
    const g = new Float64Array(this.layout.width);
    let ones = 0;
    for (const c of this.binaries) {
      const on = columns[c]! > 0.5;
      g[c] = on ? -1 : 1;
      ones += Number(on);
    }
    this.addRow({ g, min: 1 - ones, max: Number.POSITIVE_INFINITY });
  }

  /** What a choice leaves of each share's bounds. */
  boundsOf(picked: Picked): { lower: Float64Array; upper: Float64Array } {
    const lower = this.question.lower.slice();
    this.leastShares(picked, (i, atLeast) => {
      lower[i] = Math.max(lower[i]!, atLeast);
    });
    return { lower, upper: this.mostOf(picked) };
  }

  /** The most that a choice leaves of each share. */
  mostOf({ columns }: Picked): Float64Array {
    const { onHand } = this.question;
    const upper = this.question.upper.slice();
    for (let i = 0; i < this.n; i++) {
      if (columns[this.layout.used(i)]! <= 0.5) upper[i] = 0;
      if (columns[this.layout.bought(i)]! <= 0.5) upper[i] = Math.min(upper[i]!, onHand[i]!);
    }
    return upper;
  }

  /** The least that a choice asks of shares, where those are percent of a mix that is a part of all columns. */
  leastRows(picked: Picked): Row[] {
    const rows: Row[] = [];
    this.leastShares(picked, (i, atLeast) => {
      const g = new Float64Array(this.n);
      for (const j of this.question.mix ?? []) g[j] = Number(j === i) - atLeast / 100;
      rows.push({ g, h: 0 });
    });
    return rows;
  }

  private leastShares({ columns }: Picked, tell: (i: number, atLeast: number) => void): void {
    const on = (column: number) => columns[column]! > 0.5;
    for (const { counts: kind, columns: members, atLeast } of this.question.counts) {
      if (kind !== 'used') continue;
      for (const i of members) if (on(this.layout.used(i))) tell(i, atLeast);
    }
    this.layout.counters.forEach(({ columns: members, atLeast }, k) => {
      for (const i of members) if (on(this.layout.counted(k, i))) tell(i, atLeast);
    });
  }

  private picked(cost: Cost, proven: boolean): Picked {
    const columns = this.model.getSolution().colValue;
    const constant = cost.constant ?? 0;
    const value = dot(this.layout.costRow(cost), columns);
    const bound = proven ? value : (this.model.info.get('mip_dual_bound') as number);
    return { x: columns.slice(0, this.n), value, bound: bound + constant, proven, columns };
  }

  /** The tangent of a food's square at a share p, drawn in where the food is not used: s >= 2 p x - p^2 z. */
  private lay(i: number, p: number): void {
    const laid = elementAt(this.tangents, i);
    if (p <= SAME_TANGENT || laid.some((other) => Math.abs(other - p) < SAME_TANGENT)) return;
    laid.push(p);
    const g = new Float64Array(this.layout.width);
    g[this.layout.square(i)] = 1;
    g[i] = -2 * p;
    g[this.layout.used(i)] = p * p;
    this.addRow({ g, min: 0, max: Number.POSITIVE_INFINITY });
  }

  private addRow({ g, min, max }: MasterRow): void {
    this.model.addRow(min, max, entries(g));
  }
}

/**
 * The mixed-integer program behind {@link OuterApproximation}. Columns: the share of each food, its square, whether it is used,
 * whether it counts for each rule that counts, what of it comes from the cupboard, and whether it must be bought.
 */

import type { CountBound } from './counting.ts';
import type { IntegerQuestion } from './integer-question.ts';
import { endingAfter } from './iteration-limit.ts';
import type { Polytope, Row } from './polytope.ts';
import { PROVEN_GAP, SMALLEST_FACTOR, SOLVER_TOLERANCE } from './tolerances.ts';
import { dot, entries, sparse } from './vectors.ts';

/** A linear cost, made least: each part by food, or one number for all foods. */
export interface Cost {
  readonly shares?: Float64Array;
  readonly squares?: number;
  readonly constant?: number;
  readonly used?: number;
  readonly bought?: number;
  readonly fromCupboard?: number;
}

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
  private readonly width: number;
  private readonly model: Model;
  /** Columns that are 0 or 1 and not yet decided. */
  private readonly binaries: readonly number[];
  private readonly counters: readonly CountBound[];
  /** How many of the polytope's rows the model has. */
  private rowsTaken: number;
  private readonly tangents: number[][];

  /** @param polytope whose rows, with the tangent planes it gathers, hold here too */
  constructor(question: IntegerQuestion, polytope: Polytope) {
    this.question = question;
    this.polytope = polytope;
    this.n = question.lower.length;
    this.counters = question.counts.filter((c) => c.counts === 'some');
    this.width = (5 + this.counters.length) * this.n;
    this.tangents = Array.from({ length: this.n }, () => []);
    const rows = [...this.firstRows(), ...polytope.rows.map((r) => this.polytopeRow(r))];
    this.rowsTaken = polytope.rows.length;
    const { lower, upper } = this.columnBounds();
    const free = (column: number) => column >= 2 * this.n && lower[column] !== upper[column];
    const isBinary = (column: number) => free(column) && Math.floor(column / this.n) !== 3;
    this.binaries = Array.from({ length: this.width }, (_, c) => c).filter(isBinary);
    this.model = question.highs.createModel({
      numCols: this.width,
      numRows: rows.length,
      colCost: new Float64Array(this.width),
      colLower: lower,
      colUpper: upper,
      rowLower: rows.map((r) => r.min),
      rowUpper: rows.map((r) => r.max),
      matrix: sparse(
        rows.map((r) => r.g),
        this.width,
      ),
      ...(this.binaries.length > 0
        ? { integrality: Array.from({ length: this.width }, (_, c) => (isBinary(c) ? 1 : 0) as 0 | 1) }
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

  /** A choice of least cost; undefined where there is none. */
  solve(cost: Cost): Picked | undefined {
    for (; this.rowsTaken < this.polytope.rows.length; this.rowsTaken++) {
      this.addRow(this.polytopeRow(this.polytope.rows[this.rowsTaken]!));
    }
    const { model } = this;
    const { highs } = this.question;
    model.changeColsCost({ kind: 'range', from: 0, to: this.width - 1 }, this.costRow(cost));
    const { modelStatus: code } = highs.constants;
    for (const fresh of [false, true]) {
      if (fresh) model.clearSolver();
      const { modelStatus } = model.run(endingAfter(highs, MOST_ITERATIONS));
      const known = modelStatus === code.optimal || modelStatus === code.interrupted;
      if (known && model.info.get('primal_solution_status') === 2)
        return this.picked(cost, modelStatus === code.optimal);
      // A basis left from another question can trip the solver; it then starts afresh.
      if (modelStatus === code.infeasible && fresh) return undefined;
    }
    throw new Error('the solver came to no answer');
  }

  /** The cost of the distance from a target: the sum of (x - target) squared. */
  near(target: Float64Array): Cost {
    for (let i = 0; i < this.n; i++) {
      for (const part of FIRST_TANGENTS) this.lay(i, part * this.question.upper[i]!);
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
    this.addRow({ g: this.costRow(cost), min: Number.NEGATIVE_INFINITY, max: most });
  }

  /** Never this choice of foods again. */
  forbid({ columns }: Picked): void {
    const g = new Float64Array(this.width);
    let ones = 0;
    for (const c of this.binaries) {
      const on = columns[c]! > 0.5;
      g[c] = on ? -1 : 1;
      ones += Number(on);
    }
    this.addRow({ g, min: 1 - ones, max: Number.POSITIVE_INFINITY });
  }

  /** What a choice leaves of each share's bounds. */
  boundsOf({ columns }: Picked): { lower: Float64Array; upper: Float64Array } {
    const { counts, onHand } = this.question;
    const lower = this.question.lower.slice();
    const upper = this.question.upper.slice();
    const on = (column: number) => columns[column]! > 0.5;
    for (let i = 0; i < this.n; i++) {
      if (!on(this.used(i))) upper[i] = 0;
      if (!on(this.bought(i))) upper[i] = Math.min(upper[i]!, onHand[i]!);
    }
    for (const { counts: kind, columns: members, atLeast } of counts) {
      if (kind !== 'used') continue;
      for (const i of members) if (on(this.used(i))) lower[i] = Math.max(lower[i]!, atLeast);
    }
    this.counters.forEach(({ columns: members, atLeast }, k) => {
      for (const i of members) if (on(this.counted(k, i))) lower[i] = Math.max(lower[i]!, atLeast);
    });
    return { lower, upper };
  }

  private readonly square = (i: number) => this.n + i;
  private readonly used = (i: number) => 2 * this.n + i;
  private readonly fromCupboard = (i: number) => 3 * this.n + i;
  private readonly bought = (i: number) => 4 * this.n + i;
  private readonly counted = (k: number, i: number) => (5 + k) * this.n + i;

  private picked(cost: Cost, proven: boolean): Picked {
    const columns = this.model.getSolution().colValue;
    const constant = cost.constant ?? 0;
    const value = dot(this.costRow(cost), columns);
    const bound = proven ? value : (this.model.info.get('mip_dual_bound') as number);
    return { x: columns.slice(0, this.n), value, bound: bound + constant, proven, columns };
  }

  private costRow({ shares, squares = 0, used = 0, fromCupboard = 0, bought = 0 }: Cost): Float64Array {
    const row = new Float64Array(this.width);
    for (let i = 0; i < this.n; i++) {
      row[i] = shares?.[i] ?? 0;
      row[this.square(i)] = squares;
      row[this.used(i)] = used;
      row[this.fromCupboard(i)] = fromCupboard;
      row[this.bought(i)] = bought;
    }
    return row;
  }

  private columnBounds() {
    const { n, width, question } = this;
    const { lower: least, upper: most, counts, aims, onHand } = question;
    const lower = new Float64Array(width);
    const upper = new Float64Array(width).fill(1);
    const choosesUsed = aims.some((a) => a.used) || counts.some((c) => c.counts !== 'some');
    const choosesBought = aims.some((a) => a.bought);
    for (let i = 0; i < n; i++) {
      [lower[i], upper[i]] = [least[i]!, most[i]!];
      upper[this.square(i)] = Number.POSITIVE_INFINITY;
      // What nobody asks is settled at once: every food may be used, and bought.
      lower[this.used(i)] = Number(!choosesUsed);
      upper[this.fromCupboard(i)] = onHand[i]!;
      lower[this.bought(i)] = Number(!choosesBought);
    }
    this.counters.forEach(({ columns }, k) => {
      for (let i = 0; i < n; i++) upper[this.counted(k, i)] = Number(columns.includes(i));
    });
    return { lower, upper };
  }

  private firstRows(): MasterRow[] {
    const { n, question } = this;
    const { upper, counts, onHand } = question;
    const rows: MasterRow[] = [];
    const row = (
      entries: readonly (readonly [number, number])[],
      min: number,
      max = Number.POSITIVE_INFINITY,
    ) => {
      const g = new Float64Array(this.width);
      for (const [column, value] of entries) g[column] = value;
      rows.push({ g, min, max });
    };
    const each = Array.from({ length: n }, (_, i) => i);
    row(
      each.map((i) => [i, 1]),
      100,
      100,
    );
    for (const i of each) {
      row(
        [
          [this.used(i), upper[i]!],
          [i, -1],
        ],
        0,
      );
      row(
        [
          [i, 1],
          [this.fromCupboard(i), -1],
        ],
        0,
      );
      row(
        [
          [this.bought(i), upper[i]!],
          [i, -1],
        ],
        -onHand[i]!,
      );
    }
    for (const { counts: kind, columns, atLeast, bound } of counts) {
      if (kind === 'used')
        for (const i of columns)
          row(
            [
              [i, 1],
              [this.used(i), -atLeast],
            ],
            0,
          );
      if (kind === 'few')
        row(
          columns.map((i) => [this.used(i), -1]),
          -bound,
        );
    }
    this.counters.forEach(({ columns, atLeast, bound }, k) => {
      for (const i of columns)
        row(
          [
            [i, 1],
            [this.counted(k, i), -atLeast],
          ],
          0,
        );
      row(
        columns.map((i) => [this.counted(k, i), 1]),
        bound,
      );
    });
    return rows;
  }

  private polytopeRow({ g, h }: Row): MasterRow {
    const wide = new Float64Array(this.width);
    wide.set(g);
    return { g: wide, min: h, max: Number.POSITIVE_INFINITY };
  }

  /** The tangent of a food's square at a share p, drawn in where the food is not used: s >= 2 p x - p^2 z. */
  private lay(i: number, p: number): void {
    const laid = this.tangents[i]!;
    if (p <= SAME_TANGENT || laid.some((other) => Math.abs(other - p) < SAME_TANGENT)) return;
    laid.push(p);
    const g = new Float64Array(this.width);
    g[this.square(i)] = 1;
    g[i] = -2 * p;
    g[this.used(i)] = p * p;
    this.addRow({ g, min: 0, max: Number.POSITIVE_INFINITY });
  }

  private addRow({ g, min, max }: MasterRow): void {
    this.model.addRow(min, max, entries(g));
  }
}

interface MasterRow {
  readonly g: Float64Array;
  readonly min: number;
  readonly max: number;
}

/** A small linear (or mixed-integer) program solved afresh; for one-off questions. Live mixes use {@link Polytope}. */
import type { Highs } from './highs.ts';
import { endingAfter, type SearchWatch } from './iteration-limit.ts';
import { PROVEN_GAP } from './tolerances.ts';
import { sparse } from './vectors.ts';

export interface LinearModel {
  /** Cost of each column; minimised. */
  readonly cost: readonly number[];
  readonly rows: readonly { coefficients: readonly number[]; min?: number; max?: number }[];
  /** Column bounds; 0 and infinity unless given. */
  readonly lower?: readonly number[];
  readonly upper?: readonly number[];
  /** Columns that must be whole. */
  readonly whole?: readonly boolean[];
  /**
   * Simplex iterations after which the search for whole columns ends with what it has, "unfinished"; no limit unless
   * given.
   */
  readonly mostIterations?: number;
  /** Told of the search for whole columns, where that has a limit. */
  readonly watch?: SearchWatch | undefined;
}

export interface LinearAnswer {
  readonly status: 'optimal' | 'infeasible' | 'unbounded' | 'unfinished';
  readonly objective: number;
  readonly x: number[];
}

/** Solves a model with a given solver instance. Never throws on an infeasible or unbounded model. */
export function solveLinearWith(highs: Highs, model: LinearModel): LinearAnswer {
  const n = model.cost.length;
  const solver = highs.createModel({
    numCols: n,
    numRows: model.rows.length,
    colCost: [...model.cost],
    colLower: model.lower ? [...model.lower] : new Array<number>(n).fill(0),
    colUpper: model.upper ? [...model.upper] : new Array<number>(n).fill(Number.POSITIVE_INFINITY),
    rowLower: model.rows.map((r) => r.min ?? Number.NEGATIVE_INFINITY),
    rowUpper: model.rows.map((r) => r.max ?? Number.POSITIVE_INFINITY),
    matrix: sparse(
      model.rows.map((r) => r.coefficients),
      n,
    ),
    ...(model.whole ? { integrality: model.whole.map((w) => (w ? 1 : 0) as 0 | 1) } : {}),
  });
  try {
    solver.options.set({ output_flag: false, mip_rel_gap: 0, mip_abs_gap: PROVEN_GAP });
    const { mostIterations: most, watch } = model;
    const { modelStatus } = solver.run(most === undefined ? undefined : endingAfter(highs, most, watch));
    const { modelStatus: code } = highs.constants;
    const status =
      modelStatus === code.optimal
        ? 'optimal'
        : modelStatus === code.infeasible
          ? 'infeasible'
          : modelStatus === code.unbounded || modelStatus === code.unboundedOrInfeasible
            ? 'unbounded'
            : 'unfinished';
    const x = status === 'infeasible' ? [] : Array.from(solver.getSolution().colValue);
    return { status, objective: solver.getObjectiveValue(), x };
  } finally {
    solver.dispose();
  }
}

/** HiGHS bare: the arrays of a model handed over, run once, the answer read. Nothing can be asked of it in less. */
import type { Highs } from '../../src/formulation/solve/highs.ts';
import { sparse } from '../../src/formulation/solve/vectors.ts';
import { type Answer, distance, type Goal, type Rules } from './rules.ts';

export type ModelArrays = NonNullable<Parameters<Highs['createModel']>[0]>;
type Model = ReturnType<Highs['createModel']>;

export function arraysOf({ rows, lower, upper, whole }: Rules, goal: Goal) {
  const n = lower.length;
  return {
    numCols: n,
    numRows: rows.length,
    colCost: Float64Array.from('cost' in goal ? goal.cost : goal.target.map((t) => -2 * t)),
    colLower: Float64Array.from(lower),
    colUpper: Float64Array.from(upper),
    rowLower: rows.map((r) => r.min),
    rowUpper: rows.map((r) => r.max),
    matrix: sparse(
      rows.map((r) => r.a),
      n,
    ),
    ...(whole && { integrality: whole.map((w) => (w ? 1 : 0) as 0 | 1) }),
    ...('target' in goal && {
      hessian: {
        format: 'triangular' as const,
        dimension: n,
        starts: Array.from({ length: n + 1 }, (_, i) => i),
        indices: Array.from({ length: n }, (_, i) => i),
        values: new Float64Array(n).fill(2),
      },
    }),
  };
}

/** A model ready to be run; the caller disposes of it. @param seconds after which a search for whole columns ends */
export function modelFrom(highs: Highs, arrays: ModelArrays, seconds?: number): Model {
  const model = highs.createModel(arrays);
  model.options.set({
    output_flag: false,
    ...('integrality' in arrays && { mip_rel_gap: 0 }),
    ...(seconds !== undefined && { time_limit: seconds }),
  });
  return model;
}

/** What a model that was run came to. @returns undefined where there is no mix, or none was proven best */
export function readFrom(highs: Highs, model: Model, goal: Goal): Answer | undefined {
  if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return undefined;
  const x = Array.from(model.getSolution().colValue);
  return { x, objective: 'target' in goal ? distance(x, goal.target) : model.getObjectiveValue() };
}

/** Model made, run, read and put away. */
export function byModel(highs: Highs, arrays: ModelArrays, goal: Goal, seconds?: number): Answer | undefined {
  const model = modelFrom(highs, arrays, seconds);
  try {
    model.run();
    return readFrom(highs, model, goal);
  } catch {
    // It says so where its arithmetic broke down; that is no answer.
    return undefined;
  } finally {
    model.dispose();
  }
}

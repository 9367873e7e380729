/** A mix in grams on the keeper's scale, with every rule and bound of its problem kept. */
import type { WholeGrams } from '../problem/result.ts';
import { shortfall } from './bounds.ts';
import { roundToSteps } from './grams.ts';
import { byFood, type MixModel } from './mix-model.ts';
import type { Found } from './mix-solver.ts';
import { keeps } from './outer-approximation.ts';
import { STEPS_TOLERANCE } from './tolerances.ts';
import { elementAt } from './vectors.ts';

/**
 * @param x shares by column, percent
 * @param choice bounds under which the foods that are in stay in
 */
export function weighMix(
  model: MixModel,
  x: Float64Array,
  choice: Pick<Found, 'lower' | 'upper'>,
): WholeGrams {
  const { batch_grams: batchGrams, scale_step_grams: stepGrams } = model.problem;
  const { highs, lower, upper, bounds, counts } = model.question;
  const rows = bounds.map((b) => b.halfSpace(b.bound));
  const within = (shares: ArrayLike<number>) =>
    Array.from(shares).every(
      (v, i) => v >= elementAt(lower, i) - STEPS_TOLERANCE && v <= elementAt(upper, i) + STEPS_TOLERANCE,
    );
  const holds = (shares: ArrayLike<number>) =>
    within(shares) &&
    rows.every((row) => shortfall(row, shares) <= STEPS_TOLERANCE) &&
    counts.every((c) => keeps(c, shares));
  const answer = roundToSteps({ shares: x, ...choice, batchGrams, stepGrams, holds, rows }, highs);
  if ('conflict' in answer) return { grams: null, grams_conflict: answer.conflict };
  const grams = answer.steps.map((steps) => Number((steps * stepGrams).toPrecision(12)));
  return { grams: byFood(model, grams, 0) };
}

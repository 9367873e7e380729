/** A mix in grams on the keeper's scale, with every rule and bound of its problem kept. */
import { words } from '../../words/words.ts';
import type { WholeGrams } from '../problem/result.ts';
import { shortfall, tangent } from './bounds.ts';
import { roundToSteps } from './grams.ts';
import { byFood, type MixModel } from './mix-model.ts';
import { keeps } from './outer-approximation.ts';
import { STEPS_TOLERANCE } from './tolerances.ts';
import { elementAt } from './vectors.ts';

/**
 * Every food that may be used is, where it serves: the rules alone decide which.
 * @param x shares by column, percent
 */
export function weighMix(model: MixModel, x: Float64Array): WholeGrams {
  const { batch_grams: batchGrams, scale_step_grams: stepGrams } = model.problem;
  if (model.crossed) {
    return {
      grams: null,
      grams_conflict: words().formulation.grams.crossed,
      grams_proof: { proven: true },
    };
  }
  const { lower, upper, bounds, counts } = model.question;
  const spaces = bounds.map((b) => b.halfSpace(b.bound));
  const within = (shares: ArrayLike<number>) =>
    Array.from(shares).every(
      (v, i) => v >= elementAt(lower, i) - STEPS_TOLERANCE && v <= elementAt(upper, i) + STEPS_TOLERANCE,
    );
  const holds = (shares: ArrayLike<number>) =>
    within(shares) &&
    spaces.every((space) => shortfall(space, shares) <= STEPS_TOLERANCE) &&
    counts.every((c) => keeps(c, shares));
  const answer = roundToSteps({
    shares: x,
    lower,
    upper,
    batchGrams,
    stepGrams,
    holds,
    // What is fed beside the mix spreads whatever the mix is.
    rows: spaces.map(({ g, h, cone }) => ({ g, h: h + (cone?.q0 ?? 0) })),
    curves: spaces
      .filter((space) => space.cone)
      .map((space) => ({
        shortfall: (shares) => shortfall(space, shares),
        tangent: (shares) => tangent(space, shares),
      })),
    counts,
  });
  if ('conflict' in answer) {
    const { conflict, proven } = answer;
    return { grams: null, grams_conflict: conflict, grams_proof: { proven } };
  }
  const grams = answer.steps.map((steps) => Number((steps * stepGrams).toPrecision(12)));
  const squared = (steps: number) => Number((steps * stepGrams * stepGrams).toPrecision(12));
  const { squares, least, proven } = answer;
  return {
    grams: byFood(model, grams, 0),
    grams_proof: { proven, squares: squared(squares), least: squared(least) },
  };
}

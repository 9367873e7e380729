/**
 * A margin from the bounds. At a bound the average is in range and every second bag is not, so the mix put before a
 * keeper keeps as far from all bounds as any mix can, up to a confidence that is enough; only then does it go nearest to
 * what is wanted. Bounds themselves stay as they are: shares may still be moved up to them.
 */
import { normalBelow } from '../../nutrition/normal.ts';
import type { Problem } from '../problem/problem.ts';
import { sdsFromMean } from './build-ration.ts';
import type { MixModel } from './mix-model.ts';
import { elementAt } from './vectors.ts';

/** Steps from no margin to the whole one; finer ones move no share that a scale would show (common practice, no source). */
const STEPS = 10;

/**
 * The problem asked with the highest confidence that a mix can keep, up to `problem.margin` for all rules at once;
 * undefined where no margin is asked, or none at all can be kept. A margin is kept for mixes nearest to what is wanted and
 * for varied ones: cheapest and wished for are what the keeper put first.
 * @param feasible whether any mix keeps the rules of a problem
 */
export function withMargin(problem: Problem, feasible: (problem: Problem) => boolean): Problem | undefined {
  const { margin, ...plain } = problem;
  if (!margin || plain.confidence > 0 || plain.objective === 'cheapest' || plain.aims?.length)
    return undefined;
  if (!plain.rules.some((rule) => 'nutrient' in rule)) return undefined;
  const whole = sdsFromMean({ ...plain, confidence: margin, confidence_for: 'all' });
  const at = (step: number): Problem => ({
    ...plain,
    confidence: 2 * normalBelow((whole * step) / STEPS) - 1,
    confidence_for: 'each',
  });
  if (feasible(at(STEPS))) return at(STEPS);
  let [kept, missed] = [0, STEPS];
  while (missed - kept > 1) {
    const step = Math.floor((kept + missed) / 2);
    if (feasible(at(step))) kept = step;
    else missed = step;
  }
  return kept > 0 ? at(kept) : undefined;
}

/** The problem with what is fed beside at the shares that were chosen: a margin is kept in the same ration. */
export function fixedBeside({ problem, besideShares }: Pick<MixModel, 'problem' | 'besideShares'>): Problem {
  const beside = problem.beside.map(({ share_min: _, share_max: __, ...food }, i) => ({
    ...food,
    share_of_ration: elementAt(besideShares, i).share,
  }));
  return { ...problem, beside };
}

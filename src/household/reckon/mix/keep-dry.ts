/** The rule that a mix is dry enough to keep: one bound on its water. */
import { moistureRule } from '../../../kitchen/batch/mix-moisture.ts';
import type { Mix } from '../../model.ts';
import { isDryRule, withProblem } from './mix-edits.ts';

/** Most water that the mix may hold, g per 100 g; undefined where nothing bounds it. */
export function mostWater(mix: Mix): number | undefined {
  return mix.problem.rules.find(isDryRule)?.max;
}

/** The mix bound to hold at most so much water; not bound any more where undefined. */
export function withMostWater(mix: Mix, most: number | undefined): Mix {
  const rest = mix.problem.rules.filter((r) => !isDryRule(r));
  return withProblem(mix, { rules: most === undefined ? rest : [...rest, moistureRule(most)] });
}

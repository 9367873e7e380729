/** The rule that a mix is dry enough to keep: one bound on its water. */
import type { Mix } from '../../household/model.ts';
import { isDryRule, withProblem } from '../../household/reckon/mix-edits.ts';
import { moistureRule } from '../../kitchen/batch/mix-moisture.ts';

/** Most water that the mix may hold, g per 100 g; undefined where nothing bounds it. */
export function mostWater(mix: Mix): number | undefined {
  return mix.problem.rules.find(isDryRule)?.max;
}

/** The mix bound to hold at most so much water; not bound any more where undefined. */
export function withMostWater(mix: Mix, most: number | undefined): Mix {
  const rest = mix.problem.rules.filter((r) => !isDryRule(r));
  return withProblem(mix, { rules: most === undefined ? rest : [...rest, moistureRule(most)] });
}

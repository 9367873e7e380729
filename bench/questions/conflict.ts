/** Why no mix can keep the rules, and what would mend it. */
import type { Problem } from '../../src/formulation/problem/problem.ts';
import { paired, type Side } from '../lib/paired.ts';
import { formulate, inTurn, isFeasible, problems, type Stage } from '../lib/stage.ts';
import { arraysOf, byModel } from '../solvers/highs-model.ts';
import { byText } from '../solvers/highs-text.ts';
import { type Goal, type Rules, rulesOf } from '../solvers/rules.ts';
import { type Asked, problemsFor, type Question } from './measured.ts';

/** How much more of a nutrient is asked for, as a part of the most that the other rules leave room for. */
const TOO_MUCH = 1.03;

/** A problem with one rule more that it cannot keep: more protein than any of its mixes has. */
function beyond(problem: Problem, at: Stage): Problem {
  const rule = (min: number) => ({
    ...problem,
    rules: [...problem.rules, { nutrient: 'PROCNT' as const, min, on: 'mix' as const }],
  });
  let [low, high] = [0, 90];
  for (let k = 0; k < 12; k++) {
    const middle = (low + high) / 2;
    if (isFeasible(rule(middle), at)) low = middle;
    else high = middle;
  }
  return rule(high * TOO_MUCH);
}

/**
 * Only the program tells what mends it. The others find the conflict alone, as one does without it: rule after rule is
 * left out, and stays out where there is no mix even so.
 */
export const conflict: Question = async (at, size, effort, beside) => {
  const asked = problems(Math.min(8, problemsFor(effort)), size, at).map((drawn) => {
    const problem = beyond(drawn, at);
    return { problem, rules: rulesOf(problem, at.reference) };
  });
  const leftOut = (possible: (rules: Rules) => boolean): Side => ({
    work: (round) => {
      const { rules } = inTurn(asked, round);
      let rows = rules.rows;
      for (const row of rules.rows) {
        const without = rows.filter((r) => r !== row);
        if (!possible({ ...rules, rows: without })) rows = without;
      }
      return rows.length;
    },
  });
  const nothing = ({ lower }: Rules): Goal => ({ cost: lower.map(() => 0) });
  let mended = 0;
  const sides: Partial<Record<Asked, Side>> = {
    ours: {
      work: (round) => {
        const formulation = formulate(inTurn(asked, round).problem, at);
        const answer = formulation.solve();
        formulation.dispose();
        if (answer.status === 'optimal') throw new Error('more than the most was found');
        mended += answer.remedies.length;
        return answer.conflict.length;
      },
    },
    ...(beside && {
      text: leftOut((rules) => byText(at.highs, rules, nothing(rules)) !== undefined),
      model: leftOut(
        (rules) => byModel(at.highs, arraysOf(rules, nothing(rules)), nothing(rules)) !== undefined,
      ),
    }),
  };
  const { times } = await paired(sides as Record<Asked, Side>, effort);
  if (mended === 0) throw new Error('no remedy was found for any conflict');
  return { times, agreed: 'all sides find that there is no mix' };
};

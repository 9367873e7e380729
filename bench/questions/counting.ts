/** Which foods to take, where exactly so many of them are to be in the mix with at least 1 % each. */
import type { Objective } from '../../src/formulation/problem/problem.ts';
import type { Best } from '../../src/formulation/problem/result.ts';
import { type Paired, paired, type Side } from '../lib/paired.ts';
import { Agreement, formulate, inTurn, problems } from '../lib/stage.ts';
import { byGlpk } from '../solvers/glpk.ts';
import { arraysOf, byModel } from '../solvers/highs-model.ts';
import { byText } from '../solvers/highs-text.ts';
import { type Answer, counted, rulesOf, widened } from '../solvers/rules.ts';
import { byYalps } from '../solvers/yalps.ts';
import type { Asked, Measured, Question } from './measured.ts';

export const FOODS = 60;
export const IN = 25;
const LEAST = 1;
const SAME = 1e-5;
/** Seconds after which the others end, without an answer that is proven best. */
export const PATIENCE = 3;

/** By objective; of those, HiGHS, GLPK and YALPS know only the linear one where columns are whole. */
export const counting =
  (objective: Objective): ((...asked: Parameters<Question>) => Promise<Measured & { unproven: number }>) =>
  async (at, size, effort, beside) => {
    const { highs, glpk } = at;
    const asked = problems(4, { ...size, count: IN, objective }, at).map((problem) => {
      const rules = counted(rulesOf(problem, at.reference), IN, LEAST);
      const goal = widened(
        problem.foods.map((f) => f.price_per_kg ?? Number.NaN),
        rules,
      );
      const cost = 'cost' in goal ? goal.cost : [];
      return { problem, rules, goal, cost, arrays: arraysOf(rules, goal) };
    });
    let unproven = 0;
    const sides: Partial<Record<Asked, Side>> = {
      ours: {
        work: (round) => {
          const formulation = formulate(inTurn(asked, round).problem, at);
          const best = formulation.best();
          formulation.dispose();
          return best;
        },
      },
      // None of the others has a squared objective where columns are whole.
      ...(beside &&
        objective === 'cheapest' && {
          text: {
            work: (round) => {
              const { rules, goal } = inTurn(asked, round);
              return byText(highs, rules, goal);
            },
          },
          model: {
            work: (round) => {
              const { arrays, goal } = inTurn(asked, round);
              return byModel(highs, arrays, goal, PATIENCE);
            },
          },
          glpk: {
            work: (round) => {
              const { rules, cost } = inTurn(asked, round);
              return byGlpk(glpk, rules, cost, PATIENCE);
            },
          },
          yalps: {
            work: (round) => {
              const { rules, cost } = inTurn(asked, round);
              return byYalps(rules, cost, PATIENCE);
            },
          },
        }),
    };
    const agreement = new Agreement();
    const { times }: Paired<Asked> = await paired(
      sides as Record<Asked, Side>,
      effort,
      (side, answer, round) => {
        const ours = side === 'ours' ? (answer as Best | undefined) : undefined;
        if (ours?.gap) unproven++;
        else agreement.meet(side, (answer as Answer | undefined)?.objective, round);
      },
    );
    return { times, agreed: agreement.settled('counting', SAME), unproven };
  };

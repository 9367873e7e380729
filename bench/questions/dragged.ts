/** A slider dragged on: the mix nearest to the present one with one share where the slider stands, contents and verdict. */
import { paired, type Side } from '../lib/paired.ts';
import { Agreement, formulate, inTurn, problems } from '../lib/stage.ts';
import { arraysOf, byModel } from '../solvers/highs-model.ts';
import { byText } from '../solvers/highs-text.ts';
import { holding, rulesOf } from '../solvers/rules.ts';
import type { Asked, Question } from './measured.ts';

const MIXES = 4;
/** Shares this near, summed and relatively, are the same mix. */
const SAME = 1e-5;

export const dragged: Question = async (at, size, effort, beside) => {
  const { highs } = at;
  const open = problems(MIXES, size, at).map((problem) => {
    const formulation = formulate(problem, at);
    const best = formulation.best();
    const answer = best && formulation.move(best.shares, {}, problem.foods[0]?.id);
    if (answer?.status !== 'optimal') throw new Error('a mix that was drawn can be kept');
    const rules = rulesOf(problem, at.reference);
    const [low, high] = answer.spans[problem.foods[0]?.id ?? ''] ?? [0, 0];
    return { problem, formulation, shares: best?.shares ?? {}, rules, low, high };
  });
  /** The first food's slider, at another place within its span in every round. */
  const asked = (round: number) => {
    const { problem, shares, rules, low, high } = inTurn(open, round);
    const share = low + (high - low) * (((round + 1) * 0.37) % 1);
    const target = problem.foods.map((f, i) => (i === 0 ? share : (shares[f.id] ?? 0)));
    return { share, rules: holding(rules, new Map([[0, share]])), goal: { target } };
  };
  const farthest = (x: readonly number[]) => x.reduce((sum, v) => sum + v * v, 0);
  const sides: Partial<Record<Asked, Side<number | undefined>>> = {
    ours: {
      work: (round) => {
        const { problem, formulation, shares } = inTurn(open, round);
        const id = problem.foods[0]?.id ?? '';
        const answer = formulation.move(shares, { [id]: asked(round).share }, id);
        if (answer.status !== 'optimal') throw new Error(answer.verdict);
        return farthest(Object.values(answer.shares));
      },
    },
    ...(beside && {
      text: {
        work: (round) => {
          const { rules, goal } = asked(round);
          const x = byText(highs, rules, goal)?.x;
          return x && farthest(x);
        },
      },
      model: {
        work: (round) => {
          const { rules, goal } = asked(round);
          const x = byModel(highs, arraysOf(rules, goal), goal)?.x;
          return x && farthest(x);
        },
      },
    }),
  };
  const agreement = new Agreement();
  const { times } = await paired(sides as Record<Asked, Side>, effort, (side, answer, round) =>
    agreement.meet(side, answer as number | undefined, round),
  );
  for (const { formulation } of open) formulation.dispose();
  return { times, agreed: agreement.settled('dragged', SAME) };
};

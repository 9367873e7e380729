/** Lowest and highest share of every food, one share being held; and the mix nearest to the present one with that hold. */
import type { Formulation } from '../../src/formulation/formulation.ts';
import type { Problem, Shares } from '../../src/formulation/problem/problem.ts';
import { mixModelOf, solverFor } from '../../src/formulation/solve/mix-model.ts';
import type { MixSolver } from '../../src/formulation/solve/mix-solver.ts';
import { paired, type Side } from '../lib/paired.ts';
import { Agreement, formulate, inTurn, problems } from '../lib/stage.ts';
import { byGlpk } from '../solvers/glpk.ts';
import { arraysOf, byModel, modelFrom } from '../solvers/highs-model.ts';
import { byText } from '../solvers/highs-text.ts';
import { type Answer, type Goal, holding, type Rules, rulesOf } from '../solvers/rules.ts';
import { byYalps } from '../solvers/yalps.ts';
import type { Asked, Question } from './measured.ts';

/** Sums of all spans this near, relatively, are the same spans. */
const SAME = 1e-5;
/** Mixes in turn: each is met many times, with another food held each time. */
const MIXES = 4;

interface Kept {
  readonly problem: Problem;
  readonly formulation: Formulation;
  readonly solver: MixSolver;
  readonly shares: Shares;
  readonly rules: Rules;
}

export const spans: Question = async (at, size, effort, beside) => {
  const { highs, glpk } = at;
  const kept = problems(MIXES, size, at).map((problem): Kept => {
    const formulation = formulate(problem, at);
    const best = formulation.best();
    if (!best) throw new Error('a mix that was drawn can be kept');
    // What is made once for a mix that stays open is made: the first question is another one's business.
    formulation.move(best.shares, {});
    const solver = solverFor(mixModelOf(problem, at).question);
    solver.best();
    return { problem, formulation, solver, shares: best.shares, rules: rulesOf(problem, at.reference) };
  });
  /** Another food in every round, a little beside where it stands: then every span is another. */
  const held = (round: number) => {
    const { problem, shares } = inTurn(kept, round);
    const column = ((round + 1) * 7) % problem.foods.length;
    const id = problem.foods[column]?.id ?? '';
    return { column, id, share: shares[id] ?? 0 };
  };
  const fixed = (round: number) => {
    const { column, share } = held(round);
    return holding(inTurn(kept, round).rules, new Map([[column, share]]));
  };
  /** Each food's least and most, each asked for itself. */
  const oneByOne = (solve: (rules: Rules, cost: number[]) => Answer | undefined): Side<number> => ({
    work: (round) => {
      const { rules: free } = inTurn(kept, round);
      const { column } = held(round);
      const pinned = fixed(round);
      return free.lower.reduce((sum, _, i) => {
        // The food that is held may itself move as far as all the others let it.
        const rules = i === column ? free : pinned;
        const ends = [1, -1].map((sign) => {
          const cost = rules.lower.map((__, j) => (i === j ? sign : 0));
          return solve(rules, cost)?.x[i] ?? Number.NaN;
        });
        return sum + (ends[1] ?? 0) - (ends[0] ?? 0);
      }, 0);
    },
  });
  const goal = (cost: number[]): Goal => ({ cost });
  let ready: ReturnType<typeof modelFrom> | undefined;
  const sides: Record<Asked, Side<number>> = {
    ours: {
      work: (round) => {
        const { formulation, shares } = inTurn(kept, round);
        const { id, share } = held(round);
        const answer = formulation.move(shares, { [id]: share });
        if (answer.status !== 'optimal') throw new Error(answer.verdict);
        return Object.values(answer.spans).reduce((sum, [low, high]) => sum + high - low, 0);
      },
    },
    solver: {
      work: (round) => {
        const { column, share } = held(round);
        const ends = inTurn(kept, round).solver.spans(new Map([[column, share]]));
        return ends.reduce((sum, [low, high]) => sum + high - low, 0);
      },
    },
    text: oneByOne((rules, cost) => byText(highs, rules, goal(cost))),
    model: oneByOne((rules, cost) => byModel(highs, arraysOf(rules, goal(cost)), goal(cost))),
    run: {
      before: (round) => {
        const rules = fixed(round);
        ready = modelFrom(highs, arraysOf(rules, goal(rules.lower.map(() => 0))));
        ready.options.set({ presolve: 'off', solver: 'simplex' });
        ready.run();
      },
      work: (round) => {
        const model = ready;
        if (!model) throw new Error('no model is ready');
        const { lower, upper } = inTurn(kept, round).rules;
        const { column, share } = held(round);
        const n = lower.length;
        const hold = (low: number, high: number) =>
          model.changeColsBounds({ kind: 'range', from: column, to: column }, [low], [high]);
        let sum = 0;
        for (let i = 0; i < n; i++) {
          if (i === column) hold(lower[i] ?? 0, upper[i] ?? 100);
          for (const sign of [1, -1]) {
            const cost = new Float64Array(n);
            cost[i] = sign;
            model.changeColsCost({ kind: 'range', from: 0, to: n - 1 }, cost);
            model.run();
            sum -= model.getObjectiveValue();
          }
          if (i === column) hold(share, share);
        }
        return sum;
      },
      after: () => ready?.dispose(),
    },
    glpk: oneByOne((rules, cost) => byGlpk(glpk, rules, cost)),
    yalps: oneByOne((rules, cost) => byYalps(rules, cost)),
  };
  const agreement = new Agreement();
  const { ours, solver, run } = sides;
  const asked: Partial<Record<Asked, Side>> = beside ? sides : { ours, solver, run };
  const { times } = await paired(asked as Record<Asked, Side>, effort, (side, answer, round) =>
    agreement.meet(side, answer as number, round),
  );
  for (const { formulation, solver } of kept) {
    formulation.dispose();
    solver.dispose();
  }
  return { times, agreed: agreement.settled('spans', SAME) };
};

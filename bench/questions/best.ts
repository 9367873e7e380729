/** The nearest mix, and the cheapest. */
import { wantedShares } from '../../src/formulation/solve/build-ration.ts';
import { type Paired, paired, type Side } from '../lib/paired.ts';
import { Agreement, formulate, inTurn, problems, type Stage } from '../lib/stage.ts';
import { byGlpk } from '../solvers/glpk.ts';
import { arraysOf, byModel, modelFrom, readFrom } from '../solvers/highs-model.ts';
import { byText } from '../solvers/highs-text.ts';
import { type Answer, type Goal, type Rules, rulesOf } from '../solvers/rules.ts';
import { byYalps } from '../solvers/yalps.ts';
import { type Asked, type Measured, problemsFor, type Question } from './measured.ts';

/** Objectives this near, relatively, are the same answer: as fine as solvers at their usual tolerances agree. */
const SAME = 1e-5;

export const nearest: Question = (at, size, effort, beside) => {
  const asked = problems(problemsFor(effort), size, at).map((problem) => {
    const rules = rulesOf(problem, at.reference);
    const target = Array.from(wantedShares(problem.foods.map((f) => f.want)));
    return { problem, rules, goal: { target }, arrays: arraysOf(rules, { target }) };
  });
  return measured(
    'nearest',
    asked,
    at,
    beside ? ['ours', 'model', 'run', 'text'] : ['ours', 'model'],
    effort,
  );
};

export const cheapest: Question = (at, size, effort, beside) => {
  const asked = problems(problemsFor(effort), { ...size, objective: 'cheapest' }, at).map((problem) => {
    const rules = rulesOf(problem, at.reference);
    const cost = problem.foods.map((f) => f.price_per_kg ?? Number.NaN);
    return { problem, rules, goal: { cost }, arrays: arraysOf(rules, { cost }) };
  });
  const all = ['ours', 'model', 'run', 'text', 'glpk', 'yalps'] as const;
  return measured('cheapest', asked, at, beside ? all : ['ours', 'model'], effort);
};

interface Posed {
  readonly problem: Parameters<typeof formulate>[0];
  readonly rules: Rules;
  readonly goal: Goal;
  readonly arrays: ReturnType<typeof arraysOf>;
}

async function measured(
  what: string,
  asked: readonly Posed[],
  at: Stage,
  sides: readonly Exclude<Asked, 'solver'>[],
  effort: Parameters<Question>[2],
): Promise<Measured> {
  const { highs, glpk } = at;
  const cost = (goal: Goal) => ('cost' in goal ? goal.cost : []);
  let ready: ReturnType<typeof modelFrom> | undefined;
  const all: Record<Exclude<Asked, 'solver'>, Side<{ objective: number } | undefined>> = {
    ours: {
      work: (round) => {
        const formulation = formulate(inTurn(asked, round).problem, at);
        const best = formulation.best();
        formulation.dispose();
        return best;
      },
    },
    text: by(({ rules, goal }) => byText(highs, rules, goal)),
    model: by(({ arrays, goal }) => byModel(highs, arrays, goal)),
    run: {
      before: (round) => {
        ready = modelFrom(highs, inTurn(asked, round).arrays);
      },
      work: (round) => {
        ready?.run();
        return ready && readFrom(highs, ready, inTurn(asked, round).goal);
      },
      after: () => ready?.dispose(),
    },
    glpk: by(({ rules, goal }) => byGlpk(glpk, rules, cost(goal))),
    yalps: by(({ rules, goal }) => byYalps(rules, cost(goal))),
  };
  function by(solve: (posed: Posed) => Answer | undefined): Side<Answer | undefined> {
    return { work: (round) => solve(inTurn(asked, round)) };
  }
  const agreement = new Agreement();
  const chosen = Object.fromEntries(sides.map((side) => [side, all[side]])) as Record<Asked, Side>;
  const { times }: Paired<Asked> = await paired(chosen, effort, (side, answer, round) =>
    agreement.meet(side, (answer as Answer | undefined)?.objective, round),
  );
  return { times, agreed: agreement.settled(what, SAME) };
}

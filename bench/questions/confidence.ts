/** The nearest mix where each bound of a nutrient is to hold with a confidence of 90 %. */
import { type HalfSpace, type Row, shortfall, tangent } from '../../src/formulation/solve/bounds.ts';
import { mixModelOf } from '../../src/formulation/solve/mix-model.ts';
import { type Paired, paired, type Side } from '../lib/paired.ts';
import { Agreement, formulate, inTurn, problems } from '../lib/stage.ts';
import { arraysOf, byModel } from '../solvers/highs-model.ts';
import { byText } from '../solvers/highs-text.ts';
import type { Answer, Goal, Rules } from '../solvers/rules.ts';
import { type Asked, problemsFor, type Question } from './measured.ts';

const CONFIDENCE = 0.9;
/** Windows that leave room for the spread. */
const ROOM = 0.6;
/** How far the others' mixes may lie outside a cone: each round of planes costs a fresh question. */
const OUTSIDE = 1e-6;
const MOST_ROUNDS = 200;
const SAME = 1e-3;

/**
 * No library here solves such a problem by itself. The others lay a tangent plane wherever the mix misses a cone and ask
 * afresh, until none is missed.
 */
export const confidence: Question = async (at, size, effort, beside) => {
  const { highs } = at;
  const asked = problems(
    Math.min(10, problemsFor(effort)),
    { ...size, confidence: CONFIDENCE, room: ROOM },
    at,
  ).map((problem) => {
    const { question } = mixModelOf(problem, at);
    return { problem, question, spaces: question.bounds.map((b) => b.halfSpace(b.bound)) };
  });
  const byPlanes =
    (solve: (rules: Rules, goal: Goal) => Answer | undefined) =>
    (round: number): Answer | undefined => {
      const { question, spaces } = inTurn(asked, round);
      const goal = { target: Array.from(question.wants) };
      const rows: Row[] = [...spaces];
      for (let k = 0; k < MOST_ROUNDS; k++) {
        const found = solve(rulesWith(rows, question), goal);
        if (!found) return undefined;
        const planes = spaces.flatMap((space) => missed(space, found.x));
        if (planes.length === 0) return found;
        rows.push(...planes);
      }
      return undefined;
    };
  const sides: Partial<Record<Asked, Side>> = {
    ours: {
      work: (round) => {
        const formulation = formulate(inTurn(asked, round).problem, at);
        const best = formulation.best();
        formulation.dispose();
        return best;
      },
    },
    ...(beside && {
      text: { work: byPlanes((rules, goal) => byText(highs, rules, goal)) },
      model: { work: byPlanes((rules, goal) => byModel(highs, arraysOf(rules, goal), goal)) },
    }),
  };
  const agreement = new Agreement();
  const { times }: Paired<Asked> = await paired(sides as Record<Asked, Side>, effort, (side, answer, round) =>
    agreement.meet(side, (answer as Answer | undefined)?.objective, round),
  );
  return { times, agreed: agreement.settled('confidence', SAME) };
};

function rulesWith(
  rows: readonly Row[],
  { lower, upper }: { lower: Float64Array; upper: Float64Array },
): Rules {
  return {
    rows: [
      { a: Array.from(lower, () => 1), min: 100, max: 100 },
      ...rows.map(({ g, h }) => ({ a: Array.from(g), min: h, max: Number.POSITIVE_INFINITY })),
    ],
    lower: Array.from(lower),
    upper: Array.from(upper),
  };
}

function missed(space: HalfSpace, x: readonly number[]): Row[] {
  const plane = shortfall(space, x) > OUTSIDE ? tangent(space, x) : undefined;
  return plane ? [plane] : [];
}

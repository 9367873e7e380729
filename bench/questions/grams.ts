/** Whole grams of a mix, with every rule kept. */
import type { Formulation } from '../../src/formulation/formulation.ts';
import type { Problem, Shares } from '../../src/formulation/problem/problem.ts';
import { paired, type Side } from '../lib/paired.ts';
import { formulate, inTurn, problems } from '../lib/stage.ts';
import { arraysOf, modelFrom } from '../solvers/highs-model.ts';
import { type Rules, rulesOf } from '../solvers/rules.ts';
import { type Asked, type Measured, problemsFor, type Question } from './measured.ts';

/** Seconds after which the plain program ends with what it has. */
export const PATIENCE = 2;

export interface Weighed extends Measured {
  /** Of all rounds: how often grams were found, how often they were proven the nearest or that there are none. */
  readonly found: number;
  readonly proven: number;
  /** Rounds of the plain program, and how many it did not end in time. */
  readonly plain: number;
  readonly plainUnended: number;
}

/** Beside the plain mixed-integer program: whole grams with the least sum of absolute differences, asked of HiGHS. */
export const grams = async (...[at, size, effort, beside]: Parameters<Question>): Promise<Weighed> => {
  const { highs } = at;
  // The slow ones are rare: a problem of its own for every round that is asked for.
  const kept = problems(Math.max(problemsFor(effort), effort.least), size, at).map((problem) => {
    const formulation = formulate(problem, at);
    const best = formulation.best();
    if (!best) throw new Error('a mix that was drawn can be kept');
    return {
      problem,
      formulation,
      shares: best.shares,
      arrays: arraysOf(...plainProgram(problem, best.shares)),
    };
  });
  function plainProgram(problem: Problem, shares: Shares) {
    return wholeGrams(rulesOf(problem, at.reference), problem, shares);
  }
  const met = { found: 0, proven: 0, plain: 0, plainUnended: 0 };
  const sides: Partial<Record<Asked, Side>> = {
    ours: {
      work: (round) => {
        const { formulation, shares } = inTurn(kept, round);
        return formulation.grams(shares);
      },
    },
    ...(beside && {
      model: {
        work: (round) => {
          const model = modelFrom(highs, inTurn(kept, round).arrays, PATIENCE);
          try {
            model.run();
            return model.getModelStatus();
          } finally {
            model.dispose();
          }
        },
      },
    }),
  };
  const { times } = await paired(sides as Record<Asked, Side>, effort, (side, answer) => {
    if (side === 'ours') {
      const { grams: found, grams_proof } = answer as ReturnType<Formulation['grams']>;
      if (found) met.found++;
      if (grams_proof.proven) met.proven++;
    } else {
      met.plain++;
      if (answer === highs.constants.modelStatus.timeLimit) met.plainUnended++;
    }
  });
  for (const { formulation } of kept) formulation.dispose();
  return { times, agreed: '', ...met };
};

/** Columns: the grams, which are whole, then how far each lies above and below the wanted. */
function wholeGrams(
  { rows, lower, upper }: Rules,
  problem: Problem,
  shares: Shares,
): [Rules, { cost: number[] }] {
  const grams = problem.batch_grams / 100;
  const n = lower.length;
  const zeros = new Array<number>(n).fill(0);
  const wanted = problem.foods.map((f) => (shares[f.id] ?? 0) * grams);
  return [
    {
      rows: [
        ...rows.map(({ a, min, max }) => ({
          a: [...a, ...zeros, ...zeros],
          min: min * grams,
          max: max * grams,
        })),
        ...wanted.map((w, i) => ({
          a: [0, -1, 1].flatMap((sign, part) => zeros.map((_, j) => (j === i ? (part === 0 ? 1 : sign) : 0))),
          min: w,
          max: w,
        })),
      ],
      lower: [...lower.map((v) => Math.ceil(v * grams - 1e-9)), ...zeros, ...zeros],
      upper: [
        ...upper.map((v) => Math.floor(v * grams + 1e-9)),
        ...zeros.map(() => problem.batch_grams),
        ...zeros.map(() => problem.batch_grams),
      ],
      whole: [...zeros.map(() => true), ...zeros.map(() => false), ...zeros.map(() => false)],
    },
    { cost: [...zeros, ...zeros.map(() => 1), ...zeros.map(() => 1)] },
  ];
}

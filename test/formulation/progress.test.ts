/** Long answers tell on their way what is found: a usable mix each time, with honest bounds, and the same answer. */
import { describe, expect, test, vi } from 'vitest';
import type { Goal } from '../../src/formulation/advice/frontier.ts';
import { type SharedMix, shareMix } from '../../src/formulation/advice/shared-base.ts';
import { Formulation } from '../../src/formulation/formulation.ts';
import { parseProblem } from '../../src/formulation/problem/parse.ts';
import type { Aim, Objective, Problem, Rule } from '../../src/formulation/problem/problem.ts';
import type { Progress, SolvedSoFar } from '../../src/formulation/problem/progress.ts';
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { crudeAmount } from './crude-amount.ts';
import { eater } from './eaters.ts';
import { problemOf } from './problem-of.ts';
import { fullyKnown, randomFrom } from './problems.ts';

const reference = loadReference();
const highs = await loadHighs();
const pool = fullyKnown(reference);

/** Foods with prices and wants, the amounts of a mix of `used` of them kept within a tenth. */
function drawn(seed: number, count: number, used: number, about: Partial<Problem> = {}): Problem {
  const random = randomFrom(seed);
  const pick = <T>(list: readonly T[]) => list[Math.floor(random() * list.length)]!;
  const chosen = [...new Set(Array.from({ length: 2 * count }, () => pick(pool)))].slice(0, count);
  const rules = (['PROCNT', 'FAT', 'FIBTG', 'CA', 'P'] as const).map((nutrient): Rule => {
    const middle = chosen.slice(0, used).reduce((sum, f) => sum + crudeAmount(f, nutrient)!, 0) / used;
    return { nutrient, min: 0.9 * middle, max: 1.1 * middle };
  });
  return problemOf({
    foods: chosen.map((f, i) => ({
      id: `f${i}`,
      ref: f.ref,
      want: Math.round(20 * random()),
      price_per_kg: 1 + Math.round(20 * random()),
    })),
    rules,
    ...about,
  });
}

const counted = (seed: number, objective: Objective, aims: readonly Aim[] = [], foods = 11): Problem => {
  const problem = drawn(seed, foods, 5, { objective, aims });
  return {
    ...problem,
    rules: [...problem.rules, { count: {}, max: 6 }, { count: { at_least: 2 }, min: 4 }],
  };
};

function formulated<T>(problem: Problem, ask: (formulation: Formulation) => T): T {
  const formulation = new Formulation(parseProblem(problem, reference).problem, { reference, highs });
  try {
    return ask(formulation);
  } finally {
    formulation.dispose();
  }
}

/** What a question tells on its way, as it would come out of a worker, and its answer. */
function followed<T, A>(ask: (tell?: (progress: Progress<T>) => void) => A) {
  const told: Progress<T>[] = [];
  const answer = ask((progress) => told.push(structuredClone(progress)));
  expect(answer).toEqual(ask());
  return { told, answer };
}

const sum = (shares: Readonly<Record<string, number>>) =>
  Object.values(shares).reduce((total, share) => total + share, 0);

/** A judge of shares by the problem's rules. */
function judgeOf(problem: Problem): (shares: Readonly<Record<string, number>>) => void {
  const breaches = formulated(
    problem,
    (f) => (shares: Readonly<Record<string, number>>) => f.evaluate(shares).breaches,
  );
  return (shares) => {
    expect(sum(shares)).toBeCloseTo(100, 6);
    expect(breaches(shares)).toEqual([]);
  };
}

describe('a mix of counted foods', () => {
  const wishes: readonly (readonly Aim[])[] = [[], [{ aim: 'few' }]];
  const objectives: readonly Objective[] = ['nearest', 'cheapest'];
  test.each(objectives.flatMap((objective) => wishes.map((aims) => [objective, aims] as const)))(
    '%s with %j: each mix told keeps the rules, and the best lies between what was told',
    (objective, aims) => {
      let improved = 0;
      let rose = 0;
      for (let seed = 1; seed <= 2; seed++) {
        const problem = counted(seed, objective, aims);
        const { told, answer } = followed<SolvedSoFar, unknown>((tell) =>
          formulated(problem, (f) => f.solve(tell)),
        );
        expect(answer).toMatchObject({ status: 'optimal' });
        const { objective: best } = answer as { objective: number };
        const little = 1e-6 * Math.max(1, best);
        const judge = judgeOf(problem);
        for (const { found } of told) {
          if (found === undefined) continue;
          if (found.status !== 'optimal') throw new Error('a conflict was told of');
          judge(found.shares);
        }
        const search = told.filter((p) => p.doing === 'best');
        for (const [k, { found, value, bound }] of search.entries()) {
          expect(bound).toBeLessThanOrEqual(best + little);
          expect(bound).toBeGreaterThanOrEqual((search[k - 1]?.bound ?? 0) - little);
          if (found?.status !== 'optimal') continue;
          expect(value).toBeGreaterThanOrEqual(best - little);
          expect(value).toBeLessThanOrEqual((search[k - 1]?.value ?? value!) + little);
          expect(found.objective).toBeCloseTo(value!, 6);
          // The best is within the gap that was told.
          expect(found.objective - (found.gap ?? 0)).toBeLessThanOrEqual(best + little);
        }
        improved += Number(new Set(search.flatMap((p) => p.value ?? [])).size > 1);
        rose += Number(search.some((p) => p.bound! > 0 && p.value !== undefined && p.bound! < p.value));
        const ends = told.filter((p) => p.doing === 'spans');
        expect(ends.map((p) => p.done)).toEqual(problem.foods.map((_, i) => i));
        if (aims.length > 0) expect(told[0]).toMatchObject({ doing: 'aims', done: 0, of: 1 });
      }
      // Something is told on the way, not at the end alone.
      if (objective === 'nearest' && aims.length === 0)
        expect([improved, rose].every((times) => times > 0)).toBe(true);
    },
  );

  test('the best alone tells the same', () => {
    const problem = counted(3, 'nearest');
    const { told, answer } = followed<{ shares: Readonly<Record<string, number>> }, unknown>((tell) =>
      formulated(problem, (f) => f.best(tell)),
    );
    expect(told.at(-1)?.found?.shares).toBeDefined();
    expect(answer).toMatchObject({ objective: expect.any(Number) });
  });
});

test('with a confidence every mix told keeps it', () => {
  const { told } = (() => {
    const problem: Problem = { ...counted(2, 'nearest'), confidence: 0.5, variation: 'published' };
    const wide: Problem = {
      ...problem,
      rules: problem.rules.map((rule) =>
        'nutrient' in rule ? { ...rule, min: 0.2 * rule.min!, max: 3 * rule.max! } : rule,
      ),
    };
    const judge = judgeOf(wide);
    const all = followed<SolvedSoFar, unknown>((tell) => formulated(wide, (f) => f.solve(tell)));
    for (const { found } of all.told) {
      if (found?.status === 'optimal') judge(found.shares);
    }
    return all;
  })();
  expect(told.some((p) => p.found)).toBe(true);
});

describe('a conflict', () => {
  const impossible = (problem: Problem): Problem => ({
    ...problem,
    rules: [...problem.rules, { nutrient: 'FAT', min: 60 }],
  });
  test.each([
    [
      'with a confidence',
      { ...impossible(drawn(5, 10, 4)), confidence: 0.5, variation: 'published' } as Problem,
    ],
    [
      'of counted foods',
      { ...counted(5, 'nearest'), rules: [{ count: { at_least: 1 }, min: 17 }] } as Problem,
    ],
    ['of rules', impossible(drawn(6, 10, 4))],
  ])('%s: what collides and the remedies so far', (_, problem) => {
    const { told, answer } = followed<SolvedSoFar, ReturnType<Formulation['solve']>>((tell) =>
      formulated(problem, (f) => f.solve(tell)),
    );
    if (answer.status !== 'infeasible') throw new Error('there is a mix');
    const collisions = told.flatMap(({ found }) => (found?.status === 'infeasible' ? [found] : []));
    expect(collisions.length).toBeGreaterThan(0);
    for (const { conflict, remedies } of collisions) {
      expect(conflict).toEqual(answer.conflict);
      for (const remedy of remedies) expect(answer.remedies).toContainEqual(remedy);
    }
    expect(collisions.at(-1)!.remedies).toEqual(answer.remedies);
  });
});

test('two goals: the points so far, from one end to the other', () => {
  const problem = counted(7, 'nearest', [], 8);
  const judge = judgeOf(problem);
  const pairs: [Goal, Goal][] = [
    [{ aim: 'cheap' }, { aim: 'near' }],
    [{ aim: 'near' }, { aim: 'cheap' }],
    [{ aim: 'near' }, { aim: 'varied' }],
  ];
  for (const [a, b] of pairs) {
    type Points = ReturnType<Formulation['frontier']>;
    const { told, answer } = followed<Points, Points>((tell) =>
      formulated(problem, (f) => f.frontier(a, b, tell)),
    );
    expect(answer.length).toBeGreaterThan(2);
    for (const [k, { found = [], done }] of told.entries()) {
      expect(done).toBeGreaterThanOrEqual(told[k - 1]?.done ?? 0);
      for (const point of found) judge(point.shares);
      expect(found.map((p) => p.a)).toEqual(found.map((p) => p.a).sort((p, q) => p - q));
    }
    expect(told.at(-1)!.done).toBeGreaterThan(10);
  }
});

test('one base for several animals: every base told suits them all, with ever less to add', () => {
  const problem = drawn(8, 14, 6, { rules: [] });
  const fat = (bounds: { min?: number; max?: number }): Rule => ({ nutrient: 'FAT', ...bounds });
  const eaters = [
    eater('Bramble', { refuses: ['f1', 'f2'], rules: [fat({ max: 5 })] }),
    eater('Clover', { rules: [fat({ min: 9 }), { nutrient: 'PROCNT', min: 15 }] }),
    eater('Thistle', { rules: [fat({ min: 7 }), { nutrient: 'FIBTG', min: 5 }] }),
  ];
  const { told, answer } = followed<SharedMix, ReturnType<typeof shareMix>>((tell) =>
    shareMix(problem, eaters, { reference, highs }, tell),
  );
  if (answer.status !== 'shared') throw new Error(answer.sentence);
  expect(answer.weighings).toBeGreaterThan(0);
  expect(told.filter((p) => p.doing === 'alone').map((p) => p.done)).toEqual([0, 1, 2]);
  const found = told.flatMap((p) => p.found ?? []);
  expect(found.length).toBeGreaterThan(1);
  for (const mix of found) {
    expect(mix.proved).toBe(false);
    expect(mix.unverified).toEqual([]);
    expect(mix.weighings).toBeGreaterThanOrEqual(answer.weighings);
  }
  for (const { doing, bound, value } of told) {
    if (doing !== 'fewest') continue;
    expect(bound).toBeLessThanOrEqual(answer.weighings);
    expect(value).toBeGreaterThanOrEqual(answer.weighings);
  }
});

test.each(['nearest', 'cheapest', 'varied'] as const)(
  'the solver looks at the clock between its steps, so it can pause there, and no %s mix rests on what it sees',
  (objective) => {
    const problem = counted(5, objective);
    const plain = formulated(problem, (f) => f.solve());
    let looks = 0;
    const clock = vi.spyOn(performance, 'now').mockImplementation(() => 60_000 * ++looks);
    try {
      expect(formulated(problem, (f) => f.solve())).toEqual(plain);
    } finally {
      clock.mockRestore();
    }
    expect(looks).toBeGreaterThan(1000);
  },
);

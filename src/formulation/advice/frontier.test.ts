/** Two goals against each other: ends by independent solvers, and no mix that is better in both. */
import { describe, expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { crudeAmount } from '../../../test/formulation/crude-amount.ts';
import { glpkSolve } from '../../../test/formulation/oracle.ts';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import {
  type DrawnProblem,
  drawProblem,
  fullyKnown,
  randomFrom,
} from '../../../test/formulation/problems.ts';
import { leastSquares, plainWants } from '../../../test/formulation/squares-oracle.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import { parseProblem } from '../problem/parse.ts';
import type { Problem, Shares } from '../problem/problem.ts';
import { loadHighs } from '../solve/highs.ts';
import type { Goal } from './frontier.ts';

const RANDOM_MIXES = draws(2000, 300);
const PROBLEMS = 3;
const reference = loadReference();
const pool = fullyKnown(reference);
const highs = await loadHighs();

const PAIRS: readonly (readonly [Goal, Goal])[] = [
  [{ aim: 'cheap' }, { aim: 'varied' }],
  [{ aim: 'near' }, { aim: 'less', nutrient: 'FAT', on: 'mix' }],
  [{ aim: 'near' }, { aim: 'varied' }],
  [
    { aim: 'more', nutrient: 'PROCNT', on: 'mix' },
    { aim: 'less', nutrient: 'FAT', on: 'mix' },
  ],
  [{ aim: 'cheap' }, { aim: 'more', group: 'herb' }],
];

/** What one percent of each food counts for a goal that is linear; undefined for the two that are not. */
function perPercent(drawn: DrawnProblem, goal: Goal): number[] | undefined {
  if (goal.aim === 'cheap') return drawn.foods.map((f) => f.price_per_kg! / 100);
  if ('nutrient' in goal)
    return drawn.foods.map((f) => crudeAmount(reference.get(f.ref!)!, goal.nutrient)! / 100);
  if ('group' in goal) return drawn.foods.map((f) => Number(f.group === goal.group));
  return undefined;
}

/** A goal as a number of which less is better, straight from the words. */
function worse(drawn: DrawnProblem, goal: Goal, shares: Shares): number {
  const x = drawn.foods.map((f) => shares[f.id] ?? 0);
  const w = perPercent(drawn, goal);
  if (w) return (goal.aim === 'more' ? -1 : 1) * x.reduce((s, v, i) => s + v * w[i]!, 0);
  const target = goal.aim === 'near' ? plainWants(drawn) : x.map(() => 0);
  return x.reduce((s, v, i) => s + (v - target[i]!) ** 2, 0);
}

/** The least of a goal by an independent solver. */
async function least(drawn: DrawnProblem, goal: Goal): Promise<number> {
  const w = perPercent(drawn, goal);
  const sign = goal.aim === 'more' ? -1 : 1;
  const found = w
    ? await glpkSolve(
        drawn,
        reference,
        w.map((v) => sign * v),
      )
    : leastSquares(drawn, reference, goal.aim === 'near' ? plainWants(drawn) : drawn.foods.map(() => 0));
  return found!;
}

/** Mixes that keep every rule, drawn from near and far. */
function randomMixes(drawn: DrawnProblem, formulation: Formulation, seed: number): Shares[] {
  const random = randomFrom(seed);
  return Array.from({ length: RANDOM_MIXES }, (_, k) => {
    const reach = [30, 100, 1000][k % 3]!;
    const target = Object.fromEntries(drawn.foods.map((f) => [f.id, reach * (random() - 0.3)]));
    const found = formulation.move(target, {});
    if (found.status !== 'optimal') throw new Error(found.verdict);
    return found.shares;
  });
}

describe(`on ${PROBLEMS} drawn problems`, () => {
  test('ends, order and rules are right, and no mix is better in both', async () => {
    const met = { frontiers: 0, points: 0, single: 0, compared: 0 };
    let problems = 0;
    for (let seed = 40_000; problems < PROBLEMS; seed++) {
      const drawn = drawProblem(pool, seed, 'nearest');
      if (drawn.foods.reduce((s, f) => s + (f.max ?? 100), 0) < 100) continue;
      const { problem } = parseProblem(JSON.parse(JSON.stringify(drawn)), reference);
      const formulation = new Formulation(problem, { reference, highs });
      if (!formulation.feasible()) continue;
      problems++;
      const others = randomMixes(drawn, formulation, seed);
      for (const [a, b] of PAIRS) {
        const what = `${JSON.stringify([a, b])} of seed ${seed}`;
        const points = formulation.frontier(a, b);
        met.frontiers++;
        met.points += points.length;
        if (points.length === 1) met.single++;
        const at = (shares: Shares) => [worse(drawn, a, shares), worse(drawn, b, shares)] as const;
        const costs = points.map((p) => at(p.shares));
        const last = costs.at(-1)!;
        const slackOf = (v: number) => 1e-5 * Math.max(1, Math.abs(v));

        for (const [k, p] of points.entries()) {
          expect(formulation.evaluate(p.shares).breaches, what).toEqual([]);
          expect(Object.values(p.shares).reduce((s, v) => s + v, 0)).toBeCloseTo(100, 8);
          expect((a.aim === 'more' ? -1 : 1) * p.a, what).toBeCloseTo(costs[k]![0], 6);
          expect((b.aim === 'more' ? -1 : 1) * p.b, what).toBeCloseTo(costs[k]![1], 6);
        }
        const ends = [await least(drawn, a), await least(drawn, b)] as const;
        expect(Math.abs(costs[0]![0] - ends[0]), `best of the first, ${what}`).toBeLessThan(slackOf(ends[0]));
        expect(Math.abs(last[1] - ends[1]), `best of the second, ${what}`).toBeLessThan(slackOf(ends[1]));

        for (const [k, now] of costs.entries()) {
          const before = costs[k - 1];
          if (!before) continue;
          expect(now[0], `point ${k}, ${what}`).toBeGreaterThan(before[0] - slackOf(before[0]));
          expect(now[1], `point ${k}, ${what}`).toBeLessThan(before[1] + slackOf(before[1]));
        }
        const beaten = [...costs, ...others.map(at)].flatMap((other) => {
          const better = (own: readonly [number, number], g: 0 | 1) =>
            other[g] < own[g] - 3 * slackOf(own[g]) && other[1 - g]! <= own[1 - g]!;
          met.compared += costs.length;
          return costs.filter((own) => better(own, 0) || better(own, 1)).map((own) => [other, own]);
        });
        expect(beaten, what).toEqual([]);
      }
      formulation.dispose();
    }
    console.log('frontiers', met);
    expect(met.points).toBeGreaterThan(met.frontiers * 5);
  });
});

describe('where there is little to trade', () => {
  const drawn = problemOf({
    foods: [
      { id: 'oats', ref: 'sr28:20038', price_per_kg: 2 },
      { id: 'millet', ref: 'sr28:20031', price_per_kg: 2 },
    ],
  });
  const frontierOf = (problem: Problem, a: Goal, b: Goal) => {
    const parsed = parseProblem(JSON.parse(JSON.stringify(problem)), reference).problem;
    return new Formulation(parsed, { reference, highs }).frontier(a, b);
  };

  test('goals that do not conflict have one point', () => {
    const points = frontierOf(drawn, { aim: 'near' }, { aim: 'varied' });
    expect(points).toHaveLength(1);
    expect(points[0]!.shares.oats).toBeCloseTo(50, 6);
  });

  test('the line between two foods has the points that arithmetic gives', () => {
    const priced = { ...drawn, foods: [drawn.foods[0]!, { ...drawn.foods[1]!, price_per_kg: 4 }] };
    const points = frontierOf(priced, { aim: 'cheap' }, { aim: 'varied' });
    expect(points).toHaveLength(15);
    for (const { a, b, shares } of points) {
      // All oats cost 2 a kilogram, all millet 4; half of each is the most varied.
      expect(a).toBeCloseTo(2 + (2 * shares.millet!) / 100, 6);
      expect(b).toBeCloseTo(shares.oats! ** 2 + shares.millet! ** 2, 6);
    }
    // The solver's last digits of a kilogram's price are some 1e-5 of a share.
    expect(points[0]!.shares.millet).toBeCloseTo(0, 4);
    expect(points.at(-1)!.shares.millet).toBeCloseTo(50, 4);
    expect(points[7]!.a).toBeCloseTo(2.5, 5);
  });

  test('rules that no mix can keep leave no point', () => {
    const never: Problem = { ...drawn, rules: [{ nutrient: 'PROCNT', min: 90 }] };
    expect(frontierOf(never, { aim: 'near' }, { aim: 'varied' })).toEqual([]);
  });
});

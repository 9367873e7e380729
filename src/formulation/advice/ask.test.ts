/** Answers to shares asked of one food, each checked by a solver that shares nothing with the product. */
import { beforeAll, describe, expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { glpkSolve } from '../../../test/formulation/oracle.ts';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import {
  type DrawnProblem,
  drawProblem,
  fullyKnown,
  randomFrom,
} from '../../../test/formulation/problems.ts';
import { demoHousehold } from '../../household/demo.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import { parseProblem } from '../problem/parse.ts';
import type { Problem } from '../problem/problem.ts';
import { type Highs, loadHighs } from '../solve/highs.ts';
import { emptiedBy } from './ask.ts';

const reference = loadReference();
const pool = fullyKnown(reference);
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

function ask<T>(problem: DrawnProblem | Problem, question: (f: Formulation) => T): T {
  const parsed = parseProblem(JSON.parse(JSON.stringify(problem)), reference);
  const formulation = new Formulation(parsed.problem, { reference, highs });
  try {
    return question(formulation);
  } finally {
    formulation.dispose();
  }
}

const fatty = problemOf({
  foods: [
    { id: 'sunflower', composition: { FAT: 50, PROCNT: 20, WATER: 5 }, want: 20 },
    { id: 'oats', composition: { FAT: 6, PROCNT: 13, WATER: 9 } },
    { id: 'millet', composition: { FAT: 4, PROCNT: 11, WATER: 9 } },
  ],
  rules: [{ nutrient: 'FAT', max: 7 }],
});

describe('what stands in the way of a share', () => {
  test('is the limit that no mix with that share keeps', () => {
    const answer = ask(fatty, (f) => f.askOf({ sunflower: 5, oats: 50, millet: 45 }, {}, 'sunflower', 20));
    expect(answer).toEqual({
      possible: false,
      limits: [
        {
          pointer: '/rules/0/max',
          side: 'max',
          bound: 7,
          unit: '%',
          subject: 'fat of the mix',
          caution: false,
        },
      ],
      near: false,
    });
  });

  test('is the limit that the other foods in their proportion would break, where some mix has it', () => {
    const shares = { sunflower: 2, oats: 90, millet: 8 };
    const answer = ask(fatty, (f) => f.askOf(shares, {}, 'sunflower', 5));
    expect(answer).toMatchObject({ possible: true, limits: [{ pointer: '/rules/0/max' }] });
  });

  test('is the keeper’s own most or least of the food before anything else', () => {
    const own = {
      ...fatty,
      foods: fatty.foods.map((f) => (f.id === 'oats' ? { ...f, max: 50, min: 10 } : f)),
    };
    const shares = { sunflower: 5, oats: 50, millet: 45 };
    const [most, least] = ask(own, (f) => [80, 5].map((share) => f.askOf(shares, {}, 'oats', share)));
    expect(most).toMatchObject({ possible: false, limits: [{ pointer: '/foods/1/max', bound: 50 }] });
    expect(least).toMatchObject({ possible: false, limits: [{ pointer: '/foods/1/min', bound: 10 }] });
  });

  test('is a caution’s limit, named by the food', () => {
    const almonds = problemOf({
      foods: [{ id: 'almond', name: 'Almonds', ref: 'sr28:12061' }, ...fatty.foods.slice(1)],
      cautions: 'apply',
    });
    const shares = { almond: 2, oats: 50, millet: 48 };
    const { possible, limits } = ask(almonds, (f) => f.askOf(shares, {}, 'almond', 40));
    expect(possible).toBe(false);
    expect(limits).toMatchObject([{ pointer: '/foods/0', side: 'max' }]);
  });

  test('is the other foods that are held, where nothing else is', () => {
    const free = { ...fatty, rules: [] };
    const shares = { sunflower: 10, oats: 50, millet: 40 };
    const answer = ask(free, (f) => f.askOf(shares, { oats: 50, millet: 40 }, 'sunflower', 30));
    expect(answer.possible).toBe(false);
    expect(answer.limits.map((l) => l.pointer)).toEqual(
      ['/foods/1/max', '/foods/2/max'].map((p) => p.replace('max', 'min')),
    );
  });

  test('is the margin that the best mix keeps, where the limit itself would hold', () => {
    const [mix] = demoHousehold().mixes;
    if (!mix) throw new Error('the demonstration has no mix');
    const near = ask(mix.problem, (f) => {
      const best = f.solve();
      if (best.status !== 'optimal') throw new Error('the demonstration has a mix in range');
      return mix.problem.foods
        .filter((food) => (food.want ?? 0) - (best.shares[food.id] ?? 0) > 0.1)
        .map((food) => f.askOf(best.shares, {}, food.id, food.want!));
    });
    expect(near.length).toBeGreaterThan(0);
    expect(near.some((a) => a.near && a.limits.length > 0)).toBe(true);
  });

  test('of a food that is not in the mix is a caller’s mistake', () => {
    expect(() => ask(fatty, (f) => f.askOf({}, {}, 'rice', 5))).toThrow(RangeError);
  });
});

test('in drawn problems GLPK agrees on what is possible, and each limit named is one that stands in the way', async () => {
  const many = draws(120, 24);
  let [refused, granted, named] = [0, 0, 0];
  for (let seed = 1; seed <= many; seed++) {
    const drawn = drawProblem(pool, seed, 'nearest');
    const random = randomFrom(seed);
    const food = drawn.foods[Math.floor(random() * drawn.foods.length)]!;
    const wanted = Number((random() < 0.5 ? 60 * random() : 12 * random()).toFixed(1));
    const told = ask(drawn, (f) => {
      const best = f.best();
      return best && { best, answer: f.askOf(best.shares, {}, food.id, wanted) };
    });
    if (!told) continue;
    const { answer, best } = told;
    const cost = (sign: number) => drawn.foods.map((f) => (f === food ? sign : 0));
    const low = (await glpkSolve(drawn, reference, cost(1)))!;
    const high = -(await glpkSolve(drawn, reference, cost(-1)))!;
    // At the very edge either answer is right.
    if (Math.min(Math.abs(wanted - low), Math.abs(wanted - high)) > 0.06)
      expect(answer.possible).toBe(wanted > low && wanted < high);
    if (answer.possible === false) {
      refused++;
      if (wanted > (food.max ?? 100) || wanted < (food.min ?? 0)) continue;
      const fixed = withShare(drawn, food.id, wanted);
      expect(await glpkSolve(fixed, reference, cost(0))).toBeUndefined();
      expect(answer.limits.length).toBeGreaterThan(0);
      // A limit named alone refuses the share all by itself; of two there may be more behind them.
      const [limit, more] = answer.limits;
      if (!limit || more) continue;
      expect(await glpkSolve(only(fixed, limit.pointer, food.id), reference, cost(0))).toBeUndefined();
      named++;
    } else {
      granted++;
      const rest = 100 - (best.shares[food.id] ?? 0);
      const others = Object.fromEntries(
        Object.entries(best.shares).map(([id, s]) => [
          id,
          id === food.id ? wanted : (s * (100 - wanted)) / rest,
        ]),
      );
      const broken = ask(drawn, (f) => f.evaluate(others).breaches.map((b) => b.pointer));
      expect(broken).toEqual(expect.arrayContaining(answer.limits.map((l) => l.pointer)));
      expect(answer.limits.length).toBe(Math.min(2, broken.length));
    }
  }
  expect(refused).toBeGreaterThan(many / 12);
  expect(granted).toBeGreaterThan(many / 12);
  expect(named).toBeGreaterThan(0);
});

function withShare(drawn: DrawnProblem, id: string, share: number): DrawnProblem {
  return { ...drawn, foods: drawn.foods.map((f) => (f.id === id ? { ...f, min: share, max: share } : f)) };
}

/** With one bound alone, and the share of the food that was asked of. */
function only(drawn: DrawnProblem, pointer: string, asked: string): DrawnProblem {
  const [, list, row, side] = pointer.split('/') as [string, 'rules' | 'foods', string, 'min' | 'max'];
  const none = { min: undefined, max: undefined };
  const kept = <T extends { min?: number; max?: number }>(items: readonly T[], here: boolean) =>
    items.map((item, i) => ({
      ...item,
      ...none,
      ...(here && String(i) === row ? { [side]: item[side] } : {}),
    }));
  const foods = kept(drawn.foods, list === 'foods');
  return {
    ...drawn,
    foods: drawn.foods.map((f, i) => (f.id === asked ? f : foods[i]!)),
    rules: kept(drawn.rules, list === 'rules'),
  };
}

describe('foods that an ask leaves with nothing', () => {
  test('had a share that is shown, and would show 0; the food asked of is not among them', () => {
    const from = { sunflower: 10, oats: 50, millet: 39.9, dill: 0.1 };
    const to = { sunflower: 0, oats: 0.04, millet: 0.06, dill: 0 };
    expect(emptiedBy(from, to, 'sunflower')).toEqual(['oats']);
    expect(emptiedBy(from, {}, 'sunflower')).toEqual([]);
  });
});

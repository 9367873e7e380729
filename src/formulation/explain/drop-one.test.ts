/** What is eaten when one food is left, worked out directly and as half-spaces; mixes made to be safe are safe. */

import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { drawProblem, fullyKnown, randomFrom } from '../../../test/formulation/problems.ts';
import { loadReference } from '../../household/reference-file.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { NO_CAPS } from '../amounts/apply-cautions.ts';
import { foodAmounts } from '../amounts/food-amounts.ts';
import { parseProblem } from '../problem/parse.ts';
import type { Problem } from '../problem/problem.ts';
import { linearBounds, Ration } from '../solve/bounds.ts';
import { boundsWithout, dropOneBounds } from '../solve/drop-one.ts';
import { type Highs, loadHighs } from '../solve/highs.ts';
import { Polytope } from '../solve/polytope.ts';
import { dot } from '../solve/vectors.ts';
import { dropOne } from './drop-one.ts';

const reference = loadReference();
const pool = fullyKnown(reference).filter((f) => (f.composition.WATER ?? 100) <= 40);
let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

function rationOf(problem: Problem): Ration {
  const foods = problem.foods.map((f) => foodAmounts(f, reference));
  const beside = problem.beside.map((b) => ({
    food: foodAmounts(b, reference),
    part: b.share_of_ration / 100,
  }));
  return new Ration(foods, beside);
}

function posed(json: object): { problem: Problem; ration: Ration } {
  const { problem } = parseProblem(json, reference);
  return { problem, ration: rationOf(problem) };
}

/** Shares of a random mix, 100 in all, some of them 0. */
function drawShares(n: number, random: () => number): Float64Array {
  const raw = Array.from({ length: n }, () => (random() < 0.3 ? 0 : -Math.log(1 - random())));
  raw[0]! += 0.1;
  raw[1]! += 0.1;
  const sum = raw.reduce((a, b) => a + b, 0);
  return Float64Array.from(raw, (v) => (100 * v) / sum);
}

/** The content or ratio of what is eaten, gram by gram, for each bound of each nutrient and ratio rule in turn. */
function eatenValues(problem: Problem, ration: Ration, x: ArrayLike<number>, left: number): number[] {
  return problem.rules.flatMap((rule) => {
    if (!('nutrient' in rule || 'ratio' in rule)) return [];
    const plate = ration.foods.flatMap((food, i) =>
      i === left ? [] : [{ food, grams: (rule.on === 'ration' ? ration.mixPart : 1) * x[i]! }],
    );
    if (rule.on === 'ration')
      for (const b of ration.beside) plate.push({ food: b.food, grams: 100 * b.part });
    const held = (tag: Tag) => plate.reduce((sum, p) => sum + (p.grams * p.food.amount(tag).value) / 100, 0);
    const grams = plate.reduce((sum, p) => sum + p.grams, 0);
    const value =
      'ratio' in rule
        ? held(rule.ratio[0]) / held(rule.ratio[1])
        : (100 * held(rule.nutrient)) / (rule.basis === 'DM' ? grams - held('WATER') : grams);
    return [rule.min, rule.max].flatMap((bound) => (bound === undefined ? [] : [value]));
  });
}

describe('half-spaces', () => {
  test('agree with what is eaten, gram by gram', () => {
    let compared = 0;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (seed) => {
        const { problem, ration } = posed(drawProblem(pool, seed, 'nearest'));
        const x = drawShares(ration.foods.length, randomFrom(seed));
        const bounds = dropOneBounds(problem, ration);
        const per = bounds.length / ration.foods.length;
        ration.foods.forEach((_, left) => {
          eatenValues(problem, ration, x, left).forEach((value, k) => {
            const bound = bounds[left * per + k]!;
            if (!Number.isFinite(value)) return;
            compared++;
            expect(Math.abs(bound.value(x) - value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(value)));
            // At the value itself the row is met exactly: nothing is short, nothing is over.
            const { g, h, scale } = bound.halfSpace(value);
            const size = Math.max(1, Math.abs(h), Math.abs(value) / scale);
            expect(Math.abs(dot(g, x) - h)).toBeLessThanOrEqual(1e-9 * size);
            const { g: row, h: least } = bound.halfSpace(bound.bound);
            const room = bound.side === 'min' ? value - bound.bound : bound.bound - value;
            if (Math.abs(room) > 1e-6 * Math.max(1, Math.abs(bound.bound)))
              expect(dot(row, x) - least > 0, bound.subject).toBe(room > 0);
          });
        });
      }),
      { numRuns: 40, seed: 7 },
    );
    expect(compared).toBeGreaterThan(3000);
  });

  test('a further food is eaten in every case', () => {
    for (let seed = 1; seed <= 20; seed++) {
      const { problem, ration } = posed(drawProblem(pool, seed, 'nearest'));
      const last = ration.foods.at(-1)!;
      const fewer = new Ration(ration.foods.slice(0, -1), ration.beside);
      for (const left of fewer.foods) {
        const whole = boundsWithout(problem, ration, left);
        boundsWithout(problem, fewer, left).forEach((bound, k) => {
          const { g, scale } = whole[k]!.halfSpace(bound.bound);
          expect(bound.coefficient(bound.bound, last)).toBeCloseTo(g.at(-1)! * scale, 9);
        });
      }
    }
  });
});

describe('solving with the bounds of every food left', () => {
  test('gives mixes that stay in range, where plain ones often do not', () => {
    let [met, plainUnsafe, impossible] = [0, 0, 0];
    for (let seed = 1; seed <= 60; seed++) {
      const { problem, ration } = posed(drawProblem(pool, seed, 'nearest'));
      const open = problem.foods.map((_, i) => i);
      const bounds = linearBounds(problem, ration, open, 0, NO_CAPS).filter((s) =>
        s.pointer.startsWith('/rules/'),
      );
      const lower = Float64Array.from(problem.foods, (f) => f.min ?? 0);
      const upper = Float64Array.from(problem.foods, (f) => f.max ?? 100);
      const even = new Float64Array(open.length).fill(100 / open.length);
      const solve = (all: typeof bounds) => {
        const polytope = new Polytope(highs, lower, upper, all);
        const answer = polytope.nearest(even);
        polytope.dispose();
        return answer.status === 'optimal' ? answer.x : undefined;
      };
      const plain = solve(bounds);
      if (!plain) continue;
      if (!dropOne(problem, ration, plain).safe) plainUnsafe++;
      const x = solve([...bounds, ...dropOneBounds(problem, ration)]);
      if (!x) {
        impossible++;
        continue;
      }
      met++;
      // Shares that are the solver's own dust are no food.
      const clean = x.map((v) => (v < 1e-8 ? 0 : v));
      const answer = dropOne(problem, ration, clean);
      expect(answer.foods.flatMap((f) => f.breaches)).toEqual([]);
      expect(answer.safe).toBe(true);
    }
    expect(met).toBeGreaterThan(8);
    expect(plainUnsafe).toBeGreaterThan(5);
    expect(impossible).toBeLessThan(60);
  });
});

describe('in words', () => {
  const food = (id: string, name: string, protein: number) => ({
    id,
    name,
    group: 'seed',
    composition: { PROCNT: protein, WATER: 10 },
  });
  const two = {
    foods: [food('millet', 'millet', 10), food('peas', 'peas', 24)],
    rules: [
      { nutrient: 'PROCNT', max: 19, min: 15, on: 'ration' },
      { group: 'seed', max: 100 },
    ],
    beside: [{ id: 'pellet', share_of_ration: 50, composition: { PROCNT: 17 } }],
  };

  test('each food left names what breaks, with what is eaten as its whole', () => {
    const { problem, ration } = posed(two);
    // Half and half: 17 % in the mix and in the pellet. Without millet 25 g of peas go with 50 g of pellet.
    const answer = dropOne(problem, ration, [50, 50]);
    expect(answer.safe).toBe(false);
    expect(answer.foods.map((f) => f.food)).toEqual(['millet', 'peas']);
    const [millet, peas] = answer.foods;
    expect(millet!.breaches).toMatchObject([{ pointer: '/rules/0/max', side: 'max', bound: 19 }]);
    expect(millet!.breaches[0]!.actual).toBeCloseTo((25 * 24 + 50 * 17) / 75, 12);
    expect(millet!.breaches[0]!.sentence).toBe(
      'Without millet, crude protein of the whole ration is 19.3 %, above the most allowed, 19 %.',
    );
    expect(peas!.breaches[0]!.actual).toBeCloseTo((25 * 10 + 50 * 17) / 75, 12);
    expect(answer.sentence).toBe('Out of range when one of these is left: millet and peas.');
  });

  test('the bounds say which food is left, and why they stand', () => {
    const { problem, ration } = posed(two);
    const bounds = dropOneBounds(problem, ration);
    expect(bounds).toHaveLength(4);
    expect(bounds[0]).toMatchObject({
      pointer: '/drop_one',
      subject: 'crude protein of the whole ration without millet',
      because: 'every food may be left',
    });
  });

  test('foods that are not in the mix are not left, and shares count as parts of their sum', () => {
    const { problem, ration } = posed(two);
    expect(dropOne(problem, ration, [100, 0]).foods.map((f) => f.food)).toEqual(['millet']);
    expect(dropOne(problem, ration, [25, 25])).toEqual(dropOne(problem, ration, [50, 50]));
  });

  test('where the only food is left the pellet alone is judged, and of an empty mix nothing is asked', () => {
    const { problem, ration } = posed({
      ...two,
      rules: [...two.rules, { nutrient: 'PROCNT', min: 5, on: 'mix' }],
    });
    expect(dropOne(problem, ration, [100, 0])).toMatchObject({ safe: true });
    const [ofRation, , ofMix] = dropOneBounds(problem, ration);
    expect(ofRation!.value([100, 0])).toBeCloseTo(17, 12);
    expect(ofMix!.value([100, 0])).toBe(5);
    expect(dropOne(problem, ration, [100, 0]).sentence).toMatch(/^Any one food may be left/);
  });
});

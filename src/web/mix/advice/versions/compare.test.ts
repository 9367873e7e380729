/** Two mixes side by side: every food and rule of either, and nothing unknown told as a figure. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluation } from '../../../../../test/formulation/evaluations.ts';
import { problemOf } from '../../../../../test/formulation/problem-of.ts';
import type { Ingredient, Problem, Rule } from '../../../../formulation/problem/problem.ts';
import type { Evaluation, NutrientLine } from '../../../../formulation/problem/result.ts';
import { type ComparedMix, compareMixes } from './compare.ts';

const problem = (foods: readonly Ingredient[], rules: readonly Rule[] = []) => problemOf({ foods, rules });
const line = (mix: number, ration: number, part: Partial<NutrientLine> = {}): NutrientLine => ({
  mix,
  ration,
  low: ration,
  high: ration,
  coverage: 100,
  low_mix: mix,
  high_mix: mix,
  coverage_mix: 100,
  sd_mix: 0,
  sd_ration: 0,
  ...part,
});
const side = (p: Problem, shares: Record<string, number>, e: Partial<Evaluation> = {}): ComparedMix => ({
  problem: p,
  shares,
  evaluation: evaluation(e),
});

const IDS = ['oats', 'millet', 'carrot', 'lentils', 'mealworm'];
const anySide = fc
  .record({
    ids: fc.uniqueArray(fc.constantFrom(...IDS), { minLength: 1 }),
    shares: fc.array(fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 60, noNaN: true })), {
      minLength: 5,
      maxLength: 5,
    }),
    prices: fc.array(fc.option(fc.double({ min: 0.5, max: 20, noNaN: true }), { nil: undefined }), {
      minLength: 5,
      maxLength: 5,
    }),
  })
  .map(({ ids, shares, prices }) =>
    side(
      problem(ids.map((id, i) => ({ id, price_per_kg: prices[i] }))),
      Object.fromEntries(ids.map((id, i) => [id, shares[i]!])),
    ),
  );

describe('foods', () => {
  test('the second against the first mirrors the first against the second', () => {
    fc.assert(
      fc.property(anySide, anySide, (a, b) => {
        const there = new Map(compareMixes(a, b).foods.map((r) => [r.key, r]));
        const back = compareMixes(b, a).foods;
        expect(back).toHaveLength(there.size);
        for (const row of back) {
          expect(there.get(row.key)!.share).toEqual({ a: row.share.b, b: row.share.a });
          expect(there.get(row.key)!.difference).toBe(row.share.a - row.share.b);
        }
      }),
    );
  });

  test('every food that either holds has one row, the greatest gain first, and the shares add up', () => {
    fc.assert(
      fc.property(anySide, anySide, (a, b) => {
        const { foods, whole } = compareMixes(a, b);
        const held = IDS.filter((id) => (a.shares[id] ?? 0) > 0 || (b.shares[id] ?? 0) > 0);
        expect(foods.map((r) => r.key).sort()).toEqual(held.sort());
        const differences = foods.map((r) => r.difference);
        expect(differences).toEqual([...differences].sort((x, y) => y - x));
        for (const of of ['a', 'b'] as const) {
          const sum = foods.reduce((s, r) => s + r.share[of], 0);
          expect(sum).toBeCloseTo(whole[of].total, 9);
          expect(foods.filter((r) => r.within === of || r.within === 'both')).toHaveLength(whole[of].foods);
        }
      }),
    );
  });

  test('a mix against itself differs in nothing', () => {
    fc.assert(
      fc.property(anySide, (a) => {
        const { foods, whole } = compareMixes(a, a);
        expect(foods.every((r) => r.difference === 0 && r.within === 'both')).toBe(true);
        expect(whole.a).toEqual(whole.b);
      }),
    );
  });

  test('a food taken out and put back under another id is the same by its reference number', () => {
    const a = side(problem([{ id: 'rolled-oats', ref: 'sr28:08120' }]), { 'rolled-oats': 40 });
    const b = side(problem([{ id: 'sr28-08120', ref: 'sr28:08120' }]), { 'sr28-08120': 55 });
    expect(compareMixes(a, b).foods).toMatchObject([{ share: { a: 40, b: 55 }, within: 'both' }]);
  });

  test('two foods of one reference number stay two', () => {
    const twice = problem([
      { id: 'plain', ref: 'sr28:08120' },
      { id: 'roasted', ref: 'sr28:08120' },
    ]);
    const a = side(problem([{ id: 'old', ref: 'sr28:08120' }]), { old: 10 });
    const b = side(twice, { plain: 10, roasted: 20 });
    expect(compareMixes(a, b).foods.map((r) => [r.key, r.share.a, r.share.b])).toEqual([
      ['roasted', 0, 20],
      ['plain', 10, 10],
    ]);
  });

  test('refused foods, and foods that must not be fed, are not in the mix whatever their share says', () => {
    const a = side(problem([{ id: 'oats' }, { id: 'garlic' }, { id: 'dill', refused: true }]), {
      oats: 90,
      garlic: 5,
      dill: 5,
    });
    const blocked = { food: 'garlic', applied: 'blocked' } as Evaluation['cautions'][number];
    const b = { ...a, evaluation: evaluation({ cautions: [blocked] }) };
    expect(compareMixes(a, b).foods.map((r) => [r.key, r.within])).toEqual([
      ['oats', 'both'],
      ['garlic', 'a'],
    ]);
  });
});

describe('price', () => {
  test('lies between the cheapest and the dearest food, or names every food that has none', () => {
    fc.assert(
      fc.property(anySide, (a) => {
        const { price } = compareMixes(a, a).whole.a;
        const used = a.problem.foods.filter((f) => a.shares[f.id]! > 0);
        const unpriced = used.filter((f) => f.price_per_kg === undefined);
        if (unpriced.length > 0 || used.length === 0) {
          expect(price).toEqual({ missing: unpriced });
          return;
        }
        const prices = used.map((f) => f.price_per_kg!);
        expect(price.perKg).toBeGreaterThanOrEqual(Math.min(...prices) - 1e-9);
        expect(price.perKg).toBeLessThanOrEqual(Math.max(...prices) + 1e-9);
      }),
    );
  });

  test('is per kilogram of the mix, and a food of no share needs none', () => {
    const foods = [{ id: 'oats', price_per_kg: 2 }, { id: 'millet', price_per_kg: 6 }, { id: 'dill' }];
    const a = side(problem(foods), { oats: 30, millet: 10, dill: 0 });
    expect(compareMixes(a, a).whole.a.price).toEqual({ perKg: 3 });
  });
});

describe('windows', () => {
  const protein: Rule = { nutrient: 'PROCNT', min: 17, max: 19, on: 'ration' };
  const nutrients = { PROCNT: line(16, 18), CA: line(400, 500), P: line(400, 400) };

  test('each mix stands against its own bounds', () => {
    const a = side(problem([], [protein]), {}, { nutrients, in_range_chance: { PROCNT: 0.9 } });
    const b = side(
      problem([], [{ ...protein, min: 18.5 }]),
      {},
      {
        nutrients,
        in_range_chance: { PROCNT: 0.2 },
        breaches: [{ pointer: '/rules/0/min', sentence: '', actual: 18, bound: 18.5, side: 'min' }],
      },
    );
    expect(compareMixes(a, b).windows).toMatchObject([
      {
        title: 'Crude protein',
        on: 'ration',
        at: {
          a: { min: 17, max: 19, value: 18, state: 'in', chance: 0.9 },
          b: { min: 18.5, max: 19, value: 18, state: 'out', chance: 0.2 },
        },
      },
    ]);
  });

  test('a rule of one mix only still shows what the other holds', () => {
    const ratio: Rule = { ratio: ['CA', 'P'], min: 1, on: 'ration' };
    const a = side(problem([], [ratio]), {}, { nutrients });
    const b = side(problem([], [protein]), {}, { nutrients });
    const { windows } = compareMixes(a, b);
    expect(windows.map((w) => w.key)).toEqual(['PROCNT ration', 'CA:P ration']);
    expect(windows[0]!.at.a).toMatchObject({ value: 18, state: 'unasked', chance: undefined });
    expect(windows[0]!.at.a.min).toBeUndefined();
    expect(windows[1]!.at.b).toMatchObject({ value: 1.25, state: 'unasked' });
  });

  test('the same content of mix and ration, and on dry matter, are windows of their own', () => {
    const rules: Rule[] = [
      protein,
      { nutrient: 'PROCNT', min: 15 },
      { nutrient: 'PROCNT', min: 18, on: 'ration', basis: 'DM' },
      { nutrient: 'PROCNT', max: 30, on: 'ration' },
    ];
    const a = side(problem([], rules), {}, { nutrients });
    expect(compareMixes(a, a).windows.map((w) => [w.key, w.at.a.min, w.at.a.value])).toEqual([
      ['PROCNT ration', 17, 18],
      ['PROCNT mix', 15, 16],
      ['PROCNT ration DM', 18, 18],
      ['PROCNT ration+', undefined, 18],
    ]);
  });

  test('nothing known is unknown, a part known is at least, and a chance on missing figures is not told', () => {
    const rules: Rule[] = [
      { nutrient: 'VITD', min: 1, on: 'ration' },
      { nutrient: 'CA', min: 300, on: 'ration' },
    ];
    const unsure = [0, 1].map((i) => ({
      pointer: `/rules/${i}`,
      nutrient: 'CA' as const,
      foods: ['oats'],
      sentence: '',
    }));
    const a = side(
      problem([], rules),
      {},
      {
        nutrients: { VITD: line(0, 0, { coverage: 0 }), CA: line(400, 500, { coverage: 60 }) },
        in_range_chance: { VITD: 0, CA: 1 },
        all_in_range_chance: 0,
        unsure,
      },
    );
    const { windows, whole } = compareMixes(a, a);
    expect(windows[0]!.at.a).toMatchObject({ value: undefined, state: 'unknown', chance: undefined });
    expect(windows[1]!.at.a).toMatchObject({ value: 500, atLeast: true, unsure: true, chance: undefined });
    expect(whole.a).toMatchObject({ allChance: 0, unsure: true });
  });

  test('where no window is asked for there is no chance of keeping them', () => {
    const a = side(problem([], [{ group: 'seed', min: 30 }]), {});
    expect(compareMixes(a, a)).toMatchObject({ windows: [], whole: { a: { allChance: undefined } } });
  });
});

/** The best mix keeps as far from the bounds as any mix can, and bounds stay where they are. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import { demoProblem } from '../../household/demo.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import type { Problem } from '../problem/problem.ts';
import type { Balanced } from '../problem/result.ts';
import { loadHighs } from './highs.ts';

const parts = { reference: loadReference(), highs: await loadHighs() };

function solved(problem: Problem): Balanced {
  const formulation = new Formulation(problem, parts);
  try {
    const result = formulation.solve();
    if (result.status !== 'optimal') throw new Error(result.verdict);
    return result;
  } finally {
    formulation.dispose();
  }
}

const lean = { id: 'lean', composition: { FAT: 3 }, sd: { FAT: 0.5 }, want: 0 };
const rich = { id: 'rich', composition: { FAT: 9 }, sd: { FAT: 1.5 }, want: 100 };
const fat = { nutrient: 'FAT', min: 3, max: 7 } as const;

test('without a margin the mix goes to the bound, with one it stays away from it', () => {
  const plain = solved(problemOf({ foods: [lean, rich], rules: [fat] }));
  expect(plain.nutrients.FAT?.mix).toBeCloseTo(7, 6);
  const safe = solved(problemOf({ foods: [lean, rich], rules: [fat], margin: 0.9 }));
  expect(safe.in_range_chance.FAT).toBeGreaterThan(0.9);
  expect(safe.in_range).toBe('surely');
  // Shares may still be moved up to the bounds themselves.
  expect(safe.spans).toEqual(plain.spans);
});

test('where not even a small margin can be kept the mix is the one without', () => {
  const narrow = { ...fat, min: 6.999, max: 7 };
  const asked = problemOf({ foods: [lean, rich], rules: [narrow] });
  expect(solved({ ...asked, margin: 0.9 }).shares).toEqual(solved(asked).shares);
});

test('cheapest, wished for and confident mixes are left alone', () => {
  const foods = [
    { ...lean, price_per_kg: 2 },
    { ...rich, price_per_kg: 1 },
  ];
  for (const about of [
    { objective: 'cheapest' },
    { aims: [{ aim: 'less', food: 'lean' }] },
    { confidence: 0.5 },
  ] as const) {
    const problem = problemOf({ foods, rules: [fat], ...about });
    expect(solved({ ...problem, margin: 0.9 }).shares).toEqual(solved(problem).shares);
  }
});

test('the demonstration is kept with a chance of at least 80 % for all windows at once', () => {
  const result = solved(demoProblem());
  expect(result.all_in_range_chance).toBeGreaterThanOrEqual(0.8);
});

test('a margin never costs chance: all windows at once are at least as likely as without', () => {
  const amount = fc.double({ min: 1, max: 20, noNaN: true });
  const food = fc.record({
    FAT: amount,
    PROCNT: amount,
    spread: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(food, { minLength: 3, maxLength: 6 }), (drawn) => {
      const foods = drawn.map(({ spread, ...composition }, i) => ({
        id: `f${i}`,
        composition,
        sd: { FAT: composition.FAT * spread, PROCNT: composition.PROCNT * spread },
      }));
      const mean = (tag: 'FAT' | 'PROCNT') => drawn.reduce((sum, f) => sum + f[tag], 0) / drawn.length;
      const rules = (['FAT', 'PROCNT'] as const).map((nutrient) => ({
        nutrient,
        max: mean(nutrient) * 0.98,
      }));
      const asked = problemOf({ foods, rules });
      const formulation = new Formulation(asked, parts);
      try {
        fc.pre(formulation.feasible());
      } finally {
        formulation.dispose();
      }
      const least = (r: Balanced) => Math.min(r.in_range_chance.FAT ?? 1, r.in_range_chance.PROCNT ?? 1);
      expect(least(solved({ ...asked, margin: 0.9 }))).toBeGreaterThan(
        Math.min(0.94, least(solved(asked))) - 0.03,
      );
    }),
    { numRuns: draws(300, 40) },
  );
});

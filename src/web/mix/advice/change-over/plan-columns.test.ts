/** The change-over as it is weighed: columns that add up to the day. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Formulation } from '../../../../formulation/formulation.ts';
import type { Beside, Ingredient } from '../../../../formulation/problem/problem.ts';
import { loadHighs } from '../../../../formulation/solve/highs.ts';
import { demoHousehold } from '../../../../household/demo.ts';
import { ingredientFromOwn } from '../../../../household/reckon/mix/mix-edits.ts';
import { loadReference } from '../../../../household/reference-file.ts';
import { changeOverTo } from '../../../../kitchen/feeding/change-over.ts';
import { dailyFault, planColumns, standingOf } from './plan-columns.ts';

const parts = { reference: loadReference(), highs: await loadHighs() };
const house = demoHousehold();
const demo = house.mixes[0]!;
const pellet = house.foods[0]!;
const name = (f: Ingredient | Beside) => f.name ?? f.id;

describe('the columns', () => {
  const formulation = new Formulation(demo.problem, parts);
  const best = formulation.solve();
  if (best.status !== 'optimal') throw new Error('the demonstration mix has no answer');
  const old = ingredientFromOwn(pellet);

  test('the present food that is also fed beside is one weight, and every day adds up', () => {
    const plan = changeOverTo(formulation, best.shares, old, { dailyGrams: 12, days: 10, stepGrams: 0.5 });
    const columns = planColumns(old, 'First mix', demo.problem.beside, name);
    expect(columns.map((c) => [c.name, c.kind, c.both])).toEqual([
      ['Invented pellet', 'old', true],
      ['First mix', 'mix', false],
    ]);
    for (const day of plan.days) {
      expect(columns.reduce((sum, c) => sum + c.grams(day), 0)).toBeCloseTo(12, 9);
      expect(columns.reduce((sum, c) => sum + c.part(day), 0)).toBeCloseTo(1, 9);
    }
    expect(columns[0]!.grams(plan.days.at(-1)!)).toBe(6);
  });

  test('whatever is fed now, for however long, every day adds up', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 7, max: 21 }),
        fc.constantFrom(0.1, 0.5, 1, 2),
        fc.integer({ min: 2, max: 20 }),
        fc.boolean(),
        (days, step, steps, same) => {
          const from = same ? old : { id: 'oats', name: 'Oats', ref: 'sr28:20038' };
          const daily = Number((step * steps).toPrecision(12));
          const plan = changeOverTo(formulation, best.shares, from, {
            dailyGrams: daily,
            days,
            stepGrams: step,
          });
          const columns = planColumns(from, 'M', demo.problem.beside, name);
          expect(columns).toHaveLength(same ? 2 : 3);
          for (const day of plan.days)
            expect(columns.reduce((sum, c) => sum + c.grams(day), 0)).toBeCloseTo(daily, 9);
        },
      ),
      { numRuns: 40 },
    );
  });
});

test('grams that the scale cannot show are named with the nearest that it can', () => {
  expect(dailyFault(12, 1)).toBeUndefined();
  expect(dailyFault(0.3, 0.1)).toBeUndefined();
  expect(dailyFault(12.5, 1)).toBe(
    '12.5 g is no whole number of 1 g steps: take 12 g or 13 g, or a finer scale step.',
  );
  expect(dailyFault(0.4, 1)).toContain('take 1 g,');
});

test('a day that only the rounding takes out is told apart', () => {
  expect(standingOf({ in_range: true, in_range_as_weighed: true })).toBe('fine');
  expect(standingOf({ in_range: false, in_range_as_weighed: true })).toBe('fine');
  expect(standingOf({ in_range: true, in_range_as_weighed: false })).toBe('near');
  expect(standingOf({ in_range: false, in_range_as_weighed: false })).toBe('breaks');
});

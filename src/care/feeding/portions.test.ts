import fc from 'fast-check';
import { expect, test } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { portionsOf } from './portions.ts';

const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);

test('six grams of mix and six of pellet in three portions', () => {
  expect(portionsOf([6, 6], 3, 1)).toEqual([
    [2, 2],
    [2, 2],
    [2, 2],
  ]);
  expect(portionsOf([5, 4], 2, 1)).toEqual([
    [3, 2],
    [2, 2],
  ]);
  expect(portionsOf([2.4, 2.4], 1, 0.5)).toEqual([[2.5, 2.5]]);
});

test('whole steps, the day’s total as near as the scale tells, portions alike to a step', () => {
  const grams = fc.array(fc.double({ min: 0, max: 60, noNaN: true }), { minLength: 1, maxLength: 5 });
  fc.assert(
    fc.property(
      grams,
      fc.integer({ min: 1, max: 6 }),
      fc.constantFrom(0.01, 0.1, 0.5, 1, 2),
      (day, n, step) => {
        const rows = portionsOf(day, n, step);
        expect(rows.length).toBe(n);
        const steps = (g: number) => g / step;
        for (const row of rows)
          for (const g of row) {
            expect(g).toBeGreaterThanOrEqual(0);
            expect(Math.abs(steps(g) - Math.round(steps(g)))).toBeLessThan(1e-6);
          }
        expect(Math.abs(sum(rows.flat()) - sum(day))).toBeLessThanOrEqual(step / 2 + 1e-6);
        for (const [k, g] of day.entries()) {
          const column = rows.map((row) => row[k]!);
          expect(Math.abs(sum(column) - g)).toBeLessThan(step + 1e-6);
          expect(steps(Math.max(...column) - Math.min(...column))).toBeLessThan(1 + 1e-6);
        }
        const totals = rows.map(sum);
        expect(steps(Math.max(...totals) - Math.min(...totals))).toBeLessThan(1 + 1e-6);
      },
    ),
    { numRuns: draws(2_000, 100) },
  );
});

test('what is no weight, no step and no number of portions is refused', () => {
  expect(() => portionsOf([1], 0, 1)).toThrow(/^portions: 0/);
  expect(() => portionsOf([1], 1.5, 1)).toThrow(/^portions: 1.5/);
  expect(() => portionsOf([1], 1, 0)).toThrow(/^step: 0/);
  expect(() => portionsOf([-1], 1, 1)).toThrow(/^grams: -1/);
  expect(() => portionsOf([Number.NaN], 1, 1)).toThrow(/^grams: NaN/);
});

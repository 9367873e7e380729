/** The effective number of foods: laws of the Hill number of order 2. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { effectiveFoods } from './diversity.ts';

test('foods in equal shares count in full, whatever they add up to', () => {
  expect(effectiveFoods([20, 20, 20, 20, 20])).toBeCloseTo(5, 12);
  expect(effectiveFoods([3, 3])).toBeCloseTo(2, 12);
  expect(effectiveFoods([50, 25, 25])).toBeCloseTo(10_000 / (2500 + 625 + 625), 12);
});

test('of nothing there is none', () => {
  expect(effectiveFoods([0, 0])).toBeUndefined();
  expect(effectiveFoods([])).toBeUndefined();
});

test('lies between one and the number of foods, and does not change with the scale', () => {
  const shares = fc.array(fc.double({ min: 0.001, max: 100, noNaN: true }), { minLength: 1, maxLength: 30 });
  fc.assert(
    fc.property(shares, fc.double({ min: 0.1, max: 10, noNaN: true }), (x, k) => {
      const n = effectiveFoods(x)!;
      expect(n).toBeGreaterThanOrEqual(1 - 1e-9);
      expect(n).toBeLessThanOrEqual(x.length * (1 + 1e-9));
      expect(effectiveFoods(x.map((v) => v * k))!).toBeCloseTo(n, 8);
      expect(effectiveFoods(x.map(() => 100 / x.length))).toBeCloseTo(x.length, 9);
    }),
  );
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { normalBelow, normalQuantile } from './normal.ts';

// Abramowitz and Stegun 1964, Handbook of Mathematical Functions, tables 26.1 and 26.5.
test.each([
  [0, 0.5],
  [1, 0.841344746068543],
  [1.96, 0.97500210485178],
  [3, 0.99865010196837],
  [-4, 3.167124183312e-5],
])('probability below %f', (z, p) => {
  expect(normalBelow(z)).toBeCloseTo(p, 12);
});

test.each([
  [0.95, 1.6448536269514722],
  [0.975, 1.959963984540054],
  [0.75, 0.6744897501960817],
])('quantile of %f', (p, z) => {
  expect(normalQuantile(p)).toBeCloseTo(z, 10);
});

test('the quantile undoes the probability', () => {
  fc.assert(
    fc.property(fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }), (p) => {
      expect(Math.abs(normalBelow(normalQuantile(p)) - p)).toBeLessThan(1e-12);
    }),
  );
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { largestRemainder } from './largest-remainder.ts';

it('gives the steps left over to the parts that lost most, the earlier of two alike', () => {
  expect(largestRemainder([1.2, 2.7, 0.1], 4)).toEqual([1, 3, 0]);
  expect(largestRemainder([0.5, 0.5, 1], 2)).toEqual([1, 0, 1]);
  expect(largestRemainder([0.3 / 0.1, 1], 4)).toEqual([3, 1]);
  expect(largestRemainder([0, 0], 0)).toEqual([0, 0]);
});

it('comes to the total, no part a whole step off', () => {
  fc.assert(
    fc.property(
      fc.array(fc.nat(1000), { minLength: 1, maxLength: 40 }),
      fc.integer({ min: 1, max: 5000 }),
      (raw, total) => {
        fc.pre(raw.some((v) => v > 0));
        const sum = raw.reduce((a, b) => a + b, 0);
        const parts = raw.map((v) => (v / sum) * total);
        const steps = largestRemainder(parts, total);
        expect(steps.reduce((a, b) => a + b, 0)).toBe(total);
        parts.forEach((part, i) => {
          expect(Math.abs(steps[i]! - part)).toBeLessThan(1);
        });
      },
    ),
  );
});

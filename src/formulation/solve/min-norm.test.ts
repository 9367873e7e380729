import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearestPoint } from './min-norm.ts';

/** The least-cost point of the box [0, 1]^n. */
const box = (cost: Float64Array) => cost.map((c) => (c < 0 ? 1 : 0));

test('the nearest point of a box is the target clipped to it', () => {
  fc.assert(
    fc.property(
      fc.array(fc.double({ min: -3, max: 3, noNaN: true }), { minLength: 1, maxLength: 12 }),
      (list) => {
        const target = Float64Array.from(list);
        const x = nearestPoint(box, target);
        target.forEach((t, i) => {
          expect(x[i]).toBeCloseTo(Math.min(1, Math.max(0, t)), 4);
        });
      },
    ),
  );
});

test('a polytope of one point is that point', () => {
  const only = Float64Array.of(20, 30, 50);
  expect([...nearestPoint(() => only, Float64Array.of(100, 0, 0))]).toEqual([20, 30, 50]);
});

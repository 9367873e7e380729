/** Shares that change from one mix to another. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shareChanges } from './shares.ts';

describe('laws', () => {
  const shares = fc.array(fc.double({ min: 0.001, max: 100, noNaN: true }), { minLength: 1, maxLength: 30 });

  test('what leaves some foods comes to the others', () => {
    fc.assert(
      fc.property(shares, shares, (s, t) => {
        const whole = (list: number[]) => {
          const sum = list.reduce((a, b) => a + b, 0);
          return Object.fromEntries(list.map((v, i) => [`f${i}`, (100 * v) / sum]));
        };
        const changes = shareChanges(whole(s), whole(t), 0);
        expect(changes.reduce((sum, c) => sum + c.to - c.from, 0)).toBeCloseTo(0, 8);
        const moves = changes.map((c) => Math.abs(c.to - c.from));
        expect(moves).toEqual([...moves].sort((a, b) => b - a));
      }),
    );
    expect(shareChanges({ a: 50, b: 50 }, { a: 50.05, b: 49.95 })).toEqual([]);
  });
});

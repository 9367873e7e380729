import { expect, test } from 'vitest';
import { isInRange, isWhole } from './in-range.ts';

const breach = { pointer: '/rules/0/max', sentence: 'Too much.', actual: 8, bound: 7, side: 'max' } as const;

test('a whole mix adds up to 100 %, but for rounding', () => {
  expect([100, 100 + 5e-7, 99.99, 100.01, Number.NaN].map(isWhole)).toEqual([
    true,
    true,
    false,
    false,
    false,
  ]);
});

test('in range is whole, with no rule broken', () => {
  expect(isInRange({ total: 100, breaches: [] })).toBe(true);
  expect(isInRange({ total: 99, breaches: [] })).toBe(false);
  expect(isInRange({ total: 100, breaches: [breach] })).toBe(false);
});

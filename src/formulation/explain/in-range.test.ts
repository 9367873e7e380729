import { expect, test } from 'vitest';
import { isWhole } from './in-range.ts';

test('a whole mix adds up to 100 %, but for rounding', () => {
  expect([100, 100 + 5e-7, 99.99, 100.01, Number.NaN].map(isWhole)).toEqual([
    true,
    true,
    false,
    false,
    false,
  ]);
});

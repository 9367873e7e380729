import { expect, test } from 'vitest';
import { decimalsOf } from './rounding.ts';

test('decimals follow the step of the scale', () => {
  expect([5, 1, 0.5, 0.1, 0.05, 0.01].map(decimalsOf)).toEqual([0, 0, 1, 1, 2, 2]);
});

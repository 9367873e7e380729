import { expect, it } from 'vitest';
import { backoff } from './backoff.ts';

it('doubles from a second to fifteen, however often it failed', () => {
  expect([1, 2, 3, 4, 5, 6, 2000].map(backoff)).toEqual([1000, 2000, 4000, 8000, 15_000, 15_000, 15_000]);
});

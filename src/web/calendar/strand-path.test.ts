import { expect, test } from 'vitest';
import { COUNTER, pathOf, waitsOf } from './strand-path.ts';

const levels = (path: string) => [...path.matchAll(/(?:M|C|,|\s)\s*[\d.]+ (\d+)/g)].map((m) => Number(m[1]));

test('what freezes lies below the counter, what dries above it, what thaws on it', () => {
  const lowest = (kind: 'freeze' | 'dry' | 'thaw') => levels(pathOf({ kind, from: 10, to: 20 }));
  expect(Math.max(...lowest('freeze'))).toBeGreaterThan(COUNTER);
  expect(Math.min(...lowest('dry'))).toBeLessThan(COUNTER);
  expect(lowest('thaw')).toEqual([COUNTER]);
});

test('every line begins and ends on the counter, however short', () => {
  for (const to of [10.01, 10.5, 40])
    for (const kind of ['freeze', 'dry'] as const) {
      const path = pathOf({ kind, from: 10, to });
      expect(path).toMatch(new RegExp(`^M 10 ${COUNTER} .* ${to} ${COUNTER}$`));
    }
});

test('goods wait between their steps and until all come together', () => {
  const steps = [
    { kind: 'freeze', from: 0, to: 10 },
    { kind: 'thaw', from: 14, to: 20 },
  ] as const;
  expect(waitsOf(steps, 30)).toEqual([
    [10, 14],
    [20, 30],
  ]);
  expect(waitsOf(steps, 20)).toEqual([[10, 14]]);
  expect(waitsOf(steps, undefined)).toEqual([[10, 14]]);
});

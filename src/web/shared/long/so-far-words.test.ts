import { expect, test } from 'vitest';
import { additionsWords, bestWords, doingWords } from './so-far-words.ts';

test('a proven mix is said to be no better than it is', () => {
  expect(bestWords('nearest', { objective: 12 })).toBeUndefined();
  expect(bestWords('nearest', { objective: 12, gap: 1e-9 })).toBeUndefined();
});

test('how much nearer a mix may come is told by distances, never less than it may be', () => {
  expect(bestWords('nearest', { objective: 100, gap: 75 })).toContain('by at most 50 %');
  expect(bestWords('varied', { objective: 100, gap: 1 })).toContain('more varied by at most 1 %');
  expect(bestWords('nearest', { objective: 100, gap: 250 })).toContain('by at most 100 %');
});

test('a price is told per kg', () => {
  expect(bestWords('cheapest', { objective: 320, gap: 12 })).toBe(
    'Best found so far: €3.20 per kg. It may get cheaper by at most €0.12 per kg.',
  );
});

test('where nothing is known of the best there is, that is said', () => {
  expect(bestWords('nearest', { objective: 100, gap: Number.POSITIVE_INFINITY })).toContain('not known yet');
});

test('steps are told where they are counted', () => {
  expect(doingWords({ doing: 'points', done: 3, of: 15 })).toBe(
    'Looking for mixes between the two… Step 3 of 15 at most.',
  );
  expect(doingWords({ doing: 'best' })).toBe('Looking for the best mix…');
});

test('of additions it is told how few and how light they are so far', () => {
  expect(additionsWords({ doing: 'fewest', value: 5, bound: 2.4 })).toContain('5 additions');
  expect(additionsWords({ doing: 'fewest', value: 5, bound: 2.4 })).toContain('Fewer than 3');
  expect(additionsWords({ doing: 'lightest', value: 12.5, bound: 4 })).toContain('12.5 g');
  expect(additionsWords({ doing: 'best', value: 5, bound: 2 })).toBeUndefined();
});

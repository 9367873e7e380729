/** A changed figure loses the source of the one before. */
import { expect, test } from 'vitest';
import { changedBound, OWN_CHOICE } from './changed-bound.ts';

const confirmed = { against: 'the book', on: '2026-03-14' };
const bound = { nutrient: 'CA', min: 1, basis: 'DM', source: 'A book, from memory', confirmed } as const;

test('another figure or basis is the keeper’s own choice, and confirmed by nobody', () => {
  for (const patch of [{ min: 2 }, { max: 9 }, { min: undefined }, { basis: 'as fed' as const }])
    expect(changedBound(bound, patch)).toEqual({
      nutrient: 'CA',
      min: 1,
      basis: 'DM',
      ...patch,
      source: OWN_CHOICE,
    });
});

test('another source keeps the figure; nothing changed keeps all', () => {
  expect(changedBound(bound, { source: 'my vet' })).toEqual({
    nutrient: 'CA',
    min: 1,
    basis: 'DM',
    source: 'my vet',
  });
  expect(changedBound(bound, { min: 1 })).toEqual(bound);
});

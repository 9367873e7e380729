import { expect, test } from 'vitest';
import { asKey } from './as-key.ts';

test('writes one after the other of a list, each by what it says alone', () => {
  const packs = [
    { id: 'oats', grams: 5 },
    { id: 'millet', grams: 7 },
    { id: 'oats', grams: 5 },
  ];
  expect(packs.map(asKey)).toEqual(packs.map((one) => JSON.stringify(one)));
});

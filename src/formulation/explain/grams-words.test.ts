import { expect, it } from 'vitest';
import { gramsDoubt } from './grams-words.ts';

it('says of grams that are not proven the nearest how near others could be, and nothing else', () => {
  const grams = { oats: 12 };
  expect(gramsDoubt({ grams, grams_proof: { proven: false, squares: 1186.513, least: 1109.04 } })).toBe(
    'These grams keep every rule, but are not proven the nearest to the shares: their squared distances come to 1187 g², those of any others to 1109 g² or more.',
  );
  expect(gramsDoubt({ grams, grams_proof: { proven: true, squares: 2, least: 2 } })).toBeUndefined();
  expect(gramsDoubt({ grams: null, grams_proof: { proven: false } })).toBeUndefined();
});

/** Changes of a remedy in words. */
import { describe, expect, test } from 'vitest';
import { mix } from '../../../test/mix/insisting-mix.ts';
import { changeWords, tableOf } from './remedy-words.ts';

describe('remedies', () => {
  test('changes and tables in words', () => {
    const name = (id: string) => id.toUpperCase();
    const said = (pointer: string, from: number, to: number) =>
      changeWords(mix.problem, { pointer, from, to }, name);
    expect(said('/rules/0/max', 7, 9)).toBe('fat of the whole ration at most 9 % instead of 7 %');
    expect(said('/rules/2/min', 1, 0.9)).toBe('calcium to phosphorus of the mix at least 0.9 instead of 1');
    expect(said('/rules/1/max', 50, 61)).toBe(
      'share of Seeds and grains of the mix at most 61 % instead of 50 %',
    );
    expect(said('/foods/0/min', 15, 9)).toBe('share of OATS at least 9 % instead of 15 %');
    expect(said('/least_grams', 5, 2)).toBe('the smallest amount of a food at least 2 g instead of 5 g');
    expect(tableOf('sr28:01173')).toBe('USDA SR28, number 01173');
    expect(tableOf('pub:hemp-seed-whole')).toBe('published figures');
  });
});

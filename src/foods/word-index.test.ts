import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../test/draws.ts';
import { WordIndex } from './word-index.ts';

function indexOf(texts: readonly string[]): WordIndex {
  const index = new WordIndex([1]);
  for (const text of texts) {
    const words = text.split(' ').filter((word) => word !== '');
    index.add(1, [words], [words.length]);
  }
  return index;
}
const wanted = (words: string, more: object = {}) =>
  words.split(' ').map((word) => ({ word, prefix: false, slips: 0, ...more }));

describe('the index of words', () => {
  const texts = ['oat', 'oat flakes', 'oat bran flakes', 'wheat flakes', 'wheat', 'barley'];
  const index = indexOf(texts);
  const found = (rows: readonly number[]) => rows.map((row) => texts[row]);

  it('finds rows with every word, the shortest first', () => {
    expect(found(index.search(wanted('oat'), true))).toEqual(['oat', 'oat flakes', 'oat bran flakes']);
    expect(found(index.search(wanted('flakes oat'), true))).toEqual(['oat flakes', 'oat bran flakes']);
    expect(index.search(wanted('oat rye'), true)).toEqual([]);
    expect(index.search([], true)).toEqual([]);
  });

  it('finds rows with any word, those with most of them first', () => {
    expect(found(index.search(wanted('oat flakes'), false)).slice(0, 2)).toEqual([
      'oat flakes',
      'oat bran flakes',
    ]);
    expect(index.search(wanted('oat flakes'), false)).toHaveLength(4);
    expect(index.search(wanted('rye'), false)).toEqual([]);
  });

  it('puts a word before one that goes on, and that before one that is spelt nearly so', () => {
    const near = indexOf(['outs', 'oats', 'oat']);
    expect(near.search(wanted('oat', { prefix: true, slips: 2 }), true)).toEqual([2, 1, 0]);
    expect(near.search(wanted('oat', { prefix: true }), true)).toEqual([2, 1]);
    expect(near.search(wanted('oat', { slips: 1 }), true)).toEqual([2, 1]);
  });

  it('gives the same again, whatever was asked meanwhile', () => {
    const before = index.search(wanted('flakes wheat'), true);
    for (let i = 0; i < 60; i++) index.search(wanted(`w${i}`, { slips: 1 }), false);
    expect(index.search(wanted('flakes wheat'), true)).toEqual(before);
  });
});

it('finds just the words within so many slips, and those that begin so', () => {
  const letters = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'z'), minLength: 1, maxLength: 7 });
  fc.assert(
    fc.property(
      fc.uniqueArray(letters, { minLength: 1, maxLength: 30 }),
      letters,
      fc.nat(3),
      (words, asked, slips) => {
        const index = indexOf(words);
        const near = words.flatMap((word, row) => (levenshtein(word, asked) <= slips ? [row] : []));
        expect(index.search(wanted(asked, { slips }), true).sort((a, b) => a - b)).toEqual(near);
        const begun = words.flatMap((word, row) => (word.startsWith(asked) ? [row] : []));
        expect(index.search(wanted(asked, { prefix: true }), true).sort((a, b) => a - b)).toEqual(begun);
      },
    ),
    { numRuns: draws(1000, 100) },
  );
});

function levenshtein(a: string, b: string): number {
  if (a === '' || b === '') return Math.max(a.length, b.length);
  const [restA, restB] = [a.slice(1), b.slice(1)];
  if (a[0] === b[0]) return levenshtein(restA, restB);
  return 1 + Math.min(levenshtein(restA, b), levenshtein(a, restB), levenshtein(restA, restB));
}

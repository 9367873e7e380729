/** What must not be fed is found on lists of ingredients and on whole labels, and nowhere else on a label. */
import { expect, test } from 'vitest';
import { SNIPPETS } from '../label/snippets/all.ts';
import { neverFedIn } from './never-fed.ts';

const found = (texts: readonly string[], species?: string) =>
  neverFedIn(texts, species).map((hit) => `${hit.caution.id}: ${hit.found}`);

test('tells each caution once, with all the words of the texts', () => {
  const label =
    'Ingredients: oats, onion powder, Onion, garlic. Analytical constituents: protein 12 %, fat 4 %';
  expect(found([label, 'avocado, garlic'])).toEqual(['onion-family: onion, garlic', 'avocado: avocado']);
});

test('what a label denies is not in it', () => {
  expect(found(['Oats, no onion, avocado-free, ohne Schokolade', 'zonder ui'])).toEqual([]);
});

test('reads what stands beside an additive', () => {
  expect(found(['Oats, birch sugar, cascarilla de cacao'])).toEqual([
    'chocolate: cascarilla de cacao',
    'xylitol: birch sugar',
  ]);
});

test('an analysis holds no ingredient', () => {
  const wrong = SNIPPETS.flatMap(({ text }) => found([text]).map((hit) => `${hit} in ${text}`));
  expect(wrong).toEqual([]);
});

test('a unit is no onion, and an onion is', () => {
  expect(found(['vitamine A 12 000 UI, vitamine D3 1 200 UI/kg'])).toEqual([]);
  expect(found(['wortel 10 %, ui', 'wortel, 5 % ui', '1 ui'])).toEqual(['onion-family: ui']);
});

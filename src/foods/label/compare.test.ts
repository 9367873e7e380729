/** Figures for one nutrient that differ are asked about, whatever the order of the lines. */
import { expect, test } from 'vitest';
import { readLabel } from './read.ts';

const questions = (...energy: string[]) =>
  readLabel(
    ['Analysis per 100 g', 'Protein 17 g', ...energy.map((e) => `Energy ${e}`)].join('\n'),
  ).questions.map((q) => q.id);

test('two figures in kcal that differ are asked about, also beside one in kJ', () => {
  const orders = [
    ['400 kcal', '425 kcal', '1725 kJ'],
    ['400 kcal', '1725 kJ', '425 kcal'],
    ['1725 kJ', '400 kcal', '425 kcal'],
  ];
  for (const order of orders) expect(questions(...order)).toEqual(['differ:ENERC_KCAL:value']);
});

test('kJ and kcal as labels round them are one figure', () => {
  expect(questions('412 kcal', '1725 kJ')).toEqual([]);
  expect(questions('1725 kJ', '412 kcal')).toEqual([]);
});

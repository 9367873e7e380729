/** When a mix in range is surely so, and what is said where it is not. */
import { expect, test } from 'vitest';
import { problemOf } from '../../../test/formulation/problem-of.ts';
import { loadReference } from '../../household/reference-file.ts';
import { Formulation } from '../formulation.ts';
import type { Ingredient, Problem, Rule } from '../problem/problem.ts';
import type { Evaluation } from '../problem/result.ts';
import { loadHighs } from '../solve/highs.ts';

const reference = loadReference();
const highs = await loadHighs();

function standing(
  rules: readonly Rule[],
  food: Partial<Ingredient>,
  about: Partial<Problem> = {},
): Evaluation {
  const problem = problemOf({ foods: [{ id: 'a', name: 'Oats', ...food }], rules, ...about });
  const formulation = new Formulation(problem, { reference, highs });
  try {
    return formulation.evaluate({ a: 100 });
  } finally {
    formulation.dispose();
  }
}

const protein: Rule = { nutrient: 'PROCNT', min: 10, max: 14 };

test('well within its bounds a mix is surely in range', () => {
  const { in_range, verdict } = standing([protein], { composition: { PROCNT: 12 }, sd: { PROCNT: 0.5 } });
  expect(in_range).toBe('surely');
  expect(verdict).toBe('Surely in range. Crude protein of the mix.');
});

test('at a bound it is in range on the average only, and the chance is told', () => {
  const { in_range, verdict } = standing([protein], { composition: { PROCNT: 14 }, sd: { PROCNT: 0.5 } });
  expect(in_range).toBe('not surely');
  expect(verdict).toBe(
    'In range if the bags are like the average. Crude protein of the mix. Foods vary from bag to bag: all limits are kept at once with a chance of 50 %.',
  );
});

test('out of range is no', () => {
  expect(standing([protein], { composition: { PROCNT: 15 }, sd: { PROCNT: 3 } }).in_range).toBe('no');
});

test('figures that give no spread promise no chance', () => {
  const { in_range, verdict } = standing([protein], { composition: { PROCNT: 12 } });
  expect(in_range).toBe('not surely');
  expect(verdict).toBe(
    'In range if the figures are right. Crude protein of the mix. How much these foods vary from bag to bag is not known.',
  );
});

test('a mix with rules on shares alone has nothing to be unsure of', () => {
  expect(standing([{ food: 'a', min: 50 }], {}).in_range).toBe('surely');
});

test('a label’s "at least" never passes for the value against a most', () => {
  const fat: Rule = { nutrient: 'FAT', max: 7, on: 'ration' };
  const beside = (low: number | undefined, value: number | undefined) => ({
    beside: [
      {
        id: 'pellet',
        name: 'Pellet',
        share_of_ration: 50,
        composition: { PROCNT: 17, ...(value !== undefined && { FAT: value }) },
        sd: { FAT: 0.1 },
        ...(low !== undefined && { low: { FAT: low } }),
      },
    ],
  });
  const food = { composition: { FAT: 6 }, sd: { FAT: 0.2 } };
  expect(standing([fat], food, beside(undefined, 4)).in_range).toBe('surely');
  const { in_range, verdict } = standing([fat], food, beside(4, undefined));
  expect(in_range).toBe('not surely');
  expect(verdict).toMatch(
    /^In range if what is not known turns out well\. Fat is not proven: Pellet says at least 4 %/,
  );
  // Against a least the same figure is on the safe side.
  const least: Rule = { nutrient: 'FAT', min: 4, on: 'ration' };
  expect(standing([least], food, beside(4, undefined)).in_range).toBe('surely');
});

test('a ratio counts among all rules at once, and unknown amounts at the end that is worse for it', () => {
  const ratio: Rule = { ratio: ['CA', 'P'], min: 1 };
  const at = (composition: Ingredient['composition']) =>
    standing([ratio], { composition, sd: { CA: 20, P: 20 } });
  expect(at({ CA: 600, P: 300 }).in_range).toBe('surely');
  expect(at({ CA: 301, P: 300 }).verdict).toMatch(/with a chance of 51 %\.$/);
  const unknown = standing([{ ratio: ['CA', 'P'], max: 2 }], { composition: { P: 300 }, sd: { P: 20 } });
  expect(unknown.verdict).toMatch(/^In range if what is not known turns out well/);
});

test('of dry matter, unknown water counts at the end that is worse', () => {
  const most: Rule = { nutrient: 'FAT', max: 7, basis: 'DM' };
  const known = standing([most], { composition: { FAT: 5, WATER: 10 }, sd: { FAT: 0.1 } });
  expect(known.in_range).toBe('surely');
  expect(standing([most], { composition: { FAT: 5 }, sd: { FAT: 0.1 } }).in_range).not.toBe('surely');
});

/** Views of the window pictures; fibre has two readings in one. */
import { expect, test } from 'vitest';
import { Formulation } from '../../formulation/formulation.ts';
import type { Problem } from '../../formulation/problem/problem.ts';
import { loadHighs } from '../../formulation/solve/highs.ts';
import { loadReference } from '../../household/reference-file.ts';
import { windowViews } from './windows.ts';

const reference = loadReference();
const highs = await loadHighs();

const problem: Problem = {
  foods: [{ id: 'oats', name: 'Oats', composition: { FIBTG: 12, FIBC: 4, WATER: 10 } }],
  rules: [{ nutrient: 'FIBC', min: 6, max: 15, on: 'ration' }],
  beside: [{ id: 'pellet', share_of_ration: 50, composition: { FIBC: 9, WATER: 10 } }],
  objective: 'nearest',
  confidence: 0,
  batch_grams: 300,
  scale_step_grams: 1,
};

function viewsOf(of: Problem) {
  const formulation = new Formulation(of, { reference, highs });
  try {
    return windowViews(of, formulation.evaluate({ oats: 100 }), of.beside[0]?.composition, { FIBTG: 9 });
  } finally {
    formulation.dispose();
  }
}

test('a rule on crude fibre shows what dietary fibre would say, with the same bounds', () => {
  const [view] = viewsOf(problem);
  expect(view).toMatchObject({ title: 'Crude fibre', mix: 4, ration: 6.5, pellet: 9, state: 'in' });
  // The pellet prints crude fibre alone, which is the least its dietary fibre can be.
  expect(view?.otherFibre).toMatchObject({
    title: 'Dietary fibre',
    mix: 12,
    ration: 10.5,
    pellet: 9,
    pelletAtLeast: true,
    state: 'in',
  });
});

test('the other reading is out of range by itself', () => {
  const [view] = viewsOf({ ...problem, rules: [{ nutrient: 'FIBTG', min: 9, max: 15, on: 'ration' }] });
  expect(view).toMatchObject({ title: 'Dietary fibre', state: 'in' });
  expect(view?.otherFibre).toMatchObject({ title: 'Crude fibre', ration: 6.5, state: 'out' });
});

test('no second reading where each measure has a rule of its own, nor for anything but fibre', () => {
  const both: Problem['rules'] = [
    { nutrient: 'FIBC', min: 6, on: 'ration' },
    { nutrient: 'FIBTG', max: 30, on: 'ration' },
    { nutrient: 'WATER', max: 12, on: 'mix' },
  ];
  for (const view of viewsOf({ ...problem, rules: both })) expect(view.otherFibre).toBeUndefined();
});

import { expect, it } from 'vitest';
import { allergensOf } from '../../../care/hands/allergens.ts';
import { demoHousehold } from '../../demo.ts';
import type { OwnFood } from '../../model.ts';
import { handledOf } from './handled.ts';

const demo = demoHousehold();
const [pellet] = demo.foods;
if (!pellet) throw new Error('the demonstration has no pellet');
const bars: OwnFood = {
  ...pellet,
  id: 'bars',
  name: 'Bars',
  kind: 'mix',
  evidence: { ingredients: 'millet, walnuts' },
};
const house = { foods: [pellet, bars], mixes: demo.mixes };

it('knows a food of the keeper by its list, one of a mix by its number, one of the tables by its id', () => {
  expect(allergensOf(handledOf(house, { id: 'bars', name: 'Bars' })).holds).toEqual(['nuts']);
  const oats = { id: 'o', name: 'Grandma’s flakes', ref: 'sr28:08120' };
  expect(allergensOf(handledOf(house, { id: 'o', name: 'Grandma’s flakes' }, [oats]))).toMatchObject({
    holds: ['gluten'],
    known: true,
  });
  expect(allergensOf(handledOf(house, { id: 'sr28:12023', name: 'Seeds' })).holds).toEqual(['sesame']);
  for (const { id, name = id } of demo.mixes[0]?.problem.foods ?? [])
    expect(allergensOf(handledOf(house, { id, name })).known, name).toBe(true);
});

it('knows nothing of a food without number and list', () => {
  expect(allergensOf(handledOf(house, { id: pellet.id, name: pellet.name }))).toMatchObject({ known: false });
  expect(allergensOf(handledOf(house, { id: 'gone', name: 'Gone' })).known).toBe(false);
});

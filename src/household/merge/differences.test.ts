import { expect, it } from 'vitest';
import { mix } from '../../../test/household/demo-version.ts';
import { differencesOf } from './differences.ts';

const food = (id: string) => mix.problem.foods.find((f) => f.id === id)!;

it('names what changed as deep as it can be told', () => {
  const after = {
    ...mix,
    name: 'Second mix',
    animalIds: [],
    shares: { ...mix.shares, millet: 7 },
    problem: {
      ...mix.problem,
      foods: mix.problem.foods
        .filter((f) => f.id !== 'maize')
        .map((f) => (f.id === 'millet' ? { ...f, refused: true } : f)),
    },
  };
  expect(differencesOf('mixes', mix, after)).toEqual([
    { path: ['name'], was: 'First mix', is: 'Second mix' },
    { path: ['animalIds'], was: ['demo-animal'], is: [] },
    {
      path: ['problem', 'foods', { item: { ...food('millet'), refused: true } }, 'refused'],
      was: undefined,
      is: true,
    },
    { path: ['problem', 'foods', { item: food('maize') }], was: food('maize'), is: undefined },
    { path: ['shares', 'millet'], was: 5, is: 7 },
  ]);
});

it('says nothing of what is the same, and tells a list put in another order as one', () => {
  expect(differencesOf('mixes', mix, structuredClone(mix))).toEqual([]);
  const foods = [...mix.problem.foods].reverse();
  const turned = { ...mix, problem: { ...mix.problem, foods } };
  expect(differencesOf('mixes', mix, turned)).toEqual([
    { path: ['problem', 'foods'], was: mix.problem.foods, is: foods },
  ]);
  expect(differencesOf('mixes', null, mix)).toEqual([{ path: [], was: undefined, is: mix }]);
});

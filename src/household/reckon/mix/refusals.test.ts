/** What an animal refuses, and which mixes lose it. */
import { describe, expect, it } from 'vitest';
import { demoHousehold } from '../../demo.ts';
import type { Animal, Household, Mix } from '../../model.ts';
import { refusableFoods, refusedFoods } from './refusals.ts';

const demo = demoHousehold();
const mix = demo.mixes[0]!;
const bramble: Animal = { ...demo.animals[0]!, refuses: ['nettle-leaf-dried', 'gone'] };
const hazel: Animal = { ...bramble, id: 'hazel', name: 'Hazel', refuses: ['millet', 'nettle-leaf-dried'] };
const both: Mix = { ...mix, animalIds: ['hazel', bramble.id] };
const small: Mix = {
  ...mix,
  id: 'small',
  name: 'Small mix',
  problem: { ...mix.problem, foods: [{ id: 'own', name: 'Garden herbs' }] },
};
const own = { ...demo.foods[0]!, id: 'own', name: 'Garden herbs', kind: 'mix' as const };
const house: Household = {
  ...demo,
  foods: [...demo.foods, own],
  animals: [bramble, hazel],
  mixes: [both, small],
};

describe('what an animal refuses', () => {
  it('names the mixes that lose it, and keeps what nothing names any more', () => {
    const said = refusedFoods(house, { ...bramble, refuses: ['nettle-leaf-dried', 'own', 'gone'] });
    expect(said.map((f) => [f.name, f.mixes.map((m) => m.name)])).toEqual([
      ['Nettle leaf, dried', ['First mix']],
      ['Garden herbs', ['Small mix']],
      ['gone', []],
    ]);
  });

  it('is chosen from the foods of its mixes and the own foods, pellets left out', () => {
    const offered = refusableFoods(house, hazel);
    expect(offered).toHaveLength(mix.problem.foods.length + 1);
    expect(offered.find((f) => f.id === 'own')!.mixes).toEqual([]);
    expect(offered.find((f) => f.id === 'millet')!.mixes).toEqual([both]);
    expect(offered.map((f) => f.id)).not.toContain('demo-pellet');
    const unfed = refusableFoods(house, { ...hazel, id: 'nobody' });
    expect(unfed.map((f) => f.name)).toEqual(['Garden herbs']);
  });
});

import { expect, it } from 'vitest';
import { demoHousehold } from '../../demo.ts';
import { asGroup } from './foods-beside.ts';
import { cupboardFoods, groupsIn } from './lot-foods.ts';

it('knows the group of a food though the first place that names it does not', () => {
  const house = demoHousehold();
  expect(cupboardFoods(house).find((f) => f.id === 'rolled-oats')?.group).toBe('seed');
  expect(groupsIn(house)('rolled-oats')).toBe('seed');
  expect(cupboardFoods(house).some((f) => f.id === 'demo-pellet')).toBe(false);
});

it('takes no other word for a group', () => {
  expect(asGroup('toString')).toBeUndefined();
  expect(asGroup(undefined)).toBeUndefined();
});

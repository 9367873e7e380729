import { expect, it } from 'vitest';
import { keeperAllergy } from './keeper-allergy.ts';

const allergic = { keeper: [{ id: 'keeper', allergies: ['nuts', 'egg'] }] } as const;

it('is told of foods only to who said one', () => {
  const walnut = () => ({ name: 'Walnut', ref: 'sr28:12155' });
  expect(keeperAllergy({ keeper: [] }, walnut)).toBeUndefined();
  expect(keeperAllergy({ keeper: [{ id: 'keeper' }] }, walnut)).toBeUndefined();
  expect(keeperAllergy(allergic, walnut)).toEqual({ holds: ['nuts'], traces: [], unknown: [] });
  expect(keeperAllergy(allergic, () => ({ name: 'Millet', ref: 'sr28:20031' }))).toBeUndefined();
});

it('of a food without a list is not known, and not none', () => {
  expect(keeperAllergy(allergic, () => ({ name: 'Pellet' }))).toEqual({
    holds: [],
    traces: [],
    unknown: ['nuts', 'egg'],
  });
  expect(keeperAllergy(allergic, () => ({ name: 'Walnut mix' }))).toEqual({
    holds: ['nuts'],
    traces: [],
    unknown: ['egg'],
  });
  expect(
    keeperAllergy(allergic, () => ({ name: 'Pellet', lists: ['wheat. May contain traces of nuts'] })),
  ).toEqual({ holds: [], traces: ['nuts'], unknown: [] });
});

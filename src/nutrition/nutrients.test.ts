import { expect, it } from 'vitest';
import { gramsPer, isTag, NUTRIENTS, nearestTag, nutrient } from './nutrients.ts';

it('names each nutrient once', () => {
  expect(new Set(NUTRIENTS.map((n) => n.tag)).size).toBe(NUTRIENTS.length);
  expect(new Set(NUTRIENTS.map((n) => n.name)).size).toBe(NUTRIENTS.length);
});

it('knows tagnames, and dietary from crude fibre', () => {
  expect(isTag('PROCNT')).toBe(true);
  expect(isTag('protein')).toBe(false);
  expect(isTag('constructor')).toBe(false);
  expect(nutrient('CA')).toMatchObject({ unit: 'mg', group: 'mineral' });
  expect(nutrient('FIBTG').name).not.toBe(nutrient('FIBC').name);
});

it('suggests the tagname that was meant', () => {
  expect(nearestTag('procnt')).toBe('PROCNT');
  expect(nearestTag('Protein')).toBe('PROCNT');
  expect(nearestTag('??')).toBeUndefined();
});

it('weighs masses only', () => {
  expect(gramsPer('mg')).toBe(1e-3);
  expect(gramsPer('IU')).toBeUndefined();
  expect(gramsPer('kcal')).toBeUndefined();
});

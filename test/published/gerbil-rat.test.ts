/** Needs of gerbils and rats, per kg of diet as they are printed, against the bounds of the profiles. */
import { expect, test } from 'vitest';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { NRC_GERBIL_MAGNESIUM, NRC_RAT_FAT, NRC_RAT_THIAMIN } from '../../src/targets/nrc.ts';
import { profile } from '../../src/targets/profiles.ts';

/** g of the diet at 10 % moisture for each g of dry matter. */
const least = (id: string, tag: Tag) => profile(id)!.bounds.find((b) => b.nutrient === tag)!.min! * 0.9;

test('gerbil: 1.5 g of magnesium per kg, more than double what hamsters are given', () => {
  expect(NRC_GERBIL_MAGNESIUM).toMatchObject({ perKg: 1.5, unit: 'g' });
  // mg per 100 g.
  expect(least('gerbil', 'MG')).toBeCloseTo(150, 3);
  expect(least('gerbil', 'MG')).toBeGreaterThan(2 * least('hamster-nrc', 'MG'));
});

test('rat: 16.3 % protein, 5 % fat, 0.6 % linoleic acid, 4 mg of thiamin per kg', () => {
  expect(NRC_RAT_FAT.map((n) => [n.nutrient, n.perKg, n.unit])).toEqual([
    ['FAT', 50, 'g'],
    ['F18D2CN6', 6, 'g'],
  ]);
  expect(NRC_RAT_THIAMIN).toMatchObject({ perKg: 4, unit: 'mg' });
  expect(least('rat', 'PROCNT')).toBeCloseTo(16.3, 3);
  expect(least('rat', 'FAT')).toBeCloseTo(5, 3);
  expect(least('rat', 'F18D2CN6')).toBeCloseTo(0.6, 3);
  expect(least('rat', 'THIA')).toBeCloseTo(0.4, 3);
});

test('what is from memory of the rat does not contradict what was looked up', () => {
  for (const tag of ['FAT', 'F18D2CN6', 'THIA'] as const)
    expect(least('rat-nrc', tag)).toBeCloseTo(least('rat', tag), 6);
  // Protein of the list is the need of growth; more is asked where generations are bred.
  expect(least('rat-nrc', 'PROCNT')).toBeLessThan(least('rat', 'PROCNT'));
});

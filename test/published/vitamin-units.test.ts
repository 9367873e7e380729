/**
 * Units of vitamins in the targets, against published equivalents: 0.3 ug of retinol and 0.025 ug of vitamin D to the
 * IU, 1.49 IU to the mg of natural vitamin E. What the figures of table 3-3 of NRC 1995 (doi 10.17226/4758) come to in
 * IU is the usual 2,400 of vitamin A, 1,000 of D and 32 of E per kg of diet.
 */
import { expect, it } from 'vitest';
import { iuOf, microgramsOf, vitaminEIu } from '../../src/nutrition/international-units.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';
import { profile } from '../../src/targets/profiles.ts';

/** A bound per kg of diet at 10 % moisture, in the unit of the tagname. */
function perKgDiet(id: string, tag: Tag): number {
  const bound = profile(id)?.bounds.find((b) => b.nutrient === tag);
  if (bound?.min === undefined || bound.basis !== 'DM') throw new Error(`${id} has no least ${tag}`);
  return bound.min * 0.9 * 10;
}

it('0.72 mg of retinol, 0.025 mg of vitamin D and 22 mg of vitamin E for mice, in IU', () => {
  expect(iuOf(perKgDiet('mouse-nrc', 'VITA_RAE'), 'RETOL')).toBeCloseTo(2400, 0);
  expect(iuOf(perKgDiet('mouse-nrc', 'VITD'), 'VITD')).toBeCloseTo(1000, 0);
  expect(vitaminEIu(perKgDiet('mouse-nrc', 'TOCPHA'))).toBeCloseTo(32.8, 1);
});

it('2,484 IU of vitamin D for hamsters, as ug; 3,636 IU of vitamin A stay IU, for their carotenes are no retinol', () => {
  expect(perKgDiet('hamster-nrc', 'VITD')).toBeCloseTo(62.1, 3);
  expect(iuOf(perKgDiet('hamster-nrc', 'VITD'), 'VITD')).toBeCloseTo(2484, 0);
  expect(perKgDiet('hamster-nrc', 'VITA_IU')).toBeCloseTo(3636, 0);
});

it('5,000 IU of vitamin D3 are 0.125 mg (Regulation (EC) No 887/2009), 40,000 IU of vitamin A 12 mg of retinol', () => {
  expect(microgramsOf(5000, 'VITD')).toBeCloseTo(125, 9);
  expect(microgramsOf(40_000, 'RETOL')).toBeCloseTo(12_000, 9);
});

it('upper limits are in the units of the tables: 2,000 IU of vitamin D3 and 0.5 mg of selenium per kg at 12 % moisture', () => {
  const most = (tag: Tag) => profile('hamster-adult-limits')?.bounds.find((b) => b.nutrient === tag)?.max;
  expect((most('VITD') ?? 0) * 0.88 * 10).toBeCloseTo(microgramsOf(2000, 'VITD'), 3);
  expect((most('SE') ?? 0) * 0.88 * 10).toBeCloseTo(500, 2);
  expect((most('RETOL') ?? 0) * 10).toBeCloseTo(microgramsOf(40_000, 'RETOL'), 9);
});

/** Vitamin D known in one unit is known in the other. */
import { expect, it } from 'vitest';
import { inOtherUnit } from './international-units.ts';
import type { Tag } from './nutrients.ts';

const of = (amounts: Partial<Record<Tag, number>>) => (tag: Tag) => amounts[tag];

it('vitamin D is the one unit from the other, and nothing else is', () => {
  expect(inOtherUnit('VITD', of({ VITD_IU: 100 }))).toBeCloseTo(2.5, 12);
  expect(inOtherUnit('VITD_IU', of({ VITD: 2.5 }))).toBeCloseTo(100, 12);
  expect(inOtherUnit('VITD', of({}))).toBeUndefined();
  // How much of the IU of vitamin A are carotenes nobody can tell.
  expect(inOtherUnit('RETOL', of({ VITA_IU: 100 }))).toBeUndefined();
});

/** Dried foods worked out from fresh ones, held against what USDA SR28 prints for the dried ones. */
import { describe, expect, it } from 'vitest';
import { driedForm } from '../../src/foods/forms/dried-composition.ts';
import { freshFor } from '../../src/foods/forms/fresh-for.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import type { Tag } from '../../src/nutrition/nutrients.ts';

const reference = loadReference();
const food = (ndb: string) => reference.get(`sr28:${ndb}`)!;

describe('carrot, raw (11124) dried to the 4 % moisture of carrot, dehydrated (11683)', () => {
  const dried = driedForm(food('11124'), 4);

  it.each([
    ['PROCNT', 7.62, 8.1],
    ['FIBTG', 22.95, 23.6],
    ['K', 2623, 2540],
    ['ENERC_KCAL', 336, 341],
  ] as const)('%s: %d predicted, %d printed, inside the declared interval', (tag, predicted, printed) => {
    const value = dried.composition[tag]!;
    expect(Math.abs(value / predicted - 1)).toBeLessThan(0.001);
    expect(food('11683').composition[tag]).toBe(printed);
    expect(Math.abs(printed - value)).toBeLessThan(1.96 * dried.sd[tag]!);
  });

  it('bounds sodium, whose printed figure (275) is half the dry-matter one (566)', () => {
    expect(dried.composition.NA).toBeUndefined();
    expect(dried.low!.NA).toBeLessThan(275);
    expect(dried.high!.NA).toBeGreaterThan(275);
  });
});

/** Rows of SR28, read off the table: fresh and dried NDB number, and the dried row's figures. */
it.each([
  ['11282', '11284', { WATER: 3.93, PROCNT: 8.95, K: 1622, MG: 92, CHOCDF: 83.28 }],
  ['11297', '02029', { WATER: 5.89, PROCNT: 26.63, FIBTG: 26.7, CA: 1140 }],
  ['09040', '09041', { WATER: 3, PROCNT: 3.89, K: 1491, MG: 108, CHOCDF: 88.28 }],
  ['09132', '09298', { WATER: 15.43, PROCNT: 3.07, FIBTG: 3.7, K: 749 }],
  ['11529', '11955', { WATER: 14.56, PROCNT: 14.11, K: 3427, FIBTG: 12.3 }],
] as const)('%s dried is %s within what is declared', (fresh, dried, printed) => {
  expect(food(dried).composition).toMatchObject(printed);
  const { composition, sd } = driedForm(food(fresh), printed.WATER);
  for (const [tag, measured] of Object.entries(printed))
    if (tag !== 'WATER')
      expect([tag, Math.abs(measured - composition[tag as Tag]!) <= 1.96 * sd[tag as Tag]!]).toEqual([
        tag,
        true,
      ]);
});

it('lets a misfit show: garlic powder (02020) prints 9.0 g fibre, the raw row (11215) predicts 4.7', () => {
  const dried = driedForm(food('11215'), 6.45);
  expect(food('02020').composition.FIBTG).toBe(9);
  expect(dried.composition.FIBTG).toBeCloseTo(4.74, 2);
  expect(9 / dried.composition.FIBTG!).toBeGreaterThan(1.8);
});

it('buys 9.2 times the dried weight of carrot: refuse 11 % (SR28), 88.29 % moisture to 4 %', () => {
  const needed = freshFor(100, food('11124'), 4);
  expect(needed.prepared).toBeCloseTo(819.8, 1);
  expect(needed.purchased).toBeCloseTo(921.1, 1);
});

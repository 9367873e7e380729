/** USDA SR28 figures as printed, and the drying model held against a food measured both fresh and dried. */
import { expect, it } from 'vitest';
import { amountOf } from '../../src/foods/food.ts';
import { loadReference } from '../../src/household/reference-file.ts';
import { driedAmount } from '../../src/nutrition/amount.ts';

const reference = loadReference();

it.each([
  ['sr28:20038', 'oats', { PROCNT: 16.89, FAT: 6.9, FIBTG: 10.6 }],
  ['sr28:11683', 'carrot, dehydrated', { WATER: 4, PROCNT: 8.1, FAT: 1.49, FIBTG: 23.6 }],
  ['sr28:11124', 'carrot, raw', { WATER: 88.29, PROCNT: 0.93, FIBTG: 2.8 }],
  ['sr28:12014', 'pumpkin seed', { WATER: 5.23, PROCNT: 30.23, FAT: 49.05, FIBTG: 6 }],
])('%s, %s, comes back as printed', (ref, _, printed) => {
  expect(reference.get(ref)!.composition).toMatchObject(printed);
});

it.each([
  ['PROCNT', 7.62, 8.1],
  ['FIBTG', 22.95, 23.6],
] as const)(
  'drying raw carrot to 4 %% water predicts %s near what was measured',
  (tag, predicted, measured) => {
    const fresh = reference.get('sr28:11124')!;
    const dried = driedAmount(amountOf(fresh, tag), fresh.composition.WATER!, 4);
    const value = dried.known ? dried.value : Number.NaN;
    expect(value).toBeCloseTo(predicted, 2);
    expect(reference.get('sr28:11683')!.composition[tag]).toBe(measured);
    expect(Math.abs(value / measured - 1)).toBeLessThan(0.07);
  },
);

import { expect, test } from 'vitest';
import { compositionOf, faultsOf } from './label.ts';

test('a label for any quantity becomes amounts per 100 g; moisture stays a percentage', () => {
  const label = { quantity: 250, basis: 'as fed', amounts: { FAT: 6.25, WATER: 9 } } as const;
  expect(compositionOf(label)).toEqual({ FAT: 2.5, WATER: 9 });
});

test('dry matter is brought back to as fed by the moisture', () => {
  const label = { quantity: 100, basis: 'dry matter', amounts: { PROCNT: 20, WATER: 10 } } as const;
  expect(compositionOf(label)).toEqual({ PROCNT: 18, WATER: 10 });
  expect(faultsOf({ ...label, amounts: { PROCNT: 20 } })[0]?.tag).toBe('WATER');
});

test('what cannot be true is said, with the way out', () => {
  const told = (amounts: Parameters<typeof faultsOf>[0]['amounts']) =>
    faultsOf({ quantity: 100, basis: 'as fed', amounts })[0]?.message;
  expect(told({ PROCNT: 70, FAT: 40 })).toMatch(/add up to 110 g/);
  expect(told({ FIBC: 12, FIBTG: 8 })).toMatch(/Crude fibre \(12\) is above dietary fibre \(8\)/);
  expect(told({ CA: 120_000 })).toMatch(/more than the food weighs/);
  expect(told({ PROCNT: 17, FAT: 5 })).toBeUndefined();
});

/** What a food counts for: values, guarantees, borrowed amounts, estimates and unknowns kept apart. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { variationOf } from '../../foods/variation.ts';
import { loadReference } from '../../household/reference-file.ts';
import { foodAmounts } from './food-amounts.ts';

const reference = loadReference();
const food = (more: object) =>
  foodAmounts({ id: 'mine', group: 'seed', composition: {}, ...more }, reference);

describe('guarantees', () => {
  test('a least counts as itself, and the amount stays unknown', () => {
    const a = food({ low: { PROCNT: 14 } }).amount('PROCNT');
    expect(a).toMatchObject({ status: 'unknown', value: 14, low: 14 });
    expect(a.high).toBeGreaterThan(90);
  });
  test('a most bounds what is possible, and the amount counts as the least it can be', () => {
    expect(food({ high: { FAT: 8 } }).amount('FAT')).toEqual({
      status: 'unknown',
      value: 0,
      low: 0,
      high: 8,
      sd: 0,
    });
  });
  test('a range is an estimate around its middle, spread evenly', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 50, noNaN: true }),
        fc.double({ min: 0, max: 50, noNaN: true }),
        (a, b) => {
          const least = Math.min(a, b);
          const most = Math.min(Math.max(a, b), 2 * least);
          const counted = food({ low: { FIBC: least }, high: { FIBC: most } }).amount('FIBC');
          expect(counted).toMatchObject({ status: 'estimated', low: least, high: most });
          expect(counted.value).toBeCloseTo((least + most) / 2, 12);
          // Variance of an even spread: width squared over twelve.
          expect(counted.sd ** 2).toBeCloseTo((most - least) ** 2 / 12, 9);
        },
      ),
    );
  });
  test('a wide range has no middle: it counts as its least', () => {
    const a = food({ low: { MN: 1 }, high: { MN: 30 } }).amount('MN');
    expect(a).toMatchObject({ status: 'unknown', value: 1, low: 1 });
    expect(a.high).toBeLessThanOrEqual(30);
  });
  test('a value stands before a guarantee', () => {
    expect(food({ composition: { FAT: 5 }, high: { FAT: 8 } }).amount('FAT')).toMatchObject({
      status: 'known',
      value: 5,
    });
  });
  test('a guaranteed least of crude fibre bounds dietary fibre from below', () => {
    expect(food({ low: { FIBC: 9 } }).amount('FIBTG')).toMatchObject({ status: 'unknown', low: 9, value: 9 });
  });
});

test('a borrowed amount counts, as an estimate as wide as its sd', () => {
  const lent = { composition: { CA: 100 }, sd: { CA: 30 }, borrowed: { CA: 'Rolled oats (sr28:08120)' } };
  const a = food(lent).amount('CA');
  expect(a).toMatchObject({ status: 'estimated', value: 100, sd: 30 });
  expect([a.low, a.high]).toEqual([100 - 1.96 * 30, 100 + 1.96 * 30]);
});

test('an amino acid that nobody knows may be all of the protein, and no more', () => {
  const egg = { id: 'egg', composition: { WATER: 3, PROCNT: 48, FAT: 44, ASH: 4 } };
  const { low, high } = foodAmounts(egg, reference).amount('THR');
  const most = Math.max(
    ...['01', '20', '16', '12', '15'].map((group) => reference.largest('THR', group) ?? 0),
  );
  expect(low).toBe(0);
  expect(high).toBeGreaterThanOrEqual(Math.min(48_000, most));
  const leaf = { id: 'leaf', composition: { WATER: 90, PROCNT: 1 } };
  expect(foodAmounts(leaf, reference).amount('THR').high).toBe(1000);
});

describe('variation', () => {
  const oats = { id: 'oats', ref: 'sr28:20038' };
  /** Its protein was analysed twice only, so the table prints no spread. */
  const sunflower = { id: 'sunflower', ref: 'sr28:12036' };
  test('"given" takes an amount without an sd as exact', () => {
    expect(foodAmounts(sunflower, reference).amount('PROCNT').sd).toBe(0);
  });
  test('"published" takes the coefficient of variation of the nutrient in the group', () => {
    const { value, sd } = foodAmounts(sunflower, reference, 'published').amount('PROCNT');
    expect(sd).toBeCloseTo(variationOf('PROCNT', 'seed')!.cv * value, 12);
    expect(sd).toBeGreaterThan(0);
  });
  test('an sd that a table prints stands before it', () => {
    const row = Array.from({ length: reference.size }, (_, i) => reference.at(i)).find((f) => f.sd.PROCNT)!;
    expect(foodAmounts({ id: 'x', ref: row.ref }, reference, 'published').amount('PROCNT').sd).toBe(
      row.sd.PROCNT,
    );
  });
  test('an estimate of crude fibre is as unsure as its bounds are wide', () => {
    const a = foodAmounts(oats, reference, 'published').amount('FIBC');
    expect(a.status).toBe('estimated');
    expect(a.sd).toBeCloseTo((a.high - a.low) / 4, 12);
  });
});

/** What a food counts for: values, guarantees, borrowed amounts, estimates and unknowns kept apart. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crudeProtein } from '../../foods/crude-protein.ts';
import type { Reference } from '../../foods/reference.ts';
import { variationOf } from '../../foods/variation.ts';
import { loadReference } from '../../household/reference-file.ts';
import { foodAmounts } from './food-amounts.ts';

const reference = loadReference();

/** The tables with one food's nitrogen factor as it is wanted; undefined where nobody says it. */
function tableWith(ref: string, proteinFactor: number | undefined): Reference {
  const row = Array.from({ length: reference.size }, (_, i) => i).find((i) => reference.at(i).ref === ref)!;
  const food = { ...reference.at(row), proteinFactor };
  const at = (other: number) => (other === row ? food : reference.at(other));
  return {
    ...reference,
    get: (other) => (other === ref ? food : reference.get(other)),
    at,
    largestCrudeProtein: (group) =>
      Math.max(
        ...Array.from({ length: reference.size }, (_, i) => at(i))
          .filter((f) => f.tableGroup === group || f.group === group)
          .map((f) => crudeProtein(f)?.value ?? 0),
      ),
  };
}
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
    expect(foodAmounts({ id: 'x', ref: row.ref }, reference, 'published').amount('PROCNT').sd).toBeCloseTo(
      (row.sd.PROCNT! * 6.25) / (row.proteinFactor ?? 6.25),
      12,
    );
  });
  test('an estimate of crude fibre is as unsure as its bounds are wide', () => {
    const a = foodAmounts(oats, reference, 'published').amount('FIBC');
    expect(a.status).toBe('estimated');
    expect(a.sd).toBeCloseTo((a.high - a.low) / 4, 12);
  });
});

describe('protein is crude protein', () => {
  const KERNEL = 'sr28:12036';
  const printed = reference.get(KERNEL)!.composition.PROCNT!;
  const ask = (more: object, table: Reference) => foodAmounts({ id: 'k', ref: KERNEL, ...more }, table);
  const own = (more: object) => foodAmounts({ id: 'k', ...more }, reference);

  test('a table amount is rescaled from its own factor, and is known', () => {
    const a = ask({}, tableWith(KERNEL, 5.3)).amount('PROCNT');
    expect(a).toMatchObject({ status: 'known', sd: 0 });
    expect(a.value).toBeCloseTo((printed * 6.25) / 5.3, 12);
    expect([a.low, a.high]).toEqual([a.value, a.value]);
  });

  test('a table amount without a factor is an estimate between the factors published', () => {
    const a = ask({}, tableWith(KERNEL, undefined)).amount('PROCNT');
    expect(a).toMatchObject({ status: 'estimated', value: printed });
    expect(a.low).toBeCloseTo((printed * 6.25) / 6.38, 12);
    expect(a.high).toBeCloseTo((printed * 6.25) / 5.18, 12);
  });

  test('its standard deviation is rescaled along', () => {
    const sd = { PROCNT: 0.4 };
    expect(ask({ sd }, tableWith(KERNEL, 5.3)).amount('PROCNT').sd).toBeCloseTo((0.4 * 6.25) / 5.3, 12);
  });

  test('an own amount counts as it stands, or from the factor that the food gives', () => {
    const composition = { PROCNT: 20 };
    expect(own({ composition }).amount('PROCNT')).toMatchObject({ status: 'known', value: 20 });
    expect(own({ composition, protein_factor: 5.3 }).amount('PROCNT').value).toBeCloseTo(
      (20 * 6.25) / 5.3,
      12,
    );
    expect(own({ low: { PROCNT: 20 }, composition: {}, protein_factor: 5 }).amount('PROCNT').low).toBe(25);
  });

  test('own amounts of other nutrients leave the table its protein and its factor', () => {
    const a = ask({ composition: { FAT: 40 } }, tableWith(KERNEL, 5.3)).amount('PROCNT');
    expect(a.value).toBeCloseTo((printed * 6.25) / 5.3, 12);
    expect(ask({ composition: { PROCNT: 22 } }, tableWith(KERNEL, 5.3)).amount('PROCNT')).toMatchObject({
      status: 'known',
      value: 22,
    });
  });

  test('the food’s own factor stands before the table’s', () => {
    const a = ask({ protein_factor: 6.25 }, tableWith(KERNEL, undefined)).amount('PROCNT');
    expect(a).toMatchObject({ status: 'known', value: printed });
  });

  test('an unknown denominator counts as the largest crude protein of the group', () => {
    const row = Array.from({ length: reference.size }, (_, i) => reference.at(i))
      .filter((f) => f.tableGroup === '20' && f.composition.PROCNT !== undefined)
      .reduce((most, f) => (f.composition.PROCNT! > most.composition.PROCNT! ? f : most));
    const table = tableWith(row.ref, 5);
    const oats = foodAmounts({ id: 'o', ref: 'sr28:20038' }, table);
    expect(oats.largest('PROCNT')).toBeCloseTo(row.composition.PROCNT! * 1.25, 9);
    expect(oats.largest('CA')).toBe(reference.largest('CA', '20'));
  });

  test('room for what is unknown is what the printed protein leaves of 100 g', () => {
    const composition = { PROCNT: 50, WATER: 10, ASH: 5 };
    const a = own({ composition, protein_factor: 5 });
    expect(a.amount('PROCNT').value).toBe(62.5);
    expect(a.amount('FAT').high).toBeCloseTo(100.5 - 65, 9);
  });
});

describe('guarantees beside an estimate', () => {
  const dietary = { FIBTG: 20 };
  const free = food({ composition: dietary }).amount('FIBC');

  test('a least above the estimate counts: "at least 10" is 10, not what the ratio gives', () => {
    expect(free.value).toBeLessThan(10);
    expect(food({ composition: dietary, low: { FIBC: 10 } }).amount('FIBC')).toMatchObject({
      status: 'estimated',
      value: 10,
      low: 10,
      high: free.high,
    });
  });

  test('a most below the estimate counts: "at most 4" is 4', () => {
    expect(free.value).toBeGreaterThan(4);
    expect(food({ composition: dietary, high: { FIBC: 4 } }).amount('FIBC')).toMatchObject({
      status: 'estimated',
      value: 4,
      low: free.low,
      high: 4,
    });
  });

  test('no estimate leaves what is guaranteed, and crude fibre never passes dietary fibre', () => {
    const some = fc.option(fc.double({ min: 0, max: 60, noNaN: true }), { nil: undefined });
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 60, noNaN: true }),
        some,
        some,
        fc.constantFrom('seed', 'legume', 'herb'),
        (FIBTG, a, b, group) => {
          const [least, most] =
            a !== undefined && b !== undefined ? [Math.min(a, b), Math.max(a, b)] : [a, b];
          const counted = food({
            group,
            composition: { FIBTG },
            low: least === undefined ? {} : { FIBC: least },
            high: most === undefined ? {} : { FIBC: most },
          }).amount('FIBC');
          for (const v of [counted.low, counted.value, counted.high]) {
            expect(v).toBeLessThanOrEqual(Math.min(FIBTG, most ?? FIBTG));
            expect(v).toBeGreaterThanOrEqual(Math.min(least ?? 0, FIBTG));
          }
          expect(counted.low).toBeLessThanOrEqual(counted.value);
          expect(counted.value).toBeLessThanOrEqual(counted.high);
          expect(counted.status).toBe('estimated');
        },
      ),
    );
  });

  test('a borrowed amount and a protein without a factor keep to what the label guarantees', () => {
    const lent = { composition: { CA: 100 }, sd: { CA: 30 }, borrowed: { CA: 'Rolled oats' } };
    expect(food({ ...lent, low: { CA: 120 } }).amount('CA')).toMatchObject({ value: 120, low: 120 });
    const table = tableWith('sr28:12036', undefined);
    const kernel = foodAmounts({ id: 'k', ref: 'sr28:12036', high: { PROCNT: 19 } }, table).amount('PROCNT');
    expect(kernel).toMatchObject({ status: 'estimated', value: 19, high: 19 });
  });
});

describe('a table’s food fed at another moisture', () => {
  const carrot = reference.get('sr28:11124')!.composition;
  const fed = foodAmounts({ id: 'c', ref: 'sr28:11124', composition: { WATER: 10 } }, reference);
  const factor = (100 - 10) / (100 - carrot.WATER!);

  test('every other amount of the table moves with the dry matter', () => {
    expect(fed.amount('WATER').value).toBe(10);
    for (const tag of ['FAT', 'CA', 'FIBTG', 'VITC'] as const)
      expect(fed.amount(tag).value).toBeCloseTo(carrot[tag]! * factor, 9);
  });

  test('dry matter holds the same of everything at any moisture', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 95, noNaN: true }), (WATER) => {
        const at = foodAmounts({ id: 'c', ref: 'sr28:11124', composition: { WATER } }, reference);
        const dry = (tag: 'ASH' | 'K') => (100 * at.amount(tag).value) / (100 - WATER);
        return (['ASH', 'K'] as const).every(
          (tag) => Math.abs(dry(tag) - (100 * carrot[tag]!) / (100 - carrot.WATER!)) < 1e-8 * dry(tag),
        );
      }),
    );
  });

  test('an amount given beside it stands as it is', () => {
    const a = foodAmounts({ id: 'c', ref: 'sr28:11124', composition: { WATER: 10, FAT: 1 } }, reference);
    expect(a.amount('FAT').value).toBe(1);
  });
});

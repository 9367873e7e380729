/** What no food can hold is told, with the way out; what foods of the tables hold is not. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadReference } from '../household/reference-file.ts';
import type { Composition } from './food.ts';
import { impossible } from './impossible.ts';

const told = (composition: Composition, bounds: { low?: Composition; high?: Composition } = {}) =>
  impossible({ composition, sd: {}, ...bounds });

test('no food of the open tables is refused', () => {
  const reference = loadReference();
  const refused = Array.from({ length: reference.size }, (_, row) => reference.at(row)).filter(
    (food) => impossible(food).length > 0,
  );
  expect(refused.map((f) => f.ref)).toEqual([]);
});

describe('refused', () => {
  test.each<[string, Composition, RegExp, string]>([
    [
      'parts of 185 g',
      { WATER: 10, PROCNT: 60, FAT: 55, CHOCDF: 60 },
      /^100 g cannot hold 185 g: 10 g moisture \+ 60 g protein \+ 55 g fat \+ 60 g carbohydrate/,
      'PROCNT',
    ],
    [
      '8 kg of calcium',
      { CA: 8_000_000 },
      /^8000000 mg calcium weigh 8000 g, .*check the unit, which is mg/,
      'CA',
    ],
    ['half a kilogram of vitamin D', { VITD_IU: 2e10 }, /weigh 500 g/, 'VITD_IU'],
    [
      'minerals as heavy as the food',
      { PROCNT: 20, CA: 60_000, P: 40_000 },
      /^100 g cannot hold 120 g: 20 g protein \+ 100 g minerals;/,
      'CA',
    ],
    [
      'energy in kJ',
      { ENERC_KCAL: 1627 },
      /^1630 kcal in 100 g is more than pure fat has .* kJ/,
      'ENERC_KCAL',
    ],
    ['sugar above carbohydrate', { CHOCDF: 10, SUGAR: 20 }, /more than the 10 g carbohydrate/, 'SUGAR'],
    ['starch above carbohydrate', { CHOCDF: 10, STARCH: 20 }, /more than the 10 g carbohydrate/, 'STARCH'],
    ['a fatty acid above fat', { FAT: 5, FAPU: 9 }, /more than the 5 g fat/, 'FAPU'],
    [
      'crude fibre above dietary',
      { FIBC: 14, FIBTG: 9 },
      /^Crude fibre 14 g is above dietary fibre 9 g/,
      'FIBC',
    ],
  ])('%s', (_name, composition, message, first) => {
    const [wrong] = told(composition);
    expect(wrong!.message).toMatch(message);
    expect(wrong!.tags[0]).toBe(first);
  });

  test('a guaranteed least counts as an amount, a most as the whole', () => {
    expect(told({}, { low: { FIBC: 14 }, high: { FIBTG: 9 } })).toHaveLength(1);
    expect(told({ WATER: 50 }, { low: { PROCNT: 40, FAT: 30 } })).toHaveLength(1);
  });
});

test('figures that only differ by rounding or by sample are let through', () => {
  expect(told({ WATER: 10, PROCNT: 20, FAT: 8, CHOCDF: 60, ASH: 5 })).toEqual([]);
  expect(told({ FAT: 100 })).toEqual([]);
  expect(told({ CHOCDF: 12, SUGAR: 12.6 })).toEqual([]);
  expect(told({ FIBC: 1.1, FIBTG: 0.5 })).toEqual([]);
  // Carbohydrate of a label of the European Union is without the fibre.
  expect(told({ CHOCDF: 12, FIBTG: 38 })).toEqual([]);
});

test('more of the heaviest amount never makes possible what was not', () => {
  const part = fc.double({ min: 0, max: 100, noNaN: true });
  fc.assert(
    fc.property(fc.record({ WATER: part, PROCNT: part, FAT: part, ASH: part }), (parts) => {
      if (told(parts).length === 0) return;
      expect(told({ ...parts, WATER: parts.WATER + 1 }).length).toBeGreaterThan(0);
    }),
  );
});

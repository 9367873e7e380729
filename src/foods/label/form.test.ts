/** A label typed field by field: figures per 100 g, what cannot be true of them, and their words. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { amountWords } from '../figure-words.ts';
import { countOf, sameFigures } from '../figures.ts';
import { labelSpread } from '../variation.ts';
import { faultsOf, impossible } from './faults.ts';
import { figuresFrom, type LabelForm, statedFrom, withLabelSd } from './form.ts';

const exact = (amounts: Record<string, number>): LabelForm['amounts'] =>
  Object.fromEntries(Object.entries(amounts).map(([tag, value]) => [tag, { value }]));

test('a label for any quantity becomes amounts per 100 g; moisture stays a percentage', () => {
  const label = { quantity: 250, basis: 'as fed', amounts: exact({ FAT: 6.25, WATER: 9 }) } as const;
  expect(figuresFrom(label)).toEqual({ composition: { FAT: 2.5, WATER: 9 }, sd: {} });
});

test('a guarantee stays a bound', () => {
  const amounts = { PROCNT: { low: 35 }, FIBC: { high: 20 }, CA: { low: 1500, high: 2500 } };
  expect(figuresFrom({ quantity: 250, basis: 'as fed', amounts })).toEqual({
    composition: {},
    sd: {},
    low: { PROCNT: 14, CA: 600 },
    high: { FIBC: 8, CA: 1000 },
  });
});

test('dry matter is brought back to as fed by the moisture, which must be a value', () => {
  const label = { quantity: 100, basis: 'dry matter', amounts: exact({ PROCNT: 20, WATER: 10 }) } as const;
  expect(figuresFrom(label).composition).toEqual({ PROCNT: 18, WATER: 10 });
  expect(faultsOf({ ...label, amounts: exact({ PROCNT: 20 }) })[0]?.tag).toBe('WATER');
  expect(faultsOf({ ...label, amounts: { PROCNT: { value: 20 }, WATER: { high: 10 } } })[0]?.message).toMatch(
    /not as a limit/,
  );
});

test('figures put into fields come out the same', () => {
  const amount = fc.double({ min: 0, max: 90, noNaN: true }).map((v) => Number(v.toPrecision(6)));
  const amounts = fc.dictionary(fc.constantFrom('PROCNT', 'FAT', 'FIBC', 'CA', 'VITC'), amount);
  fc.assert(
    fc.property(amounts, amounts, amounts, (composition, low, high) => {
      const figures = { composition, sd: {}, low, high };
      const back = figuresFrom({ quantity: 100, basis: 'as fed', amounts: statedFrom(figures) });
      expect(sameFigures(back, figures)).toBe(true);
      expect(countOf(back)).toBe(countOf(figures));
    }),
  );
});

test('amounts scale with the quantity they are for', () => {
  const amount = fc.double({ min: 0.01, max: 50, noNaN: true });
  const quantity = fc.double({ min: 0.1, max: 5000, noNaN: true });
  fc.assert(
    fc.property(amount, quantity, (value, grams) => {
      const printed = { PROCNT: { value: (value * grams) / 100 }, FAT: { low: (value * grams) / 100 } };
      const told = figuresFrom({ quantity: grams, basis: 'as fed', amounts: printed });
      expect(told.composition.PROCNT).toBeCloseTo(value, 6);
      expect(told.low?.FAT).toBeCloseTo(value, 6);
    }),
  );
});

test('a value has the spread its kind of label leaves; a bound has none; a known sd stays with its value', () => {
  const told = { composition: { PROCNT: 14, FAT: 5 }, sd: {}, low: { FIBC: 8 } };
  expect(withLabelSd(told, 'pellet').sd).toEqual({
    PROCNT: labelSpread(14, 'PROCNT', 'feed')?.sd,
    FAT: labelSpread(5, 'FAT', 'feed')?.sd,
  });
  expect(withLabelSd(told, 'mix').sd.PROCNT).toBe(labelSpread(14, 'PROCNT', 'food')?.sd);
  const known = { composition: { PROCNT: 14, FAT: 6 }, sd: { PROCNT: 0.3, FAT: 0.1 } };
  expect(withLabelSd(told, 'mix', known).sd).toEqual({ PROCNT: 0.3, FAT: labelSpread(5, 'FAT', 'food')?.sd });
});

test('what cannot be true is said, with the way out', () => {
  const told = (amounts: Record<string, number>) =>
    faultsOf({ quantity: 100, basis: 'as fed', amounts: exact(amounts) })[0]?.message;
  expect(told({ PROCNT: 70, FAT: 40 })).toMatch(/add up to 110 g.*Check the amount/);
  expect(told({ FIBC: 12, FIBTG: 8 })).toMatch(/Crude fibre \(12\) is above dietary fibre \(8\)/);
  expect(told({ CA: 120_000 })).toMatch(/more than the food weighs/);
  expect(told({ PROCNT: 17, FAT: 5 })).toBeUndefined();
});

test('bounds count too: least amounts add up, and bounds that cross cannot be', () => {
  const told = (low: object, high = {}, composition = {}) =>
    impossible({ composition, sd: {}, low, high }, 'Look again.')[0]?.message;
  expect(told({ PROCNT: 60, FAT: 50 })).toMatch(/add up to 110 g/);
  expect(told({}, { PROCNT: 60, FAT: 50 })).toBeUndefined();
  expect(told({ CA: 900 }, { CA: 600 })).toBe(
    'Calcium is given as at least 900 and at most 600 mg; both cannot be. Look again.',
  );
  expect(told({ PROCNT: 14 }, {}, { PROCNT: 12 })).toMatch(/given as 12, at least 14 g/);
});

test('words say value, bound or unknown', () => {
  const told = { composition: { PROCNT: 14.5, SE: 12 }, sd: {}, low: { FAT: 4 } };
  expect(amountWords(told, 'PROCNT')).toBe('14.5 g');
  expect(amountWords(told, 'SE')).toBe('12 µg');
  expect(amountWords(told, 'FAT')).toBe('at least 4 g');
  expect(amountWords(told, 'ASH')).toBe('unknown');
});

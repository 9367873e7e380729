import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GRAMS_IN, readPack, sayGrams, toGrams, WeightError, type WeightUnit } from './pack-weight.ts';

const UNITS = Object.keys(GRAMS_IN) as WeightUnit[];
const unit = fc.constantFrom(...UNITS);

describe('units of weight', () => {
  it('holds the exact pound and ounce', () => {
    expect(GRAMS_IN.lb).toBe(453.59237);
    expect(GRAMS_IN.oz * 16).toBe(GRAMS_IN.lb);
  });

  it('comes back from grams', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1e6, noNaN: true }), unit, (amount, u) => {
        expect(Math.abs(toGrams(amount, u) / GRAMS_IN[u] - amount)).toBeLessThanOrEqual(1e-12 * amount);
      }),
    );
  });

  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %d', (amount) => {
    expect(() => toGrams(amount, 'g')).toThrow(RangeError);
    expect(() => sayGrams(amount)).toThrow(RangeError);
  });
});

describe('weights as packs print them', () => {
  it.each([
    ['500 g', 500],
    ['500g', 500],
    [' 1.5 kg ', 1500],
    ['1,5 kg', 1500],
    ['.5 kg', 500],
    ['1,500 kg', 1500],
    ['0.125 g', 0.125],
    ['250 mg', 0.25],
    ['12 x 40 g', 480],
    ['12×40g', 480],
    ['6 * 1.5 kg', 9000],
    ['2 lb 4 oz', 36 * 28.349523125],
    ['2lb4oz', 36 * 28.349523125],
    ['2 lbs. 4 oz.', 36 * 28.349523125],
    ['8 OZ', 8 * 28.349523125],
    ['1 pound', 453.59237],
    ['2 x 1 lb', 907.18474],
    ['3 kilos', 3000],
  ])('%s is %d g', (text, grams) => {
    expect(readPack(text).grams).toBeCloseTo(grams, 9);
  });

  it('keeps how many there are and what each weighs', () => {
    expect(readPack('12 x 40 g')).toEqual({ grams: 480, count: 12, each: 40 });
    expect(readPack('500 g')).toEqual({ grams: 500, count: 1, each: 500 });
  });

  it.each([
    ['', 'no weight'],
    ['500', 'unit is missing'],
    ['12 x', 'no weight'],
    ['12 x 40', 'unit is missing'],
    ['g', 'not a weight'],
    ['0 g', 'more than 0'],
    ['0 x 40 g', '0 packs'],
    ['500 ml', 'weigh it'],
    ['3 bags', 'not a unit'],
    ['1 kg 200 g', 'after kg'],
    ['4 oz 2 lb', 'after oz'],
    ['-5 g', 'not a weight'],
    ['1,500 g', 'could be 1500 g or 1.5 g'],
    ['1.500 g', 'could be 1500 g or 1.5 g'],
    ['1,000.5 kg', 'not a weight'],
    ['about 5 g', 'not a weight'],
    ['5 g or so', 'not a weight'],
  ])('refuses "%s": %s', (text, why) => {
    expect(() => readPack(text)).toThrow(WeightError);
    expect(() => readPack(text)).toThrow(why);
    expect(() => readPack(text)).toThrow(`"${text}"`);
  });

  it('reads any whole or decimal amount of any unit, with comma or point', () => {
    const amount = fc.integer({ min: 1, max: 99_999 });
    fc.assert(
      fc.property(amount, fc.nat({ max: 99 }), unit, fc.constantFrom(',', '.'), (whole, part, u, mark) => {
        const value = Number(`${whole}.${part}`);
        const text = `${whole}${mark}${part} ${u}`;
        expect(readPack(text).grams).toBe(value * GRAMS_IN[u]);
      }),
    );
  });

  it('multiplies what each pack weighs', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 5000 }), (count, grams) => {
        expect(readPack(`${count} x ${grams} g`)).toEqual({ grams: count * grams, count, each: grams });
      }),
    );
  });
});

describe('weights for people', () => {
  it.each([
    [0, '0 g'],
    [0.126, '0.13 g'],
    [40, '40 g'],
    [12.34, '12.3 g'],
    [999.97, '1 kg'],
    [1250, '1.25 kg'],
    [1234.4, '1.234 kg'],
  ])('%d g is %s', (grams, said) => {
    expect(sayGrams(grams)).toBe(said);
  });

  it('reads back what it says, as near as it says it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5_000_000 }), (n) => {
        const grams = n / 100;
        // "1.234 kg" is no thousand; three figures before "g" are never said.
        expect(Math.abs(readPack(sayGrams(grams)).grams - grams)).toBeLessThanOrEqual(
          (grams < 10 ? 0.005 : grams < 1000 ? 0.05 : 0.5) + 1e-9,
        );
      }),
    );
  });
});

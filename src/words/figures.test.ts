import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { figuresOf } from './figures.ts';
import { GRAMS_PER_OUNCE, LANGUAGES, languageOf, PLAIN_MANNER, readManner } from './manner.ts';

const inGerman = figuresOf({ ...PLAIN_MANNER, language: 'de' });
const inOunces = figuresOf({ ...PLAIN_MANNER, mass: 'oz', heat: 'F', currency: 'USD' });
const plain = figuresOf(PLAIN_MANNER);

it('writes numbers with the sign of the language, and no more decimals than asked', () => {
  expect(plain.number(6.25)).toBe('6.25');
  expect(inGerman.number(6.25)).toBe('6,25');
  expect(inGerman.number(1234.5)).toBe('1234,5');
  expect(inGerman.fixed(7, 2)).toBe('7,00');
  expect(plain.number(-0.001)).toBe('0');
  expect(plain.figure(0.0123)).toBe('0.0123');
  expect(plain.figure(123.4)).toBe('123');
});

it('writes weights and heat in the unit that is wished for', () => {
  expect(plain.grams(21)).toBe('21 g');
  expect([plain.bodyGrams(42.6), plain.bodyGrams(30), plain.bodyGrams(29.96)]).toEqual([
    '43 g',
    '30 g',
    '30 g',
  ]);
  expect(plain.bodyGrams(22.44)).toBe('22.4 g');
  expect(inOunces.bodyGrams(42.6)).toBe('1.5 oz');
  expect(plain.weight(1250)).toBe('1.25 kg');
  expect(inOunces.grams(21)).toBe('0.74 oz');
  expect(inOunces.weight(453.59237)).toBe('1 lb');
  expect(inGerman.degrees(60)).toBe('60 °C');
  expect(inOunces.degrees(60)).toBe('140 °F');
  expect(inOunces.money(4.2)).toBe('US$4.20');
  expect(inGerman.money(4.2).replace(/\s/g, ' ')).toBe('4,20 €');
});

it('names days with the month in words, and the year where it is another', () => {
  expect(plain.day('2026-03-14', '2026-11-29')).toBe('14 March');
  expect(plain.day('2026-03-14')).toBe('14 March 2026');
  expect(inGerman.day('2026-03-14', '2026-01-01')).toBe('14. März');
  expect(plain.day('0099-03-04')).toMatch(/^4 March 0?0?99$/);
  expect(plain.list([])).toBe('');
  expect(plain.list(['oats', 'millet', 'peas'])).toBe('oats, millet and peas');
  expect(plain.count(1, { one: 'food', other: 'foods' })).toBe('1 food');
  expect(plain.count(0, { one: 'food', other: 'foods' })).toBe('0 foods');
});

describe.each(LANGUAGES)('%s', (language) => {
  it('gives back what is typed in ounces or Fahrenheit as it was', () => {
    const f = figuresOf({ ...PLAIN_MANNER, language, mass: 'oz', heat: 'F' });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (x) => {
        expect(f.gramsOf(f.mass(x))).toBeCloseTo(x, 6);
        expect(f.celsiusOf(f.heat(x))).toBeCloseTo(x, 6);
      }),
    );
    expect(f.gramsOf(1)).toBe(GRAMS_PER_OUNCE);
  });
});

it('speaks the first language wished for that it knows, and reads what is kept with care', () => {
  expect(languageOf(['fr-FR', 'nl-BE', 'en'])).toBe('nl');
  expect(languageOf(['fr'])).toBe('en');
  expect(readManner({ language: 'xx', mass: 'oz', heat: 3 }, PLAIN_MANNER)).toEqual({
    ...PLAIN_MANNER,
    mass: 'oz',
  });
  expect(readManner(null, PLAIN_MANNER)).toEqual(PLAIN_MANNER);
});

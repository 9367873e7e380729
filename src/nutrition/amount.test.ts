import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Amount,
  asFed,
  driedAmount,
  freshGramsFor,
  perHundred,
  toAsFed,
  toDryMatter,
  UNKNOWN,
} from './amount.ts';

const value = fc.double({ min: 1e-6, max: 1e5, noNaN: true });
const moisture = fc.double({ min: 0, max: 99, noNaN: true });
const known = (a: Amount) => {
  if (!a.known) throw new Error('unknown');
  return a;
};
const nearly = (a: number, b: number, relative = 1e-12) => Math.abs(a - b) <= relative * Math.abs(b);

describe('as fed and dry matter', () => {
  it('divides by the dry part', () => {
    const dry = known(toDryMatter(asFed(9, 'g', { sd: 0.9, low: 4.5, high: 18 }), 10));
    expect(dry).toMatchObject({ value: 10, sd: 1, low: 5, high: 20, basis: 'dry matter' });
  });

  it('comes back from dry matter unchanged', () => {
    fc.assert(
      fc.property(value, moisture, (v, m) =>
        nearly(known(toAsFed(toDryMatter(asFed(v, 'g'), m), m)).value, v),
      ),
    );
  });

  it('leaves unknown unknown', () => {
    expect(toDryMatter(UNKNOWN, 10)).toBe(UNKNOWN);
    expect(driedAmount(UNKNOWN, 88, 4)).toBe(UNKNOWN);
  });

  it.each([100, -1, Number.NaN])('refuses a moisture of %d', (m) => {
    expect(() => toDryMatter(asFed(1, 'g'), m)).toThrow(RangeError);
  });

  it('does not mix bases: each of these fails to compile', () => {
    const dry = toDryMatter(asFed(1, 'g'), 10);
    // @ts-expect-error dry matter cannot be turned into dry matter again
    toDryMatter(dry, 10);
    // @ts-expect-error an as-fed amount is no dry-matter one
    toAsFed(asFed(1, 'g'), 10);
    // @ts-expect-error drying starts from the fresh food as fed
    driedAmount(dry, 88, 4);
    expect(dry.known).toBe(true);
  });
});

describe('an amount', () => {
  it.each([-1, Number.NaN, Number.POSITIVE_INFINITY])('is not %d', (v) => {
    expect(() => asFed(v, 'g')).toThrow(RangeError);
  });
});

describe('a label', () => {
  it('printed for any quantity becomes per 100 g', () => {
    expect(perHundred(6.25, 250)).toBe(2.5);
    expect(() => perHundred(1, 0)).toThrow(RangeError);
  });

  it('says the same for twice the quantity and twice the amount', () => {
    fc.assert(fc.property(value, value, (p, q) => nearly(perHundred(2 * p, 2 * q), perHundred(p, q))));
  });
});

describe('drying', () => {
  it('conserves dry matter: what the fresh grams hold, the dried hold', () => {
    fc.assert(
      fc.property(value, value, moisture, moisture, (v, dried, moistureFresh, moistureDried) => {
        const fresh = freshGramsFor(dried, { moistureFresh, moistureDried });
        const after = known(driedAmount(asFed(v, 'g'), moistureFresh, moistureDried)).value;
        return (
          nearly(fresh * (100 - moistureFresh), dried * (100 - moistureDried)) &&
          nearly(fresh * v, dried * after, 1e-11)
        );
      }),
    );
  });

  it('asks for more fresh food where some is trimmed off', () => {
    const plain = freshGramsFor(100, { moistureFresh: 90, moistureDried: 10 });
    expect(plain).toBeCloseTo(900, 10);
    expect(freshGramsFor(100, { moistureFresh: 90, moistureDried: 10, trimLoss: 10 })).toBeCloseTo(1000, 10);
  });
});

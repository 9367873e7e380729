import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DAY, listOf } from '../../../../test/kitchen/oats-and-millet-list.ts';
import { offer } from '../../../../test/kitchen/offers.ts';
import { broughtIn, toGet, wholeUp, withoutFoods, withTick } from './basket.ts';

describe('what is to be got', () => {
  it('is whole grams, never less than is needed and never a step too much', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 5000, noNaN: true }),
        fc.constantFrom(0.1, 0.5, 1, 2, 5),
        (grams, step) => {
          const whole = wholeUp(grams, step);
          expect(Number.isInteger(whole)).toBe(true);
          expect(whole).toBeGreaterThanOrEqual(grams - 1e-5 * step);
          expect(whole - grams).toBeLessThanOrEqual(Math.max(1, step) + 1e-9);
        },
      ),
    );
    // 5 % of 300 g, as a computer adds it up.
    expect(wholeUp(15.000000000000002, 1)).toBe(15);
    expect(wholeUp(13.2, 5)).toBe(15);
  });

  it('is fresh food as bought where it is dried at home; what is not known is never made up', () => {
    expect(toGet({ toBuy: 17.4 }, false, 1)).toEqual({ form: 'dry', grams: 18 });
    expect(toGet({ toBuy: 18, toBuyFresh: { prepared: 138.3, purchased: 155.4 } }, true, 1)).toEqual({
      form: 'fresh',
      grams: 156,
    });
    expect(toGet({ toBuy: 18, toBuyFresh: { prepared: 138.3 } }, true, 1)).toEqual({
      form: 'fresh',
      grams: 139,
      atLeast: true,
    });
    expect(toGet({ toBuy: 18 }, true, 1)).toEqual({ form: 'fresh' });
  });
});

describe('what comes in', () => {
  const [oats, millet] = listOf({ offers: [offer({ id: 'o', price: 2 })] }).lines;
  const dry = (grams: number) => ({ form: 'dry', grams }) as const;

  it('is the packs that were chosen, or what was asked for, or what the keeper says there is', () => {
    expect(broughtIn(oats!, dry(600), { on: DAY })).toMatchObject([
      { food: 'oats', name: 'Oats', grams: 1000, price: 4, seller: 'Alder Mill' },
    ]);
    expect(broughtIn(millet!, dry(400), undefined)).toEqual([
      { food: 'millet', name: 'Millet', grams: 400, form: 'dry' },
    ]);
    expect(broughtIn(oats!, dry(600), { on: DAY, grams: 750 })).toEqual([
      { food: 'oats', name: 'Oats', grams: 750, form: 'dry' },
    ]);
    expect(broughtIn(oats!, dry(600), { on: DAY, home: true })).toEqual([
      { food: 'oats', name: 'Oats', grams: 600, form: 'dry' },
    ]);
    expect(broughtIn(millet!, { form: 'fresh' }, { on: DAY })).toEqual([]);
  });

  it('leaves the basket', () => {
    const one = withTick(undefined, 'oats', { on: DAY });
    const two = withTick(one, 'millet', { on: DAY, home: true });
    expect(withoutFoods(two, ['oats'])).toEqual({ millet: { on: DAY, home: true } });
    expect(withoutFoods(two, ['oats', 'millet'])).toBeUndefined();
    expect(withTick(one, 'oats', undefined)).toBeUndefined();
  });
});

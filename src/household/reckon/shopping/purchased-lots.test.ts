import { describe, expect, it } from 'vitest';
import { DAY, listOf } from '../../../../test/kitchen/oats-and-millet-list.ts';
import { offer } from '../../../../test/kitchen/offers.ts';
import { purchasedLots, purchaseOf } from './purchased-lots.ts';

describe('what was bought', () => {
  it('becomes a lot for each offer, with its seller, price and a name of its own', () => {
    const offers = [
      offer({ id: 'a', packGrams: 100, price: 0.3 }),
      offer({ id: 'b', packGrams: 500, seller: 'Bramble Barn', price: 1.6 }),
      offer({ id: 'm', food: 'millet', packGrams: 400 }),
    ];
    const list = listOf({ offers });
    const bought = list.lines.flatMap((l) => l.packs.map((packs) => purchaseOf(l.name, packs)));
    let n = 0;
    const lots = purchasedLots(bought, {
      on: DAY,
      taken: ['Millet'],
      id: () => `lot-${n++}`,
      groupOf: () => 'seed',
    });
    expect(lots).toHaveLength(bought.length);
    expect(new Set(lots.map((l) => l.name)).size).toBe(lots.length);
    expect(lots.at(-1)).toMatchObject({ name: 'Millet, 10 March 2026', grams: 400, price: 2, boughtOn: DAY });
    // Put into the cupboard, they are what was still to buy.
    const after = listOf({ offers, cupboard: lots.map((lot) => ({ lot, left: lot.grams })) });
    expect(after.lines.map((l) => l.toBuy)).toEqual([0, 0]);
    expect(after.price.value).toBeCloseTo(list.price.value, 6);
  });

  it('need not wait for the freezer where all of it was frozen already; the reason stands on each lot that needs one', () => {
    const bought = (['dry', 'fresh'] as const).map((form) => ({ food: form, name: form, grams: 20, form }));
    const lots = (frozen?: string) =>
      purchasedLots(bought, { on: DAY, taken: [], id: () => 'x', frozen, groupOf: () => 'vegetable' });
    expect(lots('by the seller').map((l) => l.overruled)).toEqual([
      { note: 'by the seller', on: DAY },
      undefined,
    ]);
    expect(lots().map((l) => l.overruled)).toEqual([undefined, undefined]);
  });
});

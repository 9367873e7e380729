import { describe, expect, it } from 'vitest';
import { DAY, listOf } from '../../../../test/kitchen/oats-and-millet-list.ts';
import { offer } from '../../../../test/kitchen/offers.ts';
import { purchasedLots } from './purchased-lots.ts';

describe('what was bought', () => {
  it('becomes a lot for each offer, with its seller, price and a name of its own', () => {
    const offers = [
      offer({ id: 'a', packGrams: 100, price: 0.3 }),
      offer({ id: 'b', packGrams: 500, seller: 'Bramble Barn', price: 1.6 }),
      offer({ id: 'm', food: 'millet', packGrams: 400 }),
    ];
    const list = listOf({ offers });
    const bought = list.lines.flatMap((l) => l.packs.map((packs) => ({ name: l.name, packs })));
    let n = 0;
    const lots = purchasedLots(bought, { on: DAY, taken: ['Millet'], id: () => `lot-${n++}` });
    expect(lots).toHaveLength(bought.length);
    expect(new Set(lots.map((l) => l.name)).size).toBe(lots.length);
    expect(lots.at(-1)).toMatchObject({ name: 'Millet, 10 March 2026', grams: 400, price: 2, boughtOn: DAY });
    // Put into the cupboard, they are what was still to buy.
    const after = listOf({ offers, cupboard: lots.map((lot) => ({ lot, left: lot.grams })) });
    expect(after.lines.map((l) => l.toBuy)).toEqual([0, 0]);
    expect(after.price.value).toBeCloseTo(list.price.value, 6);
  });
});

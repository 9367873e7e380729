import { beforeAll, describe, expect, it } from 'vitest';
import { type Highs, loadHighs } from '../../../formulation/solve/highs.ts';
import type { Offer } from '../../../kitchen/model.ts';
import {
  type ShoppingList,
  type ShoppingQuestion,
  shoppingList,
} from '../../../kitchen/shopping/shopping-list.ts';
import { purchasedLots } from './purchased-lots.ts';

const DAY = '2026-03-10';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const offer = (more: Partial<Offer> & Pick<Offer, 'id'>): Offer => ({
  food: 'oats',
  seller: 'Alder Mill',
  packGrams: 500,
  price: 2,
  form: 'dry',
  ...more,
});

function listOf(more: Partial<ShoppingQuestion> = {}): ShoppingList {
  return shoppingList(
    {
      foods: [
        { food: 'oats', name: 'Oats' },
        { food: 'millet', name: 'Millet' },
      ],
      shares: { oats: 60, millet: 40 },
      batch: { grams: 1000 },
      cupboard: [],
      offers: [
        offer({ id: 'o' }),
        offer({ id: 'm', food: 'millet', seller: 'Bramble Barn', packGrams: 400 }),
      ],
      aim: 'cost',
      on: DAY,
      ...more,
    },
    highs,
  );
}

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

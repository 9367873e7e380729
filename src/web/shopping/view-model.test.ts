import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import { listOf } from '../../../test/kitchen/oats-and-millet-list.ts';
import { offer } from '../../../test/kitchen/offers.ts';
import { demoHousehold } from '../../household/demo.ts';
import { eatingOf } from '../../household/reckon/shopping/eating.ts';
import {
  leftWords,
  linePrice,
  listText,
  noFreshWords,
  orderPacks,
  packWords,
  pricesOf,
  priceWords,
  sizeSentence,
  toBuyWords,
  toPayWords,
} from './view-model.ts';

describe('prices in words', () => {
  it('are never 0 where nothing is known', () => {
    expect(priceWords(3.2, false)).toBe('3.20');
    expect(priceWords(0, false)).toBe('0.00');
    expect(priceWords(3.2, true)).toBe('at least 3.20');
    expect(priceWords(0, true)).toBe('not known');
  });

  it('of a kilogram and of a day follow from that of the batch', () => {
    const grams = fc.integer({ min: 1, max: 5000 });
    fc.assert(
      fc.property(
        grams,
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 60 }),
        (g, price, aDay) => {
          const { batch, perKg, perDay } = pricesOf(
            { batchGrams: g, price: { value: price, atLeast: false, unknown: [] } },
            aDay,
          );
          expect(Number(batch)).toBe(price);
          expect(Math.abs(Number(perKg) * g - price * 1000)).toBeLessThanOrEqual(0.00501 * g);
          expect(Math.abs(Number(perDay) * g - price * aDay)).toBeLessThanOrEqual(0.000501 * g);
        },
      ),
    );
  });

  it('of a day are left out where nobody knows what is eaten', () => {
    expect(pricesOf(listOf(), undefined)).not.toHaveProperty('perDay');
  });

  it('say that some is unknown', () => {
    const list = listOf({ offers: [offer({ id: 'o' })] });
    expect(pricesOf(list, 10)).toEqual({
      batch: 'at least 2.40',
      perKg: 'at least 2.40',
      perDay: 'at least 0.024',
      unknown: ['Millet'],
    });
    expect(toPayWords(list)).toBe('4.00, without Millet');
    expect(toPayWords(listOf({ offers: [] }))).toBe('not known: no offers yet');
    expect(linePrice(list.lines[1]!)).toBe('not known');
    expect(linePrice(list.lines[0]!)).toBe('2.40');
  });

  it('are nothing to pay where the cupboard holds it all', () => {
    const cupboard = ['oats', 'millet'].map((food) => ({
      lot: lotOf({ id: food, food, grams: 900 }),
      left: 900,
    }));
    expect(toPayWords(listOf({ cupboard }))).toBe('nothing');
  });
});

describe('the list in words', () => {
  it('says packs, fresh weights and what is left', () => {
    expect(packWords({ packs: 2, offer: offer({ id: 'a' }) })).toBe('2 × 500 g');
    expect(packWords({ packs: 1, offer: offer({ id: 'a', packGrams: 1000, form: 'fresh' }) })).toBe(
      '1 × 1 kg fresh',
    );
    expect(toBuyWords({ toBuy: 20 })).toBe('20 g');
    expect(toBuyWords({ toBuy: 20, toBuyFresh: { prepared: 150, purchased: 170 } })).toBe(
      '20 g dried: 150 g fresh and ready to dry, 170 g as bought',
    );
    expect(toBuyWords({ toBuy: 20, toBuyFresh: { prepared: 150 } })).toContain('more than that as bought');
    const [oats] = listOf().lines;
    expect(leftWords(oats!)).toBe('400 g is left over.');
    expect(leftWords({ leftOver: 0, packs: [] })).toBe('Nothing is left over.');
  });

  it('says why a fresh weight is not known', () => {
    const fresh = { ref: 'x', name: 'Own greens', source: 'test', composition: {}, sd: {} };
    expect(noFreshWords(undefined, 10)).toContain('choose it anew');
    expect(noFreshWords(fresh, 10)).toContain('the water of Own greens is not known');
    expect(noFreshWords({ ...fresh, composition: { WATER: 8 } }, 10)).toContain(
      '8 % water, no more than the 10 %',
    );
  });

  it('goes by seller, and names what is still to be found', () => {
    const list = listOf({
      offers: [offer({ id: 'o' })],
      sellers: [{ seller: 'Alder Mill', delivery: 3 }],
    });
    expect(orderPacks(list, 'Alder Mill').map((b) => b.name)).toEqual(['Oats']);
    expect(listText(list, 'Shopping')).toBe(
      [
        'Shopping',
        '',
        'Alder Mill',
        '- Oats: 2 × 500 g, 4.00',
        '- delivery: 3.00',
        '  in all 7.00',
        '',
        'No offer yet',
        '- Millet: 400 g',
      ].join('\n'),
    );
  });
});

describe('size of the batch', () => {
  it('is said for its animals', () => {
    const house = demoHousehold();
    const mix = house.mixes[0]!;
    const eating = eatingOf(mix, house.animals);
    expect(sizeSentence(180, eating)).toBe('30 days for Bramble, who eats 6 g of it a day');
    expect(sizeSentence(183, eating)).toContain('a little over 30 days');
    expect(sizeSentence(3, eating)).toContain('less than a day');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import { listOf } from '../../../test/kitchen/oats-and-millet-list.ts';
import { offer } from '../../../test/kitchen/offers.ts';
import { demoHousehold } from '../../household/demo.ts';
import { eatingOf } from '../../household/reckon/shopping/eating.ts';
import {
  amountWords,
  bySection,
  leftWords,
  linePrice,
  listText,
  marksOf,
  noFreshWords,
  orderPacks,
  packWords,
  pricesOf,
  priceWords,
  sizeSentence,
  toPayWords,
} from './view-model.ts';

describe('prices in words', () => {
  it('are never 0 where nothing is known', () => {
    expect(priceWords(3.2, false)).toBe('€3.20');
    expect(priceWords(0, false)).toBe('€0.00');
    expect(priceWords(3.2, true)).toBe('at least €3.20');
    expect(priceWords(0, true)).toBe('not known');
  });

  it('of a kilogram and of a day follow from that of the batch', () => {
    const grams = fc.integer({ min: 1, max: 5000 });
    const figure = (said: string | undefined) => Number((said ?? '').replace('€', ''));
    fc.assert(
      fc.property(
        grams,
        fc.integer({ min: 1, max: 300 }),
        fc.integer({ min: 1, max: 60 }),
        (g, price, aDay) => {
          const { batch, perWeight, perDay } = pricesOf(
            { batchGrams: g, price: { value: price, atLeast: false, unknown: [] } },
            aDay,
          );
          expect(figure(batch)).toBe(price);
          const perKg = Number(perWeight.replaceAll(/[€,]/g, ''));
          expect(Math.abs(perKg * g - price * 1000)).toBeLessThanOrEqual(0.00501 * g);
          const day = Number((perDay ?? '').replaceAll(/[€,]/g, ''));
          expect(Math.abs(day * g - price * aDay)).toBeLessThanOrEqual(0.00501 * g);
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
      batch: 'at least €2.40',
      perWeight: 'at least €2.40',
      perDay: 'at least €0.02',
      unknown: ['Millet'],
    });
    expect(toPayWords(list)).toBe('€4.00, without Millet');
    expect(toPayWords(listOf({ offers: [] }))).toBe('not known: no sellers yet');
    expect(linePrice(list.lines[1]!)).toBe('not known');
    expect(linePrice(list.lines[0]!)).toBe('€2.40');
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
    expect(amountWords({ form: 'dry', grams: 20 }, 19.4)).toBe('20 g');
    expect(amountWords({ form: 'fresh', grams: 170 }, 20)).toBe('170 g fresh');
    expect(amountWords({ form: 'fresh', grams: 150, atLeast: true }, 20)).toBe('over 150 g fresh');
    expect(amountWords({ form: 'fresh' }, 19.4)).toBe('20 g dried');
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

  it('says beside a line what is special about it, and nothing where nothing is', () => {
    const [oats] = listOf().lines;
    expect(marksOf(oats!, { form: 'dry', grams: 600 })).toEqual([]);
    const lot = lotOf({ id: 'a', food: 'oats', grams: 200 });
    const barred = { ...lot, id: 'b', barred: { why: 'moths', on: '2026-03-01' } };
    const [some] = listOf({ cupboard: [lot, barred].map((l) => ({ lot: l, left: 200 })) }).lines;
    expect(marksOf(some!, { form: 'dry', grams: 400 })).toEqual([
      '200 g more in your stock',
      '1 pack not counted',
    ]);
    expect(marksOf(oats!, { form: 'fresh', grams: 3000, atLeast: true })).toEqual([
      'gives 600 g dried',
      'what is trimmed off is not known',
    ]);
    expect(marksOf(oats!, { form: 'fresh' })).toEqual(['fresh weight not known']);
  });

  it('has one section for herbs and vegetables, and loses no line', () => {
    const groups = ['herb', 'seed', 'vegetable', undefined, 'nut', 'animal'] as const;
    const sections = bySection([...groups.keys()], (i) => groups[i]);
    expect(sections).toEqual([
      ['seed', [1, 4]],
      ['vegetable', [0, 2]],
      ['animal', [5]],
      ['other', [3]],
    ]);
  });

  it('is text with each food once, its packs and what goes to whom', () => {
    const list = listOf({
      offers: [offer({ id: 'o' })],
      sellers: [{ seller: 'Alder Mill', delivery: 3 }],
    });
    expect(orderPacks(list, 'Alder Mill').map((b) => b.name)).toEqual(['Oats']);
    const about = { title: 'Shopping', step: 1, driedAtHome: () => false };
    expect(listText(list, { ...about, groupOf: () => 'seed' })).toBe(
      [
        'Shopping',
        '',
        'Seeds, grains and nuts',
        '- Oats: 600 g; 2 × 500 g, Alder Mill',
        '- Millet: 400 g',
        '',
        'Alder Mill: €7.00 in all, with €3.00 for delivery',
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

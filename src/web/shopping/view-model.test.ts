import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import { type Highs, loadHighs } from '../../formulation/solve/highs.ts';
import { demoHousehold } from '../../household/demo.ts';
import type { Household, Mix } from '../../household/model.ts';
import type { DryingRun, Offer } from '../../kitchen/model.ts';
import {
  type ShoppingList,
  type ShoppingQuestion,
  shoppingList,
} from '../../kitchen/shopping/shopping-list.ts';
import {
  boughtLots,
  eatingOf,
  leftWords,
  linePrice,
  listText,
  noFreshWords,
  onTrays,
  orderPacks,
  packWords,
  pricesOf,
  priceWords,
  resized,
  sameSeller,
  sellerNames,
  sharesToBuy,
  shoppingQuestion,
  sizeSentence,
  toBuyWords,
  toPayWords,
  withTerms,
} from './view-model.ts';

const DAY = '2026-03-10';
const house = demoHousehold();
const mix = house.mixes[0]!;

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

describe('size of the batch', () => {
  it('takes the place of the other measure and leaves the rest of the plan', () => {
    const pins = [{ step: 'buy', day: DAY }];
    const before = { mixId: 'm', grams: 300, until: '2026-04-01', pins };
    expect(resized(before, { days: 30 })).toEqual({ mixId: 'm', days: 30, until: '2026-04-01', pins });
    expect(resized({ mixId: 'm', days: 30, pins }, { grams: 5 })).toEqual({ mixId: 'm', grams: 5, pins });
  });

  it('is known in days only where every animal’s food is', () => {
    const [bramble] = house.animals;
    expect(eatingOf(mix, house.animals).gramsADay).toBe(6);
    const moss = { ...bramble!, id: 'moss', name: 'Moss', dailyGrams: undefined };
    const both = eatingOf({ ...mix, animalIds: [...mix.animalIds, 'moss'] }, [...house.animals, moss]);
    expect(both).not.toHaveProperty('gramsADay');
    expect(both.unknown.map((a) => a.name)).toEqual(['Moss']);
    expect(eatingOf({ ...mix, animalIds: [] }, house.animals)).not.toHaveProperty('gramsADay');
  });

  it('is said for its animals', () => {
    const eating = eatingOf(mix, house.animals);
    expect(sizeSentence(180, eating)).toBe('30 days for Bramble, who eats 6 g of it a day');
    expect(sizeSentence(183, eating)).toContain('a little over 30 days');
    expect(sizeSentence(3, eating)).toContain('less than a day');
  });
});

describe('the question', () => {
  const full: Household = {
    ...house,
    lots: [
      lotOf({ id: 'a', food: 'rolled-oats', grams: 200 }),
      lotOf({ id: 'x', food: 'in-no-mix' }),
      lotOf({ id: 'f', food: 'carrot-dried', form: 'fresh' }),
    ],
    offers: [offer({ id: 'o', food: 'rolled-oats' }), offer({ id: 'x', food: 'in-no-mix' })],
    kitchen: [
      {
        id: 'kitchen',
        driedAtHome: [
          { food: 'carrot-dried', fresh: 'sr28:11124', moisture: 10 },
          { food: 'in-no-mix', fresh: 'sr28:11124', moisture: 10 },
        ],
        sellers: [{ seller: 'Alder Mill', delivery: 3 }],
      },
    ],
  };
  const ask = (m: Mix = mix) =>
    shoppingQuestion(full, m, { size: { grams: 300 }, aim: 'cost', on: DAY, nameOf: (f) => f.name ?? f.id });

  it('names what has a share, and what is kept of it', () => {
    const asked = ask();
    expect(asked.foods).toHaveLength(20);
    expect(asked.cupboard.map((c) => c.lot.id)).toEqual(['a', 'f']);
    expect(asked.offers.map((o) => o.id)).toEqual(['o']);
    expect(asked.driedAtHome.map((d) => d.food)).toEqual(['carrot-dried']);
    expect(asked.sellers).toEqual([{ seller: 'Alder Mill', delivery: 3 }]);
  });

  it('leaves out what is refused and what has no share; the shares are then not whole', () => {
    const foods = mix.problem.foods.map((f) => (f.id === 'millet' ? { ...f, refused: true } : f));
    const less = { ...mix, problem: { ...mix.problem, foods } };
    expect(ask(less).foods.map((f) => f.food)).not.toContain('millet');
    expect(sharesToBuy(less)).toMatchObject({ total: 95, whole: false });
    expect(sharesToBuy(mix)).toMatchObject({ total: 100, whole: true });
  });

  it('counts what lies on the trays until its lot is there or it is over', () => {
    const run: DryingRun = {
      id: 'r',
      lot: 'f',
      device: 'oven',
      celsius: 60,
      startedAt: '2026-03-09T08:00:00Z',
      trays: 1,
      gramsBefore: 80,
      checks: [],
    };
    const drying = (more: Partial<DryingRun>, ...lots: Household['lots']) =>
      onTrays({ dryingRuns: [{ ...run, ...more }], lots: [...full.lots, ...lots] }).length;
    expect(drying({})).toBe(1);
    expect(drying({ gramsAfter: 10 })).toBe(1);
    expect(drying({ gramsAfter: 10 }, lotOf({ id: 'd', driedIn: 'r' }))).toBe(0);
    expect(drying({ endedAt: '2026-03-09T14:00:00Z' })).toBe(0);
    expect(drying({ lot: 'gone' })).toBe(0);
  });
});

describe('sellers', () => {
  it('are offered once each, from offers, terms and lots', () => {
    expect(
      sellerNames({
        offers: [offer({ id: 'a', seller: 'Bramble Barn' }), offer({ id: 'b', seller: 'Bramble Barn' })],
        lots: [lotOf({ id: 'l', seller: 'Market stall' }), lotOf({ id: 'n' })],
        kitchen: [{ id: 'kitchen', sellers: [{ seller: 'Alder Mill', delivery: 1 }] }],
      }),
    ).toEqual(['Alder Mill', 'Bramble Barn', 'Market stall']);
  });

  it('are the same whatever the capitals and spaces', () => {
    expect(sameSeller('  alder   mill ', ['Alder Mill'])).toBe('Alder Mill');
    expect(sameSeller(' New  one', ['Alder Mill'])).toBe('New one');
  });

  it('keep terms once each, and none that ask for nothing', () => {
    const before = [{ seller: 'A', delivery: 1 }, { seller: 'B' }];
    expect(withTerms(before, { seller: 'A', delivery: 2 })).toEqual([
      { seller: 'B' },
      { seller: 'A', delivery: 2 },
    ]);
    expect(withTerms(before, { seller: 'A' })).toEqual([{ seller: 'B' }]);
    expect(withTerms(before, { seller: 'A', delivery: 0 })).toHaveLength(2);
  });
});

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
    const lots = boughtLots(bought, { on: DAY, taken: ['Millet'], id: () => `lot-${n++}` });
    expect(lots).toHaveLength(bought.length);
    expect(new Set(lots.map((l) => l.name)).size).toBe(lots.length);
    expect(lots.at(-1)).toMatchObject({ name: 'Millet, 10 March 2026', grams: 400, price: 2, boughtOn: DAY });
    // Put into the cupboard, they are what was still to buy.
    const after = listOf({ offers, cupboard: lots.map((lot) => ({ lot, left: lot.grams })) });
    expect(after.lines.map((l) => l.toBuy)).toEqual([0, 0]);
    expect(after.price.value).toBeCloseTo(list.price.value, 6);
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

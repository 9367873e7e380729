import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import { drawn, offer, SELLERS } from '../../../test/kitchen/pack-problems.ts';
import { byGlpk } from '../../../test/kitchen/packs-oracle.ts';
import { type Highs, loadHighs } from '../../formulation/solve/highs.ts';
import type { Offer } from '../model.ts';
import { choosePacks, type PackAim } from './packs.ts';
import type { PackNeed, Seller } from './usable-offers.ts';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const PROBLEMS = draws(250, 50);

describe('whole packs, against another solver', () => {
  it.each(['cost', 'waste'] as const)(`${PROBLEMS} drawn problems, aim %s`, async (aim) => {
    let withTerms = 0;
    let compared = 0;
    for (const problem of fc.sample(drawn, { numRuns: PROBLEMS, seed: aim === 'cost' ? 41 : 42 })) {
      const ours = choosePacks(problem.needs, problem.offers, { aim, sellers: problem.sellers }, highs);
      // What only a seller with an order that nothing can fill has: both must say that there is no such choice.
      if (ours.missing.length > 0) {
        expect(await byGlpk(problem, aim)).toBeUndefined();
        continue;
      }
      compared++;
      if (problem.sellers.length > 0) withTerms++;
      expect(ours.proven).toBe(true);
      const bought = ours.foods.reduce((sum, f) => sum + f.bought, 0);
      expect({ pence: Math.round(ours.cost * 100), grams: Math.round(bought) }).toEqual(
        await byGlpk(problem, aim),
      );
    }
    expect(compared).toBeGreaterThan(0.96 * PROBLEMS);
    expect(withTerms).toBeGreaterThan(0.6 * PROBLEMS);
  });
});

describe('whole packs', () => {
  const aims = fc.constantFrom<PackAim>('cost', 'waste');
  const runs = { numRuns: 40 };

  it('meets every need, and what is left over is what was bought less what was needed', () => {
    fc.assert(
      fc.property(drawn, aims, ({ needs, offers, sellers }, aim) => {
        const chosen = choosePacks(needs, offers, { aim, sellers }, highs);
        expect(chosen.foods.length + chosen.missing.length).toBe(needs.length);
        for (const f of chosen.foods) {
          const packs = chosen.packs.filter((p) => p.offer.food === f.food);
          expect(packs.reduce((sum, p) => sum + p.packs * p.offer.packGrams, 0)).toBe(f.bought);
          expect(f.bought).toBeGreaterThanOrEqual(f.needed);
          expect(f.leftOver).toBe(f.bought - f.needed);
        }
        for (const p of chosen.packs) {
          expect(Number.isInteger(p.packs) && p.packs > 0).toBe(true);
          expect(p.price).toBeCloseTo(p.packs * p.offer.price, 9);
        }
        for (const o of chosen.orders)
          expect(o.goods).toBeGreaterThanOrEqual(
            (sellers.find((s) => s.seller === o.seller)?.minimumOrder ?? 0) - 1e-6,
          );
        const money = chosen.orders.reduce((sum, o) => sum + o.goods + o.delivery, 0);
        expect(chosen.cost).toBeCloseTo(money, 9);
      }),
      runs,
    );
  });

  it('is never dearer for one more offer, nor wastes more', () => {
    const more = fc.record({
      food: fc.nat({ max: 3 }),
      pack: fc.integer({ min: 20, max: 900 }),
      pence: fc.integer({ min: 1, max: 900 }),
    });
    fc.assert(
      fc.property(drawn, more, aims, ({ needs, offers, sellers }, extra, aim) => {
        const before = choosePacks(needs, offers, { aim, sellers }, highs);
        fc.pre(before.missing.length === 0);
        const added = offer('0-more', `food ${extra.food}`, SELLERS[0]!, extra.pack, extra.pence / 100);
        const after = choosePacks(needs, [...offers, added], { aim, sellers }, highs);
        const worth = (c: typeof before) =>
          aim === 'cost' ? c.cost : c.foods.reduce((sum, f) => sum + f.leftOver, 0);
        expect(worth(after)).toBeLessThanOrEqual(worth(before) + 1e-6);
      }),
      runs,
    );
  });

  it('chooses the same whatever the order in which needs, offers and sellers are given', () => {
    fc.assert(
      fc.property(drawn, aims, ({ needs, offers, sellers }, aim) => {
        const packs = (c: ReturnType<typeof choosePacks>) =>
          c.packs.map((p) => `${p.offer.id} x ${p.packs}`).sort();
        const one = choosePacks(needs, offers, { aim, sellers }, highs);
        const other = choosePacks(
          [...needs].reverse(),
          [...offers].reverse(),
          { aim, sellers: [...sellers].reverse() },
          highs,
        );
        expect(packs(other)).toEqual(packs(one));
      }),
      runs,
    );
  });

  it('buys the dearer small pack to waste less, and the large one to pay less', () => {
    const needs = [{ food: 'oats', grams: 90 }];
    const offers = [
      offer('large', 'oats', 'Alder Mill', 1000, 1.5),
      offer('small', 'oats', 'Bramble Barn', 100, 2),
    ];
    const ids = (aim: PackAim) =>
      choosePacks(needs, offers, { aim }, highs).packs.map((p) => [p.offer.id, p.packs]);
    expect(ids('cost')).toEqual([['large', 1]]);
    expect(ids('waste')).toEqual([['small', 1]]);
  });

  it('breaks ties by the other aim, by fewest packs, then by id', () => {
    const needs = [{ food: 'oats', grams: 200 }];
    const one = (offers: Offer[], aim: PackAim = 'cost') =>
      choosePacks(needs, offers, { aim }, highs).packs.map((p) => `${p.packs} x ${p.offer.id}`);
    expect(one([offer('a', 'oats', 's', 300, 2), offer('b', 'oats', 's', 250, 2)])).toEqual(['1 x b']);
    expect(one([offer('a', 'oats', 's', 300, 2), offer('b', 'oats', 's', 300, 1.5)], 'waste')).toEqual([
      '1 x b',
    ]);
    expect(one([offer('a', 'oats', 's', 100, 1), offer('b', 'oats', 's', 200, 2)])).toEqual(['1 x b']);
    expect(one([offer('b', 'oats', 's', 200, 2), offer('a', 'oats', 's', 200, 2)])).toEqual(['1 x a']);
  });

  it('pays delivery once, and stays with one seller where that is cheaper', () => {
    const needs = [
      { food: 'oats', grams: 500 },
      { food: 'millet', grams: 500 },
    ];
    const offers = [
      offer('a-oats', 'oats', 'Alder Mill', 500, 2),
      offer('a-millet', 'millet', 'Alder Mill', 500, 2),
      offer('b-millet', 'millet', 'Bramble Barn', 500, 1),
    ];
    const sellers = [
      { seller: 'Alder Mill', delivery: 3 },
      { seller: 'Bramble Barn', delivery: 3 },
    ];
    const chosen = choosePacks(needs, offers, { aim: 'cost', sellers }, highs);
    expect(chosen.orders).toEqual([{ seller: 'Alder Mill', goods: 4, delivery: 3 }]);
    expect(chosen.cost).toBe(7);
    expect(choosePacks(needs, offers, { aim: 'cost' }, highs).cost).toBe(3);
  });

  it('reaches a minimum order with more packs where nobody else sells the food', () => {
    const chosen = choosePacks(
      [{ food: 'oats', grams: 100 }],
      [offer('a', 'oats', 'Alder Mill', 500, 2)],
      { aim: 'cost', sellers: [{ seller: 'Alder Mill', minimumOrder: 7 }] },
      highs,
    );
    expect(chosen.packs.map((p) => p.packs)).toEqual([4]);
    expect(chosen.foods).toEqual([{ food: 'oats', needed: 100, bought: 2000, leftOver: 1900 }]);
  });

  it('says what cannot be bought and why, and buys the rest', () => {
    const fresh: Offer = { ...offer('f', 'carrot', 'Alder Mill', 1000, 1), form: 'fresh' };
    const chosen = choosePacks(
      [
        { food: 'carrot', grams: 10 },
        { food: 'oats', grams: 10 },
        { food: 'poppy', grams: 10 },
        { food: 'nothing', grams: 0 },
        { food: 'gift', grams: 10 },
      ],
      [fresh, offer('o', 'oats', 'Alder Mill', 500, 2), offer('g', 'gift', 'Clover Cart', 50, 0)],
      { aim: 'cost', sellers: [{ seller: 'Clover Cart', minimumOrder: 5 }] },
      highs,
    );
    expect(chosen.missing.map((m) => m.food)).toEqual(['carrot', 'poppy', 'gift']);
    expect(chosen.missing[0]!.why).toContain('sold fresh');
    expect(chosen.missing[1]!.why).toContain('No seller');
    expect(chosen.missing[2]!.why).toContain('nothing below €5.00');
    expect(chosen.foods.map((f) => f.food)).toEqual(['oats']);
  });

  it('counts what a pack gives, not what it weighs', () => {
    const fresh: Offer = { ...offer('f', 'carrot', 'Alder Mill', 1000, 1), form: 'fresh' };
    const chosen = choosePacks(
      [{ food: 'carrot', grams: 250 }],
      [fresh],
      { aim: 'cost', gives: () => 110 },
      highs,
    );
    expect(chosen.packs).toEqual([{ offer: fresh, packs: 3, grams: 3000, gives: 330, price: 3 }]);
    expect(chosen.foods[0]!.leftOver).toBe(80);
  });

  it('takes 25 foods with 4 offers each from 3 sellers with delivery', () => {
    const [big] = fc.sample(
      fc.array(
        fc.tuple(
          fc.integer({ min: 5, max: 400 }),
          fc.array(fc.integer({ min: 100, max: 900 }), { minLength: 4, maxLength: 4 }),
        ),
        {
          minLength: 25,
          maxLength: 25,
        },
      ),
      { numRuns: 1, seed: 7 },
    );
    const needs = big!.map(([grams], i) => ({ food: `food ${i}`, grams }));
    const offers = big!.flatMap(([, prices], i) =>
      prices.map((pence, k) =>
        offer(`${i}-${k}`, `food ${i}`, SELLERS[k % 3]!, [100, 250, 400, 500][k]!, pence / 100),
      ),
    );
    const sellers = SELLERS.map((seller) => ({ seller, delivery: 3.95 }));
    for (const aim of ['cost', 'waste'] as const) {
      const chosen = choosePacks(needs, offers, { aim, sellers }, highs);
      expect([chosen.proven, chosen.foods.length]).toEqual([true, 25]);
    }
  });

  it.each([
    [{ needs: [{ food: 'a', grams: -1 }] }, 'need of a'],
    [{ needs: [{ food: 'a', grams: Number.NaN }] }, 'need of a'],
    [
      {
        needs: [
          { food: 'a', grams: 1 },
          { food: 'a', grams: 1 },
        ],
      },
      'a is needed twice',
    ],
    [{ offers: [offer('x', 'a', 's', 0, 1)] }, 'offer x: packGrams'],
    [{ offers: [offer('x', 'a', 's', 10, -1)] }, 'offer x: price'],
    [{ offers: [offer('x', 'a', 's', 10, 1), offer('x', 'b', 's', 10, 1)] }, 'two offers have the id x'],
    [{ sellers: [{ seller: 's', delivery: -1 }] }, 'seller s: delivery'],
    [{ sellers: [{ seller: 's', minimumOrder: Number.NaN }] }, 'seller s: minimumOrder'],
    [{ sellers: [{ seller: 's' }, { seller: 's' }] }, 'seller s is listed twice'],
  ])('refuses %j', (wrong, message) => {
    const { needs, offers, sellers }: { needs?: PackNeed[]; offers?: Offer[]; sellers?: Seller[] } = wrong;
    expect(() =>
      choosePacks(needs ?? [], offers ?? [], { aim: 'cost', ...(sellers && { sellers }) }, highs),
    ).toThrow(message);
  });
});

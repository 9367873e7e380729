import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import { offer } from '../../../test/kitchen/offers.ts';
import { type Highs, loadHighs } from '../../formulation/solve/highs.ts';
import type { DryingRun, Lot } from '../model.ts';
import type { ShoppingFood } from './home-dried.ts';
import { type ShoppingQuestion, shoppingList } from './shopping-list.ts';

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const oats: ShoppingFood = { food: 'oats', name: 'Oats' };
/** 12 g dry matter in 100 g, 4 % moisture dried, 20 % trimmed off: 10 g as bought make 1 g dried. */
const carrot: ShoppingFood = {
  food: 'carrot',
  name: 'Carrot',
  dried: {
    fresh: { ref: 'own:carrot', name: 'Carrot, fresh', source: 'test', composition: { WATER: 88 }, sd: {} },
    moisture: 4,
    trimLoss: 20,
  },
};

const lot = (more: Partial<Lot> & Pick<Lot, 'id'>): Lot =>
  lotOf({ name: 'Oats', grams: 500, boughtOn: '2026-01-10', ...more });

const question = (more: Partial<ShoppingQuestion> = {}): ShoppingQuestion => ({
  foods: [oats, carrot],
  shares: { oats: 80, carrot: 20 },
  batch: { grams: 500 },
  cupboard: [],
  offers: [
    offer({ id: 'o' }),
    offer({ id: 'c', food: 'carrot', seller: 'Bramble Barn', packGrams: 1000, price: 1.5, form: 'fresh' }),
  ],
  aim: 'cost',
  on: '2026-03-01',
  ...more,
});

const list = (more: Partial<ShoppingQuestion> = {}) => shoppingList(question(more), highs);

describe('what is fed beside the mix', () => {
  const beside = [{ food: 'pellet', name: 'Pellet', grams: 900 }];
  const sold = [...question().offers, offer({ id: 'p', food: 'pellet', packGrams: 400, price: 5 })];

  it('is bought in whole packs with the rest, less what is there, and costs the batch nothing', () => {
    const cupboard = [
      { lot: lot({ id: 'a', food: 'pellet', name: 'Pellet' }), left: 200 },
      { lot: lot({ id: 'b', food: 'pellet', barred: { why: 'recalled', on: '2026-02-01' } }), left: 500 },
    ];
    const { lines, price, toPay } = list({ beside, cupboard, offers: sold });
    const line = lines.at(-1)!;
    expect(line).toMatchObject({
      food: 'pellet',
      beside: true,
      needed: 900,
      toBuy: 700,
      leftOver: 100,
      pay: 10,
    });
    expect(line.packs.map((k) => k.packs)).toEqual([2]);
    // What is recalled is there, and is no stock.
    expect(line.fromLots.map((l) => l.lot.id)).toEqual(['a']);
    expect(line.passed.map((l) => l.lot.id)).toEqual(['b']);
    expect(price.value).toBeCloseTo(list().price.value, 9);
    expect(toPay).toBe(list().toPay + 10);
  });

  it('without an offer is told as missing, and the mix is bought all the same', () => {
    const { lines, missing, price } = list({ beside });
    expect(lines.map((l) => l.food)).toEqual(['oats', 'carrot', 'pellet']);
    expect(missing.map((m) => m.food)).toEqual(['pellet']);
    expect(price.unknown).toEqual([]);
  });
});

describe('shopping list', () => {
  it('buys dry food as it is, and fresh food with drying and trimming', () => {
    const { lines, toPay, price } = list();
    const [o, c] = lines;
    expect(o).toMatchObject({ needed: 400, toBuy: 400, leftOver: 100, pay: 2 });
    expect(o!.price).toBeCloseTo(1.6, 9);
    // 100 g dried: 800 g ready to dry, 1,000 g as bought, one pack.
    expect(c!.toBuyFresh!.prepared).toBeCloseTo(800, 6);
    expect(c!.toBuyFresh!.purchased).toBeCloseTo(1000, 6);
    expect(c!.packs.map((p) => p.packs)).toEqual([1]);
    expect(c!.leftOver).toBeCloseTo(0, 3);
    expect(toPay).toBe(3.5);
    expect(price.value).toBeCloseTo(3.1, 6);
    expect(price).toMatchObject({ atLeast: false, unknown: [] });
  });

  it('adds up what goes to each seller, and what is left over', () => {
    const { orders, toPay, price, lines } = list({ sellers: [{ seller: 'Alder Mill', delivery: 3 }] });
    expect(orders).toEqual([
      { seller: 'Alder Mill', goods: 2, delivery: 3 },
      { seller: 'Bramble Barn', goods: 1.5, delivery: 0 },
    ]);
    expect(toPay).toBe(6.5);
    expect(price.value).toBeCloseTo(3.1, 6);
    expect(lines.map((l) => l.packs.map((p) => [p.packs, p.offer.packGrams, p.offer.seller]))).toEqual([
      [[1, 500, 'Alder Mill']],
      [[1, 1000, 'Bramble Barn']],
    ]);
    expect(lines[0]!.leftOver).toBe(100);
  });

  it('takes the oldest lots first and buys only the rest', () => {
    const cupboard = [
      { lot: lot({ id: 'new', boughtOn: '2026-02-01', price: 4 }), left: 300 },
      { lot: lot({ id: 'old', price: 1 }), left: 150 },
    ];
    const [o] = list({ cupboard }).lines;
    expect(o!.fromLots.map((l) => [l.lot.id, l.grams])).toEqual([
      ['old', 150],
      ['new', 250],
    ]);
    expect(o).toMatchObject({ toBuy: 0, packs: [], leftOver: 0 });
    expect(o!.price).toBeCloseTo(150 * (1 / 500) + 250 * (4 / 500), 9);
  });

  it('leaves out what is barred or past its best before, and says so', () => {
    const cupboard = [
      { lot: lot({ id: 'a', barred: { why: 'moths', on: '2026-02-02' } }), left: 500 },
      { lot: lot({ id: 'b', bestBefore: '2026-02-28' }), left: 500 },
      { lot: lot({ id: 'c', bestBefore: '2026-03-01', price: 2 }), left: 100 },
    ];
    const [o] = list({ cupboard }).lines;
    expect(o!.fromLots.map((l) => l.lot.id)).toEqual(['c']);
    expect(o!.toBuy).toBe(300);
    expect(o!.passed.map((l) => [l.lot.id, l.why])).toEqual([
      ['b', expect.stringContaining('best before 28 February 2026')],
      ['a', 'it is not to be used (moths)'],
    ]);
  });

  it('counts a lot in its freeze treatment, with the days of it', () => {
    const cold = [{ kind: 'freeze', from: '2026-02-25', to: '2026-03-05' }] as const;
    const [o] = list({ cupboard: [{ lot: lot({ id: 'a', cold }), left: 500 }] }).lines;
    expect(o!.toBuy).toBe(0);
    expect(o!.fromLots.map((l) => [l.grams, l.lot.cold])).toEqual([[400, cold]]);
  });

  it('counts fresh food in the cupboard at what it gives dried', () => {
    const fresh = lot({ id: 'f', food: 'carrot', form: 'fresh', grams: 600, price: 1.2 });
    const c = list({ cupboard: [{ lot: fresh, left: 600 }] }).lines[1]!;
    expect(c.fromLots[0]!.asMixed).toBeCloseTo(60, 9);
    expect(c.toBuy).toBeCloseTo(40, 9);
    expect(c.fromLots.map((l) => [l.lot.form, l.grams])).toEqual([['fresh', 600]]);
  });

  it('never takes an unknown price for 0', () => {
    const { lines, price } = list({ cupboard: [{ lot: lot({ id: 'a' }), left: 100 }] });
    expect(lines[0]).not.toHaveProperty('price');
    expect(lines[0]!.priceAtLeast).toBeCloseTo(1.2, 9);
    expect(price).toMatchObject({ atLeast: true, unknown: ['Oats'] });
    expect(price.value).toBeCloseTo(2.7, 9);
  });

  it('takes a gift for 0', () => {
    const gift = lot({ id: 'a', price: 0 });
    expect(list({ cupboard: [{ lot: gift, left: 500 }] }).lines[0]!.price).toBe(0);
  });

  it('does not guess at an unknown trim loss', () => {
    const { trimLoss: _, ...dried } = carrot.dried!;
    const { missing, lines, price } = list({ foods: [oats, { ...carrot, dried }] });
    expect(missing.map((m) => m.food)).toEqual(['carrot']);
    expect(missing[0]!.why).toContain('trimmed off Carrot is unknown');
    expect(lines[1]!.toBuyFresh!.prepared).toBeCloseTo(800, 6);
    expect(lines[1]!.toBuyFresh).not.toHaveProperty('purchased');
    expect(price.unknown).toEqual(['Carrot']);
  });

  it('does not count fresh offers and lots of a food that nobody said how to dry', () => {
    const cupboard = [{ lot: lot({ id: 'f', food: 'carrot', form: 'fresh' }), left: 500 }];
    const { missing, lines } = list({ foods: [oats, { food: 'carrot', name: 'Carrot' }], cupboard });
    expect(missing[0]!.why).toContain('say which fresh food it is dried from');
    expect(lines[1]!.fromLots).toEqual([]);
    expect(lines[1]).not.toHaveProperty('toBuyFresh');
  });

  it('lets the list stand where what is to be dried is no wetter than what comes of it', () => {
    const { fresh } = carrot.dried!;
    const dry = { ...carrot, dried: { fresh: { ...fresh, composition: { WATER: 4 } }, moisture: 10 } };
    const cupboard = [{ lot: lot({ id: 'f', food: 'carrot', form: 'fresh' }), left: 500 }];
    const { missing, lines } = list({ foods: [oats, dry], cupboard });
    expect(lines[0]!.packs).toHaveLength(1);
    expect(missing[0]!.why).toContain('holds 4 % water, no more than the 10');
    expect(lines[1]).not.toHaveProperty('toBuyFresh');
    expect(lines[1]!.passed[0]!.why).toContain('no more than the 10');
  });

  it('says which lots it passes over, and why', () => {
    const cupboard = [
      { lot: lot({ id: 'a', barred: { why: 'moths', on: '2026-02-02' } }), left: 500 },
      { lot: lot({ id: 'b', bestBefore: '2026-02-28' }), left: 400 },
      { lot: lot({ id: 'c', barred: { why: 'moths', on: '2026-02-02' } }), left: 0 },
    ];
    const { passed } = list({ cupboard }).lines[0]!;
    expect(passed.map((p) => [p.lot.id, p.grams])).toEqual([
      ['b', 400],
      ['a', 500],
    ]);
    expect(passed[1]!.why).toBe('it is not to be used (moths)');
  });

  describe('food on the trays', () => {
    /** 400 g ready to dry give 50 g dried. */
    const run: DryingRun = {
      id: 'r',
      lot: 'f',
      device: 'oven',
      celsius: 60,
      startedAt: '2026-02-28T08:00:00Z',
      trays: 2,
      gramsBefore: 400,
      gramsTaken: 500,
      checks: [],
    };
    const fresh = lot({ id: 'f', food: 'carrot', form: 'fresh', grams: 1000, price: 2 });

    it('counts at what it will give, and at what it cost with its trimmings', () => {
      const c = list({ drying: [{ run, lot: fresh }] }).lines[1]!;
      expect(c.fromTrays[0]!.asMixed).toBeCloseTo(50, 9);
      expect(c.toBuy).toBeCloseTo(50, 9);
      expect(c.fromTrays[0]!.price).toBeCloseTo(1, 9);
      // One pack of 1.50 gives 100 g, half of which goes in.
      expect(c.price).toBeCloseTo(1.75, 6);
    });

    it('is taken after the lots, and no more of it than is needed', () => {
      const dried = lot({ id: 'd', food: 'carrot', form: 'dried', grams: 80, price: 1 });
      const c = list({ cupboard: [{ lot: dried, left: 80 }], drying: [{ run, lot: fresh }] }).lines[1]!;
      expect(c.fromTrays[0]!.asMixed).toBeCloseTo(20, 9);
      expect(c.fromTrays[0]!.price).toBeCloseTo(0.4, 9);
      expect(c.toBuy).toBe(0);
    });

    it('is passed over where its lot is barred, or nobody said how it is dried', () => {
      const barred = { ...fresh, barred: { why: 'mould', on: '2026-02-28' } };
      expect(list({ drying: [{ run, lot: barred }] }).lines[1]).toMatchObject({
        fromTrays: [],
        passed: [{ grams: 400, onTrays: true, why: 'it is not to be used (mould)' }],
      });
      const unsaid = list({
        foods: [oats, { food: 'carrot', name: 'Carrot' }],
        drying: [{ run, lot: fresh }],
      });
      expect(unsaid.lines[1]!.passed[0]!.why).toContain('say which fresh food it is dried from');
      expect(unsaid.lines[1]!.toBuy).toBe(100);
    });
  });

  it('says what nobody sells, by its name', () => {
    const { missing } = list({ offers: [offer({ id: 'o' })] });
    expect(missing.map((m) => [m.food, m.why])).toEqual([['carrot', 'No seller is known for Carrot.']]);
  });

  it.each([
    [{ shares: { oats: 80 } }, 'add up to 80 percent'],
    [{ shares: { oats: 80, rye: 20 } }, 'share of rye'],
    [{ shares: { oats: 120, carrot: -20 } }, 'share of oats'],
    [{ foods: [oats, oats] }, 'named twice'],
    [{ cupboard: [{ lot: lot({ id: 'a' }), left: 501 }] }, 'lot a: what is left'],
    [{ cupboard: [{ lot: lot({ id: 'a', grams: 0 }), left: 0 }] }, 'lot a: grams'],
  ])('refuses %j', (wrong, message) => {
    expect(() => list(wrong)).toThrow(message);
  });

  it('adds up: lots and purchases make what is needed, and nothing is negative', () => {
    const share = fc.integer({ min: 0, max: 100 });
    const stock = fc.array(
      fc.record({
        left: fc.integer({ min: 0, max: 400 }),
        day: fc.integer({ min: 10, max: 28 }),
        price: fc.option(fc.integer({ min: 0, max: 5 }), { nil: undefined }),
        carrot: fc.boolean(),
        form: fc.constantFrom('dry', 'fresh', 'dried'),
      }),
      { maxLength: 5 },
    );
    fc.assert(
      fc.property(share, fc.integer({ min: 50, max: 3000 }), stock, (oatShare, grams, lots) => {
        const cupboard = lots.map(({ left, day, price, carrot: isCarrot, form }, i) => ({
          lot: lot({
            id: `l${i}`,
            grams: 400,
            boughtOn: `2026-01-${day}`,
            food: isCarrot ? 'carrot' : 'oats',
            form: isCarrot ? form : 'dry',
            ...(price !== undefined && { price }),
          }),
          left,
        }));
        const result = list({
          shares: { oats: oatShare, carrot: 100 - oatShare },
          batch: { grams },
          cupboard,
        });
        let needed = 0;
        for (const line of result.lines) {
          const had = line.fromLots.reduce((sum, l) => sum + l.asMixed, 0);
          const bought = line.packs.reduce((sum, p) => sum + p.gives, 0);
          needed += line.needed;
          expect(Math.abs(had + line.toBuy - line.needed)).toBeLessThan(0.002);
          expect(line.leftOver).toBeCloseTo(Math.max(0, bought - line.toBuy), 9);
          expect(bought).toBeGreaterThanOrEqual(line.toBuy * (1 - 2e-6));
          expect(
            Math.min(line.toBuy, line.leftOver, line.pay, line.priceAtLeast, had),
          ).toBeGreaterThanOrEqual(0);
          for (const l of line.fromLots)
            expect(l.grams).toBeLessThanOrEqual(cupboard.find((c) => c.lot.id === l.lot.id)!.left);
          // Oldest first: an older lot is left with something only where nothing is taken from a newer one.
          const days = line.fromLots.map((l) => l.lot.boughtOn);
          expect(days).toEqual([...days].sort());
          if (line.price !== undefined) expect(line.price).toBe(line.priceAtLeast);
          else expect(line.fromLots.some((l) => l.price === undefined)).toBe(true);
        }
        expect(needed).toBeCloseTo(grams, 6);
      }),
      { numRuns: 100 },
    );
  });
});

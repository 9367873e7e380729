/** The lots that a pour is booked to. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import type { Lot, Pour } from '../../../kitchen/model.ts';
import { asGroup } from './foods-beside.ts';
import { lotsFor, pourLots } from './take-from-lots.ts';

const lot = (id: string, grams: number, more: Partial<Lot> = {}): Lot =>
  lotOf({ id, food: 'nettle', name: 'Nettle leaf', grams, form: 'dried', boughtOn: '2026-03-01', ...more });
const kept = (...lots: Lot[]) => ({ lots, runs: [], batches: [] });
const day = '2026-03-14';

test('a pour is booked to the lots there are, the rest to none', () => {
  const lots = kept(lot('a', 10, { bestBefore: '2026-04-01' }), lot('b', 20, { bestBefore: '2026-05-01' }));
  expect(pourLots(lots, 'nettle', 15, { day, groupOf: () => undefined, pours: [] })).toEqual([
    { lot: 'a', grams: 10 },
    { lot: 'b', grams: 5 },
  ]);
  expect(
    pourLots(lots, 'nettle', 40, { day, groupOf: () => undefined, pours: [] }).reduce(
      (sum, l) => sum + l.grams,
      0,
    ),
  ).toBe(30);
});

test('a barred lot is not booked, and neither is what was left out or taken back', () => {
  const barred = kept(lot('a', 10, { barred: { why: 'moths', on: '2026-03-10' } }));
  expect(pourLots(barred, 'nettle', 5, { day, groupOf: () => undefined, pours: [] })).toEqual([]);
  expect(pourLots(kept(lot('a', 10)), 'nettle', 0, { day, groupOf: () => undefined, pours: [] })).toEqual([]);
  expect(pourLots(kept(lot('a', 10)), 'nettle', -3, { day, groupOf: () => undefined, pours: [] })).toEqual(
    [],
  );
});

describe('the freeze treatment', () => {
  const grain = lot('a', 50, { food: 'oats', form: 'dry' });
  const foodOf = (group: string | undefined) => ({ day, groupOf: () => asGroup(group), pours: [] });

  test('dry goods that need it are not taken before it, and the reason and the way out are told', () => {
    expect(pourLots(kept(grain), 'oats', 5, foodOf('seed'))).toEqual([]);
    const found = lotsFor(kept(grain), 'oats', 5, foodOf('seed'))!;
    expect([found.short, found.passed[0]!.lot.id]).toEqual([5, 'a']);
    expect(found.passed[0]!.why).toMatch(/has not been frozen and thawed/);
    expect(found.passed[0]!.wayOut).toMatch(/go ahead and say why/);
  });

  test('overruled on record, they are, with a warning', () => {
    const overruled = { ...grain, overruled: { note: 'own freezer', on: '2026-03-10' } };
    expect(pourLots(kept(overruled), 'oats', 5, foodOf('seed'))).toEqual([{ lot: 'a', grams: 5 }]);
    expect(lotsFor(kept(overruled), 'oats', 5, foodOf('seed'))!.notes.join()).toMatch(/own freezer/);
  });

  test('dried animal food needs none; a word that is no group counts as unknown', () => {
    expect(pourLots(kept(grain), 'oats', 5, foodOf('animal'))).toEqual([{ lot: 'a', grams: 5 }]);
    expect(pourLots(kept(grain), 'oats', 5, foodOf('toString'))).toEqual([]);
    expect(pourLots(kept(grain), 'oats', 5, foodOf(undefined))).toEqual([]);
  });
});

describe('what is taken out again', () => {
  const at = '2026-03-14T10:00:00.000Z';
  const pour = (grams: number, lots: Pour['lots'], food = 'nettle'): Pour => ({
    food,
    grams,
    lots,
    target: 0,
    at,
  });
  const back = (grams: number, pours: readonly Pour[]) =>
    pourLots(kept(), 'nettle', -grams, { day, groupOf: () => undefined, pours });

  test('goes back to its lots, the last in first; what no lot was named for comes out before', () => {
    const pours = [
      pour(17, [
        { lot: 'a', grams: 10 },
        { lot: 'b', grams: 5 },
      ]),
      pour(9, [{ lot: 'z', grams: 9 }], 'oats'),
    ];
    expect(back(2, pours)).toEqual([]);
    expect(back(4, pours)).toEqual([{ lot: 'b', grams: -2 }]);
    expect(back(9, pours)).toEqual([
      { lot: 'b', grams: -5 },
      { lot: 'a', grams: -2 },
    ]);
  });

  test('never gives a lot more than came from it, however often something is taken out', () => {
    const lots = fc.array(fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.integer({ min: 1, max: 20 })), {
      maxLength: 3,
    });
    const poured = fc.record({ lots, more: fc.integer({ min: 0, max: 5 }) });
    fc.assert(
      fc.property(
        fc.array(poured, { minLength: 1, maxLength: 4 }),
        fc.array(fc.integer({ min: 1, max: 15 }), { maxLength: 5 }),
        (ins, outs) => {
          const pours = ins.map(({ lots: from, more }) =>
            pour(
              from.reduce((sum, [, g]) => sum + g, more),
              from.map(([id, g]) => ({ lot: id, grams: g })),
            ),
          );
          for (const out of outs) {
            const there = pours.reduce((sum, p) => sum + p.grams, 0);
            const grams = Math.min(out, there);
            if (grams === 0) break;
            const from = back(grams, pours);
            const named = from.reduce((sum, l) => sum + l.grams, 0);
            expect(named).toBeGreaterThanOrEqual(-grams - 1e-9);
            pours.push(pour(-grams, from));
            for (const id of ['a', 'b', 'c']) {
              const net = pours
                .flatMap((p) => p.lots)
                .filter((l) => l.lot === id)
                .reduce((sum, l) => sum + l.grams, 0);
              expect(net).toBeGreaterThanOrEqual(-1e-9);
            }
          }
          // All of it out: nothing is left of any lot.
          const rest = pours.reduce((sum, p) => sum + p.grams, 0);
          if (rest > 0) pours.push(pour(-rest, back(rest, pours)));
          expect(Math.abs(pours.flatMap((p) => p.lots).reduce((sum, l) => sum + l.grams, 0))).toBeLessThan(
            1e-9,
          );
        },
      ),
    );
  });
});

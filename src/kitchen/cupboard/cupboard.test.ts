import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cupboards, lotOf } from '../../../test/kitchen/cupboards.ts';
import { mayBeWeighed } from '../freezing/freeze-treatment.ts';
import type { Lot } from '../model.ts';
import { allocate, type CupboardContents, leftOver, type Ready, totals } from './cupboard.ts';

const always: Ready = () => ({ ok: true });
const byFrozen: Ready = (lot) =>
  lot.frozen ? { ok: false, why: 'It is in the freezer.', wayOut: 'Thaw it.' } : { ok: true };
const kept = (...lots: Lot[]): CupboardContents => ({ lots, runs: [], batches: [] });
const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
const close = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThan(1e-5);

describe('leftOver', () => {
  it('is what came in less what went out, never below 0, and the rest is told', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        for (const { lot, used, grams, over } of leftOver(all)) {
          expect(grams).toBeGreaterThanOrEqual(0);
          expect(Math.min(grams, over)).toBe(0);
          close(grams - over, lot.grams - used);
          const poured = all.batches.flatMap((b) =>
            b.pours.flatMap((p) => p.lots.filter((l) => l.lot === lot.id)),
          );
          const dried = all.runs.filter((r) => r.lot === lot.id).map((r) => r.gramsTaken ?? r.gramsBefore);
          close(used, sum(poured.map((p) => p.grams)) + sum(dried));
        }
      }),
    );
  });

  it('takes the trimmings too, where they were weighed', () => {
    const run = {
      id: 'r',
      lot: 'a',
      device: 'oven',
      celsius: 60,
      startedAt: '2026-01-01T00:00:00Z',
      trays: 1,
      gramsBefore: 80,
      checks: [],
    } as const;
    const lots = [lotOf({ id: 'a', grams: 100, form: 'fresh' })];
    expect(leftOver({ lots, runs: [run], batches: [] })[0]!.grams).toBe(20);
    expect(leftOver({ lots, runs: [{ ...run, gramsTaken: 100 }], batches: [] })[0]!.grams).toBe(0);
  });
});

describe('allocate', () => {
  it('gives what is asked or all there is, never more than a lot holds, in order', () => {
    fc.assert(
      fc.property(cupboards, fc.double({ min: 0, max: 3000, noNaN: true }), (all, grams) => {
        const answer = allocate(all, 'oats', grams, byFrozen);
        close(sum(answer.takes.map((t) => t.grams)) + answer.short, grams);
        const left = new Map(leftOver(all).map((l) => [l.lot.id, l.grams]));
        for (const { lot, grams: g } of answer.takes) {
          expect(g).toBeGreaterThan(0);
          expect(g).toBeLessThanOrEqual(left.get(lot.id)!);
          expect([lot.food, lot.form === 'fresh', lot.barred, lot.frozen]).toEqual([
            'oats',
            false,
            undefined,
            false,
          ]);
        }
        // Every lot but the last taken is emptied; short only when all are.
        const emptied = answer.short > 0 ? answer.takes : answer.takes.slice(0, -1);
        for (const { lot, grams: g } of emptied) expect(g).toBe(left.get(lot.id)!);
        for (let i = 1; i < answer.takes.length; i++)
          expect(answer.takes[i - 1]!.lot.boughtOn <= answer.takes[i]!.lot.boughtOn).toBe(true);
        // What is passed over and what may be taken is all that is left of the food.
        if (answer.short > 0) {
          const mine = leftOver(all).filter((l) => l.lot.food === 'oats');
          close(
            sum(answer.takes.map((t) => t.grams)) + sum(answer.passed.map((p) => p.grams)),
            sum(mine.map((l) => l.grams)),
          );
        }
      }),
    );
  });

  it('takes the oldest first; of one day what expires first, then what is open', () => {
    const all = kept(
      lotOf({ id: 'new', boughtOn: '2026-02-01', bestBefore: '2026-03-10' }),
      lotOf({ id: 'old', boughtOn: '2026-01-01' }),
      lotOf({ id: 'opened', boughtOn: '2026-01-01', openedOn: '2026-02-03' }),
      lotOf({ id: 'soon', boughtOn: '2026-01-01', bestBefore: '2026-05-01' }),
    );
    expect(allocate(all, 'oats', 350, always).takes.map((t) => [t.lot.id, t.grams])).toEqual([
      ['soon', 100],
      ['opened', 100],
      ['old', 100],
      ['new', 50],
    ]);
  });

  it('says why a lot is passed over', () => {
    const all = kept(
      lotOf({ id: 'a', barred: { why: 'moths in it', on: '2026-03-01' } }),
      lotOf({ id: 'b', form: 'fresh' }),
      lotOf({ id: 'c', frozen: true }),
      lotOf({ id: 'd', food: 'other' }),
      lotOf({ id: 'e', grams: 0 }),
    );
    const answer = allocate(all, 'oats', 10, byFrozen);
    expect(answer.short).toBe(10);
    expect(answer.passed.map((p) => [p.lot.id, p.why, p.wayOut])).toEqual([
      ['a', 'Not used any more since 1 March 2026: moths in it.', undefined],
      ['b', 'It is fresh.', 'Dry it before it goes into a mix.'],
      ['c', 'It is in the freezer.', 'Thaw it.'],
    ]);
  });

  it('passes on the warnings of what it takes, and takes readiness as the cold answers it', () => {
    const all = kept(
      lotOf({ id: 'a', grams: 10, bestBefore: '2026-02-28', form: 'dried' }),
      lotOf({ id: 'b', bestBefore: '2026-03-10' }),
    );
    const answer = allocate(all, 'oats', 50, (lot) => mayBeWeighed(lot, '2026-03-01', 'seed'));
    expect(answer.takes.map((t) => [t.lot.id, t.grams])).toEqual([['a', 10]]);
    expect(answer.notes).toEqual([expect.stringMatching(/^oats: Best before/)]);
    expect(answer.passed.map((p) => p.lot.id)).toEqual(['b']);
    expect(answer.short).toBe(40);
  });

  it('never gives out what is barred, whatever readiness says', () => {
    const all = kept(lotOf({ id: 'a', barred: { why: 'recalled', on: '2026-03-01' } }));
    expect(allocate(all, 'oats', 5, always).takes).toEqual([]);
  });

  it('refuses what is no weight', () => {
    expect(() => allocate(kept(), 'oats', Number.NaN, always)).toThrow(/grams needed of oats/);
  });
});

describe('totals', () => {
  it('add up to all that is left, by food', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        const left = leftOver(all);
        const rows = totals(all, byFrozen);
        expect(new Set(rows.map((r) => r.food)).size).toBe(rows.length);
        expect(rows.map((r) => r.food).sort()).toEqual([...new Set(all.lots.map((l) => l.food))].sort());
        for (const row of rows) {
          const mine = left.filter((l) => l.lot.food === row.food);
          close(row.ready + row.waiting + row.fresh + row.barred, sum(mine.map((l) => l.grams)));
          close(row.barred, sum(mine.filter((l) => l.lot.barred).map((l) => l.grams)));
          // What counts as ready is just what an allocation can give.
          const most = allocate(all, row.food, 1e6, byFrozen);
          close(1e6 - most.short, row.ready);
        }
      }),
    );
  });
});

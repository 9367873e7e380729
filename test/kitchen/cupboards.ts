/** Cupboards drawn at random for tests: lots, drying runs over them and batches poured from them. */
import fc from 'fast-check';
import type { CupboardContents } from '../../src/kitchen/cupboard/cupboard.ts';
import type { Batch, DryingRun, Lot, Pour } from '../../src/kitchen/model.ts';
import { problemOf } from '../formulation/problem-of.ts';

const FOODS = ['oats', 'carrot', 'linseed'] as const;
const DAYS = ['2026-01-05', '2026-01-20', '2026-02-10', '2026-03-01'] as const;

/** 100 g of oats, dry, bought on 1 January 2026, unless said otherwise. */
export function lotOf(lot: Partial<Lot> & { readonly id: string }): Lot {
  return {
    food: 'oats',
    name: lot.food ?? 'oats',
    grams: 100,
    form: 'dry',
    boughtOn: '2026-01-01',
    frozen: false,
    cold: [],
    ...lot,
  };
}

/** A batch without a problem to speak of. */
export function batchOf(batch: Partial<Batch> & { readonly id: string }): Batch {
  return {
    name: batch.id,
    problem: problemOf(),
    shares: {},
    order: [],
    grams: 300,
    pours: [],
    animalIds: [],
    startedAt: '2026-04-01T10:00:00Z',
    ...batch,
  };
}

export function pourOf(pour: Partial<Pour> & { readonly food: string }): Pour {
  const grams = pour.grams ?? (pour.lots ?? []).reduce((sum, l) => sum + l.grams, 0);
  return { lots: [], target: grams, at: '2026-04-01T10:00:00Z', ...pour, grams };
}

const optionalDay = fc.option(fc.constantFrom(...DAYS), { nil: undefined });
const grams = fc.double({ min: 0.5, max: 400, noNaN: true });

/**
 * Up to eight lots; runs that dry any of them, even a dried one again; batches that pour any of them. More may be
 * taken than a lot holds, and a lot may be said to be dried in any run: records are not always sound.
 */
export const cupboards: fc.Arbitrary<CupboardContents> = fc
  .record({
    lots: fc.array(
      fc.record({
        food: fc.constantFrom(...FOODS),
        grams,
        form: fc.constantFrom('dry' as const, 'dried' as const, 'fresh' as const),
        boughtOn: fc.constantFrom(...DAYS),
        openedOn: optionalDay,
        bestBefore: optionalDay,
        frozen: fc.boolean(),
        barred: fc.option(fc.constant({ why: 'moths', on: '2026-03-01' }), { nil: undefined, freq: 4 }),
        run: fc.option(fc.nat(3), { nil: undefined }),
      }),
      { minLength: 1, maxLength: 8 },
    ),
    runs: fc.array(fc.record({ lot: fc.nat(7), grams, taken: fc.option(grams, { nil: undefined }) }), {
      maxLength: 4,
    }),
    batches: fc.array(
      fc.record({
        animals: fc.subarray(['ada', 'bo', 'cleo']),
        pours: fc.array(
          fc.record({ parts: fc.array(fc.tuple(fc.nat(7), grams), { maxLength: 3 }), more: fc.nat(20) }),
          {
            maxLength: 4,
          },
        ),
      }),
      { maxLength: 5 },
    ),
  })
  .map(({ lots, runs, batches }) => {
    const id = (i: number) => `lot${i % lots.length}`;
    const pour = (parts: readonly (readonly [number, number])[], more: number): Pour => {
      const from = parts.map(([i, g]) => ({ lot: id(i), grams: g }));
      const food = lots[(parts[0]?.[0] ?? 0) % lots.length]!.food;
      return pourOf({ food, lots: from, grams: from.reduce((sum, l) => sum + l.grams, 0) + more });
    };
    return {
      lots: lots.map(({ run, openedOn, bestBefore, barred, ...lot }, i) =>
        lotOf({
          id: `lot${i}`,
          ...lot,
          ...(openedOn && { openedOn }),
          ...(bestBefore && { bestBefore }),
          ...(barred && { barred }),
          ...(run !== undefined && runs.length > 0 && { driedIn: `run${run % runs.length}` }),
        }),
      ),
      runs: runs.map(
        ({ lot, grams: before, taken }, i): DryingRun => ({
          id: `run${i}`,
          lot: id(lot),
          device: 'dehydrator',
          celsius: 58,
          startedAt: '2026-03-10T08:00:00Z',
          trays: 2,
          gramsBefore: before,
          ...(taken !== undefined && { gramsTaken: taken }),
          checks: [],
        }),
      ),
      batches: batches.map(({ animals, pours }, i) =>
        batchOf({ id: `batch${i}`, animalIds: animals, pours: pours.map((p) => pour(p.parts, p.more)) }),
      ),
    };
  });

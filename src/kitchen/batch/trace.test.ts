import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchOf, cupboards, lotOf, pourOf } from '../../../test/kitchen/cupboards.ts';
import { dayIn, utcDay } from '../../../test/kitchen/zones.ts';
import type { CupboardContents } from '../cupboard/cupboard.ts';
import type { DryingRun } from '../model.ts';
import { originOf, pricePerGram, reachOf } from './trace.ts';

const drying: DryingRun = {
  id: 'run',
  lot: 'fresh',
  device: 'oven',
  celsius: 90,
  startedAt: '2026-03-10T08:00:00Z',
  trays: 2,
  gramsBefore: 900,
  gramsTaken: 1000,
  checks: [],
  gramsAfter: 120,
};
const kept: CupboardContents = {
  lots: [
    lotOf({ id: 'fresh', food: 'carrot', form: 'fresh', grams: 1000, price: 2 }),
    lotOf({ id: 'dried', food: 'carrot', form: 'dried', grams: 120, driedIn: 'run', boughtOn: '2026-03-10' }),
    lotOf({ id: 'oats', grams: 500, price: 1.5 }),
  ],
  runs: [drying],
  batches: [
    batchOf({
      id: 'one',
      animalIds: ['ada', 'bo'],
      pours: [
        pourOf({ food: 'carrot', lots: [{ lot: 'dried', grams: 40 }] }),
        pourOf({ food: 'oats', lots: [{ lot: 'oats', grams: 60 }], grams: 70 }),
        pourOf({ food: 'carrot', lots: [{ lot: 'dried', grams: 5 }] }),
      ],
    }),
    batchOf({ id: 'two', animalIds: ['cleo', 'ada'], pours: [pourOf({ food: 'carrot', grams: 30 })] }),
    batchOf({
      id: 'early',
      animalIds: ['dan'],
      pours: [pourOf({ food: 'carrot', grams: 30, at: '2026-03-09T10:00:00Z' })],
    }),
    batchOf({
      id: 'none',
      animalIds: ['eve'],
      pours: [pourOf({ food: 'oats', lots: [{ lot: 'oats', grams: 9 }] })],
    }),
  ],
};

/** The lots that a lot became: grown one step at a time until nothing is added. */
function naiveReach(id: string, all: CupboardContents): Set<string> {
  const reached = new Set([id]);
  for (let step = 0; step <= all.lots.length; step++)
    for (const lot of all.lots)
      if (all.runs.some((r) => r.id === lot.driedIn && reached.has(r.lot))) reached.add(lot.id);
  return reached;
}

/** Whether a lot became another, by asking each lot backwards. */
function cameFrom(lot: string, from: string, all: CupboardContents, depth = 10): boolean {
  if (lot === from) return true;
  const run = all.runs.find((r) => r.id === all.lots.find((l) => l.id === lot)?.driedIn);
  return run !== undefined && depth > 0 && cameFrom(run.lot, from, all, depth - 1);
}

describe('reachOf', () => {
  it('follows a fresh lot through drying to batches and animals', () => {
    const reach = reachOf('fresh', kept, utcDay);
    expect(reach.runs.map((r) => r.id)).toEqual(['run']);
    expect(reach.driedLots.map((l) => l.id)).toEqual(['dried']);
    expect(reach.batches.map((b) => [b.batch.id, b.grams])).toEqual([['one', 45]]);
    expect(reach.animalIds).toEqual(['ada', 'bo']);
  });

  it('names batches that may hold some, since their lots were not written down', () => {
    const reach = reachOf('fresh', kept, utcDay);
    // "early" was poured before there was any dried carrot.
    expect(reach.maybe.map((b) => b.id)).toEqual(['two']);
    expect(reach.maybeAnimalIds).toEqual(['cleo']);
  });

  it('agrees with a naive walk, whatever the records', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        for (const lot of all.lots) {
          const reached = naiveReach(lot.id, all);
          const reach = reachOf(lot.id, all, utcDay);
          expect(new Set([lot.id, ...reach.driedLots.map((l) => l.id)])).toEqual(reached);
          expect(new Set(reach.runs)).toEqual(new Set(all.runs.filter((r) => reached.has(r.lot))));
          const holds = all.batches.filter((b) =>
            b.pours.some((p) => p.lots.some((l) => reached.has(l.lot))),
          );
          expect(reach.batches.map((b) => b.batch)).toEqual(holds);
          for (const { batch, grams } of reach.batches) {
            let walked = 0;
            for (const p of batch.pours) for (const l of p.lots) if (reached.has(l.lot)) walked += l.grams;
            expect(Math.abs(grams - walked)).toBeLessThan(1e-9);
          }
          expect(new Set(reach.animalIds)).toEqual(new Set(holds.flatMap((b) => b.animalIds)));
          expect(reach.maybe.filter((b) => holds.includes(b))).toEqual([]);
        }
      }),
    );
  });

  it('asks the keeper’s own calendar whether a batch was poured before the lot came in', () => {
    const poured = (at: string): CupboardContents => ({
      lots: [lotOf({ id: 'oats', boughtOn: '2026-04-02' })],
      runs: [],
      batches: [batchOf({ id: 'b', pours: [pourOf({ food: 'oats', grams: 5, at })] })],
    });
    const maybe = (at: string, zone: string) => reachOf('oats', poured(at), dayIn(zone)).maybe.length;
    // The evening of the 1st in New York; the morning of the 2nd in Tokyo.
    expect(maybe('2026-04-02T02:00:00Z', 'America/New_York')).toBe(0);
    expect(maybe('2026-04-01T22:30:00Z', 'Asia/Tokyo')).toBe(1);
    expect(maybe('2026-04-01T22:30:00Z', 'UTC')).toBe(0);
  });

  it('refuses a lot that is not kept', () => {
    expect(() => reachOf('gone', kept, utcDay)).toThrow(/no lot "gone" is kept/);
  });
});

describe('originOf', () => {
  it('follows a batch back through drying, and says what it cannot follow', () => {
    const origin = originOf('one', kept);
    expect(origin.poured.map((p) => [p.lot.id, p.grams])).toEqual([
      ['dried', 45],
      ['oats', 60],
    ]);
    expect(origin.driedFrom.map((d) => [d.lot.id, d.run.id])).toEqual([['fresh', 'run']]);
    expect(origin.untraced).toEqual([{ food: 'oats', grams: 10 }]);
  });

  it('is the way there, backwards: a lot reaches a batch where the batch comes from it', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        for (const batch of all.batches) {
          const { poured, driedFrom } = originOf(batch.id, all);
          const origin = new Set([...poured, ...driedFrom].map((o) => o.lot.id));
          for (const lot of all.lots) {
            const reaches = reachOf(lot.id, all, utcDay).batches.some((b) => b.batch.id === batch.id);
            expect([lot.id, origin.has(lot.id)]).toEqual([lot.id, reaches]);
            expect(reaches).toBe(poured.some((p) => cameFrom(p.lot.id, lot.id, all)));
          }
        }
      }),
    );
  });

  it('accounts for every gram poured', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        for (const batch of all.batches) {
          const { poured, untraced } = originOf(batch.id, all);
          const told = [...poured, ...untraced].reduce((sum, p) => sum + p.grams, 0);
          expect(Math.abs(told - batch.pours.reduce((sum, p) => sum + p.grams, 0))).toBeLessThan(1e-5);
        }
      }),
    );
  });

  it('refuses a batch that is not kept, and a lot that is named and not kept', () => {
    expect(() => originOf('gone', kept)).toThrow(/no batch "gone"/);
    expect(() => originOf('one', { ...kept, lots: kept.lots.slice(0, 2) })).toThrow(
      /lot "oats", named by batch "one"/,
    );
  });
});

describe('pricePerGram', () => {
  it('is what was paid, and for a dried lot what went into it', () => {
    expect(pricePerGram(kept.lots[2]!, kept)).toBeCloseTo(0.003, 12);
    expect(pricePerGram(kept.lots[1]!, kept)).toBeCloseTo(2 / 120, 12);
    expect(pricePerGram(lotOf({ id: 'x' }), kept)).toBeUndefined();
  });
});

describe('a batch that was given up', () => {
  const givenUp: CupboardContents = {
    ...kept,
    batches: kept.batches.map((b) => ({ ...b, givenUp: { note: 'spilt', on: '2026-04-02' } })),
  };

  it('is still named as holding the lot, and reaches no animal', () => {
    const [before, after] = [reachOf('dried', kept, utcDay), reachOf('dried', givenUp, utcDay)];
    expect(after.batches.map((b) => [b.batch.id, b.grams])).toEqual(
      before.batches.map((b) => [b.batch.id, b.grams]),
    );
    expect(after.maybe.map((b) => b.id)).toEqual(before.maybe.map((b) => b.id));
    expect(before.animalIds.length).toBeGreaterThan(0);
    expect([after.animalIds, after.maybeAnimalIds]).toEqual([[], []]);
  });

  it('counts what was taken out again against what was poured', () => {
    const spooned = batchOf({
      id: 'spooned',
      pours: [
        pourOf({ food: 'oats', lots: [{ lot: 'oats', grams: 10 }], grams: 14 }),
        pourOf({ food: 'oats', lots: [{ lot: 'oats', grams: -2 }], grams: -6 }),
      ],
    });
    const origin = originOf('spooned', { ...kept, batches: [spooned] });
    expect(origin.poured.map((p) => p.grams)).toEqual([8]);
    expect(origin.untraced).toEqual([]);
  });
});

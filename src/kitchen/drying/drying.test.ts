import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Food } from '../../foods/food.ts';
import { loadReference } from '../../household/reference-file.ts';
import type { DryingRun } from '../model.ts';
import data from './drying.json' with { type: 'json' };
import {
  actualMoisture,
  CHECK_EVERY,
  checkTimes,
  driedLot,
  dryEnough,
  dryingCautions,
  dryKindOf,
  finishedRun,
  freshMoistureBySample,
  ingredientAt,
  moistureOfSample,
  nextCheck,
  planDrying,
  waysToDry,
} from './drying.ts';

const reference = loadReference();
const carrot = reference.get('sr28:11124')!;

const moisture = fc.double({ min: 40, max: 97, noNaN: true });
const grams = fc.double({ min: 10, max: 5000, noNaN: true });
const nearly = (a: number, b: number, relative = 1e-9) =>
  Math.abs(a - b) <= relative * Math.max(1, Math.abs(a), Math.abs(b));

const run: DryingRun = {
  id: 'r1',
  lot: 'fresh',
  device: 'oven',
  celsius: 60,
  startedAt: '2026-03-14T08:00:00.000Z',
  trays: 2,
  gramsBefore: 1000,
  checks: [],
};

describe('the figures', () => {
  it('name a source each, and say so where there is none', () => {
    const rows = [...data.ways, ...data.loads];
    for (const { source, known } of rows) {
      expect([known, source.startsWith('common practice, no source')]).toEqual([
        known,
        known === 'common practice',
      ]);
    }
    for (const { source } of [...data.keeps, ...data.cautions, data.checks])
      expect(source).toMatch(/\b(1[89]|20)\d\d\b|common practice, no source|USDA|Agrodok|Extension/);
  });

  it('give a way of the trade and a published one for every kind, and for a dehydrator the published alone', () => {
    for (const kind of ['vegetable', 'leaf', 'herb', 'fruit'] as const) {
      expect(waysToDry(kind, 'oven').map((w) => w.known)).toEqual(['common practice', 'published']);
      expect(waysToDry(kind, 'dehydrator').map((w) => w.known)).toEqual(['published']);
    }
    expect(dryKindOf('herb')).toBe('herb');
    expect(dryKindOf(undefined)).toBe('vegetable');
  });

  it('warn of the oven only where it is an oven', () => {
    expect(dryingCautions('oven').some((c) => /children/.test(c.sentence))).toBe(true);
    expect(dryingCautions('dehydrator').map((c) => c.device)).not.toContain('oven');
    expect(dryingCautions('dehydrator').length).toBeGreaterThan(0);
  });
});

describe('planDrying', () => {
  it('fills the trays as seldom as it can, loses nothing and never overfills', () => {
    fc.assert(
      fc.property(
        grams,
        fc.constantFrom('vegetable', 'leaf', 'herb', 'fruit'),
        fc.integer({ min: 1, max: 10 }),
        fc.double({ min: 3, max: 30, noNaN: true }),
        (fresh, kind, count, dm2) => {
          const plan = planDrying({ grams: fresh, kind, device: 'oven', trays: { count, dm2 } });
          for (const { grams: each, capacity, load } of plan.runs) {
            expect(
              nearly(
                each.reduce((a, b) => a + b, 0),
                fresh,
              ),
            ).toBe(true);
            expect(nearly(capacity, count * dm2 * load.gramsPerDm2)).toBe(true);
            for (const g of each) expect(g).toBeLessThanOrEqual(capacity * (1 + 1e-8));
            expect((each.length - 1) * capacity).toBeLessThan(fresh);
          }
        },
      ),
    );
  });

  it('shows both loads side by side, or the own one alone', () => {
    const question = {
      grams: 1000,
      kind: 'vegetable',
      device: 'oven',
      trays: { count: 2, dm2: 10 },
    } as const;
    const both = planDrying(question).runs;
    expect(both.map((r) => [r.load.known, r.capacity, r.grams.length])).toEqual([
      ['common practice', 800, 2],
      ['published', 1500, 1],
    ]);
    const own = planDrying({ ...question, gramsPerDm2: 50 }).runs;
    expect(own.map((r) => [r.load.source, r.grams])).toEqual([['as the keeper says', [1000]]]);
  });

  it.each([
    [{ grams: 0 }, /grams of fresh food must be above 0, not 0/],
    [{ trays: { count: 1.5, dm2: 10 } }, /number of trays .* not 1.5/],
    [{ trays: { count: 1, dm2: Number.NaN } }, /area of a tray in dm2 .* not NaN/],
    [{ gramsPerDm2: -1 }, /load in g per dm2 .* not -1/],
  ])('refuses %j', (wrong, message) => {
    const question = { grams: 500, kind: 'herb', device: 'oven', trays: { count: 1, dm2: 10 } } as const;
    expect(() => planDrying({ ...question, ...wrong })).toThrow(message);
  });
});

describe('the looks', () => {
  it('come every two hours, the last at the end', () => {
    expect(checkTimes(run.startedAt, 5)).toEqual([
      '2026-03-14T10:00:00.000Z',
      '2026-03-14T12:00:00.000Z',
      '2026-03-14T13:00:00.000Z',
    ]);
    expect(checkTimes(run.startedAt, 6)).toHaveLength(3);
    expect(() => checkTimes('noon', 6)).toThrow(/"noon" is no time/);
  });

  it('are never further apart than that, and end with the time', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (hours) => {
        const times = [run.startedAt, ...checkTimes(run.startedAt, hours)].map((t) => Date.parse(t) / 3.6e6);
        for (let i = 1; i < times.length; i++) {
          expect(times[i]! - times[i - 1]!).toBeLessThanOrEqual(CHECK_EVERY.hours + 1e-6);
          expect(times[i]!).toBeGreaterThanOrEqual(times[i - 1]!);
        }
        expect(Math.abs(times.at(-1)! - times[0]! - hours)).toBeLessThan(1e-6);
      }),
    );
  });

  it('are reckoned from the last one', () => {
    expect(nextCheck(run)).toBe('2026-03-14T10:00:00.000Z');
    const checks = [{ at: '2026-03-14T12:30:00.000Z' }, { at: '2026-03-14T10:15:00.000Z' }];
    expect(nextCheck({ ...run, checks })).toBe('2026-03-14T14:30:00.000Z');
    expect(nextCheck({ ...run, gramsAfter: 130 })).toBeUndefined();
  });
});

describe('actualMoisture', () => {
  /** Weights that fit together: fresh moisture, moisture reached, g before. */
  const dried = fc
    .record({ fresh: moisture, share: fc.double({ min: 0, max: 0.95, noNaN: true }), before: grams })
    .map(({ fresh, share, before }) => {
      const reached = fresh * share;
      return { fresh, reached, before, after: (before * (100 - fresh)) / (100 - reached) };
    });

  it('conserves dry matter', () => {
    fc.assert(
      fc.property(dried, ({ fresh, reached, before, after }) => {
        const actual = actualMoisture({ before, after, freshMoisture: fresh });
        expect(Math.abs(actual.moisture - reached)).toBeLessThan(1e-9);
        expect(nearly(after * (100 - actual.moisture), before * (100 - fresh))).toBe(true);
        expect(nearly(actual.yieldPercent, (100 * after) / before)).toBe(true);
      }),
    );
  });

  it('rises with the weight after, and with the moisture of the fresh food', () => {
    fc.assert(
      fc.property(dried, fc.double({ min: 1.001, max: 1.5, noNaN: true }), (d, more) => {
        const at = (after: number, freshMoisture: number) =>
          actualMoisture({ before: d.before, after, freshMoisture }).moisture;
        const heavier = d.after * more;
        if (heavier < d.before) expect(at(heavier, d.fresh)).toBeGreaterThan(at(d.after, d.fresh));
        expect(at(d.after, d.fresh + (100 - d.fresh) * 0.1)).toBeGreaterThan(at(d.after, d.fresh));
      }),
    );
  });

  it.each([
    // Fresh moisture alone, then the scale alone: much water lost, and little.
    [500, 66.67, 88, 0.5, 0],
    [500, 66.67, 88, 0, 2],
    [60, 50, 40, 0, 2],
    [500, 66.67, 88, 0.1, 2],
  ])(
    'declares the spread that drawing at random shows: %d g to %d g, %d +- %d %%, scale %d g',
    (...given) => {
      const [before, after, freshMoisture, freshSd, scaleStep] = given;
      const { sd } = actualMoisture({ before, after, freshMoisture, freshSd, scaleStep });
      let state = 12345;
      const random = () => {
        state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
        return (state + 0.5) / 2 ** 32;
      };
      const read = (grams: number) => grams + scaleStep * (random() - 0.5);
      const draws = Array.from({ length: 20000 }, () => {
        const normal = Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
        return 100 - (read(before) / read(after)) * (100 - freshMoisture - freshSd * normal);
      });
      const mean = draws.reduce((a, b) => a + b, 0) / draws.length;
      const drawn = Math.sqrt(draws.reduce((a, b) => a + (b - mean) ** 2, 0) / draws.length);
      expect(Math.abs(drawn / sd - 1)).toBeLessThan(0.03);
    },
  );

  it('holds the figure within its interval, and the interval within 0 to 100', () => {
    fc.assert(
      fc.property(dried, fc.double({ min: 0, max: 5, noNaN: true }), (d, freshSd) => {
        const actual = actualMoisture({ before: d.before, after: d.after, freshMoisture: d.fresh, freshSd });
        expect(actual.low).toBeLessThanOrEqual(actual.moisture + 1e-9);
        expect(actual.high).toBeGreaterThanOrEqual(actual.moisture - 1e-9);
        expect(actual.low).toBeGreaterThanOrEqual(0);
        expect(actual.high).toBeLessThanOrEqual(100);
      }),
    );
  });

  it('refuses more dry matter than there was, with the way out', () => {
    const lost = { before: 1000, after: 100, freshMoisture: 88 };
    expect(() => actualMoisture(lost)).toThrow(
      /weight after \(100 g\) is less than the dry matter of the fresh food \(120 g of 1000 g.*weigh again/,
    );
    // Within what the fresh moisture may be, it is only drier than the table.
    const near = actualMoisture({ ...lost, after: 118, freshSd: 1 });
    expect(near.moisture).toBe(0);
    expect(near.note).toMatch(/counted as 0 %/);
    expect(near.high).toBeGreaterThan(10);
  });

  it.each([
    [{ after: 1000 }, /not below the weight before.*swapped/],
    [{ before: -1 }, /weight before must be above 0, not -1/],
    [{ after: Number.NaN }, /weight after must be above 0, not NaN/],
    [{ freshMoisture: 100 }, /moisture of the fresh food .* not 100/],
    [{ freshSd: -1 }, /sd of the fresh moisture/],
    [{ scaleStep: Number.NaN }, /step of the scale/],
  ])('refuses %j', (wrong, message) => {
    expect(() => actualMoisture({ before: 1000, after: 130, freshMoisture: 88, ...wrong })).toThrow(message);
  });

  it('is freed of doubt by a sample dried out', () => {
    expect(moistureOfSample(20, 2.4)).toBeCloseTo(88, 12);
    expect(() => moistureOfSample(20, 21)).toThrow(/heavier than the fresh one/);
  });
});

describe('a dried-out sample', () => {
  const share = fc.double({ min: 0.05, max: 1, noNaN: true });
  it('tells the water of the load at the moment it was taken, whenever that was', () => {
    fc.assert(
      fc.property(
        grams,
        share,
        share,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        (before, left, dry, step) => {
          const of = before * left;
          const { moisture, sd } = freshMoistureBySample({ before: 20, dry: 20 * dry, of, step }, before);
          expect(Math.abs((100 - moisture) * before - 100 * dry * of)).toBeLessThan(1e-6 * before);
          // Multiplied back to the load, the doubt is that of weighing the sample.
          const own = ((100 * step) / Math.sqrt(12)) * Math.hypot(1 / 20, dry / 20);
          expect(Math.abs(sd * (before / of) - own)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('of the dried food makes its moisture exact', () => {
    const dried = { ...run, gramsAfter: 128, sample: { before: 20, dry: 18.4, of: 128 } };
    const { moisture } = freshMoistureBySample(dried.sample, dried.gramsBefore);
    const actual = finishedRun(dried, carrot, { freshMoisture: moisture });
    expect(actual.moisture).toBeCloseTo(8, 9);
    expect(actual.keep.state).toBe('dry');
    const coarse = freshMoistureBySample({ ...dried.sample, step: 2 }, dried.gramsBefore);
    const doubted = finishedRun(dried, carrot, { freshMoisture: coarse.moisture, freshSd: coarse.sd });
    expect(doubted.moisture).toBeCloseTo(8, 9);
    expect(doubted.keep.state).toBe('unsure');
  });

  it('refuses a load that grew', () => {
    expect(() => freshMoistureBySample({ before: 20, dry: 2, of: 1200 }, 1000)).toThrow(
      /more than the 1000 g/,
    );
    expect(() => freshMoistureBySample({ before: 20, dry: 21 }, 1000)).toThrow(/heavier/);
  });
});

describe('dryEnough', () => {
  it('says damp above the limit, dry well below, unsure between', () => {
    expect(dryEnough({ moisture: 12, sd: 0 }, 'vegetable').state).toBe('damp');
    expect(dryEnough({ moisture: 12, sd: 0 }, 'vegetable').sentence).toMatch(/not dry enough to keep/);
    expect(dryEnough({ moisture: 6, sd: 1 }, 'vegetable').state).toBe('dry');
    expect(dryEnough({ moisture: 6, sd: 4 }, 'vegetable').state).toBe('unsure');
    expect(dryEnough({ moisture: 12, sd: 1 }, 'fruit').state).toBe('dry');
    expect(dryEnough({ moisture: 10, sd: 0 }, 'herb').state).toBe('dry');
  });

  it('is the less sure the damper, and never calls damp what has even chances', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 30, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 5, noNaN: true }),
        (at, more, sd) => {
          const drier = dryEnough({ moisture: at, sd }, 'leaf');
          const damper = dryEnough({ moisture: at + more, sd }, 'leaf');
          expect(damper.chance).toBeLessThanOrEqual(drier.chance);
          expect(drier.state === 'damp').toBe(at > drier.most);
        },
      ),
    );
  });
});

describe('a finished run', () => {
  it('gives moisture, verdict and composition in one', () => {
    const { keep, figures, ...actual } = finishedRun({ ...run, gramsAfter: 128 }, carrot);
    expect(actual.moisture).toBeCloseTo(100 - (1000 / 128) * (100 - carrot.composition.WATER!), 9);
    expect(figures.composition.WATER).toBe(actual.moisture);
    const factor = (100 - actual.moisture) / (100 - carrot.composition.WATER!);
    expect(figures.composition.PROCNT).toBeCloseTo(carrot.composition.PROCNT! * factor, 9);
    // Carrots differ by more than the table's mean can say.
    expect(actual.sd).toBeGreaterThan(1);
    expect(keep.state).toBe('unsure');
  });

  it('is sure where a sample of the fresh food was dried out', () => {
    const sample = finishedRun({ ...run, gramsAfter: 128 }, carrot, { freshMoisture: 88 });
    expect(sample.sd).toBe(0);
    expect(sample.moisture).toBeCloseTo(100 - (1000 / 128) * 12, 9);
    // What is in the dry matter is that of the table, whatever water the fresh food held.
    const factor = (100 - sample.moisture) / (100 - carrot.composition.WATER!);
    expect(sample.figures.composition.PROCNT).toBeCloseTo(carrot.composition.PROCNT! * factor, 9);
    const unknown: Food = { ref: 'mine', name: 'leaf', source: 'test', composition: { PROCNT: 2 }, sd: {} };
    const known = finishedRun({ ...run, gramsAfter: 128 }, unknown, { freshMoisture: 88 });
    expect(known.moisture).toBeCloseTo(sample.moisture, 9);
  });

  it('leaves a lot that names it', () => {
    const p = { id: 'l2', food: 'carrot', name: 'Carrot, dried', on: '2026-03-14', moisture: 8.5 };
    expect(driedLot({ ...run, gramsAfter: 128 }, p)).toMatchObject({
      grams: 128,
      form: 'dried',
      driedIn: 'r1',
      moisture: 8.5,
    });
  });

  it('asks for what is missing', () => {
    expect(() => finishedRun(run, carrot)).toThrow(/gramsAfter is missing/);
    expect(() => driedLot(run, { id: 'l', food: 'c', name: 'c', on: '2026-03-14', moisture: 8 })).toThrow(
      /gramsAfter/,
    );
    const unknown: Food = { ref: 'mine', name: 'leaf', source: 'test', composition: { PROCNT: 2 }, sd: {} };
    expect(() => finishedRun({ ...run, gramsAfter: 100 }, unknown)).toThrow(/composition.WATER is unknown/);
  });
});

describe('ingredientAt', () => {
  it('moves every amount with the dry matter, and back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 30, noNaN: true }),
        (had, now, protein) => {
          const food = {
            id: 'f',
            composition: { WATER: had, PROCNT: protein },
            sd: { PROCNT: 1 },
            low: { FIBC: 2 },
          };
          const moved = ingredientAt(food, now, reference);
          expect(moved.composition!.WATER).toBe(now);
          expect(nearly(moved.composition!.PROCNT! / (100 - now), protein / (100 - had))).toBe(true);
          expect(nearly(moved.low!.FIBC! / (100 - now), 2 / (100 - had))).toBe(true);
          const back = ingredientAt(moved, had, reference);
          expect(nearly(back.composition!.PROCNT!, protein)).toBe(true);
          expect(nearly(back.sd!.PROCNT!, 1)).toBe(true);
        },
      ),
    );
  });

  it('takes the amounts of the table, the own ones first, and never makes an unknown known', () => {
    const moved = ingredientAt({ id: 'c', ref: carrot.ref, composition: { PROCNT: 2 } }, 50, reference);
    const factor = 50 / (100 - carrot.composition.WATER!);
    expect(moved.composition!.PROCNT).toBeCloseTo(2 * factor, 9);
    expect(moved.sd!.PROCNT).toBeUndefined();
    expect(moved.composition!.CA).toBeCloseTo(carrot.composition.CA! * factor, 9);
    expect(Object.keys(moved.composition!).sort()).toEqual(Object.keys(carrot.composition).sort());
  });

  it('only writes the moisture where none was known before', () => {
    const moved = ingredientAt({ id: 'c', composition: { PROCNT: 2 } }, 9, reference);
    expect(moved.composition).toEqual({ PROCNT: 2, WATER: 9 });
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carrot } from '../../../test/kitchen/carrot-run.ts';
import { run } from '../../../test/kitchen/kilogram-run.ts';
import { finishedRun } from './finished-run.ts';
import { actualMoisture, freshMoistureBySample, moistureOfSample } from './moisture.ts';

const moisture = fc.double({ min: 40, max: 97, noNaN: true });

const grams = fc.double({ min: 10, max: 5000, noNaN: true });

const nearly = (a: number, b: number, relative = 1e-9) =>
  Math.abs(a - b) <= relative * Math.max(1, Math.abs(a), Math.abs(b));

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
      /Weight after \(100 g\) is less than the dry matter of the fresh food \(120 g of 1000 g.*Weigh again/,
    );
    // Within what the fresh moisture may be, it is only drier than the table.
    const near = actualMoisture({ ...lost, after: 118, freshSd: 1 });
    expect(near.moisture).toBe(0);
    expect(near.note).toMatch(/It counts as 0 %/);
    expect(near.high).toBeGreaterThan(10);
  });

  it.each([
    [{ after: 1000 }, /not below the weight before.*swapped/],
    [{ before: -1 }, /before must be above 0, not -1/],
    [{ after: Number.NaN }, /after must be above 0, not NaN/],
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

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spreadOf } from '../variation.ts';
import { combine } from './combine.ts';
import { disagreements } from './disagree.ts';
import { randomEffects } from './random-effects.ts';
import type { FoodSource } from './source.ts';

const source = (
  id: string,
  protein: number | undefined,
  extra: Partial<FoodSource> & { s?: number } = {},
) => {
  const { s, ...rest } = extra;
  return {
    id,
    name: `source ${id}`,
    basis: 'as fed',
    composition: protein === undefined ? {} : { PROCNT: protein },
    sd: s === undefined ? {} : { PROCNT: s },
    ...rest,
  } as FoodSource;
};
const mean = (sources: readonly FoodSource[]) => combine('PROCNT', sources, 'mean', 'seed');

const amount = fc.double({ min: 0.01, max: 50, noNaN: true });
const anySource = fc.record({
  value: amount,
  s: fc.option(fc.double({ min: 0.01, max: 5, noNaN: true }), { nil: undefined }),
  n: fc.option(fc.integer({ min: 1, max: 20 }), { nil: undefined }),
});
const anySources = fc
  .array(anySource, { minLength: 1, maxLength: 6 })
  .map((list) => list.map(({ value, s, n }, i) => source(String(i), value, { s, ...(n && { n }) })));
const nearly = (a: number, b: number, relative = 1e-9) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-15);

describe('laws of the combined value', () => {
  it('lies between the least and the greatest', () => {
    fc.assert(
      fc.property(anySources, (sources) => {
        const values = sources.map((s) => s.composition.PROCNT!);
        const { value } = mean(sources)!;
        expect(value).toBeGreaterThanOrEqual(Math.min(...values));
        expect(value).toBeLessThanOrEqual(Math.max(...values));
      }),
    );
  });

  it('does not depend on the order of the sources', () => {
    fc.assert(
      fc.property(
        anySources.chain((list) =>
          fc.tuple(fc.constant(list), fc.shuffledSubarray(list, { minLength: list.length })),
        ),
        ([sources, shuffled]) => {
          const [a, b] = [mean(sources)!, mean(shuffled)!];
          nearly(a.value, b.value);
          nearly(a.sd, b.sd);
          nearly(a.tau2, b.tau2, 1e-6);
        },
      ),
    );
  });

  it('is the value that all agree on, with nothing between them', () => {
    fc.assert(
      fc.property(anySources, amount, (sources, value) => {
        const equal = sources.map((s) => ({ ...s, composition: { PROCNT: value } }));
        const combined = mean(equal)!;
        nearly(combined.value, value, 1e-12);
        expect(combined.tau2).toBe(0);
      }),
    );
  });

  it('scales with the unit', () => {
    const scale = (sources: readonly FoodSource[], c: number) =>
      sources.map((s) => ({
        ...s,
        composition: { CA: s.composition.PROCNT! * c },
        sd: s.sd.PROCNT === undefined ? {} : { CA: s.sd.PROCNT * c },
      }));
    fc.assert(
      fc.property(anySources, fc.double({ min: 0.01, max: 1000, noNaN: true }), (sources, c) => {
        const one = combine('CA', scale(sources, 1), 'mean', 'seed')!;
        const many = combine('CA', scale(sources, c), 'mean', 'seed')!;
        nearly(many.value, c * one.value, 1e-7);
        nearly(many.sd, c * one.sd, 1e-7);
        nearly(many.se, c * one.se, 1e-7);
      }),
    );
  });

  it('has weights that sum to 1 and make up the value', () => {
    fc.assert(
      fc.property(anySources, (sources) => {
        const { value, weights } = mean(sources)!;
        nearly(
          weights.reduce((sum, w) => sum + w.weight, 0),
          1,
        );
        nearly(
          weights.reduce(
            (sum, w) => sum + w.weight * sources.find((s) => s.id === w.id)!.composition.PROCNT!,
            0,
          ),
          value,
        );
      }),
    );
  });

  it('is not less sure for one more source at the value that all others agree around', () => {
    // Agreeing: tau2 was 0, and the new figure is the mean itself. It does not hold where the others disagree:
    // then the random-effects mean is off the fixed one, and a figure there may raise Q and with it tau2.
    const printed = anySource.map((s) => ({ ...s, s: s.s ?? 1 }));
    const sure = fc
      .array(printed, { minLength: 1, maxLength: 6 })
      .map((list) => list.map(({ value, s, n }, i) => source(String(i), value, { s, ...(n && { n }) })));
    fc.assert(
      fc.property(sure, fc.double({ min: 0.01, max: 5, noNaN: true }), (sources, s) => {
        const before = mean(sources)!;
        fc.pre(before.tau2 === 0);
        const after = mean([...sources, source('new', before.value, { s })])!;
        expect(after.se).toBeLessThanOrEqual(before.se * (1 + 1e-9));
      }),
    );
  });

  it('never makes the unknown known', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 4 }), fc.option(amount, { nil: undefined }), (k, low) => {
        const sources = Array.from({ length: k }, (_, i) =>
          source(String(i), undefined, low === undefined ? {} : { low: { PROCNT: low } }),
        );
        expect(mean(sources)).toBeUndefined();
      }),
    );
  });
});

describe('the variance of a source', () => {
  it('is sd squared over n: four samples weigh four times one', () => {
    const { weights } = mean([source('a', 12, { s: 1, n: 4 }), source('b', 12, { s: 1 })])!;
    expect(weights).toEqual([
      { id: 'a', weight: 0.8 },
      { id: 'b', weight: 0.2 },
    ]);
  });

  it('comes from how such figures vary where no sd is printed, around the mean of all', () => {
    const combined = mean([source('a', 10), source('b', 10.5)])!;
    const spread = spreadOf(10.25, 'PROCNT', 'seed');
    expect(combined.value).toBe(10.25);
    expect(combined.sd).toBeCloseTo(Math.sqrt(spread ** 2 / 2 + spread ** 2), 12);
  });

  it('of a figure of 0 is no certainty', () => {
    const combined = mean([source('a', 0), source('b', 4)])!;
    expect(combined.value).toBeCloseTo(2, 12);
    expect(combined.sd).toBeGreaterThan(2);
    expect(mean([source('a', 0), source('b', 0)])).toMatchObject({ value: 0, sd: 0 });
    expect(mean([source('a', 0), source('b', 0, { s: 0.1 })])!.sd).toBeGreaterThan(0);
  });
});

/** Numbers below 1, from a seed, the same on every machine (mulberry32). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

describe('the sd declared', () => {
  it('is that of the next bag: in trials with known tau and s the misses fit it', () => {
    const random = randomFrom(7);
    const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const [mu, tau, s, trials] = [20, 1.5, 1, 4000];
    let squares = 0;
    let inside = 0;
    let declared = 0;
    for (let t = 0; t < trials; t++) {
      const sources = Array.from({ length: 8 }, (_, i) => {
        const n = 1 + (i % 4);
        return source(String(i), mu + tau * normal() + (s / Math.sqrt(n)) * normal(), { s, n });
      });
      const { value, sd } = mean(sources)!;
      const miss = mu + tau * normal() + s * normal() - value;
      squares += miss ** 2;
      declared += sd ** 2;
      if (Math.abs(miss) <= 1.645 * sd) inside++;
    }
    // The standard error of the mean alone would give about a third of the misses.
    expect(declared / squares).toBeGreaterThan(0.92);
    expect(declared / squares).toBeLessThan(1.08);
    // The variance is right on average, which is what a mix of many foods adds up; tau2 from eight sources is itself
    // unsure, so that a single food's 90 % interval holds a little less.
    expect(inside / trials).toBeGreaterThan(0.85);
    expect(inside / trials).toBeLessThan(0.92);
  });

  it('is at least that of a bag, however many sources agree', () => {
    const many = Array.from({ length: 50 }, (_, i) => source(String(i), 12, { s: 1, n: 10 }));
    const { sd, se } = mean(many)!;
    expect(se).toBeLessThan(0.05);
    expect(sd).toBeCloseTo(1, 2);
  });
});

describe('a choice', () => {
  const sources = [source('a', 10, { s: 1 }), source('b', 20, { s: 1 }), source('c', undefined)];

  it('follows one source alone, and still says how many know it', () => {
    expect(combine('PROCNT', sources, 'b', 'seed')).toMatchObject({
      value: 20,
      method: 'chosen',
      k: 2,
      source: 'source b, chosen by the keeper',
    });
  });

  it('of a source that does not know leaves it unknown', () => {
    expect(combine('PROCNT', sources, 'c', 'seed')).toBeUndefined();
  });

  it('of no source is refused', () => {
    expect(() => combine('PROCNT', sources, 'd', 'seed')).toThrow(
      'choice for PROCNT: no source "d"; choose "mean" or one of: a, b, c',
    );
  });
});

describe('bounds', () => {
  const label = source('label', undefined, { low: { PROCNT: 14 }, high: { PROCNT: 22 } });

  it('enter no mean, but stand beside it', () => {
    const without = mean([source('a', 16, { s: 1 })])!;
    const combined = mean([source('a', 16, { s: 1 }), label])!;
    expect(combined).toEqual({ ...without, low: 14, high: 22 });
  });

  it('narrow together', () => {
    const other = source('other', undefined, { low: { PROCNT: 15 }, high: { PROCNT: 30 } });
    expect(mean([source('a', 16), label, other])).toMatchObject({ low: 15, high: 22 });
  });

  it('that contradict one another are left out, and it says so', () => {
    const other = source('other', undefined, { low: { PROCNT: 25 } });
    const combined = mean([source('a', 16), label, other])!;
    expect(combined).not.toHaveProperty('low');
    expect(combined).not.toHaveProperty('high');
    expect(combined.source).toContain('contradict');
  });
});

describe('bad figures are refused by name', () => {
  it.each([
    ['a value below 0', source('a', -1), /source a: composition of PROCNT.*not -1/],
    ['more than all', source('a', 120), /from 0 to 100 g per 100 g, not 120/],
    ['no number', source('a', Number.NaN), /not NaN/],
    ['an sd below 0', source('a', 1, { s: -1 }), /sd of PROCNT/],
    ['no samples', source('a', 1, { n: 0 }), /source a: n must be at least 1, not 0/],
  ])('%s', (_, bad, message) => {
    expect(() => mean([bad])).toThrow(message);
  });
});

describe('protein', () => {
  it('is held together as crude protein, whatever nitrogen factor a source counts with', () => {
    // 2 g of nitrogen each: once as oats are counted, once as labels are.
    const table = source('table', 11.66, { proteinFactor: 5.83, s: 0.5 });
    const label = source('label', 12.5, { s: 0.5 });
    expect(mean([table])?.value).toBeCloseTo(12.5, 10);
    expect(mean([table])?.sd).toBeCloseTo((0.5 * 6.25) / 5.83, 10);
    expect(mean([table, label])?.value).toBeCloseTo(12.5, 10);
    expect(disagreements('PROCNT', [table, label], 'seed')).toEqual([]);
  });
});

it('takes one figure that is said to be exact beside another without losing all number', () => {
  const { mean, tau2, se } = randomEffects([0, 8], [1e-60, 1]);
  expect(tau2).toBeCloseTo(31.5, 6);
  expect(mean).toBeGreaterThan(3.9);
  expect(mean).toBeLessThan(4.1);
  expect(se).toBeGreaterThan(0);
});

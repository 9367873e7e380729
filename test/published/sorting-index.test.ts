/**
 * The sorting index: 100 x actual over predicted intake, the predicted intake of a part being its share of what was
 * offered times the whole intake (Leonardi and Armentano 2003, J. Dairy Sci.). The example is ours, worked by hand from
 * that definition. The span rests on Student's t, held against Abramowitz and Stegun, table 26.10 (from memory).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { IntakeSet } from '../../src/care/leftovers/intake-set.ts';
import { sortingIndex } from '../../src/care/leftovers/sorting-index.ts';
import { observe } from '../../src/care/leftovers/stretch.ts';
import { tQuantile } from '../../src/care/leftovers/student-t.ts';

const night = (grams: Readonly<Record<string, number>>, left: Readonly<Record<string, number>>): IntakeSet =>
  observe({
    looks: [
      {
        offered: Object.entries(grams).map(([food, g]) => ({ food, grams: g })),
        bowl: { parts: left, sorted: true },
      },
    ],
  }).taken;

describe('the sorting index', () => {
  it('is 100 times actual over predicted intake', () => {
    // 60 g oats, 25 g seed, 15 g pea offered; 20, 5 and 15 left. Eaten 40, 20 and 0 of 60; predicted 36, 15 and 9.
    const sets = [night({ oats: 60, seed: 25, pea: 15 }, { oats: 20, seed: 5, pea: 15 })];
    expect(sortingIndex(sets, 'oats')?.value).toBeCloseTo((100 * 40) / 36, 10);
    expect(sortingIndex(sets, 'seed')?.value).toBeCloseTo((100 * 20) / 15, 10);
    expect(sortingIndex(sets, 'pea')?.value).toBe(0);
    expect(sortingIndex(sets, 'oats')).toMatchObject({ nights: 1, leaning: 'unclear' });
    expect(sortingIndex(sets, 'oats')?.span).toBeUndefined();
  });

  it('of several nights is a ratio of sums, with a span by how they differ', () => {
    // Actual oats 40, 30; predicted 36 of 60, 30 of 50.
    const sets = [
      night({ oats: 60, pea: 40 }, { oats: 20, pea: 20 }),
      night({ oats: 60, pea: 40 }, { oats: 30, pea: 20 }),
    ];
    const index = sortingIndex(sets, 'oats');
    expect(index?.value).toBeCloseTo((100 * 70) / 66, 10);
    const ratio = 70 / 66;
    const squares = (40 - ratio * 36) ** 2 + (30 - ratio * 30) ** 2;
    const reach = (100 * 12.7062 * Math.sqrt(2 * squares)) / 66;
    expect(index?.span?.high).toBeCloseTo((100 * 70) / 66 + reach, 2);
    expect(index?.span?.low).toBeCloseTo(Math.max(0, (100 * 70) / 66 - reach), 2);
  });

  it('is 100 for all foods where they are eaten as offered, and on the average of what was predicted always', () => {
    const part = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(part, part), { minLength: 2, maxLength: 12 }), part, (foods, same) => {
        const grams = Object.fromEntries(foods.map(([g], i) => [`f${i}`, 10 * g]));
        const left = (of: (i: number) => number) =>
          Object.fromEntries(Object.entries(grams).map(([id, g], i) => [id, g * (1 - of(i))]));
        const even = [
          night(
            grams,
            left(() => same),
          ),
        ];
        for (const id of Object.keys(grams)) expect(sortingIndex(even, id)?.value).toBeCloseTo(100, 6);
        const some = [
          night(
            grams,
            left((i) => foods[i]?.[1] ?? 0),
          ),
        ];
        const whole = Object.values(grams).reduce((sum, g) => sum + g, 0);
        const mean = Object.entries(grams).reduce(
          (sum, [id, g]) => sum + (g / whole) * (sortingIndex(some, id)?.value ?? 0),
          0,
        );
        expect(mean).toBeCloseTo(100, 6);
      }),
    );
  });

  it('of left-overs that were not sorted lies between limits, which the sorted index is within', () => {
    const grams = { oats: 6, seed: 4 };
    const sorted = sortingIndex([night(grams, { oats: 3, seed: 1 })], 'seed');
    const offered = Object.entries(grams).map(([food, g]) => ({ food, grams: g }));
    const whole = observe({ looks: [{ offered, bowl: { grams: 4 } }] }).taken;
    const index = sortingIndex([whole], 'seed');
    // From none of 6 g eaten to 4 of 6: seed is two fifths of the offer.
    expect(index?.bounds.low).toBeCloseTo(0, 10);
    expect(index?.bounds.high).toBeCloseTo((100 * 4) / 2.4, 10);
    expect(sorted?.value).toBeCloseTo(125, 10);
  });

  it('is not told of a food that was offered alone, or where nothing was eaten', () => {
    expect(sortingIndex([night({ oats: 5 }, {})], 'oats')).toBeUndefined();
    expect(sortingIndex([night({ oats: 5, pea: 5 }, { oats: 5, pea: 5 })], 'oats')).toBeUndefined();
  });

  it('says which way a food leans once the nights agree', () => {
    const nights = Array.from({ length: 6 }, (_, i) =>
      night({ oats: 5, seed: 5, pea: 5 }, { oats: 1 + 0.1 * (i % 3), seed: 0, pea: 4 - 0.1 * (i % 2) }),
    );
    expect(sortingIndex(nights, 'seed')?.leaning).toBe('picked');
    expect(sortingIndex(nights, 'pea')?.leaning).toBe('left');
  });
});

describe('Student’s t', () => {
  it.each([
    [1, 12.706],
    [2, 4.303],
    [4, 2.776],
    [9, 2.262],
    [30, 2.042],
    [120, 1.98],
  ])('with %d degrees of freedom lies below %d with a chance of 97.5 %%', (freedom, t) => {
    expect(tQuantile(0.975, freedom)).toBeCloseTo(t, 2.9);
    expect(tQuantile(0.5, freedom)).toBeCloseTo(0, 6);
  });

  it('is told for no other chances', () => {
    expect(() => tQuantile(0.2, 3)).toThrow(RangeError);
    expect(() => tQuantile(0.9, 0)).toThrow(RangeError);
  });
});

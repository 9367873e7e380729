/** What was eaten follows from what was left: exact where it was sorted, between tight limits where it was not. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import {
  contentEaten,
  eatenByFood,
  eatenInAll,
  type IntakeSet,
  nutrientEaten,
  nutrientLeft,
} from './intake-set.ts';
import { type Range, sumOf } from './pile.ts';
import { DRIES, type OfferedFood, SCALE } from './pile-of.ts';
import { observe } from './stretch.ts';

const NAMES = ['oats', 'millet', 'pea', 'seed', 'carrot', 'worm'];
const foods = (...grams: number[]): OfferedFood[] =>
  grams.map((g, i) => ({ food: NAMES[i] ?? `f${i}`, grams: g }));
const exactly = (value: number): Range => ({ low: value, high: value });
const kinds = (seen: ReturnType<typeof observe>) => seen.doubts.map((d) => d.kind);

describe('sorted left-overs', () => {
  const offered = fc.array(fc.integer({ min: 1, max: 3000 }), { minLength: 1, maxLength: 25 });
  const part = fc.double({ min: 0, max: 1, noNaN: true });

  it('eaten + left = offered, for every food and every nutrient, known or not', () => {
    fc.assert(
      fc.property(
        offered.chain((grams) =>
          fc.tuple(
            fc.constant(grams),
            fc.array(fc.tuple(part, part, fc.double({ min: 0, max: 100, noNaN: true }), part), {
              minLength: grams.length,
              maxLength: grams.length,
            }),
          ),
        ),
        ([grams, drawn]) => {
          const list = grams.map((g, i) => ({ food: `f${i}`, grams: g / 100 }));
          const bowl: Record<string, number> = {};
          const hoard: Record<string, number> = {};
          for (const [i, f] of list.entries()) {
            const [b = 0, h = 0] = drawn[i] ?? [];
            bowl[f.food] = f.grams * b;
            hoard[f.food] = (f.grams - f.grams * b) * h;
          }
          const seen = observe({
            looks: [{ offered: list, bowl: { parts: bowl, sorted: true } }],
            hoard: { parts: hoard, sorted: true },
          });
          expect(seen.hoard).toBe('counted');
          for (const [i, { low, high }] of eatenByFood(seen.eaten).entries()) {
            const f = list[i];
            if (!f) throw new Error('a food that was not offered');
            expect(high - low).toBeLessThan(1e-9);
            expect(low + (bowl[f.food] ?? 0) + (hoard[f.food] ?? 0)).toBeCloseTo(f.grams, 9);
          }
          const known = [drawn.map(([, , c]) => exactly(c))];
          const unknown = [drawn.map(([, , c, u]) => ({ low: c * u, high: c }))];
          const all: IntakeSet[] = [{ offered: list, piles: [] }];
          const eaten = nutrientEaten([seen.eaten], known);
          const left = nutrientLeft([seen.eaten], known);
          const whole = nutrientEaten(all, known);
          expect(eaten.low + left.high).toBeCloseTo(whole.low, 8);
          expect(eaten.high + left.low).toBeCloseTo(whole.low, 8);
          expect(eaten.high - eaten.low).toBeLessThan(1e-8);
          for (const end of ['low', 'high'] as const)
            expect(
              nutrientEaten([seen.eaten], unknown)[end] + nutrientLeft([seen.eaten], unknown)[end],
            ).toBeCloseTo(nutrientEaten(all, unknown)[end], 8);
        },
      ),
      { numRuns: draws(4000, 400) },
    );
  });

  it('what is not named was sorted too, and none of it left', () => {
    const seen = observe({
      looks: [{ offered: foods(5, 3), bowl: { parts: { oats: 2 }, sorted: true } }],
      hoard: { grams: 0 },
    });
    expect(eatenByFood(seen.eaten)).toEqual([exactly(3), exactly(3)]);
  });

  it('with some sorted out, the rest lies among the others', () => {
    const seen = observe({
      looks: [{ offered: foods(5, 3, 4), bowl: { parts: { oats: 2 }, grams: 5 } }],
      hoard: { grams: 0 },
    });
    expect(eatenByFood(seen.eaten)).toEqual([exactly(3), { low: 0, high: 3 }, { low: 1, high: 4 }]);
    expect(eatenInAll([seen.eaten])).toEqual(exactly(7));
  });
});

describe('left-overs weighed as a whole', () => {
  it('leave each food between what others cannot hold and what there was of it', () => {
    const { taken } = observe({ looks: [{ offered: foods(6, 3, 1), bowl: { grams: 5 } }] });
    // 5 g left, of which the others hold 4 at most.
    expect(eatenByFood(taken)).toEqual([
      { low: 1, high: 5 },
      { low: 0, high: 3 },
      { low: 0, high: 1 },
    ]);
    expect(eatenInAll([taken])).toEqual(exactly(5));
  });

  /** Whole grams of each food that may have been left, counted out one by one. */
  function countedOut(grams: readonly number[], left: number, least: readonly number[]): number[][] {
    const [first, ...rest] = grams;
    const [from = 0, ...others] = least;
    if (first === undefined) return left === 0 ? [[]] : [];
    const found: number[][] = [];
    for (let g = from; g <= Math.min(first, left); g++)
      for (const tail of countedOut(rest, left - g, others)) found.push([g, ...tail]);
    return found;
  }

  it('give limits of nutrient and composition that no way of leaving them passes, and that some reach', () => {
    const drawn = fc
      .array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 100 }), fc.boolean()), {
        minLength: 1,
        maxLength: 5,
      })
      .chain((list) => fc.tuple(fc.constant(list), fc.nat(list.reduce((s, [g]) => s + 2 * g, 0))));
    let reached = 0;
    fc.assert(
      fc.property(drawn, ([list, left]) => {
        // Even grams, so that half of each is a whole number.
        const grams = list.map(([g]) => 2 * g);
        const offered = foods(...grams);
        const mostly = offered.filter((_, i) => list[i]?.[2]).map((f) => f.food);
        const least = grams.map((g, i) => (list[i]?.[2] ? g / 2 : 0));
        const ways = countedOut(grams, left, least);
        if (ways.length === 0) return;
        const { taken } = observe({ looks: [{ offered, bowl: { grams: left, mostly } }] });
        const content = list.map(([, c]) => c);
        const eaten = ways.map((way) => way.map((g, i) => (grams[i] ?? 0) - g));
        const amounts = eaten.map((way) => sumOf(way.map((g, i) => (g * (content[i] ?? 0)) / 100)));
        const bounds = nutrientEaten([taken], [content.map(exactly)]);
        // With whole numbers all round the extremes are whole numbers too, so that counting meets them.
        expect(bounds.low).toBeCloseTo(Math.min(...amounts), 9);
        expect(bounds.high).toBeCloseTo(Math.max(...amounts), 9);
        const shares = contentEaten([taken], [content.map(exactly)]);
        const whole = sumOf(grams) - left;
        if (whole === 0) {
          expect(shares).toBeUndefined();
          return;
        }
        expect(shares?.low).toBeCloseTo((100 * Math.min(...amounts)) / whole, 9);
        expect(shares?.high).toBeCloseTo((100 * Math.max(...amounts)) / whole, 9);
        for (const [i, { low, high }] of eatenByFood(taken).entries()) {
          const own = eaten.map((way) => way[i] ?? 0);
          expect(low).toBeCloseTo(Math.min(...own), 9);
          expect(high).toBeCloseTo(Math.max(...own), 9);
        }
        reached++;
      }),
      { numRuns: draws(3000, 300) },
    );
    expect(reached).toBeGreaterThan(draws(3000, 300) / 3);
  });

  it('with a hoard weighed as a whole too, give limits that some way of leaving and hoarding reaches', () => {
    const drawn = fc
      .array(fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 100 })), {
        minLength: 1,
        maxLength: 4,
      })
      .chain((list) => {
        const all = list.reduce((sum, [g]) => sum + g, 0);
        return fc.tuple(fc.constant(list), fc.nat(all), fc.nat(all));
      });
    fc.assert(
      fc.property(drawn, ([list, left, hoarded]) => {
        const grams = list.map(([g]) => g);
        if (left + hoarded > sumOf(grams)) return;
        const none = grams.map(() => 0);
        const eaten = countedOut(grams, left, none).flatMap((bowl) => {
          const there = grams.map((g, i) => g - (bowl[i] ?? 0));
          return countedOut(there, hoarded, none).map((hoard) => there.map((g, i) => g - (hoard[i] ?? 0)));
        });
        const set = observe({
          looks: [{ offered: foods(...grams), bowl: { grams: left } }],
          hoard: { grams: hoarded },
        }).eaten;
        for (const [i, { low, high }] of eatenByFood(set).entries()) {
          const own = eaten.map((way) => way[i] ?? 0);
          expect(low).toBeCloseTo(Math.min(...own), 9);
          expect(high).toBeCloseTo(Math.max(...own), 9);
        }
        const content = list.map(([, c]) => c);
        const amounts = eaten.map((way) => sumOf(way.map((g, i) => (g * (content[i] ?? 0)) / 100)));
        const bounds = nutrientEaten([set], [content.map(exactly)]);
        expect(bounds.low).toBeCloseTo(Math.min(...amounts), 9);
        expect(bounds.high).toBeCloseTo(Math.max(...amounts), 9);
      }),
      { numRuns: draws(2000, 200) },
    );
  });

  it('give limits of a composition whose total is open too', () => {
    // Nobody weighed: of oats (10 %) at least half is left, of seed (40 %) anything.
    const { taken } = observe({
      looks: [{ offered: foods(4, 2), bowl: { mostly: ['oats'] } }],
    });
    expect(eatenByFood(taken)).toEqual([
      { low: 0, high: 2 },
      { low: 0, high: 2 },
    ]);
    expect(contentEaten([taken], [[exactly(10), exactly(40)]])).toEqual({ low: 10, high: 40 });
    const half = observe({ looks: [{ offered: foods(4, 2), bowl: { parts: { oats: 3 } } }] });
    const bounds = contentEaten([half.taken], [[exactly(10), exactly(40)]]);
    expect(bounds?.low).toBeCloseTo(10, 12);
    expect(bounds?.high).toBeCloseTo((10 + 80) / 3, 12);
  });

  it('say nothing of foods that were not named when others were mostly left', () => {
    const { taken } = observe({ looks: [{ offered: foods(4, 2), bowl: { mostly: ['millet'] } }] });
    expect(eatenByFood(taken)).toEqual([
      { low: 0, high: 4 },
      { low: 0, high: 1 },
    ]);
  });
});

describe('hoards', () => {
  const sorted = (oats: number, millet: number) => ({ parts: { oats, millet }, sorted: true as const });

  it('where nobody looked, what was taken is known and eaten is that at the most', () => {
    const seen = observe({ looks: [{ offered: foods(6, 3), bowl: sorted(2, 0) }] });
    expect(seen.hoard).toBe('unknown');
    expect(eatenByFood(seen.taken)).toEqual([exactly(4), exactly(3)]);
    expect(eatenByFood(seen.eaten)).toEqual([
      { low: 0, high: 4 },
      { low: 0, high: 3 },
    ]);
  });

  it('counted at the end of some nights, what was eaten over them is exact', () => {
    const seen = observe({
      looks: [
        { offered: foods(6, 3), bowl: sorted(2, 0) },
        { offered: foods(6, 3), bowl: sorted(0, 3) },
      ],
      hoard: sorted(3, 1),
    });
    expect(eatenByFood(seen.eaten)).toEqual([exactly(7), exactly(2)]);
  });

  it('that other nights may have filled leave a range', () => {
    const seen = observe({
      looks: [{ offered: foods(6, 3), bowl: sorted(2, 0) }],
      hoard: sorted(3, 5),
      others: true,
    });
    expect(seen.hoard).toBe('in-part');
    expect(eatenByFood(seen.eaten)).toEqual([
      { low: 1, high: 4 },
      { low: 0, high: 3 },
    ]);
  });

  it('in which nothing lay were filled by no night', () => {
    const seen = observe({
      looks: [{ offered: foods(6, 3), bowl: sorted(2, 0) }],
      hoard: { grams: 0 },
      others: true,
    });
    expect(seen.hoard).toBe('counted');
    expect(eatenByFood(seen.eaten)).toEqual([exactly(4), exactly(3)]);
  });

  it('that hold more than was taken tell nothing of how much was eaten', () => {
    const seen = observe({ looks: [{ offered: foods(6, 3), bowl: sorted(2, 0) }], hoard: sorted(9, 0) });
    expect(kinds(seen)).toEqual(['older']);
    expect(eatenByFood(seen.eaten)).toEqual([{ low: 0, high: 4 }, exactly(3)]);
    // Of a hoard that other nights may have filled that is no wonder.
    const look = { offered: foods(6, 3), bowl: sorted(2, 0) };
    expect(kinds(observe({ looks: [look], hoard: sorted(9, 0), others: true }))).toEqual([]);
  });
});

describe('weights that cannot be', () => {
  it('a little more left than offered counts as all of it, and is told', () => {
    const seen = observe({
      looks: [{ offered: foods(6, 3), bowl: { parts: { oats: 6.5 }, sorted: true } }],
      hoard: { grams: 0 },
    });
    expect(kinds(seen)).toEqual(['scale']);
    expect(eatenByFood(seen.eaten)).toEqual([exactly(0), exactly(3)]);
  });

  it.each([
    [{ parts: { oats: 6 + SCALE + 0.1 } }, [{ low: 0, high: 6 }]],
    [{ grams: 12 }, [{ low: 0, high: 6 }]],
  ])('much more than that tells nothing: %j', (bowl, [oats]) => {
    const seen = observe({ looks: [{ offered: foods(6, 3), bowl }] });
    expect(kinds(seen)).toContain('more');
    expect(eatenByFood(seen.taken)[0]).toEqual(oats);
  });

  it('a food that was not offered is told, and its weight does not count', () => {
    const seen = observe({ looks: [{ offered: foods(6, 3), bowl: { parts: { hay: 2 }, grams: 4 } }] });
    expect(seen.doubts).toEqual([{ kind: 'not-offered', foods: ['hay'], grams: 2 }]);
    expect(eatenInAll([seen.taken])).toEqual(exactly(7));
  });

  it('the weight stands where the eye said more', () => {
    const seen = observe({
      looks: [{ offered: foods(6, 3), bowl: { grams: 2, mostly: ['oats', 'millet'] } }],
    });
    expect(kinds(seen)).toEqual(['mostly']);
    expect(eatenInAll([seen.taken])).toEqual(exactly(7));
    expect(eatenByFood(seen.taken)[0]).toEqual({ low: 4, high: 6 });
  });

  it('parts stand where they do not agree with the whole', () => {
    const seen = observe({
      looks: [{ offered: foods(6, 3), bowl: { grams: 2, parts: { oats: 4 }, sorted: true } }],
    });
    expect(kinds(seen)).toEqual(['sum']);
    expect(eatenByFood(seen.taken)).toEqual([exactly(2), exactly(3)]);
  });

  it('fresh food dries while it lies there, so its left-overs are a range', () => {
    const offered: OfferedFood[] = [
      { food: 'carrot', grams: 5, fresh: true },
      { food: 'oats', grams: 5 },
    ];
    const seen = observe({ looks: [{ offered, bowl: { parts: { carrot: 1.2, oats: 1 }, sorted: true } }] });
    const [carrot, oats] = eatenByFood(seen.taken);
    expect(carrot?.low).toBeCloseTo(5 - 1.2 / (1 - DRIES), 12);
    expect(carrot?.high).toBeCloseTo(3.8, 12);
    expect(oats).toEqual(exactly(4));
    expect(kinds(seen)).toEqual(['dried']);
    const whole = observe({ looks: [{ offered, bowl: { grams: 6 } }] });
    expect(eatenInAll([whole.taken]).high).toBeCloseTo(4, 12);
    expect(eatenInAll([whole.taken]).low).toBeCloseTo(10 - 8, 12);
  });
});

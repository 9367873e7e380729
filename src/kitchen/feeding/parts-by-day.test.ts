import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evenParts, FIRST_MOST, partsByDay } from './parts-by-day.ts';

describe('the parts', () => {
  const GRID = 84;
  /** Whole numbers of 1/84, so that the best plan can be found among finitely many. */
  const corridor = fc
    .record({
      days: fc.integer({ min: 7, max: 12 }),
      first: fc.integer({ min: 8, max: 30 }),
      step: fc.integer({ min: 12, max: 30 }),
      ends: fc.tuple(fc.integer({ min: -6, max: 90 }), fc.integer({ min: -6, max: 90 })),
    })
    .filter(({ days, first, step }) => first + (days - 1) * step >= GRID)
    .map(({ days, first, step, ends }) => ({
      days,
      first,
      step,
      low: Math.min(...ends),
      high: Math.max(...ends),
    }));

  /** Most days in range, and with as many the least distance from the even plan on any one day; by trying everything. */
  function bruteForce(
    c: { days: number; first: number; step: number; low: number; high: number },
    near?: number,
  ) {
    let best = new Map<number, { days: number; off: number }>([[0, { days: 0, off: 0 }]]);
    for (let d = 1; d <= c.days; d++) {
      const next = new Map<number, { days: number; off: number }>();
      for (const [p, b] of best) {
        const most = Math.min(GRID, p + (d === 1 ? c.first : c.step));
        for (let q = p; q <= most; q++) {
          const days = b.days + (q >= c.low && q <= c.high ? 1 : 0);
          const off = d === near ? Math.abs(q / GRID - d / c.days) : b.off;
          const had = next.get(q);
          if (!had || days > had.days || (days === had.days && off < had.off)) next.set(q, { days, off });
        }
      }
      best = next;
    }
    return best.get(GRID)!;
  }

  const plan = (c: { days: number; first: number; step: number; low: number; high: number }) =>
    partsByDay({
      days: c.days,
      firstMost: c.first / GRID,
      mostStep: c.step / GRID,
      low: c.low / GRID,
      high: c.high / GRID,
    });
  const inRange = (parts: number[], c: { low: number; high: number }) =>
    parts.filter((p) => p >= c.low / GRID - 1e-12 && p <= c.high / GRID + 1e-12).length;

  test('never fall, keep to the steps, end at 1', () => {
    fc.assert(
      fc.property(corridor, fc.boolean(), (c, crossed) => {
        const parts = plan(crossed ? { ...c, low: c.high + 1, high: c.low } : c);
        expect(parts).toHaveLength(c.days);
        expect(parts.at(-1)).toBe(1);
        expect(parts[0]!).toBeGreaterThanOrEqual(0);
        expect(parts[0]!).toBeLessThanOrEqual(c.first / GRID + 1e-12);
        for (let d = 1; d < parts.length; d++) {
          expect(parts[d]! - parts[d - 1]!).toBeGreaterThanOrEqual(-1e-12);
          expect(parts[d]! - parts[d - 1]!).toBeLessThanOrEqual(c.step / GRID + 1e-12);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('no plan within the steps has more days in range', () => {
    const counts = new Set<number>();
    fc.assert(
      fc.property(corridor, (c) => {
        const most = bruteForce(c).days;
        counts.add(most);
        expect(inRange(plan(c), c)).toBe(most);
      }),
      { numRuns: 300 },
    );
    expect(counts.size).toBeGreaterThan(5);
  });

  test('of the plans with as many, none is nearer to the even one on any day', () => {
    let bent = 0;
    fc.assert(
      fc.property(corridor, fc.nat(), (c, which) => {
        const day = 1 + (which % c.days);
        const parts = plan(c);
        const off = Math.abs(parts[day - 1]! - day / c.days);
        if (off > 1e-9) bent++;
        expect(off).toBeLessThanOrEqual(bruteForce(c, day).off + 1e-12);
      }),
      { numRuns: 300 },
    );
    expect(bent).toBeGreaterThan(30);
  });

  test('are even where nothing asks for more', () => {
    const parts = partsByDay({ days: 10, firstMost: 0.25, mostStep: 0.2, low: 0, high: 1 });
    parts.forEach((p, d) => {
      expect(p).toBeCloseTo((d + 1) / 10, 12);
    });
  });
});

test('where nobody knows what is in range, the parts rise evenly, from no more than a quarter', () => {
  expect(evenParts(1)).toEqual([1]);
  expect(evenParts(10).map((p) => Math.round(p * 10))).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  for (let days = 1; days <= 30; days++) {
    const parts = evenParts(days);
    expect(parts).toHaveLength(days);
    expect(parts.at(-1)).toBe(1);
    if (days > 1) expect(parts[0]).toBeLessThanOrEqual(FIRST_MOST + 1e-12);
    for (const [i, part] of parts.entries()) expect(part).toBeGreaterThanOrEqual((parts[i - 1] ?? 0) - 1e-12);
  }
});

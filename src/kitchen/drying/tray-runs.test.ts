import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planDrying } from './tray-runs.ts';

const grams = fc.double({ min: 10, max: 5000, noNaN: true });

const nearly = (a: number, b: number, relative = 1e-9) =>
  Math.abs(a - b) <= relative * Math.max(1, Math.abs(a), Math.abs(b));
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
    expect(own.map((r) => [r.load.source, r.grams])).toEqual([['as you say', [1000]]]);
  });

  it.each([
    [{ grams: 0 }, /grams must be above 0, not 0/],
    [{ trays: { count: 1.5, dm2: 10 } }, /number of trays .* not 1.5/],
    [{ trays: { count: 1, dm2: Number.NaN } }, /trays.dm2 .* not NaN/],
    [{ gramsPerDm2: -1 }, /gramsPerDm2 .* not -1/],
  ])('refuses %j', (wrong, message) => {
    const question = { grams: 500, kind: 'herb', device: 'oven', trays: { count: 1, dm2: 10 } } as const;
    expect(() => planDrying({ ...question, ...wrong })).toThrow(message);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Food } from '../food.ts';
import { freshFor } from './fresh-for.ts';

const carrot: Food & { refuse?: number } = {
  ref: 'sr28:11124',
  name: 'carrot',
  source: 'test',
  composition: { WATER: 88 },
  sd: {},
  refuse: 11,
};

describe('fresh food for dried', () => {
  it('conserves dry matter, then adds the trim loss', () => {
    const needed = freshFor(50, carrot, 4);
    expect(needed.prepared).toBeCloseTo(400, 9);
    expect(needed.purchased).toBeCloseTo(400 / 0.89, 9);
    expect(needed).toMatchObject({ trimLoss: 11, note: expect.stringContaining('11 %') });
  });

  it('says that the trim loss is unknown, not that it is 0', () => {
    const { refuse: _, ...unknown } = carrot;
    const needed = freshFor(50, unknown, 4);
    expect(needed.prepared).toBeCloseTo(400, 9);
    expect(needed).not.toHaveProperty('purchased');
    expect(needed).not.toHaveProperty('trimLoss');
    expect(needed.note).toContain('unknown');
  });

  it('takes a printed 0 as 0', () => {
    const needed = freshFor(50, { ...carrot, refuse: 0 }, 4);
    expect(needed.purchased).toBe(needed.prepared);
    expect(needed.note).toContain('0 %');
  });

  it('needs twice as much for twice as much, and more the drier it gets', () => {
    const grams = fc.double({ min: 0.1, max: 1e4, noNaN: true });
    const moisture = fc.double({ min: 0, max: 87, noNaN: true });
    fc.assert(
      fc.property(grams, moisture, moisture, (g, a, b) => {
        const [drier, wetter] = [Math.min(a, b), Math.max(a, b)];
        const one = freshFor(g, carrot, drier).purchased!;
        expect(freshFor(2 * g, carrot, drier).purchased!).toBeCloseTo(2 * one, 6);
        expect(one).toBeGreaterThanOrEqual(freshFor(g, carrot, wetter).purchased!);
        expect(one).toBeGreaterThan(g);
      }),
    );
  });

  it.each([
    [{ composition: {} }, 50, 4, /composition.WATER is unknown/],
    [{}, -1, 4, /dried grams must be 0 or more/],
    [{}, Number.NaN, 4, /dried grams/],
    [{}, 50, 90, /moisture 90 .* not below the 88/],
    [{}, 50, -1, /moisture/],
    [{ refuse: 100 }, 50, 4, /refuse must be from 0 to below 100/],
  ])('refuses %j, %d g, %d %%', (change, grams, moisture, message) => {
    expect(() => freshFor(grams, { ...carrot, ...change }, moisture)).toThrow(RangeError);
    expect(() => freshFor(grams, { ...carrot, ...change }, moisture)).toThrow(message);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { combine } from './combine.ts';
import { pictureOf } from './picture.ts';
import type { FoodSource } from './source.ts';

const of = (id: string, figures: Partial<FoodSource>): FoodSource => ({
  id,
  name: id,
  basis: 'as fed',
  composition: {},
  sd: {},
  ...figures,
});
const sources = [
  of('table', { composition: { PROCNT: 12 }, sd: { PROCNT: 1 } }),
  of('label', { low: { PROCNT: 10 } }),
  of('silent', { composition: { FAT: 2 } }),
];

describe('the picture of a nutrient', () => {
  const picture = pictureOf('PROCNT', sources, combine('PROCNT', sources, 'mean', 'seed'), 'seed')!;

  it('has a row for each source that says anything', () => {
    expect(picture.rows).toEqual([
      { id: 'table', name: 'table', value: 12, low95: 12 - 1.96, high95: 12 + 1.96 },
      { id: 'label', name: 'label', low: 10 },
    ]);
  });

  it('has a row for all together, as wide as the next bag', () => {
    expect(picture.combined).toMatchObject({ value: 12, low: 10 });
    expect(picture.combined!.high95).toBeCloseTo(12 + 1.96, 12);
  });

  it('has an axis of round numbers', () => {
    expect(picture.ticks).toEqual([10, 11, 12, 13, 14]);
    expect(picture.domain).toEqual([picture.ticks[0], picture.ticks.at(-1)]);
    expect(picture.unit).toBe('g');
  });

  it('is none where no source says anything', () => {
    expect(pictureOf('CA', sources, undefined, 'seed')).toBeUndefined();
  });

  it('has every figure on its axis, and few ticks', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 1e-3, max: 5000, noNaN: true }), { minLength: 1, maxLength: 5 }),
        (values) => {
          const list = values.map((v, i) => of(String(i), { composition: { CA: v } }));
          const drawn = pictureOf('CA', list, combine('CA', list, 'mean', 'seed'), 'seed')!;
          const [from, to] = drawn.domain;
          expect(from).toBeGreaterThanOrEqual(0);
          expect(to).toBeGreaterThan(from);
          for (const row of [...drawn.rows, drawn.combined!]) {
            expect(row.low95!).toBeGreaterThanOrEqual(from - 1e-6 * to);
            expect(row.high95!).toBeLessThanOrEqual(to * (1 + 1e-6));
          }
          expect(drawn.ticks.length).toBeLessThanOrEqual(8);
        },
      ),
    );
  });
});

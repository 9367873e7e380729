import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Tag } from '../../nutrition/nutrients.ts';
import type { Comparison } from './compare-pairs.ts';
import { covers, fitSpread, LEVEL, median, sdOfLogs, TOO_WIDE, Z } from './fit.ts';
import type { Kind } from './pairs.ts';

const figure = (tag: Tag, kept: number, i = 0, kind: Kind = 'vegetable'): Comparison => ({
  pair: { plant: `plant ${i}`, kind, fresh: `f${i}`, dried: `d${i}` },
  tag,
  kept,
});
const figures = (tag: Tag, kept: readonly number[], kind: Kind = 'vegetable') =>
  kept.map((k, i) => figure(tag, k, i, kind));

describe('fitting', () => {
  it('takes the sd so that value +- 1.96 sd reaches the ranked deviation', () => {
    // Deviations 0.01 to 0.20; rank ceil(21 x 0.92) = 20, so the largest, 0.20.
    const kept = Array.from({ length: 20 }, (_, i) => 1 + (i + 1) / 100);
    const fit = fitSpread(figures('PROCNT', kept)).general.PROCNT!;
    expect(Math.ceil(21 * LEVEL)).toBe(20);
    expect(fit).toMatchObject({ figures: 20, from: 'PROCNT', kept: 1, basis: 'dry matter' });
    expect(fit.sd! * Z).toBeCloseTo(0.2, 3);
  });

  it('gives bounds only where the ratios scatter too widely', () => {
    const wide = Array.from({ length: 30 }, (_, i) => Math.exp((i - 14.5) / 7));
    const fit = fitSpread(figures('MN', wide)).general.MN!;
    expect(sdOfLogs(wide)).toBeGreaterThan(TOO_WIDE);
    expect(fit.sd).toBeNull();
    expect(fit.low).toBe(0);
    expect(fit.high).toBeLessThan(wide.at(-1)!);
  });

  it('takes the published factor for fruit, the median for the rest, and never more than all', () => {
    const spread = fitSpread([
      ...figures(
        'NIA',
        Array.from({ length: 15 }, (_, i) => 0.6 + i / 100),
      ),
      ...figures(
        'NIA',
        Array.from({ length: 15 }, () => 0.8),
        'fruit',
      ),
      ...figures(
        'PANTAC',
        Array.from({ length: 15 }, () => 1.5),
      ),
    ]);
    expect(spread.fruit.NIA).toMatchObject({ kept: 0.9, basis: 'published factor', figures: 15 });
    expect(spread.general.NIA).toMatchObject({ kept: 0.67, basis: 'median of the pairs', figures: 15 });
    expect(spread.fruit.PANTAC).toBeUndefined();
    expect(spread.general.PANTAC!.kept).toBe(1);
  });

  it('pools the class of a nutrient with few figures, and knows nothing of biotin', () => {
    const spread = fitSpread([
      ...figures(
        'FIBTG',
        Array.from({ length: 20 }, () => 1.1),
      ),
      figure('SUGAR', 0.5),
    ]);
    expect(spread.general.FIBTG).toMatchObject({ from: 'FIBTG', figures: 20 });
    expect(spread.general.SUGAR).toMatchObject({ from: 'FIBTG SUGAR STARCH', figures: 21 });
    expect(spread.general.BIOT).toBeUndefined();
  });

  it('covers at least the level of the figures it was fitted to, values and bounds', () => {
    const ratio = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(fc.array(ratio, { minLength: 12, maxLength: 60 }), (kept) => {
        const fit = fitSpread(figures('CA', kept)).general.CA!;
        const inside = kept.filter((k) => covers(fit, k)).length;
        return inside >= Math.floor(0.9 * kept.length);
      }),
    );
  });
});

describe('median', () => {
  it('is the middle, or the mean of the two', () => {
    expect(median([1, 2, 9])).toBe(2);
    expect(median([1, 2, 4, 9])).toBe(3);
    expect(median([7])).toBe(7);
  });
});

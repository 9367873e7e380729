/** Crude protein is nitrogen x 6.25: nothing but the factor changes, and the nitrogen stays. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crudeProtein, onCrudeProtein } from './crude-protein.ts';
import type { Figures } from './food.ts';

const amount = fc.double({ min: 0, max: 100, noNaN: true });
const factor = fc.double({ min: 3, max: 7, noNaN: true });
const figures: fc.Arbitrary<Figures & { proteinFactor: number }> = fc.record({
  composition: fc.record({ PROCNT: amount, FAT: amount }),
  sd: fc.record({ PROCNT: amount, FAT: amount }),
  low: fc.record({ PROCNT: amount, CA: amount }),
  proteinFactor: factor,
});
const near = (a: number, b: number) => Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(a));

describe('figures on crude protein', () => {
  test('keep their nitrogen, value and spread and bounds alike', () => {
    fc.assert(
      fc.property(figures, (f) => {
        const crude = onCrudeProtein(f);
        return (['composition', 'sd', 'low'] as const).every((part) =>
          near(crude[part]!.PROCNT! / 6.25, f[part]!.PROCNT! / f.proteinFactor),
        );
      }),
    );
  });

  test('once is as good as twice, and nothing else changes', () => {
    fc.assert(
      fc.property(figures, (f) => {
        const once = onCrudeProtein(f);
        expect(onCrudeProtein(once)).toBe(once);
        expect({ ...once.composition, PROCNT: 0 }).toEqual({ ...f.composition, PROCNT: 0 });
        expect({ ...once.low, PROCNT: 0 }).toEqual({ ...f.low, PROCNT: 0 });
      }),
    );
  });

  test('twice the protein is twice the crude protein', () => {
    fc.assert(
      fc.property(amount, factor, (protein, proteinFactor) => {
        const of = (PROCNT: number) =>
          crudeProtein({ composition: { PROCNT }, sd: {}, proteinFactor })!.value;
        return near(of(2 * protein), 2 * of(protein));
      }),
    );
  });

  test('say the same as the amount by itself', () => {
    fc.assert(
      fc.property(figures, (f) => {
        const crude = crudeProtein(f)!;
        expect(onCrudeProtein(f).composition.PROCNT).toBe(crude.value);
        expect(crude).toEqual({
          value: crude.value,
          low: crude.value,
          high: crude.value,
          sd: onCrudeProtein(f).sd.PROCNT,
        });
      }),
    );
  });
});

test('without a factor the amount stands as printed, between the least and the greatest factor published', () => {
  // Jones 1931: almond 5.18, milk 6.38.
  const printed: Figures = { composition: { PROCNT: 20 }, sd: {} };
  expect(onCrudeProtein(printed)).toBe(printed);
  const { value, low, high } = crudeProtein(printed)!;
  expect([value, low, high].map((v) => Number(v.toFixed(3)))).toEqual([20, 19.592, 24.131]);
});

test('no protein is no crude protein, not zero', () => {
  expect(crudeProtein({ composition: { FAT: 3 }, sd: {}, proteinFactor: 5.3 })).toBeUndefined();
  expect(onCrudeProtein({ composition: { FAT: 3 }, sd: {}, proteinFactor: 5.3 }).composition).toEqual({
    FAT: 3,
  });
});

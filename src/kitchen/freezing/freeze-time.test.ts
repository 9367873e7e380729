import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { goods, grams, packet } from '../../../test/kitchen/packets.ts';
import { coreCelsius } from './cooling.ts';
import { freezeAdvice } from './freeze-time.ts';
import { holdingDays } from './lethal-cold.ts';

describe('days in the freezer', () => {
  it('are those of common practice for packets of up to 5 kg at -18 °C', () => {
    fc.assert(
      fc.property(goods, fc.integer({ min: 50, max: 5000 }), (good, g) => {
        const advice = freezeAdvice(packet(g, good));
        expect(advice.days).toBe(4);
        expect(advice.sentence).toContain('common practice');
      }),
      { numRuns: 25 },
    );
  });

  it('are more for a sack, and more still after the figures for grain bins', () => {
    const sack = freezeAdvice(packet(25_000));
    expect(sack.days).toBe(5);
    expect(sack.sentence).toMatch(/^5 days: the core of this bag takes 1\.6 days \(at most 2\.4 days\)/);
    expect(freezeAdvice(packet(25_000), { lethal: 'bins' }).days).toBeGreaterThan(10);
  });

  it('cover cooling at its slowest and the holding time after it, and never fall short of the practice', () => {
    fc.assert(
      fc.property(
        goods,
        grams,
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: -30, max: -12 }),
        (good, g, common, air) => {
          const cooling = { ...packet(g, good), air };
          const advice = freezeAdvice(cooling, { common });
          expect(advice.days).toBeGreaterThanOrEqual(common);
          expect(Number.isInteger(advice.days)).toBe(true);
          const left = advice.days - advice.holding;
          expect(coreCelsius(cooling, left).high).toBeLessThanOrEqual(advice.core + 1e-3);
          expect(holdingDays(advice.core)!).toBeCloseTo(advice.holding, 9);
          // One day less would not do, unless the practice asks for it.
          if (advice.days > common)
            expect(coreCelsius(cooling, left - 1).high).toBeGreaterThan(advice.core - 1e-3);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('refuses a freezer too warm for any published figure', () => {
    expect(() => freezeAdvice({ ...packet(1000), air: -8 })).toThrow('set the freezer to -18 °C');
  });
});

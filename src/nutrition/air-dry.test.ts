import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AIR_DRY_WATER, airDryFactor, airDryPart, airDryWater, canBeAirDry } from './air-dry.ts';

const water = fc.double({ min: 0, max: 99.9, noNaN: true });

describe('a food counted air dry', () => {
  it('keeps its dry matter, and holds as much water as dry food', () => {
    // Cucumber, SR28 11205: 95.23 g water per 100 g.
    expect(airDryPart(95.23)).toBeCloseTo(4.77 / 90, 12);
    expect(airDryFactor(95.23)).toBeCloseTo(90 / 4.77, 12);
    expect(airDryWater(95.23)).toBe(10);
    fc.assert(
      fc.property(water, (w) => {
        expect(airDryPart(w) * (100 - airDryWater(w))).toBeCloseTo(100 - w, 9);
        expect(airDryPart(w) * airDryFactor(w)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('counts as it is where it is as dry already', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: AIR_DRY_WATER, noNaN: true }), (w) => {
        expect([airDryPart(w), airDryFactor(w), airDryWater(w)]).toEqual([1, 1, w]);
      }),
    );
  });

  it('counts as weighed where its water is not known, or it has no dry matter', () => {
    expect([airDryPart(undefined), airDryFactor(undefined)]).toEqual([1, 1]);
    expect([airDryPart(100), airDryFactor(100), airDryWater(100)]).toEqual([1, 1, 100]);
    expect([undefined, 100, 99, 0].map(canBeAirDry)).toEqual([false, false, true, true]);
  });
});

import { describe, expect, it } from 'vitest';
import { rescaleProtein } from './energy.ts';

describe('protein by another nitrogen factor', () => {
  it('keeps the nitrogen: 20.78 g by 5.30 are 24.5 g by 6.25', () => {
    // Sunflower kernel, SR28 12036, factor 5.30 (Jones 1931).
    expect(rescaleProtein(20.78, 5.3)).toBeCloseTo(24.505, 3);
    expect(rescaleProtein(rescaleProtein(12, 5.83), 6.25, 5.83)).toBeCloseTo(12, 12);
  });

  it.each([0, -6.25, Number.NaN, Number.POSITIVE_INFINITY])('refuses the factor %d', (factor) => {
    expect(() => rescaleProtein(10, factor)).toThrow(`a nitrogen factor must be above 0, not ${factor}`);
    expect(() => rescaleProtein(10, 6.25, factor)).toThrow(RangeError);
  });
});

import { describe, expect, it } from 'vitest';
import { holdingDays } from './lethal-cold.ts';

describe('time that kills', () => {
  it('meets the published figures and lies between them elsewhere', () => {
    expect([-10, -15, -20, -30].map((at) => holdingDays(at))).toEqual([22, 3, 1, 1]);
    expect([-5, -10, -15, -20].map((at) => holdingDays(at, 'bins'))).toEqual([84, 56, 28, 7]);
    expect(holdingDays(-17.5)).toBeCloseTo(Math.sqrt(3), 9);
    expect(holdingDays(-9)).toBeUndefined();
  });
});

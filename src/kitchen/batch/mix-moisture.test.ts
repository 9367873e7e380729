import { describe, expect, it } from 'vitest';
import type { NutrientLine } from '../../formulation/problem/result.ts';
import { MIX_MOISTURE, mixMoisture, moistureRule } from './mix-moisture.ts';

describe('moisture of a mix', () => {
  const line = (m: number, sd = 0, coverage = 100): NutrientLine => ({
    mix: m,
    ration: m,
    low: m,
    high: m,
    coverage,
    low_mix: m,
    high_mix: m,
    coverage_mix: coverage,
    sd_mix: sd,
    sd_ration: sd,
  });

  it('is held against the limit, as sure as it is known', () => {
    expect(mixMoisture(line(9, 0.5)).state).toBe('dry');
    expect(mixMoisture(line(11.8, 0.5)).state).toBe('unsure');
    expect(mixMoisture(line(12.1)).state).toBe('damp');
    expect(mixMoisture(line(12)).state).toBe('dry');
    expect(mixMoisture(line(9, 0, 80)).sentence).toMatch(/known for only 80 % of the mix/);
    expect(mixMoisture(line(13, 0, 80)).sentence).toMatch(/at least 13 % water/);
    expect(mixMoisture(undefined).state).toBe('unsure');
  });

  it('is a rule for formulation, with its source', () => {
    expect(moistureRule()).toEqual({
      nutrient: 'WATER',
      max: MIX_MOISTURE.most,
      on: 'mix',
      source: MIX_MOISTURE.source,
    });
    expect(moistureRule(11)).toEqual({ nutrient: 'WATER', max: 11, on: 'mix', source: 'as the keeper says' });
    expect(() => moistureRule(0)).toThrow(/must be above 0/);
  });
});

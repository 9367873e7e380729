import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import type { NutrientLine } from '../../formulation/problem/result.ts';
import { dayOf } from '../days.ts';
import { MIX_MOISTURE, mixMoisture, moistureRule, restingLimit } from './mix-moisture.ts';
import { type StoredFood, safeBelow } from './shelf-kind.ts';

const oats: StoredFood = {
  food: 'oats',
  name: 'Oats',
  group: 'seed',
  share: 60,
  fat: 6.9,
  water: 8.2,
  lots: [],
};
const carrot: StoredFood = {
  food: 'carrot',
  name: 'Carrot',
  group: 'vegetable',
  share: 30,
  fat: 1,
  water: 8,
  lots: [],
};

const days = fc.integer({ min: 19000, max: 22000 }).map(dayOf);

const lots = fc.array(
  fc
    .record({ boughtOn: days, bestBefore: fc.option(days, { nil: undefined }), frozen: fc.boolean() })
    .map(({ boughtOn, bestBefore, frozen }) =>
      lotOf({ id: `${boughtOn}${bestBefore}`, boughtOn, frozen, ...(bestBefore && { bestBefore }) }),
    ),
  { maxLength: 3 },
);

const foods: fc.Arbitrary<StoredFood> = fc.record({
  food: fc.constantFrom('a', 'b', 'c'),
  name: fc.constantFrom('Whole', 'Ground', 'Flaked'),
  group: fc.constantFrom('seed', 'nut', 'legume', 'vegetable', 'herb', 'fruit', 'animal', 'odd'),
  share: fc.constantFrom(0, 1, 20),
  fat: fc.double({ min: 0, max: 60, noNaN: true }),
  water: fc.double({ min: 0, max: 30, noNaN: true }),
  lots,
});

const mixes = fc.array(foods, { minLength: 1, maxLength: 6 }).filter((m) => m.some((f) => f.share > 0));

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

  it('rests between the limits of its foods, nearer to that of which there is more', () => {
    expect(restingLimit([oats, carrot])).toBeCloseTo((60 * 12 + 30 * 10) / 90, 12);
    fc.assert(
      fc.property(mixes, (all) => {
        const limits = all.filter((f) => f.share > 0).map((f) => safeBelow(f).most);
        const resting = restingLimit(all);
        expect(resting).toBeGreaterThanOrEqual(Math.min(...limits) - 1e-9);
        expect(resting).toBeLessThanOrEqual(Math.max(...limits) + 1e-9);
        // A mix of foods that are each dry enough is dry enough.
        const total = all.reduce((sum, f) => sum + f.share, 0);
        const water =
          all.reduce((sum, f) => sum + f.share * Math.min(f.water!, safeBelow(f).most), 0) / total;
        expect(water).toBeLessThanOrEqual(resting + 1e-9);
      }),
    );
    expect(() => restingLimit([])).toThrow(/nothing is in the mix/);
  });
});

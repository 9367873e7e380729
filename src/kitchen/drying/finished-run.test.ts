import { describe, expect, it } from 'vitest';
import { carrot } from '../../../test/kitchen/carrot-run.ts';
import { run } from '../../../test/kitchen/kilogram-run.ts';
import type { Food } from '../../foods/food.ts';
import { driedLot, finishedRun } from './finished-run.ts';

describe('a finished run', () => {
  it('gives moisture, verdict and composition in one', () => {
    const { keep, figures, ...actual } = finishedRun({ ...run, gramsAfter: 128 }, carrot);
    expect(actual.moisture).toBeCloseTo(100 - (1000 / 128) * (100 - carrot.composition.WATER!), 9);
    expect(figures.composition.WATER).toBe(actual.moisture);
    const factor = (100 - actual.moisture) / (100 - carrot.composition.WATER!);
    expect(figures.composition.PROCNT).toBeCloseTo(carrot.composition.PROCNT! * factor, 9);
    // Carrots differ by more than the table's mean can say.
    expect(actual.sd).toBeGreaterThan(1);
    expect(keep.state).toBe('unsure');
  });

  it('is sure where a sample of the fresh food was dried out', () => {
    const sample = finishedRun({ ...run, gramsAfter: 128 }, carrot, { freshMoisture: 88 });
    expect(sample.sd).toBe(0);
    expect(sample.moisture).toBeCloseTo(100 - (1000 / 128) * 12, 9);
    // What is in the dry matter is that of the table, whatever water the fresh food held.
    const factor = (100 - sample.moisture) / (100 - carrot.composition.WATER!);
    expect(sample.figures.composition.PROCNT).toBeCloseTo(carrot.composition.PROCNT! * factor, 9);
    const unknown: Food = { ref: 'mine', name: 'leaf', source: 'test', composition: { PROCNT: 2 }, sd: {} };
    const known = finishedRun({ ...run, gramsAfter: 128 }, unknown, { freshMoisture: 88 });
    expect(known.moisture).toBeCloseTo(sample.moisture, 9);
  });

  it('leaves a lot that names it', () => {
    const p = { id: 'l2', food: 'carrot', name: 'Carrot, dried', on: '2026-03-14', moisture: 8.5 };
    expect(driedLot({ ...run, gramsAfter: 128 }, p)).toMatchObject({
      grams: 128,
      form: 'dried',
      driedIn: 'r1',
      moisture: 8.5,
    });
  });

  it('asks for what is missing', () => {
    expect(() => finishedRun(run, carrot)).toThrow(/gramsAfter is missing/);
    expect(() => driedLot(run, { id: 'l', food: 'c', name: 'c', on: '2026-03-14', moisture: 8 })).toThrow(
      /gramsAfter/,
    );
    const unknown: Food = { ref: 'mine', name: 'leaf', source: 'test', composition: { PROCNT: 2 }, sd: {} };
    expect(() => finishedRun({ ...run, gramsAfter: 100 }, unknown)).toThrow(/composition.WATER is unknown/);
  });
});

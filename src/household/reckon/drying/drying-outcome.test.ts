import { describe, expect, it } from 'vitest';
import { carrot, house, lot, run } from '../../../../test/kitchen/carrot-run.ts';
import type { DryingRun, Lot } from '../../../kitchen/model.ts';
import { kindOf, outcomeOf } from './drying-outcome.ts';

describe('what came of it', () => {
  const p = { scaleStep: 1 };
  it('follows from the weights and the fresh food', () => {
    const damp = outcomeOf(house(), run, carrot, { ...p, grams: 90 });
    expect(damp.ok && damp.value.keep.state).toBe('damp');
    const swapped = outcomeOf(house(), run, carrot, { ...p, grams: 600 });
    expect(!swapped.ok && swapped.fault).toMatch(/^Weight after \(600 g\) is not below/);
    const lost = outcomeOf(house(), run, carrot, { ...p, grams: 20 });
    expect(!lost.ok && lost.fault).toMatch(/^Weight after \(20 g\) is less than the dry matter/);
    expect(outcomeOf(house(), run, undefined, p)).toMatchObject({ ok: false });
    const { WATER: _, ...unknown } = carrot.composition;
    const dry = { ...carrot, composition: unknown };
    expect(outcomeOf(house(), run, dry, { ...p, grams: 60 })).toMatchObject({ ok: false, needsSample: true });
    const sampled = outcomeOf(house(), { ...run, sample: { before: 20, dry: 2.4 } }, dry, {
      ...p,
      grams: 65,
    });
    expect(sampled.ok && sampled.value.moisture).toBeCloseTo(100 - (500 / 65) * 12, 9);
  });

  it('is exact but for the scale of the sample where the dried food itself was sampled', () => {
    const sample = { before: 20, dry: 18.8, of: 66 };
    const exact = outcomeOf(house(), { ...run, gramsAfter: 66, sample }, carrot, p);
    expect(exact.ok && exact.value.moisture).toBeCloseTo(6, 9);
    expect(exact.ok && exact.value.sd).toBe(0);
    const coarse = outcomeOf(house(), { ...run, gramsAfter: 66, sample: { ...sample, step: 1 } }, carrot, p);
    expect(coarse.ok && coarse.value.sd).toBeCloseTo(
      (100 / Math.sqrt(12)) * Math.hypot(1 / 20, 18.8 / 400),
      9,
    );
    // Dried on after the sample: both weighings of the whole count again.
    const later = outcomeOf(house(), { ...run, gramsAfter: 65, sample }, carrot, p);
    expect(later.ok && later.value.sd).toBeGreaterThan(0);
  });

  it('of the half dried counts with what it held, and the doubt of it', () => {
    const half: Lot = { ...lot, id: 'half', grams: 90, moisture: 34.94, driedIn: 'r1' };
    const first = { ...run, gramsAfter: 90, endedAt: 'x' };
    const again: DryingRun = { ...run, id: 'r2', lot: 'half', gramsBefore: 90, gramsTaken: 90 };
    const both = house({ lots: [lot, half], dryingRuns: [first, again] });
    const now = outcomeOf(both, again, carrot, { ...p, grams: 62 });
    expect(now.ok && now.value.moisture).toBeCloseTo(100 - (90 / 62) * (100 - 34.94), 9);
    const once = outcomeOf(house(), run, carrot, { ...p, grams: 62 });
    // One more weighing, no less doubt.
    expect(now.ok && once.ok && now.value.sd).toBeGreaterThanOrEqual(once.ok ? once.value.sd * 0.999 : 0);
  });

  it('knows what kind a fresh food is', () => {
    expect(kindOf(house(), 'carrot-dried', carrot)).toBe('vegetable');
    expect(kindOf(house(), 'x', { ...carrot, group: 'herb' })).toBe('herb');
  });
});

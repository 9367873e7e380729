import { describe, expect, it } from 'vitest';
import { house, lot, run } from '../../../../test/kitchen/carrot-run.ts';
import { leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import { nextCheck } from '../../../kitchen/drying/check-times.ts';
import { driedOn, lotFrom } from './dried-lot.ts';

describe('what a run leaves', () => {
  it('leaves one lot however often it is kept; damp only a fresh one in the freezer', () => {
    const done = { ...run, gramsAfter: 62 };
    const here = house({ dryingRuns: [done] });
    const dry = lotFrom(here, done, { moisture: 8.123456, on: '2026-03-14' });
    expect(dry).toMatchObject({
      form: 'dried',
      food: 'carrot-dried',
      driedIn: 'r1',
      moisture: 8.12,
      frozen: false,
    });
    expect(dry.name).toBe('Carrot, dried');
    expect(lotFrom({ ...here, lots: [lot, dry] }, done, { moisture: 8, on: '2026-03-14' }).id).toBe(dry.id);
    const damp = lotFrom(here, done, { moisture: 30, on: '2026-03-14', frozen: 'damp' });
    expect(damp).toMatchObject({ form: 'fresh', frozen: true, driedIn: 'r1' });
    // The fresh lot is used by what the run took of it.
    expect(leftOver({ lots: [lot, dry], runs: [done], batches: [] }).map((l) => l.grams)).toEqual([400, 62]);
  });

  it('dried on is a check with its weight', () => {
    const on = driedOn({ ...run, gramsAfter: 90 }, '2026-03-14T14:00:00.000Z');
    expect(on.gramsAfter).toBeUndefined();
    expect(on.checks.at(-1)).toMatchObject({ at: '2026-03-14T14:00:00.000Z', grams: 90 });
    expect(nextCheck(on)).toBe('2026-03-14T16:00:00.000Z');
  });
});

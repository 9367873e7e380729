import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { run } from '../../../../test/kitchen/carrot-run.ts';
import { nextCheck } from '../../../kitchen/drying/check-times.ts';
import { checkMoments } from './drying-checks.ts';

describe('the checks of a run', () => {
  it('go into a calendar, those that were first', () => {
    expect(checkMoments(run).map((t) => t.slice(11, 16))).toEqual(['10:00', '12:00', '14:00']);
    const late = { ...run, checks: [{ at: '2026-03-14T10:30:00.000Z' }] };
    expect(checkMoments(late).map((t) => t.slice(11, 16))).toEqual(['10:30', '12:30', '14:00']);
    const long = { ...run, checks: [{ at: '2026-03-14T15:30:00.000Z' }] };
    expect(checkMoments(long).map((t) => t.slice(11, 16))).toEqual(['15:30', '17:30']);
    expect(checkMoments({ ...late, gramsAfter: 60 })).toHaveLength(1);
  });

  it('always hold the next one, whatever was', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.array(fc.integer({ min: 1, max: 3000 })),
        (hours, minutes) => {
          const checks = [...minutes]
            .sort((a, b) => a - b)
            .map((m) => ({ at: new Date(Date.parse(run.startedAt) + m * 60_000).toISOString() }));
          const any = { ...run, hours, checks };
          const times = checkMoments(any);
          expect(times.length).toBeGreaterThan(checks.length);
          // The last may come sooner than two hours after: at the end of the time.
          expect(Date.parse(times[checks.length]!)).toBeLessThanOrEqual(Date.parse(nextCheck(any)!));
          expect([...times].sort()).toEqual(times);
        },
      ),
    );
  });
});

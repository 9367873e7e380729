import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { run } from '../../../test/kitchen/kilogram-run.ts';
import { CHECK_EVERY, checkTimes, nextCheck } from './check-times.ts';

describe('the checks', () => {
  it('come every two hours, the last at the end', () => {
    expect(checkTimes(run.startedAt, 5)).toEqual([
      '2026-03-14T10:00:00.000Z',
      '2026-03-14T12:00:00.000Z',
      '2026-03-14T13:00:00.000Z',
    ]);
    expect(checkTimes(run.startedAt, 6)).toHaveLength(3);
    expect(() => checkTimes('noon', 6)).toThrow(/"noon" is no time/);
  });

  it('are never further apart than that, and end with the time', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 40, noNaN: true }), (hours) => {
        const times = [run.startedAt, ...checkTimes(run.startedAt, hours)].map((t) => Date.parse(t) / 3.6e6);
        for (let i = 1; i < times.length; i++) {
          expect(times[i]! - times[i - 1]!).toBeLessThanOrEqual(CHECK_EVERY.hours + 1e-6);
          expect(times[i]!).toBeGreaterThanOrEqual(times[i - 1]!);
        }
        expect(Math.abs(times.at(-1)! - times[0]! - hours)).toBeLessThan(1e-6);
      }),
    );
  });

  it('are reckoned from the last one', () => {
    expect(nextCheck(run)).toBe('2026-03-14T10:00:00.000Z');
    const checks = [{ at: '2026-03-14T12:30:00.000Z' }, { at: '2026-03-14T10:15:00.000Z' }];
    expect(nextCheck({ ...run, checks })).toBe('2026-03-14T14:30:00.000Z');
    expect(nextCheck({ ...run, gramsAfter: 130 })).toBeUndefined();
  });
});

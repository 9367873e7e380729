/** Whatever the times of backups, the right ones are kept. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { draws } from '../../../test/draws.ts';
import type { Why } from './backup-name.ts';
import { KEPT, outlived } from './rotation.ts';

const HOUR = 3_600_000;
const START = Date.UTC(2026, 0, 5);
const auto = (ms: number) => ({ at: new Date(ms).toISOString(), why: 'auto' as Why });
const whys: readonly Why[] = ['auto', 'pressed', 'before-going-back', 'before-upgrade-5-6'];
/** Moments over two years, close together and far apart, none twice. */
const moments = fc.uniqueArray(
  fc.oneof(
    fc.integer({ min: 0, max: 400 }).map((h) => START + h * HOUR),
    fc.integer({ min: 0, max: 2 * 365 * 24 * 60 }).map((m) => START + m * 60_000),
  ),
  { maxLength: 150 },
);
const backups = moments.chain((all) =>
  fc.tuple(
    ...all.map((ms) => fc.constantFrom(...whys).map((why) => ({ at: new Date(ms).toISOString(), why }))),
  ),
);
const kept = <B extends { at: string; why: Why }>(all: readonly B[]) => {
  const gone = new Set(outlived(all));
  return all.filter((b) => !gone.has(b));
};

describe('rotation', () => {
  it('keeps the newest of each hour, day and week, as many as are asked for', () => {
    const hourly = Array.from({ length: 24 * 7 * 12 }, (_, h) => auto(START + h * HOUR));
    const left = kept(hourly);
    // The newest of the last day, week and hours coincide.
    const days = KEPT.days - 1;
    const weeks = KEPT.weeks - 2;
    expect(left.length).toBe(KEPT.hours + days + weeks);
    expect(left.at(-1)).toBe(hourly.at(-1));
    expect(left[0]?.at).toBe(new Date(START + (12 - KEPT.weeks + 1) * 7 * 24 * HOUR - HOUR).toISOString());
  });

  it('never drops the newest of a kind, nor keeps more than the numbers say', () => {
    fc.assert(
      fc.property(backups, (all) => {
        const left = kept(all);
        for (const why of whys) {
          const newest = all.filter((b) => b.why === why).sort((a, b) => (a.at < b.at ? 1 : -1))[0];
          if (newest) expect(left).toContain(newest);
        }
        const count = (why: Why) => left.filter((b) => b.why === why).length;
        expect(count('auto')).toBeLessThanOrEqual(KEPT.hours + KEPT.days + KEPT.weeks);
        expect(count('pressed')).toBeLessThanOrEqual(KEPT.pressed);
        expect(count('before-going-back')).toBeLessThanOrEqual(KEPT.beforeGoingBack);
      }),
      { numRuns: draws(2000, 100) },
    );
  });

  it('drops the same whether it is asked after each backup or once at the end', () => {
    fc.assert(
      fc.property(moments, (all) => {
        const sorted = [...all].sort((a, b) => a - b).map(auto);
        let left: typeof sorted = [];
        for (const backup of sorted) left = kept([...left, backup]);
        expect(left).toEqual(kept(sorted));
        expect(outlived(left)).toEqual([]);
      }),
      { numRuns: draws(1000, 60) },
    );
  });

  it('drops one only for a newer one of its hour, or when it is older than all that is kept by the hour', () => {
    fc.assert(
      fc.property(moments, (all) => {
        const list = all.map(auto);
        const left = kept(list);
        const hourOf = (b: { at: string }) => b.at.slice(0, 13);
        const hours = [...new Set(list.map(hourOf))].sort().reverse().slice(0, KEPT.hours);
        for (const gone of outlived(list)) {
          const newer = left.some((b) => hourOf(b) === hourOf(gone) && b.at > gone.at);
          expect(newer || !hours.includes(hourOf(gone))).toBe(true);
        }
      }),
      { numRuns: draws(1000, 60) },
    );
  });
});

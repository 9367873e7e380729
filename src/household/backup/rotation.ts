/** Which backups are kept: many new ones, fewer old ones. Pure. */
import type { NamedBackup, Why } from './backup-name.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
/** 1 January 1970 was a Thursday: three days later than the Monday that weeks begin on. */
const DAYS_AFTER_MONDAY = 3;

/**
 * Of those made by themselves: the newest of each of so many hours, days and weeks (UTC) in which there is one. Of the
 * others: so many of the newest. The one place where these numbers stand; common practice, no source.
 */
export const KEPT = {
  hours: 24,
  days: 14,
  weeks: 8,
  pressed: 20,
  beforeGoingBack: 10,
  beforeUpgrade: 5,
} as const;

const PERIODS: readonly { readonly kept: number; readonly of: (ms: number) => number }[] = [
  { kept: KEPT.hours, of: (ms) => Math.floor(ms / HOUR) },
  { kept: KEPT.days, of: (ms) => Math.floor(ms / DAY) },
  { kept: KEPT.weeks, of: (ms) => Math.floor((Math.floor(ms / DAY) + DAYS_AFTER_MONDAY) / 7) },
];

/** Those of a list of backups, in any order, that have had their time. */
export function outlived<B extends Pick<NamedBackup, 'at' | 'why'>>(backups: readonly B[]): B[] {
  const newestFirst = [...backups].sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
  const keep = new Set<B>();
  const auto = newestFirst.filter((b) => b.why === 'auto');
  for (const { kept, of } of PERIODS) {
    const met = new Set<number>();
    for (const backup of auto) {
      const period = of(Date.parse(backup.at));
      if (met.has(period) || met.size === kept) continue;
      met.add(period);
      keep.add(backup);
    }
  }
  const newest = (is: (why: Why) => boolean, kept: number) => {
    for (const backup of newestFirst.filter((b) => is(b.why)).slice(0, kept)) keep.add(backup);
  };
  newest((why) => why === 'pressed', KEPT.pressed);
  newest((why) => why === 'before-going-back', KEPT.beforeGoingBack);
  newest((why) => why.startsWith('before-upgrade-'), KEPT.beforeUpgrade);
  return backups.filter((b) => !keep.has(b));
}

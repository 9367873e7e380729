/** What explains a change of weight that is no alarm. */
import type { Level } from './base.ts';
import type { Circumstances } from './circumstances.ts';
import type { ExpectedChange } from './model.ts';

/** A change is told from so many days before, or as near to that as there are weighings, and from so much on. */
const BACK_DAYS = 28;
const LEAST_DAYS = 10;
const LEAST = 0.03;

/** @param steady levels by time @param today day number */
export function expectedChange(
  steady: readonly Level[],
  c: Circumstances,
  today: number,
): ExpectedChange | undefined {
  if (c.afterBirth(today)) return 'birth';
  if (c.carries(today)) return 'pregnancy';
  if (c.nurses(today)) return 'nursing';
  const now = steady.at(-1);
  if (!now || today - now.day > BACK_DAYS) return undefined;
  const before = steady.findLast(({ day }) => day <= now.day - BACK_DAYS) ?? steady[0];
  if (!before || before.day > now.day - LEAST_DAYS) return undefined;
  const change = now.y - before.y;
  if (change <= -LEAST && c.fallingDays(before.day, now.day) > 0) return 'autumn';
  if (change >= LEAST) return c.young(now.day) ? 'growth' : c.rising(now.day);
  return undefined;
}

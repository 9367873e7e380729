/** When to check what dries. */

import { plusHours } from '../days.ts';
import type { DryingRun, Moment } from '../model.ts';
import { WHOLE } from '../tolerances.ts';
import checks from './checks.json' with { type: 'json' };
import { above0 } from './moisture.ts';

/** Hours from one check to the next, and where that comes from. */
export const CHECK_EVERY: { readonly hours: number; readonly source: string } = {
  hours: checks.everyHours,
  source: checks.source,
};

/** When to check and turn: every {@link CHECK_EVERY} hours, the last at the end of the time. */
export function checkTimes(startedAt: Moment, hours: number): Moment[] {
  above0(hours, 'hours');
  const count = Math.ceil(hours / CHECK_EVERY.hours - WHOLE);
  return Array.from({ length: count }, (_, i) =>
    plusHours(startedAt, Math.min(hours, (i + 1) * CHECK_EVERY.hours)),
  );
}

/** When to check next: so long after the last check, or after the start; undefined when the run has ended. */
export function nextCheck(run: DryingRun): Moment | undefined {
  if (run.gramsAfter !== undefined || run.endedAt !== undefined) return undefined;
  const times = run.checks.map((check) => plusHours(check.at, CHECK_EVERY.hours));
  // ISO times in UTC, all written alike, sort as text.
  return times.concat(plusHours(run.startedAt, CHECK_EVERY.hours)).sort().at(-1);
}

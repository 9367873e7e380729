/** When to check what dries. */
import { CHECK_EVERY, checkTimes, nextCheck } from '../../../kitchen/drying/check-times.ts';
import type { DryingRun, Moment } from '../../../kitchen/model.ts';

/**
 * All checks of a run for a calendar: those that were made, then those to come till the expected end, at least the next.
 * The first stay the same from file to file, so that a later file changes entries and adds no others.
 */
export function checkMoments(run: DryingRun): Moment[] {
  const next = nextCheck(run);
  const been = run.checks.map((c) => c.at);
  if (next === undefined) return been;
  const end = Date.parse(run.startedAt) + (run.hours ?? CHECK_EVERY.hours) * 3_600_000;
  const last = Date.parse(next) - CHECK_EVERY.hours * 3_600_000;
  const hours = (end - last) / 3_600_000;
  // A run shorter than the time between checks, or longer than was expected, still gets its next check.
  if (hours <= CHECK_EVERY.hours) return [...been, next];
  return [...been, ...checkTimes(new Date(last).toISOString(), hours)];
}

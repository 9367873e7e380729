/** When to check a run, in words: said on the drying screen, and beside every other once it is due. */
import type { Household } from '../../household/model.ts';
import { runLines } from '../../household/reckon/drying/drying-runs.ts';
import { nextCheck } from '../../kitchen/drying/check-times.ts';
import type { DryingRun, Moment } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { clockOf, sayTime } from '../shared/words/clock.ts';

/** The next check of a run that goes on. */
interface CheckLine {
  readonly at: Moment;
  readonly due: boolean;
  /** "Look and turn at 14:30, in 1 h 12 min". */
  readonly words: string;
}

/** @param now ms since 1970 */
export function checkLine(run: DryingRun, now: number): CheckLine | undefined {
  const at = nextCheck(run);
  if (at === undefined) return undefined;
  const ms = Date.parse(at) - now;
  const due = ms <= 0;
  const t = words().supply.check;
  return {
    at,
    due,
    words: due ? t.dueSince(clockOf(at, now)) : t.next(clockOf(at, now), sayTime(ms)),
  };
}

/** Checks that are due, each under a key of its own. @param now ms since 1970 */
export function checksDue(house: Household, now: number): { readonly key: string; readonly words: string }[] {
  return runLines(house).flatMap(({ run, name }) => {
    const check = checkLine(run, now);
    return check?.due ? [{ key: `${run.id} ${check.at}`, words: words().supply.check.due(name) }] : [];
  });
}

/** New foods that are to be offered today. */
import type { Trial } from '../../../care/model.ts';
import { offerDue } from '../../../care/trials/plan.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';

/** A day that was missed is told for so many days; our own choice, no source. */
const TOLD = 7;

export interface TrialDue {
  readonly trial: Trial;
  /** The day on which it was to be offered. */
  readonly day: Day;
}

/** Whether a trial goes on: it was not ended, and the food has not upset the animal. */
export function goesOn(trial: Trial, today: Day): boolean {
  const [first] = trial.days;
  if (trial.endedOn !== undefined || trial.offerings.some((o) => o.seen === 'upset')) return false;
  const last = trial.days.at(-1);
  return first !== undefined && last !== undefined && first <= today && daysBetween(last, today) <= TOLD;
}

/** Those with an offer that has come due by their plan, as their page says it too. @param trials of one animal */
export function trialsDue(trials: readonly Trial[], today: Day): TrialDue[] {
  return trials.flatMap((trial) => {
    const due = goesOn(trial, today) ? offerDue(trial, today) : undefined;
    if (!due || due.late > TOLD) return [];
    const next = plusDays(today, -due.late);
    // Of several that were missed the last counts: more than one offer is not made up for.
    return [{ trial, day: trial.days.findLast((d) => d >= next && d <= today) ?? next }];
  });
}

/** New foods that are to be offered today. */
import type { Trial } from '../../../care/model.ts';
import { daysBetween } from '../../../kitchen/days.ts';
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

/** Those with a day that has come and on which, or after which, nothing was offered yet. @param trials of one animal */
export function trialsDue(trials: readonly Trial[], today: Day): TrialDue[] {
  return trials.flatMap((trial) => {
    if (!goesOn(trial, today)) return [];
    const day = trial.days.findLast((d) => d <= today);
    if (day === undefined || daysBetween(day, today) > TOLD) return [];
    return trial.offerings.some((o) => o.on >= day) ? [] : [{ trial, day }];
  });
}

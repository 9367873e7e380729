/** New foods that are to be offered today. */
import type { Trial } from '../../../care/model.ts';
import { isRunning, nextOffer, offerDue } from '../../../care/trials/plan.ts';
import type { Day } from '../../../kitchen/model.ts';

/** An offer that was missed is told for so many days; our own choice, no source. */
const TOLD = 7;

export interface TrialDue {
  readonly trial: Trial;
  /** The day on which it was to be offered. */
  readonly day: Day;
}

/** Whether a food is being tried: an offer was noted or is due, and it has not upset the animal. */
export function goesOn(trial: Trial, today: Day): boolean {
  if (!isRunning(trial) || trial.offerings.some((o) => o.seen === 'upset')) return false;
  const due = offerDue(trial, today);
  return due ? due.late <= TOLD : trial.offerings.length > 0;
}

/** Those with an offer that is due today or was missed in the last days. @param trials of one animal */
export function trialsDue(trials: readonly Trial[], today: Day): TrialDue[] {
  return trials.flatMap((trial) => {
    const due = offerDue(trial, today);
    const day = nextOffer(trial);
    return due && day !== undefined && goesOn(trial, today) ? [{ trial, day }] : [];
  });
}

/** How many whole days each kind of step of a kitchen plan takes: as usual, and at the shortest. */

import { CHANGE_DAYS } from '../feeding/change-days.ts';
import { COMMON_DAYS } from '../freezing/freeze-time.ts';

/** What is done in a step. */
export type StepKind = 'buy' | 'freeze' | 'thaw' | 'dry' | 'weigh' | 'change-over';

/** Whole days that each kind of step takes. */
export interface StepDays {
  /** 0: what is bought goes into the freezer or the oven on the same day. */
  readonly buy: number;
  readonly freeze: number;
  readonly thaw: number;
  readonly dry: number;
  readonly weigh: number;
  readonly 'change-over': number;
}

/** Usual lengths (common practice, no source): freezing and thawing take 3 to 4 days, a change of food 10 to 14. */
export const STEP_DAYS: StepDays = {
  buy: 0,
  freeze: COMMON_DAYS,
  thaw: COMMON_DAYS,
  dry: 1,
  weigh: 1,
  'change-over': CHANGE_DAYS.usual,
};

/** The shortest that is still common practice (no source). */
export const SHORTEST_DAYS: StepDays = {
  buy: 0,
  freeze: 3,
  thaw: 3,
  dry: 1,
  weigh: 1,
  'change-over': CHANGE_DAYS.least,
};

/** Twice into the freezer and out, since eggs inside kernels outlive the first time (common practice, no source). */
export const FREEZE_ROUNDS = 2;

/** Longer than any step of a kitchen: more is a slip of the pen. */
const MOST_DAYS = 366;

/** Days of every kind of step: those given, else the usual. @throws RangeError where one is no whole number of days */
export function stepDays(days: Partial<StepDays> = {}): StepDays {
  const all = { ...STEP_DAYS, ...days };
  for (const [kind, value] of Object.entries(all)) checkDays(value, `days.${kind}`);
  return all;
}

/** @param field named in the error @throws RangeError where that is no whole number of days of a kitchen's step */
export function checkDays(value: number, field: string): void {
  if (!Number.isInteger(value) || value < 0 || value > MOST_DAYS)
    throw new RangeError(`${field}: ${value} is no whole number of days from 0 to ${MOST_DAYS}; give one`);
}

/** When a new food is offered, and how much of it; what is noted, and when a trial is over. */
import { daysBetween, plusDays } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { withoutFloatNoise } from '../../kitchen/rounding.ts';
import type { Offering, Trial } from '../model.ts';

/** Numbers of offers that a plan may have; what it has unless chosen (common practice, no source). */
export const OFFERS = [3, 4, 5] as const;
export const USUAL_OFFERS = 4;

/** Days from one offer to the next: a day between shows whether it did well (common practice, no source). */
const APART = 2;

/** g to offer each time for 100 g of body weight: some tenth of what it eats in a day (common practice, no source). */
export const PER_100_GRAMS = 0.5;
/** No kitchen scale tells less, g. */
const LEAST_OFFER = 0.1;

/** @param from the first day @param offers number of them, 1 or more */
export function trialDays(from: Day, offers: number): Day[] {
  return Array.from({ length: offers }, (_, k) => plusDays(from, k * APART));
}

/** g to offer each time, in tenths. @param body g that the animal weighs, above 0 */
export function trialGrams(body: number): number {
  return withoutFloatNoise(Math.max(LEAST_OFFER, Math.round((body * PER_100_GRAMS) / 10) / 10));
}

export function isRunning({ endedOn }: Trial): boolean {
  return endedOn === undefined;
}

/** The trial that an animal has running; undefined where it has none. One at a time: else nobody knows what upset it. */
export function runningTrial(trials: readonly Trial[], animalId: string): Trial | undefined {
  return trials.find((t) => t.animalId === animalId && isRunning(t));
}

/**
 * The day of the next offer: the next of the plan, later where the last one came late. In the past where it was missed;
 * undefined where the trial ended, or every planned offer was noted.
 */
export function nextOffer(trial: Trial): Day | undefined {
  const { days, offerings } = trial;
  const planned = days[offerings.length];
  if (!isRunning(trial) || planned === undefined) return undefined;
  const last = offerings
    .map((o) => o.on)
    .sort()
    .at(-1);
  const rested = last === undefined ? planned : plusDays(last, APART);
  const [, later] = [planned, rested].sort();
  return later;
}

/** Whether an offer is due on a day, and how many days it is late. */
export function offerDue(trial: Trial, today: Day): { readonly late: number } | undefined {
  const next = nextOffer(trial);
  return next === undefined || next > today ? undefined : { late: daysBetween(next, today) };
}

/**
 * The trial with what was seen on a day, in the place of what was noted of that day before. An upset ends it on that day:
 * nothing more is to be offered.
 */
export function noted(trial: Trial, seen: Offering): Trial {
  const offerings = [...trial.offerings.filter((o) => o.on !== seen.on), seen].sort((a, b) =>
    a.on < b.on ? -1 : 1,
  );
  const next = { ...trial, offerings };
  return seen.seen === 'upset' && isRunning(trial) ? { ...next, endedOn: seen.on } : next;
}

/** The trial without what was noted of a day. What an upset ended goes on, unless another trial runs by now. */
export function unnoted(trial: Trial, on: Day, otherRuns: boolean): Trial {
  const gone = trial.offerings.find((o) => o.on === on);
  const next = { ...trial, offerings: trial.offerings.filter((o) => o.on !== on) };
  if (gone?.seen !== 'upset' || trial.endedOn !== on || otherRuns) return next;
  const { endedOn: _, ...open } = next;
  return open;
}

/**
 * The trial with more days to offer on. Those of the plan that were not used go; the days on which it was offered stand in
 * their place, so that the next offer is the first of the new ones. @param from no earlier than this
 */
export function prolonged(trial: Trial, offers: number, from: Day): Trial {
  const used = trial.offerings.map((o) => o.on).sort();
  const last = used.at(-1);
  const rested = last === undefined ? from : plusDays(last, APART);
  return { ...trial, days: [...used, ...trialDays(rested > from ? rested : from, offers)] };
}

/** Ticking off what an animal was fed, and taking that back. */
import { type Feeding, feedingId } from '../../../care/model.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';
import type { DailyMeal } from './daily-meal.ts';

/** Whoever has not ticked a feeding for longer than that does not do so, days; our own choice, no source. */
const GIVEN_UP = 7;

/** Whether the whole meal is known in grams: else there is nothing to tick. */
export function isWeighed(meal: DailyMeal): boolean {
  const { mix, beside } = meal;
  return (mix !== undefined || beside.length > 0) && (!mix || mix.grams !== undefined) && beside.every(known);
}

/**
 * The record of a day with its meal ticked off. What was noted of it already stays.
 * @param meal known in grams, as {@link isWeighed} says @param kept what is on record of that day
 */
export function ticked(
  animalId: string,
  meal: DailyMeal,
  p: { readonly on: Day; readonly at: Moment; readonly kept: Feeding | undefined },
): Feeding {
  const { on, at, kept } = p;
  if (kept && (kept.mix || kept.beside.length > 0)) return { ...kept, at };
  const { mix, old, beside } = meal;
  return {
    ...(kept ?? { id: feedingId(animalId, on), animalId, on }),
    at,
    // A record names one batch: while food changes, what comes from the batch before counts with the new one.
    ...(mix?.grams !== undefined && {
      mix: { batchId: mix.batch.id, grams: inTenths(mix.grams + (old?.grams ?? 0)) },
    }),
    beside: beside.flatMap(({ food, grams, lot }) =>
      grams === undefined ? [] : [{ food, ...(lot && { lot: lot.id }), grams: inTenths(grams) }],
    ),
  };
}

/** The record without its tick; undefined where nothing else was noted of that day, and it goes. */
export function unticked(feeding: Feeding): Feeding | undefined {
  if (!feeding.left) return undefined;
  const { at: _, ...rest } = feeding;
  return rest;
}

/** Whether the keeper ticks feedings: they did so in the last days. @param feedings of one animal */
export function ticksFeeding(feedings: readonly Feeding[], today: Day): boolean {
  return feedings.some(({ on, at }) => at !== undefined && on < today && daysBetween(on, today) <= GIVEN_UP);
}

function known({ grams }: DailyMeal['beside'][number]): boolean {
  return grams !== undefined;
}

/** A kitchen scale shows no more of a meal. */
function inTenths(grams: number): number {
  return Math.round(grams * 10) / 10;
}

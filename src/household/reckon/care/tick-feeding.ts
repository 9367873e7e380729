/** Ticking off what an animal was fed, and taking that back. */
import { type Feeding, feedingId } from '../../../care/model.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';
import type { DailyMeal } from './daily-meal.ts';

/** Whoever has not ticked a feeding for longer than that does not do so, days; our own choice, no source. */
const GIVEN_UP = 7;

/** Whether the whole meal is known in grams: else there is nothing to tick. */
export function isWeighed({ mix, old, beside }: DailyMeal): boolean {
  const parts = [...(mix ? [mix] : []), ...(old ? [old] : []), ...beside];
  return parts.length > 0 && parts.every((part) => part.grams !== undefined);
}

/**
 * The record of a day with its meal ticked off. What was noted of it already stays.
 * @param meal known in grams, as {@link isWeighed} says @param p.kept what is on record of that day
 */
export function ticked(
  animalId: string,
  meal: DailyMeal,
  p: { readonly on: Day; readonly at: Moment; readonly kept: Feeding | undefined },
): Feeding {
  const { on, at, kept } = p;
  if (kept && (kept.mix || kept.beside.length > 0)) return { ...kept, at };
  const mix = mixOf(meal);
  return {
    ...(kept ?? { id: feedingId(animalId, on), animalId, on }),
    at,
    ...(mix && { mix }),
    beside: meal.beside.flatMap(({ food, grams, lot }) =>
      grams === undefined ? [] : [{ food, ...(lot && { lot: lot.id }), grams: inTenths(grams) }],
    ),
  };
}

/**
 * The mix of a day. While one batch gives way to another, both are fed, and a record names one batch alone: the larger part
 * where both are of one mix; none where they are not, for then nobody could say what lay in the bowl.
 */
function mixOf({ mix, old }: DailyMeal): Feeding['mix'] {
  if (mix?.grams === undefined) return undefined;
  const grams = inTenths(mix.grams + (old?.grams ?? 0));
  if (!old) return { batchId: mix.batch.id, grams };
  if (mix.batch.mixId === undefined || old.batch.mixId !== mix.batch.mixId) return { grams };
  return { batchId: (mix.grams >= (old.grams ?? 0) ? mix : old).batch.id, grams };
}

/** The record without its tick; undefined where nothing else was noted of that day, and it goes. */
export function unticked(feeding: Feeding): Feeding | undefined {
  if (!feeding.left) return undefined;
  const { at: _, ...rest } = feeding;
  return rest;
}

/** Whether the keeper ticks feedings: they did so in the last days. @param feedings of one animal */
export function ticksFeeding(feedings: readonly Feeding[], today: Day): boolean {
  const since = plusDays(today, -GIVEN_UP);
  return feedings.some(({ on, at }) => at !== undefined && on < today && on >= since);
}

/** A kitchen scale shows no more of a meal. */
function inTenths(grams: number): number {
  return Math.round(grams * 10) / 10;
}

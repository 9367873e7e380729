/** Noting what was left: which night, what had been offered, and the record that is kept. */
import { type Feeding, feedingId, type OfferedBeside, type Remains } from '../../../care/model.ts';
import type { Animal, Household } from '../../../household/model.ts';
import type { DailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import { type MixKnown, offeredOf } from '../../../household/reckon/care/offered.ts';
import { feedingOn, feedingsOf } from '../../../household/reckon/care/records-of.ts';
import { mixesOf } from '../../../household/reckon/mix/refusals.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';

/** Nights back that may be chosen. */
const BACK = 13;

/** The days whose food may have been left, the latest first. */
export function nightsToChoose(today: Day): Day[] {
  return Array.from({ length: BACK + 1 }, (_, i) => plusDays(today, -i));
}

/**
 * The night that is asked about at first: yesterday's food, as it is looked at in the morning; today's where yesterday's was
 * noted and today's was ticked off.
 */
export function nightToNote(house: Pick<Household, 'feedings'>, animalId: string, today: Day): Day {
  const yesterday = plusDays(today, -1);
  if (!feedingOn(house, animalId, yesterday)?.left?.bowl) return yesterday;
  const fed = feedingOn(house, animalId, today);
  return fed && offersFood(fed) && !fed.left?.bowl ? today : yesterday;
}

/** What was offered, as it is about to be kept. */
export interface Offer {
  readonly mix?: NonNullable<Feeding['mix']>;
  readonly beside: readonly OfferedBeside[];
  /** It was ticked off, it is the usual meal, or nobody has said. */
  readonly from: 'ticked' | 'usual' | 'nobody';
}

export const gramsOffered = ({ mix, beside }: Pick<Offer, 'mix' | 'beside'>): number =>
  beside.reduce((sum, b) => sum + b.grams, mix?.grams ?? 0);

const offersFood = (feeding: Feeding) => gramsOffered(feeding) > 0;

/** What was ticked off that day; else the usual meal; else its foods with no grams, to be filled in. */
export function offerFor(
  house: Pick<Household, 'feedings' | 'mixes'>,
  animal: Animal,
  on: Day,
  usual: DailyMeal | undefined,
): Offer {
  const fed = feedingOn(house, animal.id, on);
  if (fed && offersFood(fed)) return { ...(fed.mix && { mix: fed.mix }), beside: fed.beside, from: 'ticked' };
  const [mix] = mixesOf(house.mixes, animal.id);
  const beside = usual?.beside ?? (mix?.problem.beside ?? []).map((b) => ({ food: b.id }));
  const offer = {
    mix: {
      ...(usual?.mix && { batchId: usual.mix.batch.id }),
      grams: tenths(usual?.mix?.grams ?? 0),
    },
    beside: beside.map(
      (b): OfferedBeside => ({
        food: b.food,
        grams: tenths('grams' in b ? (b.grams ?? 0) : 0),
      }),
    ),
  };
  return { ...offer, from: gramsOffered(offer) > 0 ? 'usual' : 'nobody' };
}

/** A usual meal is worked out from shares; nobody weighs it finer than this. */
const tenths = (grams: number) => Math.round(grams * 10) / 10;

/** One food to be weighed or named among left-overs; the id under which it is kept. */
export interface LeftFood {
  readonly id: string;
  readonly name: string;
  /** g offered. */
  readonly grams: number;
}

/** The foods of an offer, each once, the most of them first; and what is known of the mix. */
export function foodsOf(
  house: Household,
  animalId: string,
  offer: Offer,
): { readonly foods: readonly LeftFood[]; readonly mix: MixKnown } {
  const { foods, mix } = offeredOf(house, { animalId, ...offer });
  const all = new Map<string, LeftFood>();
  for (const { food, made, name, grams } of foods) {
    const before = all.get(food);
    all.set(food, {
      id: before?.id ?? made.id,
      name: before?.name ?? name,
      grams: (before?.grams ?? 0) + grams,
    });
  }
  return { foods: [...all.values()].sort((a, b) => b.grams - a.grams), mix };
}

/** What of a night is about to be kept. */
interface Noted {
  readonly animalId: string;
  readonly on: Day;
  readonly today: Day;
  readonly offer: Offer;
  readonly since?: Day;
}

/** The record of a night with what was left of it; a hoard that was noted stays. */
export function withBowl(before: Feeding | undefined, noted: Noted, bowl: Remains): Feeding {
  const { since, on } = noted;
  const { since: _, ...left } = before?.left ?? { on: lookedOn(noted) };
  return {
    ...fedAs(before, noted),
    left: { ...left, ...(since !== undefined && since < on && { since }), bowl },
  };
}

/** The record of a night with the hoard that was found after it; it says nothing of what was offered. */
export function withHoard(before: Feeding | undefined, noted: Noted, hoard: Remains): Feeding {
  const { animalId, on } = noted;
  const fed = before ?? { id: feedingId(animalId, on), animalId, on, beside: [] };
  return { ...fed, left: { ...(fed.left ?? { on: lookedOn(noted) }), hoard } };
}

/** The record of a night without left-overs; undefined where then nothing is left of it. */
export function withoutLeft({ left: _, ...fed }: Feeding): Feeding | undefined {
  return fed.at !== undefined ? fed : undefined;
}

function fedAs(before: Feeding | undefined, { animalId, on, offer }: Noted): Feeding {
  const { mix: _, ...rest } = before ?? { id: feedingId(animalId, on), animalId, on, beside: [] };
  return {
    ...rest,
    ...(offer.mix && offer.mix.grams > 0 && { mix: offer.mix }),
    beside: offer.beside.filter((b) => b.grams > 0),
  };
}

/** Left-overs are looked at the day after, but not later than today. */
function lookedOn({ on, today }: Noted): Day {
  const next = plusDays(on, 1);
  return next <= today ? next : today < on ? on : today;
}

/** Nights of which something was noted, the latest first. */
export function nightsNoted(house: Pick<Household, 'feedings'>, animalId: string): Feeding[] {
  return feedingsOf(house, animalId)
    .filter((f) => f.left?.bowl || f.left?.hoard)
    .reverse();
}

/** Days from which left-overs may have been taken together with those of a night: back to the last that was noted, at most a week. */
export function sinceChoices(house: Pick<Household, 'feedings'>, animalId: string, on: Day): Day[] {
  const last = feedingsOf(house, animalId)
    .filter((f) => f.on < on && f.left?.bowl)
    .at(-1)?.on;
  const most = last === undefined ? 6 : Math.min(6, daysBetween(last, on) - 1);
  return Array.from({ length: Math.max(0, most) }, (_, i) => plusDays(on, -1 - i));
}

/** g of remains, where they can be told: weighed as a whole, or all of it sorted. */
export function gramsOf(remains: Remains): number | undefined {
  const parts = Object.values(remains.parts ?? {}).reduce((sum, g) => sum + g, 0);
  if (remains.sorted) return parts;
  return remains.grams;
}

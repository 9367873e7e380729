/** What may have been eaten: what was offered, less every way of filling the piles that were found. */
import { dearestFilling, type Pile, type Range, sumOf } from './pile.ts';
import type { OfferedFood } from './pile-of.ts';

/** Every way in which the foods can have been eaten, g of each, in the order in which they were offered. */
export interface IntakeSet {
  readonly offered: readonly OfferedFood[];
  /** What was not eaten. Of several piles each is filled by itself, so bounds over them may be a little wide. */
  readonly piles: readonly Pile[];
}

/** One number for each food of each set. */
export type Worth = readonly (readonly number[])[];

/** Last digits of sums. */
const CRUMB = 1e-9;

/** g of each food where what was eaten is worth the most. @param worth of one gram of each food */
function dearestIntake({ offered, piles }: IntakeSet, worth: readonly number[]): number[] {
  const least = worth.map((w) => -w);
  const eaten = offered.map((f) => f.grams);
  for (const pile of piles)
    dearestFilling(pile, least).forEach((grams, i) => {
      eaten[i] = (eaten[i] ?? 0) - grams;
    });
  return eaten;
}

function worthOf(eaten: Worth, worth: Worth): number {
  let sum = 0;
  eaten.forEach((grams, s) => {
    const each = worth[s] ?? [];
    grams.forEach((g, i) => {
      sum += g * (each[i] ?? 0);
    });
  });
  return sum;
}

/** The most that what was eaten of all sets together can be worth: exact for sets of one pile. */
function greatest(sets: readonly IntakeSet[], worth: Worth): number {
  const eaten = sets.map((set, s) => dearestIntake(set, worth[s] ?? []));
  return worthOf(eaten, worth);
}

const negative = (worth: Worth): Worth => worth.map((each) => each.map((w) => -w));

/** A number without the dust of subtraction. */
const clean = (value: number) => (Math.abs(value) < CRUMB ? 0 : value);

/** Least and most of each food that were eaten in one set, g. */
export function eatenByFood(set: IntakeSet): Range[] {
  return set.offered.map((food, f) => {
    const worth = set.offered.map((_, i) => (i === f ? 1 : 0));
    const most = dearestIntake(set, worth)[f] ?? 0;
    const least =
      dearestIntake(
        set,
        worth.map((w) => -w),
      )[f] ?? 0;
    return within(least, most, food.grams);
  });
}

/** Least and most that were eaten of all foods together, g. */
export function eatenInAll(sets: readonly IntakeSet[]): Range {
  const ones = sets.map((set) => set.offered.map(() => 1));
  const most = greatest(sets, ones);
  const least = -greatest(sets, negative(ones));
  return within(least, most, sumOf(sets.flatMap((set) => set.offered.map((f) => f.grams))));
}

function within(least: number, most: number, offered: number): Range {
  const low = Math.min(offered, Math.max(0, clean(least)));
  return { low, high: Math.max(low, Math.min(offered, clean(most))) };
}

/** Between which ends an amount lies in 100 g of each food of each set; equal ends where it is known. */
export type AmountsIn = readonly (readonly Range[])[];

/** Least and most of a nutrient that was eaten, in the unit of the amounts. An unknown amount counts at both its ends. */
export function nutrientEaten(sets: readonly IntakeSet[], amounts: AmountsIn): Range {
  const per = (end: keyof Range): Worth => amounts.map((foods) => foods.map((a) => a[end] / 100));
  const low = Math.max(0, clean(-greatest(sets, negative(per('low')))));
  return { low, high: Math.max(low, clean(greatest(sets, per('high')))) };
}

/**
 * Least and most of a nutrient in 100 g of what was eaten; undefined where nothing can have been eaten. A quotient of two
 * sums has its ends where a weighted difference of them is greatest, so it is found by {@link greatestRatio}.
 */
export function contentEaten(sets: readonly IntakeSet[], amounts: AmountsIn): Range | undefined {
  const ones = sets.map((set) => set.offered.map(() => 1));
  if (sets.every((set) => set.piles.length === 0)) {
    const whole = eatenInAll(sets).high;
    const { low, high } = nutrientEaten(sets, amounts);
    return whole > 0 ? { low: (100 * low) / whole, high: (100 * high) / whole } : undefined;
  }
  const ends = (end: keyof Range): Worth => amounts.map((foods) => foods.map((a) => a[end]));
  const most = greatestRatio(sets, ends('high'), ones);
  const least = greatestRatio(sets, negative(ends('low')), ones);
  if (!most || !least) return undefined;
  const all = amounts.flat();
  const low = Math.max(-least.value, Math.min(...all.map((a) => a.low)));
  return { low, high: Math.max(low, Math.min(most.value, Math.max(...all.map((a) => a.high)))) };
}

/** Turns of the search for a ratio; it ends by itself after a handful. */
const MOST_TURNS = 200;

/**
 * The greatest quotient of two sums over what was eaten, and where it is: Dinkelbach's way (1967, Management Science
 * 13:492-498), each turn of which is exact for sets of one pile. Undefined where the lower sum can only be nothing.
 * @param bottom 0 or more for each food
 */
export function greatestRatio(
  sets: readonly IntakeSet[],
  top: Worth,
  bottom: Worth,
): { readonly value: number; readonly eaten: Worth } | undefined {
  let eaten = sets.map((set, s) => dearestIntake(set, bottom[s] ?? []));
  const whole = worthOf(eaten, bottom);
  if (!(whole > CRUMB)) return undefined;
  let value = worthOf(eaten, top) / whole;
  for (let turn = 0; turn < MOST_TURNS; turn++) {
    const worth = top.map((foods, s) => foods.map((t, i) => t - value * (bottom[s]?.[i] ?? 0)));
    const next = sets.map((set, s) => dearestIntake(set, worth[s] ?? []));
    const gain = worthOf(next, worth);
    const under = worthOf(next, bottom);
    const scale = Math.max(1, Math.abs(value)) * whole;
    if (gain <= 1e-12 * scale) break;
    // Only piles that are filled each by itself can ask for more than there was: then nothing bounds the quotient.
    if (under <= 0) return { value: Number.POSITIVE_INFINITY, eaten };
    const better = worthOf(next, top) / under;
    if (better <= value) break;
    value = better;
    eaten = next;
  }
  return { value, eaten };
}

/** Least and most of a nutrient that was not eaten: what lay in the piles. With known amounts it is what was offered less what was eaten. */
export function nutrientLeft(sets: readonly IntakeSet[], amounts: AmountsIn): Range {
  const most = (worth: Worth) =>
    sumOf(
      sets.flatMap((set, s) =>
        set.piles.map((pile) => {
          const each = worth[s] ?? [];
          return sumOf(dearestFilling(pile, each).map((g, i) => g * (each[i] ?? 0)));
        }),
      ),
    );
  const per = (end: keyof Range): Worth => amounts.map((foods) => foods.map((a) => a[end] / 100));
  const low = Math.max(0, clean(-most(negative(per('low')))));
  return { low, high: Math.max(low, clean(most(per('high')))) };
}

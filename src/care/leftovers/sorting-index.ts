/**
 * Which foods are picked out and which are left: the sorting index, 100 x actual over predicted intake, where the
 * predicted intake of a food is its share of what was offered times all that was eaten (Leonardi and Armentano 2003,
 * J. Dairy Sci., there for the particle sizes of a cow's feed). 100: eaten as offered; above: picked out.
 */
import { greatestRatio, type IntakeSet, type Worth } from './intake-set.ts';
import { type Range, sumOf } from './pile.ts';
import { tQuantile } from './student-t.ts';

/** "picked": eaten before others; "left": left before others; "even": as offered; "unclear": cannot be told yet. */
export type Leaning = 'picked' | 'left' | 'even' | 'unclear';

export interface SortingIndex {
  readonly food: string;
  /** The index; its middle where what was left was not sorted. */
  readonly value: number;
  /** Between which ends it lies for these very nights, since not all was sorted; equal where it was. */
  readonly bounds: Range;
  /** Between which ends it lies for nights like these, with a chance of 95 %; undefined after a single night. */
  readonly span?: Range;
  /** Nights, or stretches of nights, that it rests on. */
  readonly nights: number;
  readonly leaning: Leaning;
}

/** How far off 100 an index must be to be worth a word (our own choice). */
const NOTABLE = 10;
const CHANCE = 0.975;

/**
 * The index of one food over all nights: a ratio of sums, so that a night on which little was eaten counts for little.
 * Its span rests on how the nights differ (ratio estimator, variance n / (n - 1) x sum (actual - R x predicted)^2 /
 * (sum predicted)^2, Student's t with n - 1 degrees of freedom: Cochran, Sampling Techniques, ch. 6, from memory), put
 * outside of the bounds that unsorted left-overs give.
 * @param sets what was eaten, one a night @returns undefined where it was never offered beside another, or nothing eaten
 */
export function sortingIndex(sets: readonly IntakeSet[], food: string): SortingIndex | undefined {
  const nights = sets.filter((set) => {
    const own = set.offered.find((f) => f.food === food)?.grams ?? 0;
    return own > 0 && sumOf(set.offered.map((f) => f.grams)) > own;
  });
  const actual: Worth = nights.map((set) => set.offered.map((f) => (f.food === food ? 1 : 0)));
  const predicted: Worth = nights.map((set) => {
    const share =
      (set.offered.find((f) => f.food === food)?.grams ?? 0) / sumOf(set.offered.map((f) => f.grams));
    return set.offered.map(() => share);
  });
  const most = greatestRatio(nights, actual, predicted);
  const least = greatestRatio(
    nights,
    actual.map((each) => each.map((w) => -w)),
    predicted,
  );
  if (!most || !least) return undefined;
  const low = Math.max(0, -least.value);
  const bounds = { low: 100 * low, high: 100 * Math.max(low, most.value) };
  const lowest = spreadOf(least.eaten, actual, predicted, low);
  const highest = spreadOf(most.eaten, actual, predicted, most.value);
  const span =
    lowest === undefined || highest === undefined
      ? undefined
      : { low: Math.max(0, bounds.low - 100 * lowest), high: bounds.high + 100 * highest };
  const value = (bounds.low + bounds.high) / 2;
  return {
    food,
    value,
    bounds,
    ...(span && { span }),
    nights: nights.length,
    leaning: leaningOf(value, span),
  };
}

/** How far the ratio may be off either way, 95 %; undefined for a single night. */
function spreadOf(eaten: Worth, actual: Worth, predicted: Worth, ratio: number): number | undefined {
  const n = eaten.length;
  if (n < 2) return undefined;
  const of = (worth: Worth, s: number) => sumOf((eaten[s] ?? []).map((g, i) => g * (worth[s]?.[i] ?? 0)));
  const under = sumOf(eaten.map((_, s) => of(predicted, s)));
  const squares = sumOf(eaten.map((_, s) => (of(actual, s) - ratio * of(predicted, s)) ** 2));
  return (tQuantile(CHANCE, n - 1) * Math.sqrt((n / (n - 1)) * squares)) / under;
}

function leaningOf(value: number, span: Range | undefined): Leaning {
  if (!span) return 'unclear';
  if (span.low > 100 && value >= 100 + NOTABLE) return 'picked';
  if (span.high < 100 && value <= 100 - NOTABLE) return 'left';
  return span.low >= 100 - NOTABLE && span.high <= 100 + NOTABLE ? 'even' : 'unclear';
}

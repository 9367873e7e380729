/** What the keeper noted of left-overs, as a pile: between which ends each food and the whole must lie. */
import type { Remains } from '../model.ts';
import { type Pile, type Range, sumOf, sumOfRanges } from './pile.ts';

/** One food that was offered. */
export interface OfferedFood {
  readonly food: string;
  /** g as weighed when it was offered. */
  readonly grams: number;
  /** It is wet, so it dries while it lies there. */
  readonly fresh?: boolean;
}

/**
 * What makes a weighing of left-overs doubtful. "more": more lay there than was offered, so it is wet, of other nights, or
 * misweighed, and nothing is told by it. "older": the same of a hoard: some of it was there before. "scale": a little more
 * than that, as scales that show whole grams have it; it counts as all that was offered. "mostly": more foods were said to
 * be mostly left than the weight allows. "sum": the parts weigh more than the whole, or not as much though all was sorted;
 * the parts count. "not-offered": a food lay there that was not offered. "dried": fresh food weighs less after a night, so
 * that its left-overs are a range.
 */
export interface Doubt {
  readonly kind: 'more' | 'older' | 'scale' | 'mostly' | 'sum' | 'not-offered' | 'dried';
  /** Ids of the foods it is about; empty where it is about the whole. */
  readonly foods: readonly string[];
  /** g too many, or that do not agree; 0 for the others. */
  readonly grams: number;
}

/** "Mostly left": at least this part of what was offered of a food is still there. Our own reading of the word. */
const MOSTLY = 0.5;

/**
 * The most of its weight that fresh food loses by drying while it lies in the cage (common practice, no source): what is
 * found of it was up to 1 / (1 - this) times as heavy when it was offered.
 */
export const DRIES = 0.4;

/** g by which two weighings on a scale that shows whole grams may disagree. */
export const SCALE = 1;

/** Last digits of sums are no surplus. */
const CRUMB = 1e-9;

/** Whether it was looked for and nothing lay there. */
export function isNothing({ grams, parts = {}, sorted }: Remains): boolean {
  return (grams === 0 || sorted === true) && Object.values(parts).every((g) => g === 0);
}

/**
 * @param remains what was noted; undefined where nobody looked, so that all of it may lie there
 * @param offered each food once @param most g that can lie there in all; all that was offered where absent
 */
export function pileOf(
  remains: Remains | undefined,
  offered: readonly OfferedFood[],
  most = sumOf(offered.map((f) => f.grams)),
): { readonly pile: Pile; readonly doubts: readonly Doubt[] } {
  const doubts: Doubt[] = [];
  const { grams, parts = {}, sorted = false, mostly = [] } = remains ?? {};
  const foreign = Object.entries(parts).filter(([id, g]) => g > 0 && !offered.some((f) => f.food === id));
  if (foreign.length > 0)
    doubts.push({
      kind: 'not-offered',
      foods: foreign.map(([id]) => id),
      grams: sumOf(foreign.map(([, g]) => g)),
    });

  const isNamed = (f: OfferedFood) => sorted || parts[f.food] !== undefined;
  const named = offered.filter(isNamed);
  const found = new Map(named.map((f) => [f.food, partOf(f, parts[f.food] ?? 0, doubts)]));
  const weighed = sumOf(Object.values(parts));
  // What was not sorted out lies in the rest, of which the whole is known at most.
  const rest = offered.filter((f) => !isNamed(f));
  const left = grams === undefined ? undefined : Math.max(0, grams - weighed);
  if (grams !== undefined && (weighed > grams + SCALE || (sorted && grams > weighed + SCALE)))
    doubts.push({ kind: 'sum', foods: [], grams: Math.abs(grams - weighed) });
  const unsorted = restOf(rest, left, mostly, doubts);
  const inRest = new Map(rest.map((f, i) => [f.food, unsorted.foods[i]]));

  const foods = offered.map((f) => found.get(f.food) ?? inRest.get(f.food) ?? { low: 0, high: f.grams });
  const total = sumOfRanges([unsorted.total, ...found.values()]);
  const dried = offered.filter((f, i) => f.fresh && (foods[i]?.high ?? 0) > 0).map((f) => f.food);
  if (dried.length > 0 && (grams ?? weighed) > 0) doubts.push({ kind: 'dried', foods: dried, grams: 0 });
  if (total.low > most + CRUMB) {
    const over = total.low - most;
    doubts.push({ kind: over > SCALE ? 'more' : 'scale', foods: [], grams: over });
    // Beyond what a scale explains the weight says nothing of what was offered.
    if (over > SCALE) return { pile: open(offered, most), doubts };
    return { pile: capped(foods, most), doubts };
  }
  return { pile: { foods, total: { low: total.low, high: Math.min(total.high, most) } }, doubts };
}

/** What one food that was weighed by itself weighed when it was offered. */
function partOf(f: OfferedFood, weighed: number, doubts: Doubt[]): Range {
  const over = weighed - f.grams;
  if (over > CRUMB) doubts.push({ kind: over > SCALE ? 'more' : 'scale', foods: [f.food], grams: over });
  if (over > SCALE) return { low: 0, high: f.grams };
  const low = Math.min(weighed, f.grams);
  return { low, high: f.fresh ? Math.min(f.grams, low / (1 - DRIES)) : low };
}

/** What lay unsorted. @param weighed g of all of it; undefined where nobody weighed it */
function restOf(
  rest: readonly OfferedFood[],
  weighed: number | undefined,
  mostly: readonly string[],
  doubts: Doubt[],
): Pile {
  const wide = rest.map((f): Range => ({ low: 0, high: f.grams }));
  const seen = rest.map(
    (f): Range => ({ low: mostly.includes(f.food) ? f.grams * MOSTLY : 0, high: f.grams }),
  );
  const all = sumOf(rest.map((f) => f.grams));
  if (weighed === undefined) return { foods: seen, total: sumOfRanges(seen) };
  const over = weighed - all;
  if (over > CRUMB) doubts.push({ kind: over > SCALE ? 'more' : 'scale', foods: [], grams: over });
  if (over > SCALE) return { foods: wide, total: { low: 0, high: all } };
  const low = Math.min(weighed, all);
  const wet = sumOf(rest.filter((f) => f.fresh).map((f) => f.grams));
  const total = { low, high: Math.min(all, low / (1 - DRIES), low + DRIES * wet) };
  const least = sumOfRanges(seen).low;
  if (least > total.high + CRUMB) {
    const foods = rest.filter((f) => mostly.includes(f.food)).map((f) => f.food);
    doubts.push({ kind: 'mostly', foods, grams: least - total.high });
    return { foods: wide, total };
  }
  return { foods: seen, total: { low: Math.max(total.low, least), high: Math.max(total.high, least) } };
}

/** A pile of which nothing is known. */
function open(offered: readonly OfferedFood[], most: number): Pile {
  return { foods: offered.map((f) => ({ low: 0, high: f.grams })), total: { low: 0, high: most } };
}

/** A pile a little heavier than it can be: as heavy as it can be, each food at its most. */
function capped(foods: readonly Range[], most: number): Pile {
  const { high } = sumOfRanges(foods);
  const total = Math.min(most, high);
  const { low } = sumOfRanges(foods);
  if (low <= total) return { foods, total: { low: total, high: total } };
  // Weighed parts that are a crumb too heavy give way all alike.
  const part = low > 0 ? total / low : 0;
  const less = foods.map((f) => ({ low: f.low * part, high: Math.max(f.low * part, f.high) }));
  return { foods: less, total: { low: total, high: total } };
}

/** A pile of left-overs: how much of each food may lie in it, where only some of that is known. */

/** Least and most something may be; equal where it is known. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/**
 * Every way of filling it counts that keeps to both: g of each food, in the order in which the foods were offered, and g
 * of all together. The least of the foods come to no more than the most of all, and the other way round.
 */
export interface Pile {
  readonly foods: readonly Range[];
  readonly total: Range;
}

/** Sum of numbers. */
export const sumOf = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0);

/** Between which ends the sum of several lies, each by itself. */
export const sumOfRanges = (ranges: readonly Range[]): Range => ({
  low: sumOf(ranges.map((r) => r.low)),
  high: sumOf(ranges.map((r) => r.high)),
});

/** A pile of which no more is known than between which ends each food lies. */
export function pileWithin(foods: readonly Range[]): Pile {
  return { foods, total: sumOfRanges(foods) };
}

/** Whether there is one way of filling it alone. */
export function isExact(pile: Pile): boolean {
  return boundsOf(pile).every(({ low, high }) => low === high);
}

/**
 * The filling that is worth the most: every food at its least, then the dearest first, as far as food and pile have room.
 * What is worth nothing or less goes in only where the pile would stay too small. This is the continuous knapsack, which
 * filling by worth solves exactly (Dantzig 1957, Operations Research, from memory).
 * @param worth of one gram of each food @returns g of each food
 */
export function dearestFilling({ foods, total }: Pile, worth: readonly number[]): number[] {
  const filled = foods.map((f) => f.low);
  const least = sumOf(filled);
  let may = Math.max(0, total.high - least);
  let must = Math.max(0, total.low - least);
  if (may === 0 && must === 0) return filled;
  const dearestFirst = foods.map((_, i) => i).sort((a, b) => (worth[b] ?? 0) - (worth[a] ?? 0));
  for (const i of dearestFirst) {
    const { low, high } = foods[i] ?? { low: 0, high: 0 };
    const taken = Math.min(high - low, (worth[i] ?? 0) > 0 ? may : must);
    filled[i] = low + taken;
    may = Math.max(0, may - taken);
    must = Math.max(0, must - taken);
    if (may === 0) break;
  }
  return filled;
}

/** Between which ends each food lies, once what the others take of the whole counts too. */
export function boundsOf({ foods, total }: Pile): Range[] {
  const all = sumOfRanges(foods);
  return foods.map(({ low, high }) => ({
    low: Math.min(high, Math.max(low, total.low - (all.high - high))),
    high: Math.max(low, Math.min(high, total.high - (all.low - low))),
  }));
}

/**
 * Two or more piles thrown together.
 * @param most g of each food that there can be in all of them
 */
export function together(piles: readonly Pile[], most: readonly number[]): Pile {
  const total = sumOfRanges(piles.map((p) => p.total));
  const bounds = piles.map(boundsOf);
  const foods = most.map((cap, i) => {
    const { low, high } = sumOfRanges(bounds.flatMap((b) => b[i] ?? []));
    return { low: Math.min(low, cap), high: Math.min(high, cap) };
  });
  const within = sumOfRanges(foods);
  return {
    foods,
    total: {
      low: Math.min(within.high, Math.max(within.low, total.low)),
      high: Math.max(within.low, Math.min(within.high, total.high)),
    },
  };
}

/** The cupboard's list where it is long: what holds something by food, and what is used up apart, the newest first. */
import type { FoodLots, LotLine } from '../../household/reckon/cupboard/lots-by-food.ts';

/** Up to so many lots the list is short: all of them stand with their food. */
export const SHORT = 40;

export interface Shelves {
  /** Foods with the lots that hold something, or may still matter. */
  readonly foods: readonly FoodLots[];
  /** Lots that are used up, the newest first; empty where the list is short. */
  readonly usedUp: readonly LotLine[];
}

/** @param words what lots, or their foods, are to be called; all where empty */
export function shelvesOf(all: readonly FoodLots[], words: string): Shelves {
  const lots = all.reduce((sum, f) => sum + f.lots.length, 0);
  if (lots <= SHORT) return { foods: all, usedUp: [] };
  const wanted = words.trim().toLowerCase();
  const named = (name: string) => name.toLowerCase().includes(wanted);
  const found = all.map((food) => ({
    ...food,
    lots: named(food.name) ? food.lots : food.lots.filter((l) => named(l.lot.name)),
  }));
  return {
    foods: found
      .map((food) => ({ ...food, lots: food.lots.filter((l) => l.grams > 0) }))
      .filter((f) => f.lots.length > 0),
    usedUp: found
      .flatMap((f) => f.lots.filter((l) => l.grams === 0))
      .sort((a, b) => (a.lot.boughtOn < b.lot.boughtOn ? 1 : a.lot.boughtOn > b.lot.boughtOn ? -1 : 0)),
  };
}

/** The foods with some of their lots alone; those left without any are left out. */
export function withLinesOnly(foods: readonly FoodLots[], lines: readonly LotLine[]): FoodLots[] {
  const shown = new Set(lines.map((l) => l.lot.id));
  return foods
    .map((food) => ({ ...food, lots: food.lots.filter((l) => shown.has(l.lot.id)) }))
    .filter((f) => f.lots.length > 0);
}

/** What lies in the freezer for the freeze treatment on a day, and whether it has room for more. */
import { daysBetween, plusDays } from '../../kitchen/days.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import type { Household } from '../model.ts';
import { lotsForCold } from './lots-to-freeze.ts';

/** g that lie in the freezer for the cold on `day`: a freeze begun, not ticked off. */
export function inFreezer(house: Household, day: Day): number {
  return lotsForCold(house, day)
    .filter((lot) => {
      const step = lot.cold.find((each) => each.doneOn === undefined);
      return step?.kind === 'freeze' && step.from <= day;
    })
    .reduce((sum, lot) => sum + lot.grams, 0);
}

export function withLots(house: Household, changed: readonly Lot[]): Household {
  return { ...house, lots: house.lots.map((l) => changed.find((c) => c.id === l.id) ?? l) };
}

/**
 * The first day on which lots with these days make the freezer too full: of the days on which one of them lies in it
 * that did not before. Undefined where nobody knows its room.
 */
export function overfull(
  house: Household,
  changed: readonly Lot[],
  today: Day,
): { day: Day; grams: number; room: number } | undefined {
  const room = house.kitchen[0]?.freezer?.grams;
  if (room === undefined) return undefined;
  const all = lotsForCold(withLots(house, changed), today);
  const added = changed.flatMap((lot) => {
    const before = new Set(frozenDays(house.lots.find((l) => l.id === lot.id) ?? { cold: [] }));
    return frozenDays(lot).filter((day) => !before.has(day));
  });
  for (const day of [...new Set(added)].sort()) {
    const grams = all.reduce((sum, l) => sum + (frozenDays(l).includes(day) ? l.grams : 0), 0);
    if (grams > room * (1 + 1e-9)) return { day, grams, room };
  }
  return undefined;
}

/** Days on which a lot is to lie in the freezer for the cold. */
function frozenDays({ cold }: Pick<Lot, 'cold'>): Day[] {
  return cold.flatMap(({ kind, doneOn, from, to }) =>
    kind === 'freeze' && doneOn === undefined
      ? Array.from({ length: Math.max(0, daysBetween(from, to)) }, (_, i) => plusDays(from, i))
      : [],
  );
}

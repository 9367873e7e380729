/**
 * What the freeze treatment puts into the freezer. A lot lies in it from the day on which a freeze begins to the day
 * on which it ends. A step that should be over and is not ticked off goes on until today, and those after it wait.
 */
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Day, FreezeStep, Lot } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { withLists } from '../with-lists.ts';
import { lotById } from './lot-index.ts';
import { openStep } from './lot-state.ts';
import { lotsToFreeze } from './lots-to-freeze.ts';

/** g that lie in the freezer now: of every lot whose open step is a freeze that has begun, until it is ticked off. */
export function gramsInFreezer(house: Household, today: Day): number {
  return lotsToFreeze(house, today)
    .filter((lot) => {
      const step = openStep(lot);
      return step?.kind === 'freeze' && step.from <= today;
    })
    .reduce((sum, lot) => sum + lot.grams, 0);
}

/**
 * The first day on which lots with other days would make the freezer too full: of the days, from today on, on which
 * one of them lies in it that did not before. Undefined where there is none, or nobody knows its room.
 * @param changed lots of the household with other days
 */
export function firstOverfullDay(
  house: Household,
  changed: readonly Lot[],
  today: Day,
): { readonly day: Day; readonly grams: number; readonly room: number } | undefined {
  const room = house.kitchen[0]?.freezer?.grams;
  if (room === undefined) return undefined;
  const all = lotsToFreeze(withLots(house, changed), today).map((lot) => ({
    grams: lot.grams,
    freezes: freezesToCome(lot, today),
  }));
  const moved = changed.map((lot) => {
    const before = lotById(house, lot.id);
    return { now: freezesToCome(lot, today), before: before ? freezesToCome(before, today) : [] };
  });
  // Between these days nothing goes in, and no lot that lay in it before comes out: the first full day is one of them.
  const days = new Set([
    ...[...all.map((lot) => lot.freezes), ...moved.map((lot) => lot.now)].flat().map((step) => step.from),
    ...moved.flatMap((lot) => lot.before).map((step) => step.to),
  ]);
  for (const day of [...days].sort()) {
    if (!moved.some(({ now, before }) => holds(now, day) && !holds(before, day))) continue;
    const grams = all.reduce((sum, lot) => sum + (holds(lot.freezes, day) ? lot.grams : 0), 0);
    if (grams > room * (1 + 1e-9)) return { day, grams, room };
  }
  return undefined;
}

/** The household with some of its lots changed. */
export function withLots(house: Household, changed: readonly Lot[]): Household {
  const anew = new Map(changed.map((l) => [l.id, l]));
  return withLists(house, { lots: house.lots.map((l) => anew.get(l.id) ?? l) });
}

/** Whether a lot lies in the freezer on a day, by its freezes. */
const holds = (freezes: readonly FreezeStep[], day: Day) => freezes.some((s) => s.from <= day && day < s.to);

const freezesToCome = (lot: Lot, today: Day) => stepsToCome(lot, today).filter((s) => s.kind === 'freeze');

/** The steps not ticked off, as they can still be: the first ends today at the soonest, the others follow it. */
function stepsToCome({ cold }: Pick<Lot, 'cold'>, today: Day): FreezeStep[] {
  const steps: FreezeStep[] = [];
  let end: Day | undefined;
  for (const step of cold) {
    if (step.doneOn !== undefined) continue;
    const late = end === undefined ? 0 : Math.max(0, daysBetween(step.from, end));
    const to = plusDays(step.to, late);
    steps.push({ kind: step.kind, from: plusDays(step.from, late), to: to < today ? today : to });
    end = to < today ? today : to;
  }
  return steps;
}

/** What a calendar has to deal with: the foods of a batch, by what is kept of them and how far that has come. */

import { type DayAt, dayNumber } from '../days.ts';
import type { Day, DryingRun, Lot } from '../model.ts';
import { CRUMB } from '../tolerances.ts';
import type { Progress, Supply, SupplyFood } from './kitchen-plan.ts';

/** A food that the batch needs. */
export interface NeededFood {
  readonly id: string;
  readonly name: string;
  /** Whether it is frozen against insects before it is weighed out. */
  readonly needsTreatment: boolean;
  /** Whether it is bought fresh and dried at home. */
  readonly dryAtHome: boolean;
  /** The food of the mix is itself fresh: it is dried first, even where its pack is kept as bought dry. */
  readonly fresh?: true;
  /** g that the batch takes of it, dry; absent where nobody has said: then whatever there is counts as enough. */
  readonly grams?: number;
  /** g dried that 1 g of a fresh lot comes to, trimmings and all; absent where unknown: then a fresh lot counts as enough. */
  readonly perFresh?: number;
}

/**
 * Supplies for a plan. A food with a lot that can be used goes on from where its lots stand; one without is bought.
 * Where the grams are known, lots are taken until there is enough, what is ready first and what is ready soonest next;
 * a food whose lots are not enough is bought as well. Lots of one day that stand alike go together.
 * @param lots with what is left of each @param runs drying runs @param dayAt the keeper's calendar: it says on which days
 * runs began and ended
 */
export function suppliesOf(
  foods: readonly NeededFood[],
  lots: readonly Lot[],
  runs: readonly DryingRun[],
  today: Day,
  dayAt: DayAt,
): Supply[] {
  dayNumber(today, 'today');
  const supplies = new Map<string, Supply>();
  const add = (supply: Omit<Supply, 'id' | 'goods'>, good: SupplyFood) => {
    const { route, boughtOn } = supply;
    const word = { freeze: 'dry-goods', dry: 'fresh-goods', ready: 'other-goods' }[route];
    const alike = JSON.stringify(supply);
    const there = supplies.get(alike);
    const first = boughtOn === undefined ? word : `${word}-${boughtOn}`;
    const id = there?.id ?? freeId(first, good.food, new Set([...supplies.values()].map((s) => s.id)));
    supplies.set(alike, { ...supply, id, goods: [...(there?.goods ?? []), good] });
  };
  for (const need of foods) {
    const { id: food, name, needsTreatment, dryAtHome } = need;
    const usable = lots.filter((l) => l.food === food && !l.barred);
    const { taken, enough } = takenFor(need, usable);
    if (!enough) add({ route: dryAtHome ? 'dry' : needsTreatment ? 'freeze' : 'ready' }, { food, name });
    for (const lot of taken) {
      const good = { food, name, lot: lot.id };
      if (isWet(lot, need)) {
        const progress = dryingOf(lot, runs, dayAt);
        add({ route: 'dry', boughtOn: lot.boughtOn, ...(progress && { progress: [progress] }) }, good);
      } else if (!lot.overruled && (lot.cold.length > 0 || (needsTreatment && lot.form === 'dry'))) {
        const progress = treatmentProgress(lot, today);
        const rounds = lot.cold.map(({ kind, from, to, doneOn }) => ({
          kind,
          days: Math.max(0, dayNumber(to) - dayNumber(from)),
          ...(doneOn === undefined && { on: from }),
        }));
        add(
          {
            route: 'freeze',
            boughtOn: lot.boughtOn,
            ...(rounds.length > 0 && { rounds }),
            ...(progress.length > 0 && { progress }),
          },
          good,
        );
      } else add({ route: 'ready', boughtOn: lot.boughtOn }, good);
    }
  }
  return [...supplies.values()];
}

/** Lots of one day that stand apart are told apart by the first food of them: other calendars see these names too. */
function freeId(first: string, food: string, taken: ReadonlySet<string>): string {
  if (!taken.has(first)) return first;
  let id = `${first}-${food}`;
  for (let n = 2; taken.has(id); n++) id = `${first}-${food}-${n}`;
  return id;
}

/** Whether a lot has to be dried before it can go into a dry mix. */
function isWet({ form }: Lot, { fresh }: NeededFood): boolean {
  return form === 'fresh' || (fresh === true && form === 'dry');
}

/** The lots that a food is taken from, and whether they hold enough. */
function takenFor(need: NeededFood, usable: readonly Lot[]): { taken: readonly Lot[]; enough: boolean } {
  const { grams, perFresh } = need;
  if (grams === undefined) return { taken: usable, enough: usable.length > 0 };
  const taken: Lot[] = [];
  let open = grams;
  const soonest = [...usable].sort((a, b) => (readiness(a, need) < readiness(b, need) ? -1 : 1));
  for (const lot of soonest) {
    if (open <= CRUMB && taken.length > 0) break;
    taken.push(lot);
    open -= !isWet(lot, need) ? lot.grams : perFresh === undefined ? open : lot.grams * perFresh;
  }
  // In the order kept, so that a tick does not change the order of a plan.
  return { taken: usable.filter((l) => taken.includes(l)), enough: taken.length > 0 && open <= CRUMB };
}

/** Sorts lots as text: ready, by the day on which their freeze treatment ends, without such a day, fresh. */
function readiness(lot: Lot, need: NeededFood): string {
  const { needsTreatment } = need;
  if (isWet(lot, need)) return `3 ${lot.boughtOn} ${lot.id}`;
  const waits =
    !lot.overruled &&
    (lot.cold.length > 0
      ? lot.cold.some((s) => s.doneOn === undefined)
      : needsTreatment && lot.form === 'dry');
  if (!waits) return `0 ${lot.boughtOn} ${lot.id}`;
  return lot.cold.length > 0 ? `1 ${lot.cold.at(-1)!.to} ${lot.id}` : `2 ${lot.boughtOn} ${lot.id}`;
}

/** Rounds that are ticked off, and the one that goes on today. */
function treatmentProgress(lot: Lot, today: Day): Progress[] {
  const progress: Progress[] = [];
  for (const { from, doneOn } of lot.cold) {
    // What was ticked off sooner than planned began sooner too.
    const begin = doneOn !== undefined && doneOn < from ? doneOn : from;
    if (doneOn !== undefined) progress.push({ from: begin, to: doneOn });
    else {
      if (from <= today) progress.push({ from });
      break;
    }
  }
  return progress;
}

/** How far the drying of a fresh lot has come; its first run begins it, and with the last one ended it is done. */
function dryingOf(lot: Lot, runs: readonly DryingRun[], dayAt: DayAt): Progress | undefined {
  const own = runs.filter((r) => r.lot === lot.id);
  const [from] = own.map((r) => dayAt(r.startedAt)).sort();
  if (from === undefined) return undefined;
  const ends = own.flatMap((r) => (r.endedAt === undefined ? [] : [dayAt(r.endedAt)])).sort();
  return ends.length === own.length ? { from, to: ends.at(-1)! } : { from };
}

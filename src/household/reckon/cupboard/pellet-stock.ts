/**
 * The packs of what is fed beside the mixes, pellets first of all: what is left of them, which is in use, and until when
 * they last.
 *
 * For others: `packInUse(house, food, today)` is the lot that a day's food comes from, to be named in its `Feeding`;
 * `pelletStocks(house, under)` is every such food with `runsOut`, `days` and `buyBy`, to be told on a first page;
 * `fedFromPack` and `animalStops` of `recall.ts` say whom a pack reached that is not used any more.
 */

import { leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import { type RunsOut, runsOut, wholeDays } from '../../../kitchen/feeding/runs-out.ts';
import type { Day, Lot } from '../../../kitchen/model.ts';
import { CRUMB } from '../../../kitchen/tolerances.ts';
import { words } from '../../../words/words.ts';
import type { Household } from '../../model.ts';
import { isHere } from '../care/here.ts';
import { contentsOf } from './contents.ts';
import { foodsBeside } from './foods-beside.ts';
import { isPastBest } from './lot-state.ts';
import { inOrder, type PackStanding, packStandings } from './pellet-days.ts';
import { type PackCircumstances, type PelletEater, pelletEaters } from './pellet-eaters.ts';

/** Days before a food runs out by which it is to be bought (our own choice, no source): a week holds a shopping day. */
const BUY_AHEAD_DAYS = 7;
/** Further ahead nobody plans: days beyond are not told (some thirty years). */
const FURTHEST_DAYS = 11_000;

export interface PelletPack extends PackStanding {
  /** "in-use": the next meal comes from it; "kept": waits its turn. */
  readonly state: 'in-use' | 'kept' | 'past' | 'barred' | 'empty';
}

export interface PelletStock {
  readonly food: string;
  readonly name: string;
  /** In the order in which they are used; what may not be used behind them. */
  readonly packs: readonly PelletPack[];
  readonly inUse?: Lot;
  /** g left in packs that may be fed: what was weighed or came in, less what was fed since. */
  readonly left: number;
  /** Some of it was fed without a record: then `left` is an estimate. */
  readonly estimated: boolean;
  /** Those here that eat of it. */
  readonly eaters: readonly PelletEater[];
  /** When it runs out; unknown with what is missing. Absent where no pack is kept. */
  readonly runsOut?: RunsOut;
  /** Whole days that it lasts from today on, and the day by which the next pack is to be bought. */
  readonly days?: number;
  readonly buyBy?: Day;
  /** g that will be past their best before by then: they are not counted. Absent where there are none. */
  readonly tooMuch?: number;
}

/** Every food fed from packs that somebody eats or of which a pack is kept, by name. */
export function pelletStocks(house: Household, under: PackCircumstances): PelletStock[] {
  return foodsBeside(house)
    .map((f) => pelletStock(house, f.id, under))
    .filter((s) => s.packs.length > 0 || s.eaters.length > 0);
}

/** The packs of one food fed beside the mixes. */
export function pelletStock(house: Household, food: string, under: PackCircumstances): PelletStock {
  const { today } = under;
  const all = pelletEaters(house, food, under);
  const eaters = all.filter(({ animal }) => isHere(animal));
  const inUse = packInUse(house, food, today);
  const packs = inOrder(packStandings(house, food, all, today), today)
    .map((p): PelletPack => ({ ...p, state: stateOf(p, inUse, today) }))
    .sort((a, b) => PLACES.indexOf(a.state) - PLACES.indexOf(b.state));
  const usable = packs.filter((p) => p.state === 'in-use' || p.state === 'kept');
  const name = foodsBeside(house).find((f) => f.id === food)?.name ?? packs[0]?.lot.name ?? food;
  const lasts = packs.length > 0 ? lasting(name, usable, eaters, today) : {};
  return {
    food,
    name,
    packs,
    ...(inUse && { inUse }),
    left: usable.reduce((sum, p) => sum + p.left, 0),
    estimated: usable.some((p) => p.estimated > 0),
    eaters,
    ...lasts,
  };
}

/**
 * The pack that a food is fed from: opened ones first, then the earliest best before; not one that is not used any more,
 * is past its best before, or holds nothing by what is written down of it. Undefined where there is none.
 */
export function packInUse(
  house: Pick<Household, 'lots' | 'dryingRuns' | 'batches' | 'feedings'>,
  food: string,
  today: Day,
): Lot | undefined {
  const there = leftOver(contentsOf(house)).filter(
    ({ lot, grams }) =>
      lot.food === food &&
      lot.form !== 'fresh' &&
      grams > 0 &&
      lot.boughtOn <= today &&
      !lot.barred &&
      !isPastBest(lot, today),
  );
  return inOrder(there, today)[0]?.lot;
}

const PLACES: readonly PelletPack['state'][] = ['in-use', 'kept', 'past', 'barred', 'empty'];

function stateOf({ lot, left }: PackStanding, inUse: Lot | undefined, today: Day): PelletPack['state'] {
  if (lot.barred) return 'barred';
  if (lot.id === inUse?.id) return 'in-use';
  if (left === 0) return 'empty';
  return isPastBest(lot, today) ? 'past' : 'kept';
}

/** Until when packs last. @param packs that may be fed, in the order in which they are */
function lasting(
  name: string,
  packs: readonly PelletPack[],
  eaters: readonly PelletEater[],
  today: Day,
): Pick<PelletStock, 'runsOut' | 'days' | 'buyBy' | 'tooMuch'> {
  const eating = eaters.filter((e) => e.grams !== 0);
  if (eating.length === 0) {
    const sentence = words().supply.nobodyEats(name);
    return { runsOut: { status: 'unknown', missing: [sentence], sentence } };
  }
  const gramsADay = eating.reduce((sum, e) => sum + (e.grams ?? 0), 0);
  const there = packs.reduce((sum, p) => sum + p.atDawn, 0);
  const grams = eating.every((e) => e.grams !== undefined) ? eatenInTime(packs, gramsADay, today) : there;
  if (gramsADay > 0 && grams / gramsADay > FURTHEST_DAYS) {
    const sentence = words().supply.lastsLong(name);
    return { runsOut: { status: 'unknown', missing: [], sentence } };
  }
  const runs = runsOut({
    name,
    gramsLeft: grams,
    weighedOn: today,
    animals: eating.map(({ animal, grams: eats }) => ({
      name: animal.name,
      ...(eats !== undefined && { dailyGrams: eats }),
    })),
    mixPart: 1,
  });
  if (runs.status === 'unknown') return { runsOut: runs };
  const days = wholeDays(grams, runs.gramsADay);
  const ahead = plusDays(runs.day, -BUY_AHEAD_DAYS);
  return {
    runsOut: runs,
    days,
    buyBy: ahead < today ? today : ahead,
    ...(there - grams > CRUMB && { tooMuch: there - grams }),
  };
}

/** g of packs that are eaten before they are past their best before, one after the other. */
function eatenInTime(packs: readonly PelletPack[], gramsADay: number, today: Day): number {
  let days = 0;
  for (const { lot, atDawn } of packs) {
    const good = lot.bestBefore === undefined ? Infinity : daysBetween(today, lot.bestBefore) + 1;
    days += Math.max(0, Math.min(atDawn / gramsADay, good - days));
  }
  return days * gramsADay;
}

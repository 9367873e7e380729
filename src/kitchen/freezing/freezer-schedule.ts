/** When each lot goes into the freezer and comes out again, so that the freezer is never over-full. */
import type { FoodGroup } from '../../foods/food.ts';
import { words } from '../../words/words.ts';
import { dayInWords, dayNumber, dayOf } from '../days.ts';
import type { Day, FreezeStep, Lot } from '../model.ts';
import { SAME } from '../tolerances.ts';
import { type Bag, GOODS, type GoodKind } from './cooling.ts';
import { COMMON_DAYS, type FreezeAdvice, freezeAdvice } from './freeze-time.ts';
import { needsTreatment, readyOn } from './freeze-treatment.ts';

/** A freezer: the room that the keeper gives to dry goods, in litres or in grams (one of them), and its air. */
export interface Freezer {
  readonly litres?: number;
  readonly grams?: number;
  readonly celsius: number;
}

export interface ScheduleOptions {
  /** No step begins before it. Give today's date: steps that were to begin before it count as begun. */
  readonly notBefore: Day;
  /** Least whole days in the freezer, out of it, and rounds: 4, 4 and 2 where not given (common practice, no source). */
  readonly freezeDays?: number;
  readonly thawDays?: number;
  readonly rounds?: number;
  /** Day by which a lot is wanted, by id. */
  readonly neededOn?: Readonly<Record<string, Day>>;
  /** Group of a lot's food: what it is made of and whether it needs the treatment. */
  readonly groupOf?: (lot: Lot) => FoodGroup | undefined;
  /** How a lot is packed; as one packet of its whole weight where not given. */
  readonly bagOf?: (lot: Lot) => Bag;
}

/** A lot in the plan. */
export interface PlannedTreatment {
  readonly lot: string;
  readonly steps: readonly FreezeStep[];
  readonly readyOn: Day;
  /** Why it lies in the freezer as long as it does; absent when no freezing is left to plan. */
  readonly advice?: FreezeAdvice;
  /** Said when it is ready after the day on which it is wanted. */
  readonly late?: string;
}

export interface FreezerSchedule {
  /** In the order in which they are served: wanted first, else bought first. */
  readonly lots: readonly PlannedTreatment[];
  readonly notNeeded: readonly { readonly lot: string; readonly why: string }[];
  /** Lots that the freezer cannot hold even when empty. */
  readonly tooBig: readonly { readonly lot: string; readonly why: string; readonly wayOut: string }[];
}

/** The good that a food group cools like, by weight; "seed" holds grains and oil seeds, which cool alike. */
const GOOD_OF: Readonly<Record<FoodGroup, GoodKind>> = {
  seed: 'grain',
  legume: 'legume',
  vegetable: 'vegetable',
  herb: 'leaf',
  nut: 'seed',
  fruit: 'vegetable',
  animal: 'vegetable',
};

/**
 * Plans freezing and thawing by turns for every lot that needs it. Lots wanted soonest are placed first, then those
 * bought first; each takes the earliest days on which the freezer has room for it. A freeze lasts longer than
 * `freezeDays` where the bag asks for it (`freeze-time.ts`). Steps ticked off stay. So does the next one when it was to
 * begin before `notBefore`; a freeze only while it fits beside those that began before it.
 * A step ends after its least days; a gap to the next one is time spent waiting for room.
 * @throws RangeError when an option or the freezer's room is not a number above 0, a day is no calendar day, the
 * freezer is too warm, or its litres cannot be reckoned for a lot whose group is not known
 */
export function planFreezer(
  lots: readonly Lot[],
  freezer: Freezer,
  options: ScheduleOptions,
): FreezerSchedule {
  const rules = rulesOf(options);
  const room = roomOf(freezer);
  const load = new Map<number, number>();
  const notNeeded: { lot: string; why: string }[] = [];
  const tooBig: { lot: string; why: string; wayOut: string }[] = [];
  const planned: { lot: Lot; size: number; advice?: FreezeAdvice; kept: FreezeStep[] }[] = [];
  /** Many bags are alike, and how long one cools takes some working out. */
  const advised = new Map<string, FreezeAdvice>();
  const adviceFor = (cooling: Parameters<typeof freezeAdvice>[0]) => {
    const alike = JSON.stringify(cooling);
    const advice = advised.get(alike) ?? freezeAdvice(cooling, { common: rules.freezeDays });
    advised.set(alike, advice);
    return advice;
  };

  for (const lot of inOrder(lots, options.neededOn)) {
    const group = options.groupOf?.(lot);
    const need = needsTreatment(lot, group);
    if (lot.barred) notNeeded.push({ lot: lot.id, why: words().freezing.notUsed(lot.barred.why) });
    else if (!need.needs && lot.cold.length === 0) notNeeded.push({ lot: lot.id, why: need.why });
    else {
      const kept = lot.cold.filter((step) => step.doneOn !== undefined);
      const freezes = kept.length < 2 * rules.rounds - 1 || lot.cold[kept.length]?.kind === 'freeze';
      const size = freezes ? sizeOf(lot, group, freezer) : 0;
      if (size > room) tooBig.push({ lot: lot.id, ...doesNotFit(lot, size, room, freezer) });
      else {
        const cooling = {
          // Of the goods, loose leaf cools slowest for its weight.
          good: group ? GOOD_OF[group] : 'leaf',
          bag: options.bagOf?.(lot) ?? { shape: 'packet', grams: lot.grams },
          air: freezer.celsius,
        } as const;
        const advice = freezes ? adviceFor(cooling) : undefined;
        planned.push({ lot, size, advice, kept });
      }
    }
  }

  const fits = (size: number, from: number, to: number) => {
    for (let day = from; day < to; day++) if ((load.get(day) ?? 0) + size > room * (1 + SAME)) return false;
    return true;
  };
  const put = (size: number, from: number, to: number) => {
    for (let day = from; day < to; day++) load.set(day, (load.get(day) ?? 0) + size);
  };

  // What lies in the freezer now, or thaws: it cannot be planned away.
  const begun = planned
    .map((each) => ({ ...each, each, step: each.lot.cold[each.kept.length] }))
    .filter(({ step }) => step && dayNumber(step.from) < rules.today)
    .sort((a, b) => (a.step!.from < b.step!.from ? -1 : a.step!.from > b.step!.from ? 1 : 0));
  for (const { each, size, step } of begun) {
    const end = dayNumber(step!.to);
    if (step!.kind === 'freeze') {
      if (!fits(size, rules.today, end)) continue;
      put(size, rules.today, end);
    }
    each.kept.push(step!);
  }

  return {
    notNeeded,
    tooBig,
    lots: planned.map(({ lot, size, advice, kept }) => {
      const steps = [...kept];
      const last = kept.at(-1);
      let day = Math.max(rules.today, dayNumber(lot.boughtOn), last ? dayNumber(last.to) : 0);
      const wanted = Math.max(2 * rules.rounds, 2 * Math.ceil(kept.length / 2));
      while (steps.length < wanted) {
        const kind = steps.length % 2 === 0 ? 'freeze' : 'thaw';
        const days = kind === 'freeze' ? advice!.days : rules.thawDays;
        if (kind === 'freeze') {
          while (!fits(size, day, day + days)) day++;
          put(size, day, day + days);
        }
        steps.push({ kind, from: dayOf(day), to: dayOf(day + days) });
        day += days;
      }
      const ready = readyOn({ cold: steps })!;
      const need = options.neededOn?.[lot.id];
      const late =
        need !== undefined && ready > need
          ? words().freezing.late(lot.name, dayInWords(need), dayInWords(ready))
          : undefined;
      return { lot: lot.id, steps, readyOn: ready, ...(advice && { advice }), ...(late && { late }) };
    }),
  };
}

/** What a lot takes up: g, or litres by the bulk density of its good, where the freezer is given in litres. */
function sizeOf(lot: Lot, group: FoodGroup | undefined, freezer: Freezer): number {
  if (!(lot.grams > 0)) throw new RangeError(`${lot.name}: its weight is ${lot.grams} g; give one above 0.`);
  if (freezer.grams !== undefined) return lot.grams;
  if (!group)
    throw new RangeError(
      `${lot.name}: its group is not known, so neither are its litres. Give its food a group, or the freezer's room in grams.`,
    );
  // kg/m3 is g per litre; the loosest packing, so that it fits for certain.
  return lot.grams / GOODS[GOOD_OF[group]].density[0];
}

function doesNotFit(lot: Lot, size: number, room: number, freezer: Freezer): { why: string; wayOut: string } {
  const t = words().freezing;
  return {
    why: (freezer.grams === undefined ? t.tooBigInLitres : t.tooBig)(lot.name, size, room),
    wayOut: t.splitIt(Math.ceil(size / room)),
  };
}

function roomOf(freezer: Freezer): number {
  const { litres, grams } = freezer;
  if ((litres === undefined) === (grams === undefined))
    throw new RangeError('Give the room in the freezer either in litres or in grams.');
  const [room, field] = grams === undefined ? [litres!, 'litres'] : [grams, 'grams'];
  if (!(room > 0 && Number.isFinite(room)))
    throw new RangeError(`The room in the freezer, ${field}, is ${room}: give a number above 0.`);
  return room;
}

function rulesOf(options: ScheduleOptions) {
  const { freezeDays = COMMON_DAYS, thawDays = COMMON_DAYS, rounds = 2 } = options;
  for (const [field, value] of Object.entries({ freezeDays, thawDays, rounds }))
    if (!(Number.isInteger(value) && value >= 1))
      throw new RangeError(`"${field}" is ${value}: give a whole number of at least 1.`);
  return { freezeDays, thawDays, rounds, today: dayNumber(options.notBefore) };
}

function inOrder(lots: readonly Lot[], neededOn: Readonly<Record<string, Day>> = {}): Lot[] {
  const key = (lot: Lot) => [neededOn[lot.id] ?? '9999-12-31', lot.boughtOn, lot.id].join(' ');
  return [...lots].sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
}

/** What the cupboard's screen shows of lots: their state in words, their order, and what a mix may take over from them. */
import { FOOD_GROUPS, type FoodGroup } from '../../foods/food.ts';
import type { Household, Mix } from '../../household/model.ts';
import { withProblem } from '../../household/reckon/mix-edits.ts';
import {
  allocate,
  type CupboardContents,
  type LotStock,
  leftOver,
  totals,
} from '../../kitchen/cupboard/cupboard.ts';
import { dayInWords } from '../../kitchen/days.ts';
import {
  mayBeWeighed,
  needsTreatment,
  readyOn,
  tickedStep,
  treatmentDone,
} from '../../kitchen/freezing/freeze-treatment.ts';
import { type Freezer, type FreezerSchedule, planFreezer } from '../../kitchen/freezing/freezer-schedule.ts';
import type { Day, FreezeStep, Lot } from '../../kitchen/model.ts';

/**
 * "ready" and "past" (past its best before, to be looked at) may be weighed out; "cold": in the freezer or thawing;
 * "due": a step is over and not ticked off; "waits": the cold is still to begin, or no dates are planned.
 */
export type LotStateKind = 'ready' | 'past' | 'cold' | 'due' | 'waits' | 'fresh' | 'barred' | 'empty';

export interface LotState {
  readonly kind: LotStateKind;
  /** A few words that stand for themselves. */
  readonly words: string;
}

/** What a household keeps that says what came in and what went out. */
export function keptOf(house: Household): CupboardContents {
  return { lots: house.lots, runs: house.dryingRuns, batches: house.batches };
}

export interface CupboardFood {
  readonly id: string;
  readonly name: string;
  readonly group?: FoodGroup;
}

/** Foods that a lot may be of: those of every mix, and the keeper's own for a mix. By name; each id once. */
export function cupboardFoods(house: Household): CupboardFood[] {
  const foods = new Map<string, CupboardFood>();
  const add = (id: string, name: string, group: string | undefined) => {
    const known = group !== undefined && group in FOOD_GROUPS ? (group as FoodGroup) : undefined;
    const before = foods.get(id);
    if (!before || (!before.group && known)) foods.set(id, { id, name, ...(known && { group: known }) });
  };
  for (const food of house.foods) if (food.kind === 'mix') add(food.id, food.name, food.group);
  for (const mix of house.mixes) for (const f of mix.problem.foods) add(f.id, f.name ?? f.id, f.group);
  return [...foods.values()].sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** The state of a lot on `day`. @param group of its food; see `needsCold` */
export function lotState({ lot, grams }: LotStock, day: Day, group?: FoodGroup): LotState {
  if (lot.barred) return { kind: 'barred', words: `barred, ${lot.barred.why}` };
  if (grams === 0) return { kind: 'empty', words: 'used up' };
  if (lot.form === 'fresh') return { kind: 'fresh', words: 'fresh: to be dried' };
  const past = lot.bestBefore !== undefined && lot.bestBefore < day;
  const also = past ? `; past its best before, ${dayInWords(lot.bestBefore!, day)}` : '';
  if (mayBeWeighed(lot, day, group).ok) {
    const overruled = lot.overruled && waitsForCold(lot, day, group) ? 'ready, the cold overruled' : 'ready';
    return past ? { kind: 'past', words: `${overruled}${also}` } : { kind: 'ready', words: overruled };
  }
  return { ...coldState(lot, day), words: `${coldState(lot, day).words}${also}` };
}

function coldState(lot: Lot, day: Day): LotState {
  const step = lot.cold.find((each) => each.doneOn === undefined);
  if (!step)
    return lot.cold.length === 0
      ? { kind: 'waits', words: 'waits for the cold: no dates yet' }
      : { kind: 'cold', words: `in the cold until ${dayInWords(readyOn(lot)!, day)}` };
  if (step.from > day)
    return {
      kind: 'waits',
      words: `${step.kind === 'freeze' ? 'waits for the freezer: goes in' : 'waits to thaw: comes out'} on ${dayInWords(step.from, day)}`,
    };
  const what = step.kind === 'freeze' ? 'in the freezer' : 'thawing';
  if (step.to <= day) return { kind: 'due', words: `${what} long enough: tick it off` };
  const ready = readyOn(lot)!;
  const then = ready === step.to ? 'then ready' : `ready on ${dayInWords(ready, day)}`;
  return { kind: 'cold', words: `${what} until ${dayInWords(step.to, day)}, ${then}` };
}

function waitsForCold(lot: Lot, day: Day, group: FoodGroup | undefined): boolean {
  return (lot.cold.length > 0 || needsTreatment(lot, group).needs) && !treatmentDone(lot, day);
}

export interface LotLine extends LotStock {
  readonly state: LotState;
  /** The next to be weighed out of its food. */
  readonly first: boolean;
}

export interface FoodLots {
  readonly food: string;
  readonly name: string;
  /** g that may be weighed out today. */
  readonly ready: number;
  /** g of it in all, but what is barred. */
  readonly all: number;
  /** In the order in which they are used; those that may not be used behind them. */
  readonly lots: readonly LotLine[];
}

/** All lots by food, foods by name. */
export function lotsByFood(house: Household, day: Day): FoodLots[] {
  const kept = keptOf(house);
  const foods = new Map(cupboardFoods(house).map((f) => [f.id, f]));
  const left = leftOver(kept);
  const ready = readyIn(house, day);
  return totals(kept, ready)
    .map((total): FoodLots => {
      const order = allocate(kept, total.food, Number.MAX_VALUE, ready).takes.map((t) => t.lot.id);
      const place = (l: LotStock) => (order.includes(l.lot.id) ? order.indexOf(l.lot.id) : order.length);
      const mine = left.filter((l) => l.lot.food === total.food).sort((a, b) => place(a) - place(b));
      return {
        food: total.food,
        name: foods.get(total.food)?.name ?? mine[0]!.lot.name,
        ready: total.ready,
        all: total.ready + total.waiting + total.fresh,
        lots: mine.map((l) => ({
          ...l,
          state: lotState(l, day, foods.get(total.food)?.group),
          first: mine.length > 1 && l.lot.id === order[0],
        })),
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** Whether a lot of this household may be weighed out on a day. */
export function readyIn(house: Household, day: Day) {
  const groups = new Map(cupboardFoods(house).map((f) => [f.id, f.group]));
  return (lot: Lot) => mayBeWeighed(lot, day, groups.get(lot.food));
}

/** Lots that still have to go through the cold, as much as is left of each; not those barred, empty or overruled. */
export function lotsForCold(house: Household, day: Day): Lot[] {
  const groups = new Map(cupboardFoods(house).map((f) => [f.id, f.group]));
  return leftOver(keptOf(house)).flatMap(({ lot, grams }) => {
    const begun = lot.cold.length > 0;
    if (lot.barred || grams === 0 || (lot.overruled && !begun)) return [];
    return waitsForCold(lot, day, groups.get(lot.food)) ? [{ ...lot, grams }] : [];
  });
}

/** Lots of which the open step has lasted long enough by `day`. */
export function dueInCold(house: Household, day: Day): Lot[] {
  const waiting = new Set(lotsForCold(house, day).map((l) => l.id));
  return house.lots.filter((lot) => waiting.has(lot.id) && coldState(lot, day).kind === 'due');
}

/** The lot with its open step ticked off. @throws RangeError as `ticked` */
export function tickedNext(lot: Lot, day: Day): Lot {
  return tickedStep(
    lot,
    lot.cold.findIndex((step) => step.doneOn === undefined),
    day,
  );
}

/** g that lie in the freezer for the cold on `day`: a freeze begun, not ticked off. */
export function inFreezer(house: Household, day: Day): number {
  return lotsForCold(house, day)
    .filter((lot) => {
      const step = lot.cold.find((each) => each.doneOn === undefined);
      return step?.kind === 'freeze' && step.from <= day;
    })
    .reduce((sum, lot) => sum + lot.grams, 0);
}

/** The dates that suit all those lots today, or the sentence that says why there are none. */
export function coldDates(
  house: Household,
  freezer: Freezer,
  day: Day,
): { readonly plan: FreezerSchedule } | { readonly fault: string } {
  const groups = new Map(cupboardFoods(house).map((f) => [f.id, f.group]));
  const { freeze, thaw } = house.kitchen[0]?.stepDays ?? {};
  try {
    return {
      plan: planFreezer(lotsForCold(house, day), freezer, {
        notBefore: day,
        ...(freeze !== undefined && { freezeDays: freeze }),
        ...(thaw !== undefined && { thawDays: thaw }),
        groupOf: (lot) => groups.get(lot.food),
      }),
    };
  } catch (error) {
    if (error instanceof RangeError) return { fault: error.message };
    throw error;
  }
}

/** Lots whose kept steps are not those of the plan, with the plan's. */
export function changedByPlan(house: Household, plan: FreezerSchedule): Lot[] {
  const steps = new Map(plan.lots.map((l) => [l.lot, l.steps]));
  return house.lots.flatMap((lot) => {
    const planned = steps.get(lot.id);
    return planned && !sameSteps(planned, lot.cold) ? [{ ...lot, cold: planned }] : [];
  });
}

function sameSteps(a: readonly FreezeStep[], b: readonly FreezeStep[]): boolean {
  return (
    a.length === b.length &&
    a.every((s, i) => {
      const other = b[i]!;
      return s.kind === other.kind && s.from === other.from && s.to === other.to && s.doneOn === other.doneOn;
    })
  );
}

/**
 * A name for a new lot where the keeper gives none: the food's, told apart by the day, then by number.
 * @param taken names of the other lots
 */
export function lotName(food: string, boughtOn: Day, taken: readonly string[]): string {
  if (!taken.includes(food)) return food;
  const dated = `${food}, ${dayInWords(boughtOn)}`;
  for (let n = 1; ; n++) {
    const name = n === 1 ? dated : `${dated} (${n})`;
    if (!taken.includes(name)) return name;
  }
}

/** What differs between a mix's "in the cupboard" and what may be weighed out today, g; foods without a lot are left. */
export function cupboardChanges(
  house: Household,
  mix: Mix,
  day: Day,
): { readonly food: string; readonly name: string; readonly from?: number; readonly to: number }[] {
  const ready = new Map(totals(keptOf(house), readyIn(house, day)).map((t) => [t.food, t.ready]));
  return mix.problem.foods.flatMap((f) => {
    const to = ready.get(f.id);
    if (to === undefined || to === f.on_hand_grams) return [];
    return [
      {
        food: f.id,
        name: f.name ?? f.id,
        to,
        ...(f.on_hand_grams !== undefined && { from: f.on_hand_grams }),
      },
    ];
  });
}

/** The mix with what its lots hold as "in the cupboard". */
export function withCupboard(
  mix: Mix,
  changes: readonly { readonly food: string; readonly to: number }[],
): Mix {
  const to = new Map(changes.map((c) => [c.food, c.to]));
  return withProblem(mix, {
    foods: mix.problem.foods.map((f) => (to.has(f.id) ? { ...f, on_hand_grams: to.get(f.id)! } : f)),
  });
}

/** Why a lot may be barred, in the words that are kept. */
export const BAR_REASONS = {
  recalled: 'Recalled',
  infested: 'Infested',
  spoiled: 'Spoiled or mouldy',
} as const;
export type BarReason = keyof typeof BAR_REASONS;

/** "infested: moths in the bag". */
export function barWords(reason: BarReason, note: string): string {
  return note.trim() ? `${reason}: ${note.trim()}` : reason;
}

/** What to mind with a lot that was barred for a reason like this; undefined where nothing is known. */
export function barAdvice(why: string): { readonly words: string; readonly source: string } | undefined {
  const reason = Object.keys(BAR_REASONS).find((r) => why.startsWith(r)) as BarReason | undefined;
  if (reason === 'infested')
    return {
      words:
        'Keep it shut and throw it away outdoors. Mites leave a brownish dust and a smell of mint, and their dust can set off allergies in people and animals: do not stir it up. Look through what stood beside it.',
      source: 'Laboklin, VetInfo: storage mites (dust, smell, allergies; dogs and people)',
    };
  if (reason === 'spoiled')
    return {
      words:
        'Throw all of it away, not only what looks mouldy: threads and poisons of mould reach further than the eye. Do not smell at it closely or shake it; the spores and the dust can harm the airways.',
      source: 'USDA FSIS, Molds on Food (from memory)',
    };
  if (reason === 'recalled')
    return {
      words: 'Keep the pack and its number until the seller or the authority has answered.',
      source: 'common practice, no source',
    };
  return undefined;
}

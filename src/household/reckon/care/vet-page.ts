/** What one page tells a vet of one animal: how it is fed, what changed of late, its weights, and what the keeper saw. */
import { type Condition, type Note, SEEN, type Seen } from '../../../care/model.ts';
import type { VerdictIs } from '../../../care/trials/verdict.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { daysBetween, plusDays } from '../../../kitchen/days.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { type FoodChange, fedBatches } from './fed-batches.ts';
import { ofAnimal } from './of-animal.ts';
import { triedFoods } from './trials-of.ts';
import { weightsOf } from './weight-of.ts';

/** Days that the page looks back. */
export const LOOKS_BACK = 90;
/** Days over which what was really fed is averaged. */
const FED_DAYS = 30;
/** As many of each as one printed page has room for; the rest is counted. */
const ROOM = { changes: 7, notes: 4 } as const;

/** The first ones, and how many more there are. */
export interface Shown<T> {
  readonly shown: readonly T[];
  readonly more: number;
}

export type VetChange =
  /** Another batch than before, with what changed in it. */
  | { readonly kind: 'batch'; readonly on: Day; readonly name: string; readonly change: FoodChange }
  /** Another food beside the mix, or a new pack of the one it is fed. */
  | { readonly kind: 'beside'; readonly on: Day; readonly names: readonly string[] }
  | { readonly kind: 'pack'; readonly on: Day; readonly name: string; readonly opened: boolean }
  | {
      readonly kind: 'trial';
      readonly on: Day;
      readonly name: string;
      /** How often each was seen. */
      readonly seen: Readonly<Record<Seen, number>>;
      /** What all its trials of the food say. */
      readonly verdict: VerdictIs;
    }
  | {
      readonly kind: 'condition';
      readonly on: Day;
      readonly what: Condition['what'];
      readonly over: boolean;
    };

/** One weight of the page, and how far back it lies. */
export interface VetWeight {
  readonly day: Day;
  readonly grams: number;
}

export interface VetPage {
  readonly today: Day;
  readonly from: Day;
  /** Conditions that hold. */
  readonly conditions: readonly Condition[];
  /** g a day as really fed on the days ticked off of the last ones; undefined where none was. */
  readonly fed?: {
    readonly days: number;
    readonly of: number;
    readonly mix: number;
    readonly beside: number;
  };
  readonly changes: Shown<VetChange>;
  readonly weights: {
    readonly story: WeightStory;
    readonly last?: VetWeight;
    /** The smoothed weight about 30 and 90 days before the last weighing; absent where there was none near those days. */
    readonly month?: VetWeight;
    readonly quarter?: VetWeight;
    /** Lowest and highest weighing since `from`, unlikely ones left out. */
    readonly lowest?: VetWeight;
    readonly highest?: VetWeight;
    readonly weighings: number;
  };
  /** The newest first. */
  readonly notes: Shown<Note>;
}

/** @param under the keeper's day and calendar */
export function vetPage(
  house: Household,
  animal: Animal,
  under: Pick<Circumstances, 'today' | 'dayAt'>,
): VetPage {
  const { today } = under;
  const from = plusDays(today, -LOOKS_BACK);
  const lately = (day: Day) => day >= from && day <= today;
  const notes = ofAnimal(house.notes, animal.id)
    .filter((n) => lately(n.on))
    .toSorted((a, b) => (a.on < b.on ? 1 : -1));
  const changes = changesOf(house, animal, under)
    .filter((c) => lately(c.on))
    .sort((a, b) => (a.on < b.on ? 1 : -1));
  const fed = fedOf(house, animal, today);
  return {
    today,
    from,
    conditions: (animal.conditions ?? []).filter(
      (c) => c.since <= today && (c.until === undefined || c.until >= today),
    ),
    ...(fed && { fed }),
    changes: first(changes, ROOM.changes),
    weights: weightsSince(house, animal, from, under),
    notes: first(notes, ROOM.notes),
  };
}

function first<T>(all: readonly T[], most: number): Shown<T> {
  return { shown: all.slice(0, most), more: Math.max(0, all.length - most) };
}

function fedOf(house: Household, animal: Animal, today: Day): VetPage['fed'] {
  const since = plusDays(today, -FED_DAYS);
  const days = ofAnimal(house.feedings, animal.id).filter(
    (f) => f.at !== undefined && f.on > since && f.on <= today,
  );
  if (days.length === 0) return undefined;
  const mean = (grams: readonly number[]) => grams.reduce((sum, g) => sum + g, 0) / days.length;
  return {
    days: days.length,
    of: FED_DAYS,
    mix: mean(days.map((f) => f.mix?.grams ?? 0)),
    beside: mean(days.flatMap((f) => f.beside.map((b) => b.grams))),
  };
}

function changesOf(
  house: Household,
  animal: Animal,
  under: Pick<Circumstances, 'dayAt'>,
): readonly VetChange[] {
  const fed = fedBatches(house, animal, under.dayAt);
  const batches = fed.flatMap(({ batch, from: on, change }, i): VetChange[] => {
    const before = fed[i - 1]?.batch;
    const [beside, was] = [besideOf(batch), before ? besideOf(before) : []];
    const other =
      before !== undefined &&
      (beside.some((b) => !was.some((w) => w.id === b.id)) || beside.length < was.length);
    return [
      { kind: 'batch', on, name: batch.name, change },
      ...(other ? [{ kind: 'beside', on, names: beside.map((b) => b.name ?? b.id) } as const] : []),
    ];
  });
  const besideIds = new Set(fed.flatMap(({ batch }) => besideOf(batch).map((b) => b.id)));
  const packs = house.lots
    .filter((lot) => besideIds.has(lot.food))
    .map(
      ({ name, openedOn, boughtOn }): VetChange => ({
        kind: 'pack',
        on: openedOn ?? boughtOn,
        name,
        opened: openedOn !== undefined,
      }),
    );
  const trials = triedFoods(house, animal).flatMap(({ name, judged }) =>
    judged.trials.flatMap(({ offerings }): VetChange[] => {
      const [begun] = offerings.map((o) => o.on).sort();
      if (begun === undefined) return [];
      const seen = Object.fromEntries(
        SEEN.map((what) => [what, offerings.filter((o) => o.seen === what).length]),
      ) as Record<Seen, number>;
      return [{ kind: 'trial', on: begun, name, seen, verdict: judged.is }];
    }),
  );
  const conditions = (animal.conditions ?? []).flatMap(({ what, since, until }): VetChange[] => [
    { kind: 'condition', on: since, what, over: false },
    ...(until === undefined ? [] : [{ kind: 'condition', on: until, what, over: true } as const]),
  ]);
  return [...batches, ...packs, ...trials, ...conditions];
}

const besideOf = ({ problem }: Batch) => problem.beside;

/** How near to its day an earlier weight must lie, days. */
const NEAR = 7;

function weightsSince(
  house: Household,
  animal: Animal,
  from: Day,
  under: Pick<Circumstances, 'today' | 'dayAt'>,
): VetPage['weights'] {
  const story = weightsOf(house, animal, under);
  const likely = story.points.filter((p) => !p.unlikely);
  const lately = likely.filter((p) => p.day >= from);
  const last = likely.at(-1);
  const before = (days: number): VetWeight | undefined => {
    if (!last) return undefined;
    const day = plusDays(last.day, -days);
    // The trend has a day each between the first weighing and the last; a weighing must lie near for it to mean anything.
    const [first, end] = [plusDays(day, -NEAR), plusDays(day, NEAR)];
    const isNear = (p: { readonly day: Day }) => p.day >= first && p.day <= end;
    if (!likely.some(isNear)) return undefined;
    const near = story.trend.filter(isNear);
    return near.reduce<VetWeight | undefined>(
      (best, p) =>
        best === undefined || Math.abs(daysBetween(p.day, day)) < Math.abs(daysBetween(best.day, day))
          ? { day: p.day, grams: p.grams }
          : best,
      undefined,
    );
  };
  const end = (better: (a: number, b: number) => boolean) =>
    lately.reduce<VetWeight | undefined>(
      (best, { day, grams }) => (best === undefined || better(grams, best.grams) ? { day, grams } : best),
      undefined,
    );
  const month = before(30);
  const quarter = before(LOOKS_BACK);
  const lowest = end((a, b) => a < b);
  const highest = end((a, b) => a > b);
  return {
    story,
    ...(last && { last: { day: last.day, grams: last.grams } }),
    ...(month && { month }),
    ...(quarter && { quarter }),
    ...(lowest && { lowest }),
    ...(highest && { highest }),
    weighings: lately.length,
  };
}

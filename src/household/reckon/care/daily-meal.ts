/** What one animal is fed on a day: of which batch, what beside it, and why it should not be fed that, if so. */
import { reachOf } from '../../../kitchen/batch/trace.ts';
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import { evenParts } from '../../../kitchen/feeding/parts-by-day.ts';
import type { Batch, Lot } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { batchesFor, batchName } from '../batch/batches.ts';
import { type PresentBatch, stillFed } from '../batch/present-batch.ts';
import { changeOverDay } from '../calendar/change-over-day.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { contentsOf } from '../cupboard/contents.ts';
import { isHere } from './here.ts';

export interface DailyMeal {
  /** The batch that is being fed, and g of it a day; g are absent where nobody has said what it is fed. */
  readonly mix?: MealPart;
  /** What is fed beside it, by the batch's problem; g are absent where they are not known. */
  readonly beside: readonly BesidePart[];
  /** While its food changes: the batch it was fed before, and g of that a day. */
  readonly old?: MealPart;
  /** The change of food: which day of how many this is, and the new food's part of it, above 0 to 1. */
  readonly change?: { readonly day: number; readonly of: number; readonly part: number };
  /** Why what is named here should not be fed; absent where nothing is known against it. */
  readonly stop?: Stop;
}

interface MealPart {
  readonly batch: Batch;
  /** "batch 3". */
  readonly name: string;
  readonly grams?: number;
}

interface BesidePart {
  readonly food: string;
  readonly name: string;
  readonly grams?: number;
  /** The pack it is fed from, where packs of it are kept. */
  readonly lot?: Lot;
}

/**
 * "recalled": a barred pack is in the batch; "maybe recalled": it may be, for not every pour named its pack; "upset":
 * the batch holds a food that upset this animal; "refused": one that it refuses.
 */
export interface Stop {
  readonly why: 'recalled' | 'maybe recalled' | 'upset' | 'refused';
  readonly batch: Batch;
  /** The barred pack. */
  readonly lot?: Lot;
  /** The foods, by name. */
  readonly foods: readonly string[];
}

type Under = Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'> & Partial<Pick<Circumstances, 'table'>>;

/**
 * By the batch that was finished last of all that are fed to it. While its food changes, part of that comes from the
 * batch before, as long as that lasts.
 * @returns undefined where no batch is fed to it, and for an animal that is gone
 */
export function dailyMeal(house: Household, animal: Animal, under: Under): DailyMeal | undefined {
  if (!isHere(animal)) return undefined;
  const own = house.batches
    .filter((b) => !b.givenUp && b.animalIds.includes(animal.id))
    .sort((a, b) => (a.startedAt < b.startedAt ? -1 : 1));
  const [present, before] = stillFed(house, own, under);
  if (!present) return undefined;
  const day = changeOverDay(house, present, under);
  const part = (day && before && evenParts(day.of)[day.day - 1]) ?? 1;
  const now = fedOf(house, animal, present, under, part);
  const old = before && part < 1 ? fedOf(house, animal, before, under, 1 - part) : undefined;
  const batches = [present.batch, ...(old ? [old.mix.batch] : [])];
  const stop = stopOf(house, animal, batches, under);
  return {
    mix: now.mix,
    beside: old ? together(now.beside, old.beside) : now.beside,
    ...(old && { old: old.mix }),
    ...(day && { change: { ...day, part } }),
    ...(stop && { stop }),
  };
}

/** Its day's food by one batch. @param part of the day's food that comes from it and what is beside it */
function fedOf(
  house: Household,
  animal: Animal,
  { batch }: PresentBatch,
  under: Under,
  part: number,
): { readonly mix: MealPart; readonly beside: readonly BesidePart[] } {
  const [meal] = feedingOf({
    problem: batch.problem,
    animals: [animal],
    grams: 0,
    from: under.today,
    shares: under.chosenFor(batch.problem),
    water: (b) =>
      b.composition?.WATER ?? (b.ref === undefined ? undefined : under.table?.get(b.ref)?.composition.WATER),
  }).animals;
  const of = (grams: number | undefined) => (grams === undefined ? {} : { grams: grams * part });
  return {
    mix: { batch, name: nameOf(house, batch), ...of(meal?.mix) },
    beside: (meal?.beside ?? []).map(({ food, name, grams }) => ({ food, name, ...of(grams) })),
  };
}

/** "batch 3", counted as the pages of its mix count it. */
function nameOf(house: Household, batch: Batch): string {
  const mix = house.mixes.find((m) => m.id === batch.mixId);
  const all = mix && batchesFor(house, mix);
  return all?.includes(batch) ? batchName(all, batch) : batch.name;
}

/** Beside both batches: the grams of one food added up; unknown where one of them is. */
function together(now: readonly BesidePart[], old: readonly BesidePart[]): BesidePart[] {
  const foods = [...new Set([...now, ...old].map((b) => b.food))];
  return foods.flatMap((food) => {
    const both = [...now, ...old].filter((b) => b.food === food);
    const [first] = both;
    if (!first) return [];
    const known = both.flatMap((b) => b.grams ?? []);
    const { grams: _, ...named } = first;
    return known.length < both.length ? [named] : [{ ...named, grams: known.reduce((a, b) => a + b, 0) }];
  });
}

/** What speaks against feeding it these batches, the most pressing alone. */
function stopOf(
  house: Household,
  animal: Animal,
  batches: readonly Batch[],
  { dayAt }: Under,
): Stop | undefined {
  const reached = house.lots
    .filter((lot) => lot.barred)
    .map((lot) => ({ lot, reach: reachOf(lot.id, contentsOf(house), dayAt) }));
  const holding = (foods: ReadonlySet<string>, batch: Batch) =>
    batch.problem.foods.filter(
      (f) => inBatch(batch).has(f.id) && (foods.has(f.id) || (f.ref !== undefined && foods.has(f.ref))),
    );
  const upset = new Set(
    house.trials
      .filter((t) => t.animalId === animal.id && t.offerings.some((o) => o.seen === 'upset'))
      .map((t) => t.food),
  );
  const refused = new Set(animal.refuses);
  const found = batches.flatMap((batch): Stop[] => {
    const sure = reached.find(({ reach }) => reach.batches.some((b) => b.batch.id === batch.id));
    const maybe = reached.find(({ reach }) => reach.maybe.some((b) => b.id === batch.id));
    const foods = (of: ReadonlySet<string>) => holding(of, batch).map((f) => f.name ?? f.id);
    return [
      ...(sure ? [{ why: 'recalled' as const, batch, lot: sure.lot, foods: [sure.lot.name] }] : []),
      ...(maybe ? [{ why: 'maybe recalled' as const, batch, lot: maybe.lot, foods: [maybe.lot.name] }] : []),
      ...(foods(upset).length > 0 ? [{ why: 'upset' as const, batch, foods: foods(upset) }] : []),
      ...(foods(refused).length > 0 ? [{ why: 'refused' as const, batch, foods: foods(refused) }] : []),
    ];
  });
  const order: readonly Stop['why'][] = ['recalled', 'maybe recalled', 'upset', 'refused'];
  return order.flatMap((why) => found.find((s) => s.why === why) ?? [])[0];
}

/** Ids of the foods that lie in it. */
function inBatch(batch: Batch): ReadonlySet<string> {
  const grams = new Map<string, number>();
  for (const p of batch.pours) grams.set(p.food, (grams.get(p.food) ?? 0) + p.grams);
  return new Set([...grams].flatMap(([food, g]) => (g > 0 ? [food] : [])));
}

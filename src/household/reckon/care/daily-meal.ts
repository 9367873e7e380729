/** What one animal is fed on a day: of which batch, what beside it, and why it should not be fed that, if so. */
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import { evenParts } from '../../../kitchen/feeding/parts-by-day.ts';
import type { Batch, Lot } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { batchesFor, batchName } from '../batch/batches.ts';
import { type PresentBatch, stillFed } from '../batch/present-batch.ts';
import { changeOverDay } from '../calendar/change-over-day.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { packInUse } from '../cupboard/pellet-stock.ts';
import { stopOf } from '../cupboard/stops.ts';
import type { NamedFood } from '../foods/alike.ts';
import { isHere } from './here.ts';
import { type OutRule, refusedBy, rulesOn } from './out-foods.ts';

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
  readonly stop?: MealStop;
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
 * "recalled": a pack in it, or of what is fed beside it, is not to be used any more; "maybe recalled": it may be in it;
 * "upset": it holds a food that upset this animal; "refused": one that it refuses.
 */
export interface MealStop {
  readonly why: 'recalled' | 'maybe recalled' | 'upset' | 'refused';
  /** The batch that it is about; absent where it is what is fed beside it. */
  readonly batch?: Batch;
  /** The pack that is not to be used any more. */
  readonly lot?: Lot;
  /** The foods, by name. */
  readonly foods: readonly string[];
}

type Under = Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'> & Partial<Pick<Circumstances, 'table'>>;

/**
 * By the batch that was finished last of all that are fed to it; by an older one that still lasts where a pack in that is
 * not to be used any more. While its food changes, part of that comes from the batch before, as long as that lasts.
 * @returns undefined where no batch is fed to it, and for an animal that is gone
 */
export function dailyMeal(house: Household, animal: Animal, under: Under): DailyMeal | undefined {
  if (!isHere(animal)) return undefined;
  const own = house.batches
    .filter((b) => !b.givenUp && b.animalIds.includes(animal.id))
    .sort((a, b) => (a.startedAt < b.startedAt ? -1 : 1));
  const fed = stillFed(house, own, under);
  const sound = fed.filter(({ batch }) => !stopOf(house, batch, under.dayAt)?.sure);
  const [present, before] = sound.length > 0 ? sound : fed;
  if (!present) return undefined;
  const day = changeOverDay(house, present, under);
  const part = (day && before && evenParts(day.of)[day.day - 1]) ?? 1;
  const now = fedOf(house, animal, present, under, part);
  const old = before && part < 1 ? fedOf(house, animal, before, under, 1 - part) : undefined;
  const batches = [present.batch, ...(old ? [old.mix.batch] : [])];
  const beside = (old ? together(now.beside, old.beside) : now.beside).map((part): BesidePart => {
    const lot = packInUse(house, part.food, under.today);
    return lot ? { ...part, lot } : part;
  });
  const stop = againstIt(house, animal, batches, beside, under);
  return {
    mix: now.mix,
    beside,
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

/** What speaks against feeding it that, the most pressing alone. */
function againstIt(
  house: Household,
  animal: Animal,
  batches: readonly Batch[],
  beside: readonly BesidePart[],
  { dayAt }: Under,
): MealStop | undefined {
  const out = refusedBy(house, animal);
  const falling = (foods: readonly NamedFood[], why: readonly OutRule['why'][]) =>
    foods.filter((f) => rulesOn(out, f).some((r) => why.includes(r.why))).map((f) => f.name ?? f.id);
  const because = (foods: readonly NamedFood[], batch?: Batch): MealStop[] => {
    const upset = falling(foods, ['upset']);
    const refused = falling(foods, ['list', 'refused']);
    return [
      ...(upset.length > 0 ? [{ why: 'upset' as const, ...(batch && { batch }), foods: upset }] : []),
      ...(refused.length > 0 ? [{ why: 'refused' as const, ...(batch && { batch }), foods: refused }] : []),
    ];
  };
  const found = [
    ...batches.flatMap((batch): MealStop[] => {
      const stop = stopOf(house, batch, dayAt);
      const lot = stop?.lots[0]?.lot;
      const inIt = poured(batch);
      return [
        ...(stop && lot
          ? [
              {
                why: stop.sure ? ('recalled' as const) : ('maybe recalled' as const),
                batch,
                lot,
                foods: [lot.name],
              },
            ]
          : []),
        ...because(
          batch.problem.foods.filter((f) => inIt.has(f.id)),
          batch,
        ),
      ];
    }),
    ...beside.flatMap((part): MealStop[] => {
      const barred = part.lot ? undefined : barredPack(house, part.food);
      return [
        ...(barred ? [{ why: 'recalled' as const, lot: barred, foods: [part.name] }] : []),
        ...because([{ id: part.food, name: part.name }]),
      ];
    }),
  ];
  const order: readonly MealStop['why'][] = ['recalled', 'maybe recalled', 'upset', 'refused'];
  return order.flatMap((why) => found.find((s) => s.why === why) ?? [])[0];
}

/** A pack of a food that is not to be used any more, where something of it is still there. */
function barredPack({ lots }: Household, food: string): Lot | undefined {
  return lots.find((l) => l.food === food && l.barred !== undefined && l.left?.grams !== 0);
}

/** Ids of the foods that lie in it. */
function poured(batch: Batch): ReadonlySet<string> {
  const grams = new Map<string, number>();
  for (const p of batch.pours) grams.set(p.food, (grams.get(p.food) ?? 0) + p.grams);
  return new Set([...grams].flatMap(([food, g]) => (g > 0 ? [food] : [])));
}

/**
 * What is left of a fresh food after trimming, and after drying: from grams of dried food to grams to buy, and back.
 *
 * Trim losses: USDA National Nutrient Database for Standard Reference, release 28 (2015), food description file
 * (FOOD_DES), fields "Refuse" (percent of the weight as purchased) and "Ref_desc" (which parts; here in our own
 * words). They are averages of good market produce: what a kitchen scale says goes before them.
 */
import type { Food } from '../../foods/food.ts';
import { type FreshNeeded, freshFor } from '../../foods/forms/fresh-for.ts';
import { type Words, words } from '../../words/words.ts';
import listed from './trim-losses.json' with { type: 'json' };

/** One line of the table. */
interface TrimRow {
  /** Reference number of the fresh food. */
  readonly ref: string;
  readonly name: string;
  /** Percent of the purchased weight. */
  readonly trimLoss: number;
  /** The parts that are trimmed off, as the catalogue has them in each language. */
  readonly parts: keyof Words['trimming']['partNames'];
}

/** Vegetables, herbs and fruit that keepers dry, in the order of their reference numbers. */
export const TRIM_ROWS = listed as readonly TrimRow[];

const rowOf = new Map(TRIM_ROWS.map((row) => [row.ref, row]));

/** A fresh food that may be dried; `refuse` is the trim loss that its table prints, in percent. */
export type FreshFood = Food & { readonly refuse?: number };

export interface Trim {
  /** Percent of the purchased weight; absent where nobody says, which is not 0. */
  readonly trimLoss?: number;
  /** The parts that are trimmed off, where the source names them. */
  readonly parts?: string;
  readonly source?: string;
  /** A plain sentence. */
  readonly note: string;
}

/**
 * What is trimmed off a fresh food: the keeper's own figure, else the table above, else what the food's row prints.
 * A printed 0 with no parts named is passed on as 0, and the note says how little it rests on.
 * @param own percent of the purchased weight as the keeper weighed it, from 0 to below 100
 * @throws RangeError when a trim loss is out of range
 */
export function trimOf(food: FreshFood, own?: number): Trim {
  const { trimming: t, kitchen } = words();
  if (own !== undefined) {
    checkTrim(own, food);
    return { trimLoss: own, source: kitchen.weighedByKeeper, note: t.own(own) };
  }
  const row = rowOf.get(food.ref);
  if (row) {
    const parts = t.partNames[row.parts];
    return {
      trimLoss: row.trimLoss,
      parts,
      source: t.source,
      note: t.parts(row.trimLoss, parts, t.source),
    };
  }
  const { refuse } = food;
  if (refuse === undefined) return { note: t.unknown(food.name) };
  checkTrim(refuse, food);
  return {
    trimLoss: refuse,
    source: t.source,
    note: refuse === 0 ? t.nothing(food.name, t.source) : t.noParts(refuse, t.source),
  };
}

function checkTrim(percent: number, food: Food): void {
  if (!(percent >= 0 && percent < 100))
    throw new RangeError(
      `trim loss of ${food.name} (${food.ref}) must be from 0 to below 100 percent, not ${percent}`,
    );
}

type FreshToBuy = FreshNeeded & Pick<Trim, 'parts' | 'source'>;

/**
 * Fresh food to buy for some grams of dried: dried x (1 - Md) / (1 - Mf) / (1 - trim). `purchased` is absent where
 * the trim loss is unknown; `prepared`, the weight ready to dry, is always there.
 * @param driedGrams 0 or more
 * @param moisture of the dried food, g water per 100 g, below that of the fresh one
 * @param ownTrim percent, as the keeper weighed it
 * @throws RangeError when the fresh food's moisture is unknown, or an amount is out of range
 */
export function freshToBuy(
  driedGrams: number,
  fresh: FreshFood,
  moisture: number,
  ownTrim?: number,
): FreshToBuy {
  const { trimLoss, parts, source, note } = trimOf(fresh, ownTrim);
  const { refuse: _, ...bare } = fresh;
  const needed = freshFor(
    driedGrams,
    trimLoss === undefined ? bare : { ...bare, refuse: trimLoss },
    moisture,
  );
  return { ...needed, note, ...(parts !== undefined && { parts }), ...(source !== undefined && { source }) };
}

/**
 * Grams of dried food that 1 g of fresh food as purchased gives; undefined where the trim loss is unknown.
 * The inverse of {@link freshToBuy}. Throws as that does.
 */
export function driedPerBought(fresh: FreshFood, moisture: number, ownTrim?: number): number | undefined {
  const { purchased } = freshToBuy(1, fresh, moisture, ownTrim);
  return purchased === undefined ? undefined : 1 / purchased;
}

/**
 * Grams of dried food from fresh food that is ready to dry.
 * @param prepared g, 0 or more @throws RangeError as {@link freshToBuy}
 */
export function driedFromPrepared(prepared: number, fresh: FreshFood, moisture: number): number {
  if (!(Number.isFinite(prepared) && prepared >= 0))
    throw new RangeError(`prepared grams must be 0 or more, not ${prepared}`);
  const { prepared: perGram } = freshFor(1, fresh, moisture);
  return prepared / perGram;
}

/**
 * A food dried to a chosen moisture, worked out from the fresh food. Dry matter is conserved; what heat and air
 * destroy is kept in part. How sure each figure is comes from the foods that the USDA table holds both fresh and
 * dried (`docs/drying-model.md`).
 */

import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { factorOf } from '../figures.ts';
import type { Composition, Figures, Food } from '../food.ts';
import { concentration } from './concentration.ts';
import spreadFile from './drying-spread.json' with { type: 'json' };
import { type Fit, fitFor, type Spread, Z } from './fit.ts';
import { RETENTION_SOURCE, retentionRow } from './retention.ts';

/** The fitted figures: what `fit.ts` makes of the pairs. `report.test.ts` keeps the file true to them. */
export const DRYING_SPREAD = spreadFile as unknown as Spread;

export interface DriedFigures extends Figures {
  /** How each figure came about, or why there is none. */
  readonly notes: Partial<Record<Tag, string>>;
}

/**
 * What 100 g of the dried food hold.
 *
 * A nutrient that the fresh food does not give stays unknown; one that it gives as 0 stays 0. The `sd` joins that
 * of the fresh food with the model's, so value +- 1.96 sd (cut at 0) holds about nine measured foods in ten.
 * Where one figure would mislead there are only `low` and `high`, which hold about nine in ten.
 * @param moisture of the dried food, g water per 100 g, below that of the fresh one
 * @throws RangeError when the fresh food's moisture is unknown, or `moisture` is not from 0 to below it
 */
export function driedForm(fresh: Food, moisture: number): DriedFigures {
  const factor = concentration(freshMoisture(fresh, moisture), moisture);
  const fruit = isFruit(fresh);
  const composition: Composition = { WATER: moisture };
  const sd: Composition = {};
  const low: Composition = {};
  const high: Composition = {};
  const notes: Partial<Record<Tag, string>> = { WATER: words().foodForms.notes.asChosen };

  for (const { tag } of NUTRIENTS) {
    if (tag === 'WATER') continue;
    const value = fresh.composition[tag];
    const least = fresh.low?.[tag];
    const most = fresh.high?.[tag];
    if (value === undefined && least === undefined && most === undefined) continue;
    const fit = fitFor(DRYING_SPREAD, tag, fruit);
    if (!fit) {
      notes[tag] = words().foodForms.notes.nothingKnown;
      continue;
    }
    notes[tag] = value === 0 ? words().foodForms.notes.freshNone : noteOf(fit, fruit);
    if (value !== undefined && (fit.sd !== null || value === 0)) {
      const expected = value * factor * fit.kept;
      composition[tag] = expected;
      const spread = Math.hypot((fresh.sd[tag] ?? 0) * factor * fit.kept, expected * (fit.sd ?? 0));
      if (spread > 0) sd[tag] = spread;
    }
    // Bounds: those of the fresh food as far as drying lets them stand, else its value and sd where that is needed.
    const reach = fit.sd === null && value ? Z * (fresh.sd[tag] ?? 0) : undefined;
    const lowest =
      least ?? (value === undefined || reach === undefined ? undefined : Math.max(0, value - reach));
    const highest = most ?? (value === undefined || reach === undefined ? undefined : value + reach);
    if (lowest !== undefined) low[tag] = lowest * factor * fit.low;
    if (highest !== undefined) high[tag] = atMost(tag, highest * factor * fit.high, moisture);
  }
  return { composition, sd, low, high, notes, ...factorOf(fresh) };
}

/**
 * The same food at another moisture, with nothing lost and nothing added but water: amounts, sd and bounds times
 * the ratio of dry matter. Dried food that takes up water again, or one dry batch against another.
 * @param moisture g water per 100 g, 0 to below 100
 * @throws RangeError when the food's moisture is unknown or 100, or `moisture` is out of range
 */
export function atMoisture(food: Figures, moisture: number): Figures {
  const had = food.composition.WATER;
  if (had === undefined)
    throw new RangeError('composition.WATER is unknown; give the moisture of the food first');
  if (!(had < 100))
    throw new RangeError(
      `composition.WATER is ${had}: nothing but water, so nothing says what it holds when drier`,
    );
  checkMoisture(moisture);
  const factor = concentration(had, moisture);
  const times = (amounts: Composition): Composition => {
    const scaled: Composition = {};
    for (const [tag, amount] of Object.entries(amounts)) scaled[tag as Tag] = amount * factor;
    return scaled;
  };
  return {
    composition: { ...times(food.composition), WATER: moisture },
    sd: times(food.sd),
    ...(food.low && { low: times(food.low) }),
    ...(food.high && { high: times(food.high) }),
    ...factorOf(food),
  };
}

function checkMoisture(moisture: number): void {
  if (!(moisture >= 0 && moisture < 100))
    throw new RangeError(`moisture must be from 0 to below 100 g per 100 g, not ${moisture}`);
}

function freshMoisture(fresh: Food, moisture: number): number {
  const had = fresh.composition.WATER;
  if (had === undefined)
    throw new RangeError(
      `${fresh.name} (${fresh.ref}): composition.WATER is unknown; drying needs the moisture of the fresh food`,
    );
  if (!(had >= 0 && had < 100))
    throw new RangeError(
      `${fresh.name} (${fresh.ref}): composition.WATER is ${had}, not from 0 to below 100 g per 100 g`,
    );
  checkMoisture(moisture);
  if (moisture >= had)
    throw new RangeError(
      `moisture ${moisture} g per 100 g is not below the ${had} of ${fresh.name} (${fresh.ref}); drying takes water out`,
    );
  return had;
}

/** Fruit by our group, else by that of the USDA table (NDB numbers 09xxx). */
function isFruit(food: Food): boolean {
  return food.group === undefined ? food.ref.startsWith('sr28:09') : food.group === 'fruit';
}

/** No more grams of anything than there is dry matter. */
function atMost(tag: Tag, amount: number, moisture: number): number {
  return nutrient(tag).unit === 'g' ? Math.min(amount, 100 - moisture) : amount;
}

function noteOf(fit: Fit, fruit: boolean): string {
  const row = fruit ? retentionRow('dried', 'fruit') : undefined;
  const t = words().foodForms.notes;
  const kept = {
    'dry matter': t.dryConserved,
    'published factor': t.keptBy(fit.kept, RETENTION_SOURCE, String(row?.code ?? '')),
    'median of the pairs': t.keptMedian(fit.kept),
  }[fit.basis];
  return fit.sd !== null ? t.spread(kept, fit.sd, fit.figures) : t.tooWide(kept, fit.figures);
}

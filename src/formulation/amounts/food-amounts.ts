/**
 * The amounts a problem counts with: every food of the mix and beside it, every nutrient, with what is
 * known, what is estimated and what nobody knows kept apart.
 */

import { FIBRE_ESTIMATES } from '../../foods/fibre-ratio.ts';
import { FOOD_GROUPS } from '../../foods/food.ts';
import { foodName } from '../../foods/food-name.ts';
import type { Reference, ReferenceFood } from '../../foods/reference.ts';
import { spreadOf } from '../../foods/variation.ts';
import { airDryFactor, airDryWater } from '../../nutrition/air-dry.ts';
import { gramsPer, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Beside, Ingredient, Variation } from '../problem/problem.ts';
import { type GivenAmounts, givenAmounts } from './given-amounts.ts';

/** One amount per 100 g as fed, unit of the tagname. */
export interface CountedAmount {
  readonly status: 'known' | 'estimated' | 'unknown';
  /** What rules count: the value, the estimate's middle, or the lower bound of an unknown. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly sd: number;
  /** The value is no more than what a label guarantees from one side: the least it may be, or the most. */
  readonly guaranteed?: 'least' | 'most';
}

/** A food of the problem with its amounts. */
export interface FoodAmounts {
  readonly id: string;
  readonly name: string;
  readonly group?: string;
  /** @returns the amount of a nutrient as rules count it */
  amount(tag: Tag): CountedAmount;
  /** Largest amount known in the food's group: what an unknown denominator of a ratio counts as. */
  largest(tag: Tag): number;
}

/** Standard deviations that reach to the ends of a 95 % interval. */
const Z95 = 1.96;

/** How many times its least a range's most may be, so that its middle stands for it (common practice, no source). */
const WIDEST = 2;

/** What is given of a food, and what is known of foods like it. */
interface Known extends GivenAmounts {
  readonly borrowed: Partial<Record<Tag, string>>;
  readonly group: string | undefined;
  readonly variation: Variation;
  /** The most any food of its kind is known to hold; 0 where nothing is known. */
  most(tag: Tag): number;
}

/** Looks up a food of the problem; amounts are worked out once and kept. Protein is crude protein, N x 6.25. */
export function foodAmounts(
  food: Ingredient | Beside,
  reference: Reference,
  variation: Variation = 'given',
): FoodAmounts {
  const ref = food.ref === undefined ? undefined : reference.get(food.ref);
  const own = 'group' in food ? food.group : undefined;
  const known: Known = {
    ...givenAmounts(food, ref),
    borrowed: food.borrowed ?? {},
    group: ref?.group ?? own,
    variation,
    most: (tag) => (ref && largestOf(reference, tag, ref.tableGroup)) || largestInUse(reference, tag),
  };
  const kept = keptAmounts(food, reference, variation);
  const amount = (tag: Tag) => {
    let counted = kept.get(tag);
    if (!counted) {
      counted = count(tag, known);
      kept.set(tag, counted);
    }
    return counted;
  };
  const largest = (tag: Tag) => largestKnown(reference, tag, ref, own);
  return {
    id: food.id,
    // Amounts are kept, and whoever asks for them next may speak another language.
    get name() {
      return food.name ?? (ref ? foodName(ref) : food.id);
    },
    group: own,
    amount,
    largest,
  };
}

const ofTables = new WeakMap<Reference, Map<string, Map<Tag, CountedAmount>>>();

/**
 * Amounts counted so far. Those of a food that has all its figures from the tables are kept with the tables: every
 * change of a mix makes its problem anew, and counting them took a third of the time of a whole answer.
 */
function keptAmounts(
  food: Ingredient | Beside,
  reference: Reference,
  variation: Variation,
): Map<Tag, CountedAmount> {
  const { ref, composition, sd, low, high, protein_factor, borrowed } = food;
  const own = [composition, sd, low, high, protein_factor, borrowed];
  if (ref === undefined || own.some((figure) => figure !== undefined)) return new Map();
  const all = ofTables.get(reference) ?? new Map<string, Map<Tag, CountedAmount>>();
  ofTables.set(reference, all);
  const key = JSON.stringify([ref, variation, 'group' in food ? food.group : undefined]);
  const kept = all.get(key) ?? new Map<Tag, CountedAmount>();
  all.set(key, kept);
  return kept;
}

/**
 * A fresh food counted as if its water were that of dry food ({@link airDryWater}): every other amount rises in
 * proportion to the dry matter. A food that is dry already stays as it is.
 */
export function airDry(food: FoodAmounts): FoodAmounts {
  const water = food.amount('WATER').value;
  const factor = airDryFactor(water);
  if (factor === 1) return food;
  const amount = (tag: Tag): CountedAmount => {
    const { value, low, high, sd, ...rest } = food.amount(tag);
    if (tag === 'WATER') {
      const counted = airDryWater(water);
      return { status: rest.status, value: counted, low: counted, high: counted, sd: 0 };
    }
    return { ...rest, value: value * factor, low: low * factor, high: high * factor, sd: sd * factor };
  };
  return { ...food, amount };
}

function count(tag: Tag, known: Known): CountedAmount {
  const bounds = boundsOf(tag, known);
  const value = known.value(tag);
  if (value !== undefined) {
    const sd = known.sd(tag) ?? (known.variation === 'published' ? spreadOf(value, tag, known.group) : 0);
    const reach = known.reach(tag);
    if (known.borrowed[tag] !== undefined)
      return estimate(tag, known, value, [Math.max(0, value - Z95 * sd), value + Z95 * sd], bounds, () => sd);
    // The factor shifts all of a food's protein alike; the spread between samples is what it is.
    if (reach) return estimate(tag, known, value, reach, bounds, () => sd);
    return { status: 'known', value, low: value, high: value, sd };
  }
  const [least, greatest] = bounds;
  if (known.low(tag) !== undefined && known.high(tag) !== undefined && greatest <= WIDEST * least) {
    // A narrow range says no more than that any value in it may be the one; a wide one has no sensible middle.
    return estimate(tag, known, (least + greatest) / 2, bounds, bounds, (width) => width / Math.sqrt(12));
  }
  const dietary = known.value('FIBTG');
  const ratio = FIBRE_ESTIMATES[known.group ?? 'any'] ?? FIBRE_ESTIMATES.any;
  if (tag === 'FIBC' && dietary !== undefined && ratio) {
    const reach = [dietary * ratio.low, dietary * ratio.high] as const;
    return estimate(tag, known, dietary * ratio.mean, reach, bounds, (width) => ofReach(width, known));
  }
  const high = Math.max(least, Math.min(greatest, mostPossible(tag, known)));
  return {
    status: 'unknown',
    value: least,
    low: least,
    high,
    sd: 0,
    ...(least > 0 && { guaranteed: 'least' }),
  };
}

/**
 * Between which ends an amount without a value must lie, by what a label guarantees and by what other amounts say:
 * dietary fibre is never less than crude fibre.
 */
function boundsOf(tag: Tag, known: Known): readonly [least: number, greatest: number] {
  const crude = tag === 'FIBTG' ? (known.value('FIBC') ?? known.low('FIBC')) : undefined;
  const dietary = tag === 'FIBC' ? (known.value('FIBTG') ?? known.high('FIBTG')) : undefined;
  const greatest = Math.min(known.high(tag) ?? Number.POSITIVE_INFINITY, dietary ?? Number.POSITIVE_INFINITY);
  return [Math.min(Math.max(known.low(tag) ?? 0, crude ?? 0), greatest), greatest];
}

/**
 * An estimate with the ends between which it may lie, none of them outside what is guaranteed. A guarantee that no part
 * of the estimate keeps refutes it: how far the amount lies beyond the guarantee, nobody knows then.
 */
function estimate(
  tag: Tag,
  known: Known,
  value: number,
  [low, high]: readonly [number, number],
  [least, greatest]: readonly [number, number],
  sdOf: (width: number) => number,
): CountedAmount {
  const within = (v: number) => Math.min(greatest, Math.max(least, v));
  const ends = {
    low: low > greatest ? least : within(low),
    high: high < least ? within(mostPossible(tag, known)) : within(high),
  };
  const guaranteed = value < least ? 'least' : value > greatest ? 'most' : undefined;
  return {
    status: 'estimated',
    value: within(value),
    ...ends,
    sd: sdOf(ends.high - ends.low),
    ...(guaranteed && { guaranteed }),
  };
}

/** Spread of an estimate whose ends are the least and the greatest published: two standard deviations either way. */
function ofReach(width: number, { variation }: Known): number {
  return variation === 'published' ? width / 4 : 0;
}

/** Parts are printed rounded: together they may come to a little over 100 g. */
const WHOLE = 100.5;

/**
 * The most an unknown amount can be: what the known parts leave of 100 g (of the ash, for a mineral; all the protein,
 * for an amino acid), and for anything but the parts in grams no more than the largest amount known of such foods.
 */
function mostPossible(tag: Tag, { weight: raw, most: largest }: Known): number {
  const { unit, group } = nutrient(tag);
  const parts = (tags: Tag[]) => tags.reduce((sum, t) => sum + (t === tag ? 0 : (raw(t) ?? 0)), 0);
  const room = Math.max(0, WHOLE - parts(['WATER', 'PROCNT', 'FAT', 'ASH']));
  const carbohydrate = raw('CHOCDF');
  if (group === 'carbohydrate') return Math.min(room, carbohydrate ?? room);
  if (group === 'fat' && unit === 'g') return raw('FAT') ?? room;
  if (unit === 'g') return Math.max(0, room - (carbohydrate ?? raw('FIBTG') ?? raw('FIBC') ?? 0));
  const grams = gramsPer(unit);
  const whole = group === 'mineral' ? raw('ASH') : group === 'amino acid' ? raw('PROCNT') : undefined;
  const mass = grams === undefined ? Number.POSITIVE_INFINITY : (whole ?? room) / grams;
  return Math.min(mass, largest(tag) || mass);
}

const mostInUse = new WeakMap<Reference, Map<Tag, number>>();

/**
 * The largest amount known in any table group that a keeper's food stands in. A keeper's own grouping is for the
 * split of the mix and proves nothing of what a food may hold.
 */
function largestInUse(reference: Reference, tag: Tag): number {
  const kept = mostInUse.get(reference) ?? new Map<Tag, number>();
  mostInUse.set(reference, kept);
  const known = kept.get(tag);
  if (known !== undefined) return known;
  const tables = new Set(reference.plainFoods().map((f) => f.tableGroup));
  const most = Math.max(0, ...[...tables].map((group) => largestOf(reference, tag, group) ?? 0));
  kept.set(tag, most);
  return most;
}

/** The largest amount known in a group of the tables, or in a group of ours; of protein the largest crude protein. */
function largestOf(reference: Reference, tag: Tag, group: string): number | undefined {
  return tag === 'PROCNT' ? reference.largestCrudeProtein(group) : reference.largest(tag, group);
}

/** What an unknown denominator of a ratio counts as: the largest amount known in the food's group. */
function largestKnown(
  reference: Reference,
  tag: Tag,
  ref: ReferenceFood | undefined,
  group: string | undefined,
): number {
  const named = ref ? largestOf(reference, tag, ref.tableGroup) : group && largestOf(reference, tag, group);
  if (named) return named;
  return Math.max(0, ...Object.keys(FOOD_GROUPS).map((g) => largestOf(reference, tag, g) ?? 0));
}

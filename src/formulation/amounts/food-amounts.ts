/**
 * The amounts a problem counts with: every food of the mix and beside it, every nutrient, with what is
 * known, what is estimated and what nobody knows kept apart.
 */
import { FIBRE_ESTIMATES } from '../../foods/fibre-ratio.ts';
import { FOOD_GROUPS } from '../../foods/food.ts';
import type { Reference, ReferenceFood } from '../../foods/reference.ts';
import { spreadOf } from '../../foods/variation.ts';
import { airDryFactor, airDryWater } from '../../nutrition/air-dry.ts';
import { gramsPer, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Beside, Ingredient, Variation } from '../problem/problem.ts';

/** One amount per 100 g as fed, unit of the tagname. */
export interface CountedAmount {
  readonly status: 'known' | 'estimated' | 'unknown';
  /** What rules count: the value, the estimate's middle, or the lower bound of an unknown. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly sd: number;
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

/** Amounts from label or table, before anything is estimated. */
interface GivenAmounts {
  value(tag: Tag): number | undefined;
  low(tag: Tag): number | undefined;
  high(tag: Tag): number | undefined;
  sd(tag: Tag, value: number): number;
  readonly borrowed: Partial<Record<Tag, string>>;
  readonly group: string | undefined;
  readonly variation: Variation;
  /** The most any food of its kind is known to hold; 0 where nothing is known. */
  most(tag: Tag): number;
}

/** Looks up a food of the problem; amounts are worked out once and kept. */
export function foodAmounts(
  food: Ingredient | Beside,
  reference: Reference,
  variation: Variation = 'given',
): FoodAmounts {
  const ref = food.ref === undefined ? undefined : reference.get(food.ref);
  const own = 'group' in food ? food.group : undefined;
  const group = ref?.group ?? own;
  const largest = (tag: Tag) => largestKnown(reference, tag, ref, own);
  const givenSd = (tag: Tag) =>
    food.sd?.[tag] ?? (food.composition?.[tag] === undefined ? ref?.sd[tag] : undefined);
  const given: GivenAmounts = {
    value: (tag) => food.composition?.[tag] ?? ref?.composition[tag],
    low: (tag) => food.low?.[tag],
    high: (tag) => food.high?.[tag],
    sd: (tag, value) => givenSd(tag) ?? (variation === 'published' ? spreadOf(value, tag, group) : 0),
    borrowed: food.borrowed ?? {},
    group,
    variation,
    most: (tag) => (ref && reference.largest(tag, ref.tableGroup)) || largestInUse(reference, tag),
  };
  const cache = new Map<Tag, CountedAmount>();
  const amount = (tag: Tag) => {
    let counted = cache.get(tag);
    if (!counted) {
      counted = count(tag, given);
      cache.set(tag, counted);
    }
    return counted;
  };
  return { id: food.id, name: food.name ?? ref?.name ?? food.id, group: own, amount, largest };
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
    const { status, value, low, high, sd } = food.amount(tag);
    if (tag === 'WATER') {
      const counted = airDryWater(water);
      return { status, value: counted, low: counted, high: counted, sd: 0 };
    }
    return { status, value: value * factor, low: low * factor, high: high * factor, sd: sd * factor };
  };
  return { ...food, amount };
}

function count(tag: Tag, given: GivenAmounts): CountedAmount {
  const value = given.value(tag);
  if (value !== undefined) {
    const sd = given.sd(tag, value);
    if (given.borrowed[tag] === undefined) return { status: 'known', value, low: value, high: value, sd };
    return { status: 'estimated', value, low: Math.max(0, value - Z95 * sd), high: value + Z95 * sd, sd };
  }
  const least = given.low(tag);
  const greatest = given.high(tag);
  if (least !== undefined && greatest !== undefined && least <= greatest && greatest <= WIDEST * least) {
    // A narrow range says no more than that any value in it may be the one; a wide one has no sensible middle.
    const middle = (least + greatest) / 2;
    const sd = (greatest - least) / Math.sqrt(12);
    return { status: 'estimated', value: middle, low: least, high: greatest, sd };
  }
  return fibre(tag, given) ?? unknown(tag, given, least ?? 0);
}

/** One measure of fibre from the other; undefined where neither is given. */
function fibre(tag: Tag, given: GivenAmounts): CountedAmount | undefined {
  // Dietary fibre is never less than crude fibre, so a label's crude fibre bounds it from below.
  if (tag === 'FIBTG') {
    const crude = given.value('FIBC') ?? given.low('FIBC');
    return crude === undefined ? undefined : unknown(tag, given, Math.max(crude, given.low(tag) ?? 0));
  }
  const dietary = given.value('FIBTG');
  const ratio = FIBRE_ESTIMATES[given.group ?? 'any'] ?? FIBRE_ESTIMATES.any;
  if (tag !== 'FIBC' || dietary === undefined || !ratio) return undefined;
  const [low, high] = [dietary * ratio.low, dietary * ratio.high];
  // The bounds are the least and the greatest pair published: read as two standard deviations either way.
  const sd = given.variation === 'published' ? (high - low) / 4 : 0;
  return { status: 'estimated', value: dietary * ratio.mean, low, high, sd };
}

/** An amount nobody knows: it counts as the least it can be. */
function unknown(tag: Tag, given: GivenAmounts, least: number): CountedAmount {
  const most = Math.min(
    given.high(tag) ?? Number.POSITIVE_INFINITY,
    mostPossible(tag, given.value, () => given.most(tag)),
  );
  return { status: 'unknown', value: least, low: least, high: Math.max(least, most), sd: 0 };
}

/** Parts are printed rounded: together they may come to a little over 100 g. */
const WHOLE = 100.5;

/**
 * The most an unknown amount can be: what the known parts leave of 100 g (of the ash, for a mineral; all the protein,
 * for an amino acid), and for anything but the parts in grams no more than the largest amount known of such foods.
 */
function mostPossible(tag: Tag, raw: (tag: Tag) => number | undefined, largest: () => number): number {
  const { unit, group } = nutrient(tag);
  const known = (tags: Tag[]) => tags.reduce((sum, t) => sum + (t === tag ? 0 : (raw(t) ?? 0)), 0);
  const room = Math.max(0, WHOLE - known(['WATER', 'PROCNT', 'FAT', 'ASH']));
  const carbohydrate = raw('CHOCDF');
  if (group === 'carbohydrate') return Math.min(room, carbohydrate ?? room);
  if (group === 'fat' && unit === 'g') return raw('FAT') ?? room;
  if (unit === 'g') return Math.max(0, room - (carbohydrate ?? raw('FIBTG') ?? raw('FIBC') ?? 0));
  const grams = gramsPer(unit);
  const whole = group === 'mineral' ? raw('ASH') : group === 'amino acid' ? raw('PROCNT') : undefined;
  const mass = grams === undefined ? Number.POSITIVE_INFINITY : (whole ?? room) / grams;
  return Math.min(mass, largest() || mass);
}

const tablesInUse = new WeakMap<Reference, ReadonlySet<string>>();

/**
 * The largest amount known in any table group that a keeper's food stands in. A keeper's own grouping is for the
 * split of the mix and proves nothing of what a food may hold.
 */
function largestInUse(reference: Reference, tag: Tag): number {
  const tables = tablesInUse.get(reference) ?? new Set(reference.plainFoods().map((f) => f.tableGroup));
  tablesInUse.set(reference, tables);
  return Math.max(0, ...[...tables].map((group) => reference.largest(tag, group) ?? 0));
}

/** What an unknown denominator of a ratio counts as: the largest amount known in the food's group. */
function largestKnown(
  reference: Reference,
  tag: Tag,
  ref: ReferenceFood | undefined,
  group: string | undefined,
): number {
  const named = ref ? reference.largest(tag, ref.tableGroup) : group && reference.largest(tag, group);
  if (named) return named;
  return Math.max(0, ...Object.keys(FOOD_GROUPS).map((g) => reference.largest(tag, g) ?? 0));
}

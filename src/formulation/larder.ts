/**
 * The amounts a problem counts with: every food of the mix and beside it, every nutrient, with what is
 * known, what is estimated and what nobody knows kept apart.
 */
import { FIBRE_ESTIMATES } from '../foods/fibre.ts';
import { FOOD_GROUPS } from '../foods/food.ts';
import type { Reference, ReferenceFood } from '../foods/reference.ts';
import { gramsPer, nutrient, type Tag } from '../nutrition/nutrients.ts';
import type { Beside, Ingredient } from './problem.ts';

/** One amount per 100 g as fed, unit of the tagname. */
export interface Counted {
  readonly status: 'known' | 'estimated' | 'unknown';
  /** What rules count: the value, the estimate's middle, or the lower bound of an unknown. */
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly sd: number;
}

/** A food of the problem with its amounts. */
export interface Stocked {
  readonly id: string;
  readonly name: string;
  readonly group?: string;
  /** @returns the amount of a nutrient as rules count it */
  amount(tag: Tag): Counted;
  /** Largest amount known in the food's group: what an unknown denominator of a ratio counts as. */
  largest(tag: Tag): number;
}

/** Looks up a food of the problem; amounts are worked out once and kept. */
export function stock(food: Ingredient | Beside, reference: Reference): Stocked {
  const ref = food.ref === undefined ? undefined : reference.get(food.ref);
  const group = 'group' in food ? food.group : undefined;
  const cache = new Map<Tag, Counted>();
  const raw = (tag: Tag) => food.composition?.[tag] ?? ref?.composition[tag];
  const sd = (tag: Tag) =>
    food.sd?.[tag] ?? (food.composition?.[tag] === undefined ? ref?.sd[tag] : undefined) ?? 0;
  const largest = (tag: Tag) => largestKnown(reference, tag, ref, group);
  const amount = (tag: Tag) => {
    let counted = cache.get(tag);
    if (!counted) {
      counted = count(tag, raw, sd, ref?.group ?? group, () => largest(tag));
      cache.set(tag, counted);
    }
    return counted;
  };
  return { id: food.id, name: food.name ?? ref?.name ?? food.id, group, amount, largest };
}

function count(
  tag: Tag,
  raw: (tag: Tag) => number | undefined,
  sd: (tag: Tag) => number,
  group: string | undefined,
  largest: () => number,
): Counted {
  const value = raw(tag);
  if (value !== undefined) return { status: 'known', value, low: value, high: value, sd: sd(tag) };
  const most = mostPossible(tag, raw, largest);
  const crude = raw('FIBC');
  // Dietary fibre is never less than crude fibre, so a label's crude fibre bounds it from below.
  if (tag === 'FIBTG' && crude !== undefined) {
    return { status: 'unknown', value: crude, low: crude, high: Math.max(most, crude), sd: 0 };
  }
  const dietary = raw('FIBTG');
  const ratio = FIBRE_ESTIMATES[group ?? 'any'] ?? FIBRE_ESTIMATES.any;
  if (tag === 'FIBC' && dietary !== undefined && ratio) {
    return {
      status: 'estimated',
      value: dietary * ratio.mean,
      low: dietary * ratio.low,
      high: dietary * ratio.high,
      sd: 0,
    };
  }
  return { status: 'unknown', value: 0, low: 0, high: most, sd: 0 };
}

/**
 * The most an unknown amount can be: what the known parts leave of 100 g (of the ash, for a mineral), and for
 * anything but the parts in grams no more than the largest amount known in the food's group.
 */
function mostPossible(tag: Tag, raw: (tag: Tag) => number | undefined, largest: () => number): number {
  const { unit, group } = nutrient(tag);
  const known = (tags: Tag[]) => tags.reduce((sum, t) => sum + (t === tag ? 0 : (raw(t) ?? 0)), 0);
  const room = Math.max(0, 100 - known(['WATER', 'PROCNT', 'FAT', 'ASH']));
  const carbohydrate = raw('CHOCDF');
  if (group === 'carbohydrate') return Math.min(room, carbohydrate ?? room);
  if (group === 'fat' && unit === 'g') return raw('FAT') ?? room;
  if (unit === 'g') return Math.max(0, room - (carbohydrate ?? raw('FIBTG') ?? raw('FIBC') ?? 0));
  const grams = gramsPer(unit);
  const mass =
    grams === undefined
      ? Number.POSITIVE_INFINITY
      : (group === 'mineral' ? (raw('ASH') ?? room) : room) / grams;
  return Math.min(mass, largest() || mass);
}

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

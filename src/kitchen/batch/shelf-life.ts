/**
 * How long a mix keeps: no longer than the ingredient that spoils first, and never past the earliest best before of
 * what went in. Shelf lives and safe moistures stand in `data/keeping.json`, each with its source or the words
 * "common practice, no source". They tell of quality as much as of safety, so every date is an estimate.
 */
import type { Rule } from '../../formulation/problem/problem.ts';
import type { NutrientLine } from '../../formulation/problem/result.ts';
import { normalBelow } from '../../nutrition/normal.ts';
import { dayInWords, dayNumber, plusDays, plusMonths } from '../days.ts';
import type { Day, Lot } from '../model.ts';
import data from './shelf-life.json' with { type: 'json' };

export type ShelfKind = (typeof data.kinds)[number]['kind'];
export type Place = 'cupboard' | 'freezer';

interface ShelfLife {
  readonly kind: string;
  readonly name: string;
  /** Months. */
  readonly cupboard: number;
  /** In the cupboard once it is opened, as it is in a mix; as long as closed where absent. */
  readonly opened?: number;
  readonly freezer: number;
  readonly source: string;
}

const lifeOf = new Map((data.kinds as readonly ShelfLife[]).map((life) => [life.kind, life]));
const dryOf = new Map(data.dryEnough.map((row) => [row.kind, row]));
const DAMP = data.damp as unknown as {
  readonly source: string;
  readonly cereal: readonly (readonly [number, number])[];
  readonly soybean: readonly (readonly [number, number])[];
};

/** From so much fat on, g per 100 g, a seed is an oil seed (common practice, no source: grains hold 1 to 7, oats most). */
const OILY = 15;

/** What an ingredient is like in the jar. */
export interface StoredFood {
  readonly food: string;
  readonly name: string;
  readonly group?: string;
  /** Percent of the mix. */
  readonly share: number;
  /** g per 100 g as weighed; absent where unknown. */
  readonly fat?: number;
  readonly water?: number;
  /** Lots it came from; empty where the keeper keeps none. */
  readonly lots: readonly Lot[];
}

const CRUSHED =
  /\b(ground|crushed|milled|meal|flour|flakes?|flaked|rolled|chopped|cracked|kibbled|powder|puree)\b/i;
const IN_SHELL = /\b(in (the |its )?shell|unshelled)\b/i;

/** How a food keeps, by its group, its fat and what its name says was done to it. A seed of unknown fat counts as oily. */
export function shelfKindOf(food: Pick<StoredFood, 'group' | 'fat' | 'name'>): ShelfKind {
  const { group, fat, name } = food;
  const crushed = CRUSHED.test(name);
  switch (group) {
    case 'seed':
      if (fat === undefined || fat >= OILY) return crushed ? 'crushed oil seed' : 'oil seed';
      return crushed ? 'crushed grain' : 'grain';
    case 'nut':
      return crushed ? 'crushed oil seed' : IN_SHELL.test(name) ? 'nut in shell' : 'nut';
    case 'legume':
      return crushed ? 'crushed grain' : 'legume';
    case 'vegetable':
    case 'fruit':
    case 'herb':
    case 'animal':
      return group;
    default:
      return 'other';
  }
}

/** One reason why a mix keeps no longer. */
export interface ShelfLimit {
  readonly food: string;
  readonly until: Day;
  readonly why: string;
  readonly source: string;
}

export interface UseBy {
  readonly day: Day;
  /** Why that day, in one sentence. */
  readonly reason: string;
  readonly source: string;
  /** Every limit, the earliest first. */
  readonly limits: readonly ShelfLimit[];
  /** Ids of the fattiest and the dampest ingredient of those whose amounts are known; absent where none is. */
  readonly fattiest?: string;
  readonly dampest?: string;
  /** What is not known and was therefore not counted. */
  readonly notes: readonly string[];
}

/**
 * Until when a mix is to be used.
 * @param mix its ingredients; those with a share of 0 are left out
 * @param madeOn the day it was mixed @param place where it is kept
 * @throws RangeError where nothing is in the mix
 */
export function usableUntil(mix: readonly StoredFood[], madeOn: Day, place: Place = 'cupboard'): UseBy {
  const used = mix.filter((i) => i.share > 0);
  if (used.length === 0)
    throw new RangeError('nothing is in the mix, so it has no use-by; weigh something first');
  const limits = used
    .flatMap((i) => limitsOf(i, madeOn, place))
    .sort((a, b) => dayNumber(a.until) - dayNumber(b.until));
  const [first] = limits as [ShelfLimit, ...ShelfLimit[]];
  const fattiest = largest(used, (i) => i.fat);
  const dampest = largest(used, (i) => i.water);
  const missing = (of: (i: StoredFood) => number | undefined) =>
    used.filter((i) => of(i) === undefined).map((i) => i.name);
  const noWater = missing((i) => i.water);
  const noFat = missing((i) => i.fat);
  return {
    day: first.until,
    reason: first.why,
    source: first.source,
    limits,
    ...(fattiest && { fattiest: fattiest.food }),
    ...(dampest && { dampest: dampest.food }),
    notes: [
      ...(first.until < madeOn
        ? [
            `That is before it was made on ${dayInWords(madeOn)}: smell and look at ${nameOf(used, first.food)} before you feed any.`,
          ]
        : []),
      ...(noWater.length > 0
        ? [`The moisture of ${noWater.join(', ')} is not known and was not counted.`]
        : []),
      ...(noFat.length > 0 ? [`The fat of ${noFat.join(', ')} is not known.`] : []),
    ],
  };
}

function limitsOf(food: StoredFood, madeOn: Day, place: Place): ShelfLimit[] {
  const life = lifeOf.get(shelfKindOf(food))!;
  const limits: ShelfLimit[] = [];
  const limit = (until: Day, why: string, source: string) =>
    limits.push({ food: food.food, until, why, source });
  const months = (n: number) => `${n} ${n === 1 ? 'month' : 'months'}`;

  // From the day it was bought where that is known: what stood a while has so much less to go.
  for (const lot of food.lots) {
    if (lot.bestBefore !== undefined)
      limit(
        lot.bestBefore,
        `Best before of ${lotWords(food, lot)} is ${dayInWords(lot.bestBefore)}.`,
        'printed on the pack',
      );
    // A printed best before says more of an unmixed pack than the time since it was bought.
    else
      limit(
        plusMonths(lot.boughtOn, lot.frozen ? life.freezer : life[place]),
        `${lotWords(food, lot)}, bought on ${dayInWords(lot.boughtOn)}, keeps about ${months(lot.frozen ? life.freezer : life[place])}, as ${life.name} do.`,
        life.source,
      );
  }
  const mixed = place === 'cupboard' ? (life.opened ?? life.cupboard) : life.freezer;
  limit(
    plusMonths(madeOn, mixed),
    `${food.name} keeps about ${months(mixed)} from mixing, as ${life.name} do.`,
    life.source,
  );
  const damp = dampDays(food);
  if (damp && place === 'cupboard')
    limit(
      plusDays(madeOn, damp.days),
      `${food.name} holds ${tenths(food.water!)} % water, above the ${damp.most} % at which it keeps: about ${damp.days} days.`,
      damp.source,
    );
  return limits;
}

/** The food, and the lot where that has a name of its own. */
const lotWords = (food: StoredFood, lot: Lot) =>
  lot.name === food.name ? food.name : `${food.name} (lot “${lot.name}”)`;

/** Days that a food too damp to keep lasts at 21 C; undefined where it is dry enough, or its moisture unknown. */
export function dampDays(
  food: Pick<StoredFood, 'group' | 'fat' | 'name' | 'water'>,
): { readonly days: number; readonly most: number; readonly source: string } | undefined {
  const kind = shelfKindOf(food);
  const { most } = dryOf.get(kind)!;
  if (food.water === undefined || food.water <= most) return undefined;
  const cereal = kind === 'grain' || kind === 'crushed grain';
  const table = cereal ? DAMP.cereal : DAMP.soybean;
  // Fruit above its limit is damper than any line of a table for seeds that still speaks of it.
  const row = table.find(([moisture]) => moisture >= food.water!) ?? table.at(-1)!;
  const own = cereal ? 'cereal' : 'soybean; taken for want of a table of its own';
  return { days: row[1], most, source: `${DAMP.source} (${own})` };
}

/** Most moisture at which a food keeps, g of water per 100 g, and its source. */
export function safeBelow(food: Pick<StoredFood, 'group' | 'fat' | 'name'>): {
  readonly most: number;
  readonly source: string;
} {
  const { most, source } = dryOf.get(shelfKindOf(food))!;
  return { most, source };
}

/** Most moisture of a mix that keeps, g per 100 g. */
export const MIX_MOISTURE: { readonly most: number; readonly source: string } = data.mix;

/** The rule that a mix keeps, as formulation takes it. @param most instead of the limit above, g per 100 g */
export function moistureRule(most = MIX_MOISTURE.most): Rule {
  if (!(most > 0 && most < 100))
    throw new RangeError(`the most moisture of a mix must be above 0 and below 100 g per 100 g, not ${most}`);
  const source = most === MIX_MOISTURE.most ? MIX_MOISTURE.source : 'as the keeper says';
  return { nutrient: 'WATER', max: most, on: 'mix', source };
}

/**
 * The moisture at which a mix comes to rest when every ingredient in it is just dry enough. In a closed jar all come
 * to one relative humidity, so damp ones lend water to dry ones; at the humidity that is safe for each, the mix
 * holds the mean of their limits, by share.
 */
export function restingLimit(mix: readonly Pick<StoredFood, 'group' | 'fat' | 'name' | 'share'>[]): number {
  const total = mix.reduce((sum, i) => sum + i.share, 0);
  if (!(total > 0)) throw new RangeError('nothing is in the mix, so it has no limit; give a share above 0');
  return mix.reduce((sum, i) => sum + i.share * safeBelow(i).most, 0) / total;
}

/** Whether a mix is dry enough to keep. */
export interface MixMoisture {
  readonly state: 'dry' | 'unsure' | 'damp';
  readonly moisture: number;
  readonly sd: number;
  readonly most: number;
  /** Chance that it is at most that; of the foods whose moisture is known. */
  readonly chance: number;
  readonly source: string;
  readonly sentence: string;
}

/**
 * Holds the moisture of a mix against the safe limit.
 * @param water the mix's line for WATER, as an evaluation gives it; undefined where nothing is known of it
 * @param most the limit, g per 100 g
 */
export function mixMoisture(water: NutrientLine | undefined, most = MIX_MOISTURE.most): MixMoisture {
  const { source } = MIX_MOISTURE;
  const moisture = water?.mix ?? 0;
  const sd = water?.sd_mix ?? 0;
  const chance = sd > 0 ? normalBelow((most - moisture) / sd) : moisture <= most ? 1 : 0;
  const known = water !== undefined && water.coverage_mix > 100 - 1e-6;
  const answer = { moisture, sd, most, chance, source };
  // What is known can only grow by what is not, so too damp is too damp.
  if (moisture > most)
    return {
      ...answer,
      state: 'damp',
      sentence: `The mix holds ${known ? 'about' : 'at least'} ${tenths(moisture)} % water, above the ${most} % at which it keeps: dry the dampest foods on, use less of them, or keep it in the freezer.`,
    };
  if (!known)
    return {
      ...answer,
      state: 'unsure',
      sentence: `Moisture is known for only ${Math.floor(water?.coverage_mix ?? 0)} % of the mix, so nobody can say whether it keeps.`,
    };
  if (chance < SURE)
    return {
      ...answer,
      state: 'unsure',
      sentence: `The mix holds about ${tenths(moisture)} % water; it may be more than the ${most} % at which it keeps. Keep it in a glass and look for damp.`,
    };
  return {
    ...answer,
    state: 'dry',
    sentence: `The mix holds about ${tenths(moisture)} % water and keeps (at most ${most} %).`,
  };
}

/** How sure "dry" must be. */
const SURE = 0.975;

/** One piece of advice on keeping, and its source. */
export interface StorageAdvice {
  readonly sentence: string;
  readonly source: string;
}

/** How to keep a mix. */
export function storageAdvice(mix: readonly StoredFood[], place: Place = 'cupboard'): StorageAdvice[] {
  const fatty = mix.some((i) => i.share > 0 && /nut|oil/.test(shelfKindOf(i)));
  return data.advice
    .filter(({ store }) => store === 'any' || (store === 'fatty' && fatty) || store === place)
    .map(({ sentence, source }) => ({ sentence, source }));
}

function largest(
  foods: readonly StoredFood[],
  of: (food: StoredFood) => number | undefined,
): StoredFood | undefined {
  return foods
    .filter((f) => of(f) !== undefined)
    .reduce<StoredFood | undefined>((most, f) => (most && of(most)! >= of(f)! ? most : f), undefined);
}

const nameOf = (foods: readonly StoredFood[], id: string) => foods.find((f) => f.food === id)!.name;
const tenths = (value: number) => Number(value.toFixed(1));

/**
 * Until when a mix is to be used: no longer than the ingredient that spoils first keeps, and never past the earliest
 * best before of what went in. Shelf lives tell of quality as much as of safety, so every date is an estimate.
 */
import { words } from '../../words/words.ts';
import { dayInWords, dayNumber, plusDays, plusMonths } from '../days.ts';
import type { Day, Lot } from '../model.ts';
import { lifeOf, type Place, type StoredFood, safeBelow, shelfKindOf } from './shelf-kind.ts';
import data from './shelf-life.json' with { type: 'json' };

const DAMP = data.damp as unknown as {
  readonly source: string;
  readonly cereal: readonly (readonly [number, number])[];
  readonly soybean: readonly (readonly [number, number])[];
};

/** One reason why a mix keeps no longer. */
interface ShelfLimit {
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
  const t = words().batch.useBy;
  return {
    day: first.until,
    reason: first.why,
    source: first.source,
    limits,
    ...(fattiest && { fattiest: fattiest.food }),
    ...(dampest && { dampest: dampest.food }),
    notes: [
      ...(first.until < madeOn ? [t.beforeMade(dayInWords(madeOn), nameOf(used, first.food))] : []),
      ...(noWater.length > 0 ? [t.noWater(noWater)] : []),
      ...(noFat.length > 0 ? [t.noFat(noFat)] : []),
    ],
  };
}

function limitsOf(food: StoredFood, madeOn: Day, place: Place): ShelfLimit[] {
  const kind = shelfKindOf(food);
  const life = lifeOf.get(kind)!;
  const t = words().batch.useBy;
  const kinds = words().batch.kinds[kind];
  const limits: ShelfLimit[] = [];
  const limit = (until: Day, why: string, source: string) =>
    limits.push({ food: food.food, until, why, source });

  // From the day it was bought where that is known: what stood a while has so much less to go.
  for (const lot of food.lots) {
    if (lot.bestBefore !== undefined)
      limit(lot.bestBefore, t.bestBefore(lotWords(food, lot), dayInWords(lot.bestBefore)), t.printed);
    // A printed best before says more of an unmixed pack than the time since it was bought.
    else
      limit(
        plusMonths(lot.boughtOn, lot.frozen ? life.freezer : life[place]),
        t.bought(
          lotWords(food, lot),
          dayInWords(lot.boughtOn),
          lot.frozen ? life.freezer : life[place],
          kinds,
        ),
        life.source,
      );
  }
  const mixed = place === 'cupboard' ? (life.opened ?? life.cupboard) : life.freezer;
  limit(plusMonths(madeOn, mixed), t.mixed(food.name, mixed, kinds), life.source);
  const damp = dampDays(food);
  if (damp && place === 'cupboard')
    limit(plusDays(madeOn, damp.days), t.damp(food.name, food.water!, damp.most, damp.days), damp.source);
  return limits;
}

/** The food, and the lot where that has a name of its own. */
const lotWords = (food: StoredFood, lot: Lot) =>
  lot.name === food.name ? food.name : words().batch.useBy.pack(food.name, lot.name);

/** Days that a food too damp to keep lasts at 21 C; undefined where it is dry enough, or its moisture unknown. */
export function dampDays(
  food: Pick<StoredFood, 'group' | 'fat' | 'name' | 'water'>,
): { readonly days: number; readonly most: number; readonly source: string } | undefined {
  const kind = shelfKindOf(food);
  const { most } = safeBelow(food);
  if (food.water === undefined || food.water <= most) return undefined;
  const cereal = kind === 'grain' || kind === 'crushed grain';
  const table = cereal ? DAMP.cereal : DAMP.soybean;
  // Fruit above its limit is damper than any line of a table for seeds that still speaks of it.
  const row = table.find(([moisture]) => moisture >= food.water!) ?? table.at(-1)!;
  const own = cereal ? words().batch.dampTable.cereal : words().batch.dampTable.soybean;
  return { days: row[1], most, source: `${DAMP.source} (${own})` };
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

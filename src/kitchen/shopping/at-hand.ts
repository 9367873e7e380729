/** What the cupboard and the trays give of one food of a batch, and what is left to buy of it. */
import { words } from '../../words/words.ts';
import { sayBarred } from '../cupboard/barred.ts';
import { oldestFirst, takenBy } from '../cupboard/cupboard.ts';
import { dayInWords } from '../days.ts';
import { driedFromPrepared } from '../drying/yields.ts';
import type { Day, DryingRun, Lot } from '../model.ts';
import { SAME } from '../tolerances.ts';
import { fromFreshLot, notDried, type ShoppingFood } from './home-dried.ts';

/** What is left of a lot: what came in less what was poured or dried. */
export interface LotLeft {
  readonly lot: Lot;
  /** g in its form. */
  readonly left: number;
}

/** A drying run that is not over, and the fresh lot it dries. */
export interface OnTrays {
  readonly run: DryingRun;
  readonly lot: Lot;
}

/** What the batch takes of a lot. */
export interface FromLot {
  readonly lot: Lot;
  /** g taken, in the form of the lot. */
  readonly grams: number;
  /** The same, as mixed. */
  readonly asMixed: number;
  /** What that much of the lot cost; absent where its price is unknown. */
  readonly price?: number;
}

/** What a drying run that is not over will give. */
export interface FromTrays extends OnTrays {
  /** g of it that the batch takes, once dried. */
  readonly asMixed: number;
  /** What that much of the lot cost; absent where its price is unknown. */
  readonly price?: number;
}

/** A lot or drying run of the food that is not counted. */
export interface PassedLot {
  readonly lot: Lot;
  /** g that are left, in the form of the lot; on the trays, as they were put there. */
  readonly grams: number;
  readonly onTrays?: true;
  /** In words, without a capital or a full stop. */
  readonly why: string;
}

/** One food before anything is bought. */
export interface FoodAtHand {
  readonly food: ShoppingFood;
  readonly needed: number;
  readonly fromLots: readonly FromLot[];
  readonly fromTrays: readonly FromTrays[];
  readonly passed: readonly PassedLot[];
  readonly toBuy: number;
}

/** Below a milligram nothing is bought: it is the rounding of the sum, not a want. */
export const A_MILLIGRAM = 0.001;

/** What there is, and the day on which it is looked at. */
interface AtHand {
  readonly cupboard: readonly LotLeft[];
  readonly drying: readonly OnTrays[];
  readonly on: Day;
}

/** What lots and trays give of a food, and what is left to buy. @param needed g as mixed */
export function atHand(food: ShoppingFood, needed: number, { cupboard, drying, on }: AtHand): FoodAtHand {
  const fromLots: FromLot[] = [];
  const fromTrays: FromTrays[] = [];
  const passed: PassedLot[] = [];
  let open = needed;
  for (const { lot, left } of lotsOf(cupboard, food.food)) {
    if (left === 0) continue;
    const perGram = perGramOf(lot, food, on);
    if (typeof perGram === 'string') {
      passed.push({ lot, grams: left, why: perGram });
      continue;
    }
    if (open < A_MILLIGRAM) continue;
    const grams = Math.min(left, open / perGram);
    open = Math.max(0, open - grams * perGram);
    fromLots.push({ lot, grams, asMixed: grams * perGram, ...priced(lot, grams) });
  }
  for (const { run, lot } of drying) {
    if (lot.food !== food.food) continue;
    const why = barredWhy(lot) ?? notDried(food);
    if (why !== undefined) {
      passed.push({ lot, grams: run.gramsBefore, onTrays: true, why });
      continue;
    }
    if (open < A_MILLIGRAM) continue;
    const gives = driedFromPrepared(run.gramsBefore, food.dried!.fresh, food.dried!.moisture);
    const asMixed = Math.min(gives, open);
    open -= asMixed;
    // The trimmings were paid for with the rest.
    fromTrays.push({ run, lot, asMixed, ...priced(lot, takenBy(run) * (asMixed / gives)) });
  }
  return { food, needed, fromLots, fromTrays, passed, toBuy: open < A_MILLIGRAM ? 0 : open };
}

const priced = (lot: Lot, grams: number) =>
  lot.price === undefined ? {} : { price: (lot.price / lot.grams) * grams };

/** g as mixed that 1 g of a lot gives, or why it is not counted. */
function perGramOf(lot: Lot, food: ShoppingFood, on: Day): number | string {
  const t = words().shopping.why;
  const barred = barredWhy(lot);
  if (barred !== undefined) return barred;
  if (lot.bestBefore !== undefined && lot.bestBefore < on) return t.pastBest(dayInWords(lot.bestBefore));
  if (lot.form !== 'fresh') return 1;
  const perGram = fromFreshLot(food);
  return typeof perGram === 'string' ? t.fresh(perGram) : perGram;
}

const barredWhy = (lot: Lot) =>
  lot.barred ? words().shopping.why.barred(sayBarred(lot.barred.why)) : undefined;

function lotsOf(cupboard: readonly LotLeft[], food: string): LotLeft[] {
  const here = cupboard.filter(({ lot }) => lot.food === food);
  for (const { lot, left } of here) {
    if (!(Number.isFinite(lot.grams) && lot.grams > 0))
      throw new RangeError(`lot ${lot.id}: grams must be above 0, not ${lot.grams}`);
    if (!(left >= 0 && left <= lot.grams * (1 + SAME)))
      throw new RangeError(`lot ${lot.id}: what is left must be from 0 to its ${lot.grams} g, not ${left}`);
  }
  return here.sort((a, b) => oldestFirst(a.lot, b.lot));
}

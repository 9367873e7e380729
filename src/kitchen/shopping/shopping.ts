/**
 * The shopping list of a batch: what each food takes, what the cupboard gives, what is still to buy and in which
 * packs, what is left over, and what the batch costs. An unknown price is unknown, never 0: the sum is then "at least".
 *
 * "As mixed" is the weight of a food as it goes into the mix: dry as bought, or dried at home.
 */

import { joined } from '../../formulation/explain/sentences.ts';
import type { Highs } from '../../formulation/solve/highs.ts';
import { oldestFirst, takenBy } from '../cupboard/cupboard.ts';
import { dayInWords } from '../days.ts';
import { driedFromPrepared, driedPerBought, type FreshFood, freshToBuy } from '../drying/yields.ts';
import type { Day, DryingRun, Lot, Offer } from '../model.ts';
import { sayGrams } from './pack-weight.ts';
import {
  choosePacks,
  type NotBought,
  type Order,
  type PackAim,
  type PacksChosen,
  type PacksOf,
  type Seller,
} from './packs.ts';

/** How a food becomes what is mixed, where it is dried at home. */
export interface HomeDried {
  /** The fresh food that is bought. */
  readonly fresh: FreshFood;
  /** Of the dried food, g water per 100 g. */
  readonly moisture: number;
  /** Trim loss as the keeper weighed it, percent of the purchased weight. */
  readonly trimLoss?: number;
}

export interface ShoppingFood {
  /** Id, as the mix names it. */
  readonly food: string;
  /** The name for people. */
  readonly name: string;
  readonly dried?: HomeDried;
}

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

/** The batch: g, or what these animals eat in so many days. */
export type BatchSize =
  | { readonly grams: number }
  | {
      readonly days: number;
      readonly animals: readonly { readonly name: string; readonly dailyGrams?: number }[];
      /** The mix's part of the ration by weight, above 0 to 1. */
      readonly mixPart: number;
    };

export interface ShoppingQuestion {
  readonly foods: readonly ShoppingFood[];
  /** Planned shares, percent of the mix by food id; together 100. */
  readonly shares: Readonly<Record<string, number>>;
  readonly batch: BatchSize;
  readonly cupboard: readonly LotLeft[];
  /** Food on the trays: out of its fresh lot, and in no dried one yet. */
  readonly drying?: readonly OnTrays[];
  readonly offers: readonly Offer[];
  readonly sellers?: readonly Seller[];
  readonly aim: PackAim;
  /** The day on which the batch is planned: what is past its best before on it is not counted. */
  readonly on: Day;
}

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
export interface Passed {
  readonly lot: Lot;
  /** g that are left, in the form of the lot; on the trays, as they were put there. */
  readonly grams: number;
  readonly onTrays?: true;
  /** In words, without a capital or a full stop. */
  readonly why: string;
}

export interface ShoppingLine {
  readonly food: string;
  readonly name: string;
  /** g as mixed. */
  readonly needed: number;
  /** Oldest first. */
  readonly fromLots: readonly FromLot[];
  readonly fromTrays: readonly FromTrays[];
  readonly passed: readonly Passed[];
  /** g as mixed that neither cupboard nor trays give. */
  readonly toBuy: number;
  /** The same as fresh food, where it can be dried at home; `purchased` is absent where the trim loss is unknown. */
  readonly toBuyFresh?: { readonly prepared: number; readonly purchased?: number };
  readonly packs: readonly PacksOf[];
  /** g as mixed, once everything bought is dried. */
  readonly leftOver: number;
  /** Paid for the packs. */
  readonly pay: number;
  /** What the part that goes into the batch costs, without delivery; absent where some of it is unknown. */
  readonly price?: number;
  /** What is known of that price; less than the price where that is unknown. */
  readonly priceAtLeast: number;
  readonly sentences: readonly string[];
}

export interface ShoppingList {
  /** g */
  readonly batchGrams: number;
  /** In the order of the foods; those with no share are left out. */
  readonly lines: readonly ShoppingLine[];
  readonly orders: readonly Order[];
  /** To pay now: packs and delivery. */
  readonly toPay: number;
  readonly missing: readonly NotBought[];
  readonly price: {
    /** What goes into the batch costs this, delivery left out; a lower bound where `atLeast`. */
    readonly value: number;
    readonly atLeast: boolean;
    /** Names of the foods whose price is not known in full. */
    readonly unknown: readonly string[];
  };
  /** Whether no better choice of packs exists. */
  readonly proven: boolean;
  readonly sentences: readonly string[];
}

/**
 * Grams of mix in a batch: days x grams a day of all animals x the mix's part of the ration.
 * @throws RangeError on a number out of range, or where nobody has said how much an animal eats
 */
export function batchGrams(batch: BatchSize): number {
  if ('grams' in batch) {
    if (!(Number.isFinite(batch.grams) && batch.grams > 0))
      throw new RangeError(`batch grams must be above 0, not ${batch.grams}`);
    return batch.grams;
  }
  const { days, animals, mixPart } = batch;
  if (!(Number.isFinite(days) && days > 0)) throw new RangeError(`days must be above 0, not ${days}`);
  if (!(mixPart > 0 && mixPart <= 1))
    throw new RangeError(`mixPart must be above 0 and at most 1, not ${mixPart}`);
  if (animals.length === 0) throw new RangeError('animals: name at least one, or give the batch in grams');
  const daily = animals.reduce((sum, { name, dailyGrams }) => {
    if (dailyGrams === undefined)
      throw new RangeError(
        `how much ${name} eats a day is unknown; enter its daily grams, or give the batch in grams`,
      );
    if (!(Number.isFinite(dailyGrams) && dailyGrams > 0))
      throw new RangeError(`daily grams of ${name} must be above 0, not ${dailyGrams}`);
    return sum + dailyGrams;
  }, 0);
  return days * daily * mixPart;
}

/**
 * The shopping list of a batch. Blocks while packs are chosen (see {@link choosePacks}).
 * @throws RangeError when shares do not add up to 100, a food is unknown, or a number is out of range
 */
export function shoppingList(question: ShoppingQuestion, highs: Highs): ShoppingList {
  const { foods, shares, cupboard, offers, aim, on } = question;
  const total = batchGrams(question.batch);
  checkShares(foods, shares);
  const used = foods.filter((f) => (shares[f.food] ?? 0) > 0);
  const plans = used.map((food) =>
    planOf(food, ((shares[food.food] ?? 0) / 100) * total, { cupboard, drying: question.drying ?? [], on }),
  );
  const byId = new Map(used.map((f) => [f.food, f]));
  const chosen = choosePacks(
    plans.map((p) => ({ food: p.food.food, grams: p.toBuy })),
    offers,
    {
      aim,
      ...(question.sellers && { sellers: question.sellers }),
      nameOf: (food) => byId.get(food)!.name,
      gives: (offer) => givesOf(offer, byId.get(offer.food)!),
    },
    highs,
  );
  const lines = plans.map((plan) => lineOf(plan, chosen));
  const unknown = lines.filter((l) => l.price === undefined).map((l) => l.name);
  const price = {
    value: lines.reduce((sum, l) => sum + l.priceAtLeast, 0),
    atLeast: unknown.length > 0,
    unknown,
  };
  return {
    batchGrams: total,
    lines,
    orders: chosen.orders,
    toPay: chosen.cost,
    missing: chosen.missing,
    price,
    proven: chosen.proven,
    sentences: summary(total, lines, chosen, price),
  };
}

function checkShares(foods: readonly ShoppingFood[], shares: Readonly<Record<string, number>>): void {
  const known = new Set(foods.map((f) => f.food));
  if (known.size < foods.length) throw new RangeError('foods: a food is named twice');
  let sum = 0;
  for (const [food, share] of Object.entries(shares)) {
    if (!(share >= 0 && share <= 100.01))
      throw new RangeError(`share of ${food} must be from 0 to 100 percent, not ${share}`);
    if (share > 0 && !known.has(food))
      throw new RangeError(`share of ${food}: no such food; add it to the foods or leave its share out`);
    sum += share;
  }
  if (Math.abs(sum - 100) > 0.01)
    throw new RangeError(`shares add up to ${Math.round(sum * 1000) / 1000} percent, not 100`);
}

/** One food before anything is bought. */
interface Plan {
  readonly food: ShoppingFood;
  readonly needed: number;
  readonly fromLots: readonly FromLot[];
  readonly fromTrays: readonly FromTrays[];
  readonly passed: readonly Passed[];
  readonly toBuy: number;
  readonly sentences: readonly string[];
}

/** Below a milligram nothing is bought: it is the rounding of the sum, not a want. */
const NOTHING = 0.001;

/** What there is, and the day on which it is looked at. */
type AtHand = Required<Pick<ShoppingQuestion, 'cupboard' | 'drying' | 'on'>>;

function planOf(food: ShoppingFood, needed: number, { cupboard, drying, on }: AtHand): Plan {
  const sentences: string[] = [];
  const fromLots: FromLot[] = [];
  const fromTrays: FromTrays[] = [];
  const passed: Passed[] = [];
  let open = needed;
  for (const { lot, left } of lotsOf(cupboard, food.food)) {
    if (left === 0) continue;
    const perGram = perGramOf(lot, food, on);
    if (typeof perGram === 'string') {
      passed.push({ lot, grams: left, why: perGram });
      sentences.push(
        `${sayGrams(left)} of ${food.name} bought on ${lot.boughtOn} is not counted: ${perGram}.`,
      );
      continue;
    }
    if (open < NOTHING) continue;
    const grams = Math.min(left, open / perGram);
    open = Math.max(0, open - grams * perGram);
    fromLots.push({ lot, grams, asMixed: grams * perGram, ...priced(lot, grams) });
    sentences.push(...lotNotes(food, lot, grams));
  }
  for (const { run, lot } of drying) {
    if (lot.food !== food.food) continue;
    const why = barredWhy(lot) ?? notDried(food);
    if (why !== undefined) {
      passed.push({ lot, grams: run.gramsBefore, onTrays: true, why });
      sentences.push(`${sayGrams(run.gramsBefore)} of ${food.name} on the trays is not counted: ${why}.`);
      continue;
    }
    if (open < NOTHING) continue;
    const gives = driedFromPrepared(run.gramsBefore, food.dried!.fresh, food.dried!.moisture);
    const asMixed = Math.min(gives, open);
    open -= asMixed;
    // The trimmings were paid for with the rest.
    fromTrays.push({ run, lot, asMixed, ...priced(lot, takenBy(run) * (asMixed / gives)) });
    sentences.push(`${sayGrams(asMixed)} of ${food.name} comes from what is on the trays now.`);
  }
  return { food, needed, fromLots, fromTrays, passed, toBuy: open < NOTHING ? 0 : open, sentences };
}

const priced = (lot: Lot, grams: number) =>
  lot.price === undefined ? {} : { price: (lot.price / lot.grams) * grams };

/** g as mixed that 1 g of a lot gives, or why it is not counted. */
function perGramOf(lot: Lot, food: ShoppingFood, on: Day): number | string {
  const barred = barredWhy(lot);
  if (barred !== undefined) return barred;
  if (lot.bestBefore !== undefined && lot.bestBefore < on)
    return `it was best before ${dayInWords(lot.bestBefore)}; look at it and smell it before you keep it`;
  if (lot.form !== 'fresh') return 1;
  const perGram = fromFreshLot(food);
  return typeof perGram === 'string' ? `it is fresh, and ${perGram}` : perGram;
}

const barredWhy = (lot: Lot) => (lot.barred ? `it is barred (${lot.barred.why})` : undefined);

function lotsOf(cupboard: readonly LotLeft[], food: string): LotLeft[] {
  const here = cupboard.filter(({ lot }) => lot.food === food);
  for (const { lot, left } of here) {
    if (!(Number.isFinite(lot.grams) && lot.grams > 0))
      throw new RangeError(`lot ${lot.id}: grams must be above 0, not ${lot.grams}`);
    if (!(left >= 0 && left <= lot.grams * (1 + 1e-9)))
      throw new RangeError(`lot ${lot.id}: what is left must be from 0 to its ${lot.grams} g, not ${left}`);
  }
  return here.sort((a, b) => oldestFirst(a.lot, b.lot));
}

function lotNotes(food: ShoppingFood, lot: Lot, grams: number): string[] {
  const notes: string[] = [];
  if (lot.form === 'fresh')
    notes.push(`Dry ${sayGrams(grams)} of fresh ${food.name} bought on ${lot.boughtOn} first.`);
  const cold = lot.cold.filter((step) => step.doneOn === undefined).at(-1);
  if (cold && !lot.overruled)
    notes.push(
      `${food.name} bought on ${lot.boughtOn} is still in the cold against insects; it may be weighed out after ${cold.to}.`,
    );
  return notes;
}

/** g as mixed from 1 g of a fresh lot as bought, or why nobody can say. */
function fromFreshLot(food: ShoppingFood): number | string {
  return perBought(food) ?? `what is trimmed off ${food.name} is unknown; weigh some before and after`;
}

/** g as mixed from 1 g of fresh food as bought; undefined where the trim loss is unknown, words where drying is. */
function perBought(food: ShoppingFood): number | string | undefined {
  const { dried } = food;
  return notDried(food) ?? (dried && driedPerBought(dried.fresh, dried.moisture, dried.trimLoss));
}

/** Why nobody can say what is left of the fresh food once it is dried; undefined where it follows. */
function notDried({ dried, name }: ShoppingFood): string | undefined {
  if (!dried) return `how much of ${name} is left after drying is unknown; name its fresh food and moisture`;
  const { fresh, moisture } = dried;
  const water = fresh.composition.WATER;
  if (water === undefined) return `the moisture of ${fresh.name} is unknown; enter it first`;
  if (moisture >= water)
    return `${fresh.name} holds ${water} g water per 100 g, no more than the ${moisture} it is to hold dried; choose the fresh food`;
  return undefined;
}

function givesOf(offer: Offer, food: ShoppingFood): number | string {
  if (offer.form === 'dry') return offer.packGrams;
  const per = fromFreshLot(food);
  return typeof per === 'string' ? per : per * offer.packGrams;
}

function lineOf(plan: Plan, chosen: PacksChosen): ShoppingLine {
  const { food, needed, fromLots, fromTrays, passed, toBuy } = plan;
  const packs = chosen.packs.filter((p) => p.offer.food === food.food);
  const bought = chosen.foods.find((f) => f.food === food.food);
  const missing = chosen.missing.find((m) => m.food === food.food);
  const pay = packs.reduce((sum, p) => sum + p.price, 0);
  const lotPrices = [...fromLots, ...fromTrays].map((l) => l.price);
  const known = lotPrices.reduce<number>((sum, p) => sum + (p ?? 0), 0);
  // Of what is bought, the batch takes the part that was needed, at the average price of the packs.
  const ofPacks = bought ? pay * Math.min(1, bought.needed / bought.bought) : 0;
  const complete = !missing && lotPrices.every((p) => p !== undefined);
  const dried = food.dried;
  const toBuyFresh =
    dried && toBuy > 0 && notDried(food) === undefined
      ? freshToBuy(toBuy, dried.fresh, dried.moisture, dried.trimLoss)
      : undefined;
  const leftOver = bought?.leftOver ?? 0;
  return {
    food: food.food,
    name: food.name,
    needed,
    fromLots,
    fromTrays,
    passed,
    toBuy,
    ...(toBuyFresh && {
      toBuyFresh: {
        prepared: toBuyFresh.prepared,
        ...(toBuyFresh.purchased !== undefined && { purchased: toBuyFresh.purchased }),
      },
    }),
    packs,
    leftOver,
    pay,
    ...(complete && { price: known + ofPacks }),
    priceAtLeast: known + ofPacks,
    sentences: [
      ...plan.sentences,
      ...(missing ? [missing.why] : []),
      ...(packs.length > 0 ? [boughtSentence(food, packs, leftOver)] : []),
      ...(packs.some((p) => p.offer.form === 'fresh') && toBuyFresh ? [toBuyFresh.note] : []),
      ...(lotPrices.some((p) => p === undefined)
        ? [`What the ${food.name} in the cupboard cost is unknown.`]
        : []),
    ],
  };
}

function boughtSentence(food: ShoppingFood, packs: readonly PacksOf[], leftOver: number): string {
  const said = packs.map(
    (p) =>
      `${p.packs} x ${sayGrams(p.offer.packGrams)} ${p.offer.form === 'fresh' ? 'fresh ' : ''}from ${p.offer.seller}`,
  );
  const fresh = packs.some((p) => p.offer.form === 'fresh');
  const rest =
    leftOver < NOTHING
      ? 'nothing is left over'
      : `${sayGrams(leftOver)} is left over${fresh ? ' once dried' : ''}`;
  return `${food.name}: buy ${joined(said)}; ${rest}.`;
}

function summary(
  total: number,
  lines: readonly ShoppingLine[],
  chosen: PacksChosen,
  price: ShoppingList['price'],
): string[] {
  const said: string[] = [];
  const toBuy = lines.filter((l) => l.toBuy > 0);
  said.push(
    toBuy.length === 0
      ? `The cupboard holds everything for ${sayGrams(total)} of mix.`
      : `For ${sayGrams(total)} of mix, ${toBuy.length} of ${lines.length} ${lines.length === 1 ? 'food' : 'foods'} must be bought.`,
  );
  for (const { seller, goods, delivery } of chosen.orders)
    said.push(`${seller}: ${money(goods)}${delivery > 0 ? ` and ${money(delivery)} for delivery` : ''}.`);
  if (chosen.missing.length > 0)
    said.push(
      `Not to be bought: ${joined(chosen.missing.map((m) => lines.find((l) => l.food === m.food)!.name))}.`,
    );
  if (!chosen.proven) said.push('There was no time to show that no better choice of packs exists.');
  said.push(
    price.atLeast
      ? `The batch costs at least ${money(price.value)}, delivery left out; not known in full: ${joined(price.unknown)}.`
      : `The batch costs ${money(price.value)}, delivery left out.`,
  );
  return said;
}

/** In the keeper's money, whichever that is. */
function money(value: number): string {
  return value.toFixed(2);
}

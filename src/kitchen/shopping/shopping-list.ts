/**
 * The shopping list of a batch and of what is fed beside it: what each food takes, what the cupboard gives, what is still to buy and in which
 * packs, what is left over, and what the batch costs. An unknown price is unknown, never 0: the sum is then "at least".
 *
 * "As mixed" is the weight of a food as it goes into the mix: dry as bought, or dried at home.
 */
import type { Highs } from '../../formulation/solve/highs.ts';
import { freshToBuy } from '../drying/yields.ts';
import type { Day, Offer } from '../model.ts';
import {
  atHand,
  type FoodAtHand,
  type FromLot,
  type FromTrays,
  type LotLeft,
  type OnTrays,
  type PassedLot,
} from './at-hand.ts';
import { type BatchSize, batchGrams } from './batch-grams.ts';
import { givesOf, notDried, type ShoppingFood } from './home-dried.ts';
import {
  choosePacks,
  type NotBought,
  type Order,
  type PackAim,
  type PacksChosen,
  type PacksOf,
} from './packs.ts';
import type { Seller } from './usable-offers.ts';

export interface ShoppingQuestion {
  readonly foods: readonly ShoppingFood[];
  /** Planned shares, percent of the mix by food id; together 100. */
  readonly shares: Readonly<Record<string, number>>;
  readonly batch: BatchSize;
  /** What is fed beside the mix, from packs of its own: g of each for as long as the batch lasts. */
  readonly beside?: readonly { readonly food: string; readonly name: string; readonly grams: number }[];
  readonly cupboard: readonly LotLeft[];
  /** Food on the trays: out of its fresh lot, and in no dried one yet. */
  readonly drying?: readonly OnTrays[];
  readonly offers: readonly Offer[];
  readonly sellers?: readonly Seller[];
  readonly aim: PackAim;
  /** The day on which the batch is planned: what is past its best before on it is not counted. */
  readonly on: Day;
}

export interface ShoppingLine {
  readonly food: string;
  readonly name: string;
  /** Fed beside the mix: no part of what the batch costs. */
  readonly beside?: true;
  /** g as mixed. */
  readonly needed: number;
  /** Oldest first. */
  readonly fromLots: readonly FromLot[];
  readonly fromTrays: readonly FromTrays[];
  readonly passed: readonly PassedLot[];
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
}

export interface ShoppingList {
  /** g */
  readonly batchGrams: number;
  /** In the order of the foods, those with no share left out; then what is fed beside. */
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
}

/**
 * The shopping list of a batch. Blocks while packs are chosen (see {@link choosePacks}).
 * @throws RangeError when shares do not add up to 100, a food is unknown, or a number is out of range
 */
export function shoppingList(question: ShoppingQuestion, highs: Highs): ShoppingList {
  const { foods, shares, cupboard, offers, aim, on, beside = [] } = question;
  const total = batchGrams(question.batch);
  checkShares(foods, shares);
  const used = foods.filter((f) => (shares[f.food] ?? 0) > 0);
  const there = { cupboard, drying: question.drying ?? [], on };
  const mixed = used.map((food) => atHand(food, ((shares[food.food] ?? 0) / 100) * total, there));
  const plans = [...mixed, ...beside.map(({ food, name, grams }) => atHand({ food, name }, grams, there))];
  const byId = new Map(plans.map(({ food }) => [food.food, food]));
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
  const inMix = mixed.map((plan) => lineOf(plan, chosen));
  const fedBeside = plans
    .slice(mixed.length)
    .map((plan) => ({ ...lineOf(plan, chosen), beside: true as const }));
  const unknown = inMix.filter((l) => l.price === undefined).map((l) => l.name);
  const price = {
    value: inMix.reduce((sum, l) => sum + l.priceAtLeast, 0),
    atLeast: unknown.length > 0,
    unknown,
  };
  return {
    batchGrams: total,
    lines: [...inMix, ...fedBeside],
    orders: chosen.orders,
    toPay: chosen.cost,
    missing: chosen.missing,
    price,
    proven: chosen.proven,
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

function lineOf(plan: FoodAtHand, chosen: PacksChosen): ShoppingLine {
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
  };
}

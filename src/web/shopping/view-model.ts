/** What the shopping page shows: the question for the worker, prices in words, what was bought as lots, the list as text. */

import { joined } from '../../formulation/explain/sentences.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Animal, Household, Mix } from '../../household/model.ts';
import { ownFresh } from '../../household/reckon/fresh-food.ts';
import { leftOver } from '../../kitchen/cupboard/cupboard.ts';
import { countOfDays } from '../../kitchen/days.ts';
import type { FreshFood } from '../../kitchen/drying/yields.ts';
import { mixPartOf } from '../../kitchen/feeding/runs-out.ts';
import type { Day, Lot, NextBatch, SellerTerms } from '../../kitchen/model.ts';
import type { OnTrays } from '../../kitchen/shopping/at-hand.ts';
import type { BatchSize } from '../../kitchen/shopping/batch-grams.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { Order, PackAim, PacksOf } from '../../kitchen/shopping/packs.ts';
import type { ShoppingLine, ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { keptOf, lotName } from '../cupboard/view-model.ts';
import type { ShoppingAsked } from '../worker/shopping.ts';

/** Money as the app writes it: no currency is assumed. */
export const money = (value: number): string => value.toFixed(2);

/** "3.20", "at least 3.20", "not known". A price of which nothing is known is never 0. */
export function priceWords(value: number, atLeast: boolean, decimals = 2): string {
  if (!atLeast) return value.toFixed(decimals);
  return value > 0 ? `at least ${value.toFixed(decimals)}` : 'not known';
}

/** The shares that are bought for, percent by food id, and what they add up to. */
export function sharesToBuy({ problem, shares }: Pick<Mix, 'problem' | 'shares'>): {
  readonly shares: Readonly<Record<string, number>>;
  readonly total: number;
  /** Whether they make a whole mix. */
  readonly whole: boolean;
} {
  const used = Object.fromEntries(
    problem.foods.flatMap(({ id, refused }) => {
      const share = refused ? 0 : (shares[id] ?? 0);
      return share > 0 ? [[id, share]] : [];
    }),
  );
  const total = Object.values(used).reduce((sum, s) => sum + s, 0);
  return { shares: used, total, whole: Math.abs(total - 100) <= 0.01 };
}

/** What the animals of a mix eat of it in a day, or which of them nobody has said it of. */
export interface Eating {
  readonly animals: readonly Animal[];
  /** Those whose daily grams are unknown. */
  readonly unknown: readonly Animal[];
  /** The mix's part of what is fed, 0 to 1. */
  readonly mixPart: number;
  /** g of the mix in a day, all animals together; absent where it is not known. */
  readonly gramsADay?: number;
}

export function eatingOf(mix: Pick<Mix, 'animalIds' | 'problem'>, all: readonly Animal[]): Eating {
  const animals = all.filter((a) => mix.animalIds.includes(a.id));
  const unknown = animals.filter((a) => a.dailyGrams === undefined);
  const mixPart = mixPartOf(mix.problem);
  const gramsADay = animals.reduce((sum, a) => sum + (a.dailyGrams ?? 0), 0) * mixPart;
  const known = unknown.length === 0 && gramsADay > 0;
  return { animals, unknown, mixPart, ...(known && { gramsADay }) };
}

/** The plan with its size said another way, in g or in days; what else it says stays. */
export function resized(
  before: NextBatch,
  size: { readonly grams: number } | { readonly days: number },
): NextBatch {
  const { grams: _g, days: _d, ...rest } = before;
  return { ...rest, ...size };
}

/** The question for the worker. @param size of the batch @param nameOf the name of a food for people */
export function shoppingQuestion(
  house: Household,
  mix: Mix,
  p: {
    readonly size: BatchSize;
    readonly aim: PackAim;
    readonly on: Day;
    nameOf(food: Ingredient): string;
  },
): ShoppingAsked {
  const { shares } = sharesToBuy(mix);
  const foods = mix.problem.foods.filter((f) => shares[f.id] !== undefined);
  const wanted = new Set(foods.map((f) => f.id));
  const kitchen = house.kitchen[0];
  const driedAtHome = (kitchen?.driedAtHome ?? []).filter((d) => wanted.has(d.food));
  return {
    problem: mix.problem,
    foods: foods.map((f) => ({ food: f.id, name: p.nameOf(f) })),
    shares,
    batch:
      'grams' in p.size
        ? p.size
        : {
            ...p.size,
            // What else is known of an animal does not change the list.
            animals: p.size.animals.map(({ name, dailyGrams }) => ({
              name,
              ...(dailyGrams !== undefined && { dailyGrams }),
            })),
          },
    cupboard: leftOver(keptOf(house))
      .filter(({ lot }) => wanted.has(lot.food))
      // More may have been put back than was taken: then the lot holds what came in.
      .map(({ lot, grams }) => ({ lot, left: Math.min(grams, lot.grams) })),
    drying: onTrays(house).filter(({ lot }) => wanted.has(lot.food)),
    driedAtHome,
    own: house.foods.filter((f) => driedAtHome.some((d) => d.fresh === f.id)).map(ownFresh),
    offers: house.offers.filter((o) => wanted.has(o.food)),
    sellers: kitchen?.sellers ?? [],
    aim: p.aim,
    on: p.on,
  };
}

/** Drying runs of which nobody has said what became of them, each with its fresh lot; a lot dried in it counts itself. */
export function onTrays(house: Pick<Household, 'dryingRuns' | 'lots'>): OnTrays[] {
  return house.dryingRuns.flatMap((run) => {
    const lot = house.lots.find((l) => l.id === run.lot);
    const over = run.endedAt !== undefined || house.lots.some((l) => l.driedIn === run.id);
    return lot && !over ? [{ run, lot }] : [];
  });
}

/** Every seller that an offer, a lot or the terms name, by name. */
export function sellerNames(house: Pick<Household, 'offers' | 'lots' | 'kitchen'>): string[] {
  const names = [
    ...house.offers.map((o) => o.seller),
    ...(house.kitchen[0]?.sellers ?? []).map((s) => s.seller),
    ...house.lots.flatMap((l) => l.seller ?? []),
  ];
  return [...new Set(names)].sort((a, b) => a.localeCompare(b, 'en'));
}

/** The name as it was written before, where only capitals and spaces differ: one seller, one order. */
export function sameSeller(typed: string, known: readonly string[]): string {
  const plain = (name: string) => name.trim().replace(/\s+/g, ' ').toLowerCase();
  return known.find((k) => plain(k) === plain(typed)) ?? typed.trim().replace(/\s+/g, ' ');
}

/** The terms of all sellers with those of one changed; terms that ask for nothing are left out. */
export function withTerms(all: readonly SellerTerms[], terms: SellerTerms): SellerTerms[] {
  const others = all.filter((s) => s.seller !== terms.seller);
  const asks = terms.delivery !== undefined || terms.minimumOrder !== undefined;
  return asks ? [...others, terms] : others;
}

/** Packs of one offer, and the name of their food. */
export interface Bought {
  readonly name: string;
  readonly packs: PacksOf;
}

/**
 * What was bought, as lots: one for all packs of an offer, since they come in on one day from one seller and go
 * through the cold together. Two offers are two lots, so that each keeps its seller and its price.
 * @param taken names of the lots there are @param id makes one anew at each call
 */
export function boughtLots(
  bought: readonly Bought[],
  p: { readonly on: Day; readonly taken: readonly string[]; id(): string },
): Lot[] {
  const taken = [...p.taken];
  return bought.map(({ name, packs }) => {
    const called = lotName(name, p.on, taken);
    taken.push(called);
    return {
      id: p.id(),
      food: packs.offer.food,
      name: called,
      grams: packs.grams,
      form: packs.offer.form,
      boughtOn: p.on,
      frozen: false,
      seller: packs.offer.seller,
      price: packs.price,
      cold: [],
    };
  });
}

/** "2 × 500 g", "1 × 1 kg fresh". */
export function packWords({ packs, offer }: Pick<PacksOf, 'packs' | 'offer'>): string {
  return `${packs} × ${sayGrams(offer.packGrams)}${offer.form === 'fresh' ? ' fresh' : ''}`;
}

/** What one seller's order holds, in the order of the list. */
export function orderPacks(list: ShoppingList, seller: string): Bought[] {
  return list.lines.flatMap((line) =>
    line.packs.filter((p) => p.offer.seller === seller).map((packs) => ({ name: line.name, packs })),
  );
}

export interface Prices {
  /** In words each; see {@link priceWords}. */
  readonly batch: string;
  readonly perKg: string;
  /** Of the mix the animals eat in a day; absent where that is not known. */
  readonly perDay?: string;
  /** Names of foods whose price is not known in full. */
  readonly unknown: readonly string[];
}

/** What the mix costs, delivery left out. @param gramsADay of the mix, all animals together */
export function pricesOf(
  { price, batchGrams }: Pick<ShoppingList, 'price' | 'batchGrams'>,
  gramsADay: number | undefined,
): Prices {
  const perGram = price.value / batchGrams;
  const words = (value: number) => priceWords(value, price.atLeast);
  return {
    batch: words(price.value),
    perKg: words(perGram * 1000),
    ...(gramsADay !== undefined && { perDay: priceWords(perGram * gramsADay, price.atLeast, 3) }),
    unknown: price.unknown,
  };
}

/** "12.30", "12.30, without Millet and Dill, dried", or why nothing is to pay. */
export function toPayWords({ toPay, orders, missing, lines }: ShoppingList): string {
  if (orders.length === 0) return missing.length > 0 ? 'not known: no offers yet' : 'nothing';
  if (missing.length === 0) return money(toPay);
  const names = missing.map((m) => lines.find((l) => l.food === m.food)!.name);
  const what = names.length <= 2 ? names.join(' and ') : `${names.length} foods`;
  return `${money(toPay)}, without ${what}`;
}

/** The price of one food's part in the batch. */
export function linePrice(line: Pick<ShoppingLine, 'price' | 'priceAtLeast'>): string {
  return priceWords(line.price ?? line.priceAtLeast, line.price === undefined);
}

/** "420 g dried: 3.12 kg ready to dry, 3.51 kg as bought". */
export function toBuyWords({ toBuy, toBuyFresh }: Pick<ShoppingLine, 'toBuy' | 'toBuyFresh'>): string {
  if (!toBuyFresh) return sayGrams(toBuy);
  const { prepared, purchased } = toBuyFresh;
  const bought =
    purchased === undefined
      ? 'more than that as bought, by what is trimmed off'
      : `${sayGrams(purchased)} as bought`;
  return `${sayGrams(toBuy)} dried: ${sayGrams(prepared)} fresh and ready to dry, ${bought}`;
}

/** Why it is not known how much fresh food is to be bought. @param moisture it is dried to, g per 100 g */
export function noFreshWords(fresh: FreshFood | undefined, moisture: number): string {
  if (!fresh) return 'As fresh food: not known, since the fresh food is not to be found; choose it anew.';
  const water = fresh.composition.WATER;
  return water === undefined
    ? `As fresh food: not known, since the water of ${fresh.name} is not known.`
    : `As fresh food: not known, since ${fresh.name} holds ${water} % water, no more than the ${moisture} % it is dried to.`;
}

/** "93.8 g is left over once dried." */
export function leftWords({ leftOver, packs }: Pick<ShoppingLine, 'leftOver' | 'packs'>): string {
  if (leftOver < 0.05) return 'Nothing is left over.';
  const dried = packs.some((p) => p.offer.form === 'fresh') ? ' once dried' : '';
  return `${sayGrams(leftOver)} is left over${dried}.`;
}

/** What an order comes to. */
export const orderTotal = ({ goods, delivery }: Order): number => goods + delivery;

/** The list as plain text, to send to whoever goes shopping. */
export function listText(list: ShoppingList, title: string): string {
  const said = [title];
  for (const order of list.orders) {
    said.push('', order.seller);
    for (const { name, packs } of orderPacks(list, order.seller))
      said.push(`- ${name}: ${packWords(packs)}, ${money(packs.price)}`);
    if (order.delivery > 0) said.push(`- delivery: ${money(order.delivery)}`);
    said.push(`  in all ${money(orderTotal(order))}`);
  }
  if (list.missing.length > 0) {
    said.push('', 'No offer yet');
    for (const { food } of list.missing) {
      const line = list.lines.find((l) => l.food === food)!;
      said.push(`- ${line.name}: ${toBuyWords(line)}`);
    }
  }
  return said.join('\n');
}

/** "30 days for Pip and Moss, who eat 9 g of it a day". @param eating with `gramsADay` known */
export function sizeSentence(grams: number, { animals, gramsADay }: Eating): string {
  const days = grams / gramsADay!;
  const whole = Math.floor(days + 1e-6);
  const names = animals.map((a) => a.name);
  const who = joined(names);
  const lasts =
    whole < 1 ? 'less than a day' : `${days - whole > 0.05 ? 'a little over ' : ''}${countOfDays(whole)}`;
  return `${lasts} for ${who}, ${names.length < 2 ? 'who eats' : 'who eat'} ${sayGrams(gramsADay!)} of it a day`;
}

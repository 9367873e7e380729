/** What the shopping page says: prices and packs in words, the list by groups, and the list as text. */
import { type ToGet, toGet } from '../../household/reckon/shopping/basket.ts';
import type { Eating } from '../../household/reckon/shopping/eating.ts';
import type { Purchase } from '../../household/reckon/shopping/purchased-lots.ts';
import { purchaseOf } from '../../household/reckon/shopping/purchased-lots.ts';
import type { FreshFood } from '../../kitchen/drying/yields.ts';
import type { LotGroup } from '../../kitchen/freezing/freeze-treatment.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { Order, PacksOf } from '../../kitchen/shopping/packs.ts';
import type { ShoppingLine, ShoppingList } from '../../kitchen/shopping/shopping-list.ts';
import { GRAMS_PER_OUNCE } from '../../words/manner.ts';
import { words } from '../../words/words.ts';

/** Money in the keeper's currency. */
export const money = (value: number): string => words().figures.money(value);

/** "€ 3.20", "at least € 3.20", "not known". A price of which nothing is known is never 0. */
export function priceWords(value: number, atLeast: boolean): string {
  const t = words().shopping.prices;
  if (!atLeast) return money(value);
  return value > 0 ? t.atLeast(money(value)) : t.notKnown;
}

/** "2 × 500 g", "1 × 1 kg fresh". */
export function packWords({ packs, offer }: Pick<PacksOf, 'packs' | 'offer'>): string {
  const t = words().shopping.prices;
  const each = sayGrams(offer.packGrams);
  return offer.form === 'fresh' ? t.packFresh(packs, each) : t.pack(packs, each);
}

/** What one seller's order holds, in the order of the list. */
export function orderPacks(
  list: ShoppingList,
  seller: string,
): { readonly name: string; readonly packs: PacksOf }[] {
  return list.lines.flatMap((line) =>
    line.packs.filter((p) => p.offer.seller === seller).map((packs) => ({ name: line.name, packs })),
  );
}

/** The same as what comes into the stock. */
export const orderPurchases = (list: ShoppingList, seller: string): Purchase[] =>
  orderPacks(list, seller).map(({ name, packs }) => purchaseOf(name, packs));

export interface Prices {
  /** In words each; see {@link priceWords}. */
  readonly batch: string;
  /** Of a kilogram, or of a pound where the keeper weighs in ounces. */
  readonly perWeight: string;
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
  const say = (value: number) => priceWords(value, price.atLeast);
  return {
    batch: say(price.value),
    perWeight: say(perGram * bigUnit()),
    ...(gramsADay !== undefined && { perDay: say(perGram * gramsADay) }),
    unknown: price.unknown,
  };
}

/** g in the weight that prices are compared by. */
export const bigUnit = () => (words().figures.massUnit === 'g' ? 1000 : GRAMS_PER_OUNCE * 16);

/** "€ 12.30", "€ 12.30, without Millet and Dill, dried", or why nothing is to pay. */
export function toPayWords({ toPay, orders, missing, lines }: ShoppingList): string {
  const t = words().shopping.prices;
  if (orders.length === 0) return missing.length > 0 ? t.noOffers : t.nothing;
  if (missing.length === 0) return money(toPay);
  const names = missing.map((m) => lines.find((l) => l.food === m.food)?.name ?? m.food);
  const what = names.length <= 2 ? words().figures.list(names) : t.foods(names.length);
  return t.without(money(toPay), what);
}

/** The price of one food's part in the batch. */
export function linePrice(line: Pick<ShoppingLine, 'price' | 'priceAtLeast'>): string {
  return priceWords(line.price ?? line.priceAtLeast, line.price === undefined);
}

/** "18 g", "156 g fresh"; where nobody knows how much fresh food it takes, what is needed dried. @param stale while that is worked out */
export function amountWords({ form, grams, atLeast }: ToGet, toBuy: number, stale = false): string {
  const t = words().shopping.list;
  if (grams === undefined && stale) return '…';
  if (grams === undefined) return t.dried(sayGrams(Math.ceil(toBuy)));
  const said = sayGrams(grams);
  if (form === 'dry') return said;
  return atLeast ? t.freshAtLeast(said) : t.fresh(said);
}

/** What is short about a line, beside its amount. */
export function marksOf(line: ShoppingLine, get: ToGet, stale = false): string[] {
  const t = words().shopping.list;
  const there = [...line.fromLots, ...line.fromTrays].reduce((sum, l) => sum + l.asMixed, 0);
  return [
    ...(get.form === 'fresh' && get.grams !== undefined ? [t.gives(sayGrams(Math.round(line.toBuy)))] : []),
    ...(get.form === 'fresh' && get.grams === undefined && !stale ? [t.freshUnknown] : []),
    ...(get.atLeast ? [t.trimUnknown] : []),
    ...(there > 0 ? [t.partly(sayGrams(Math.round(there)))] : []),
    ...(line.passed.length > 0 ? [t.notCounted(line.passed.length)] : []),
  ];
}

/** Groups of the list in the order of its sections; herbs and vegetables are one. */
const SECTIONS = ['seed', 'legume', 'vegetable', 'fruit', 'animal', 'other', 'beside'] as const;
export type Section = (typeof SECTIONS)[number];

const SECTION_OF: Readonly<Record<LotGroup, Section>> = {
  seed: 'seed',
  nut: 'seed',
  legume: 'legume',
  vegetable: 'vegetable',
  herb: 'vegetable',
  fruit: 'fruit',
  animal: 'animal',
  pellet: 'beside',
};

export const sectionOf = (group: LotGroup | undefined): Section => (group ? SECTION_OF[group] : 'other');

/** Lines by section, sections in their order and without those that are empty. */
export function bySection<T>(
  lines: readonly T[],
  groupOf: (line: T) => LotGroup | undefined,
): [Section, T[]][] {
  return SECTIONS.map((section): [Section, T[]] => [
    section,
    lines.filter((line) => sectionOf(groupOf(line)) === section),
  ]).filter(([, own]) => own.length > 0);
}

/** Why it is not known how much fresh food is to be bought. @param moisture it is dried to, g per 100 g */
export function noFreshWords(fresh: FreshFood | undefined, moisture: number): string {
  const t = words().shopping.dryAtHome;
  if (!fresh) return t.lostFresh;
  const water = fresh.composition.WATER;
  return water === undefined ? t.noWater(fresh.name) : t.tooDry(fresh.name, water, moisture);
}

/** "93.8 g is left over once dried." */
export function leftWords({ leftOver, packs }: Pick<ShoppingLine, 'leftOver' | 'packs'>): string {
  const t = words().shopping.prices;
  if (leftOver < 0.05) return t.noneLeft;
  const grams = sayGrams(leftOver);
  return packs.some((p) => p.offer.form === 'fresh') ? t.leftDried(grams) : t.left(grams);
}

/** What an order comes to. */
export const orderTotal = ({ goods, delivery }: Order): number => goods + delivery;

/** What is to be got, and what stands in the stock already, as plain text to send to whoever goes shopping. */
export function listText(
  list: ShoppingList,
  p: {
    readonly title: string;
    readonly step: number;
    groupOf(food: string): LotGroup | undefined;
    driedAtHome(food: string): boolean;
  },
): string {
  const t = words().shopping;
  const said = [p.title];
  for (const [section, lines] of bySection(linesToGet(list), (l) =>
    l.beside ? 'pellet' : p.groupOf(l.food),
  )) {
    said.push('', t.list.groups[section]);
    for (const line of lines) {
      const amount = amountWords(toGet(line, p.driedAtHome(line.food), p.step), line.toBuy);
      const from = line.packs.map((k) => t.paper.from(packWords(k), k.offer.seller));
      said.push(`- ${[`${line.name}: ${amount}`, ...from].join('; ')}`);
    }
  }
  for (const order of list.orders) said.push('', orderWords(order));
  return said.join('\n');
}

/** "Alder Mill: € 7.00 in all, with € 3.00 for delivery". */
export function orderWords(order: Order): string {
  const t = words().shopping.paper;
  const total = money(orderTotal(order));
  return order.delivery > 0
    ? t.inAllDelivery(order.seller, total, money(order.delivery))
    : t.inAll(order.seller, total);
}

/** Foods of which some is to be got. */
export const linesToGet = (list: ShoppingList): ShoppingLine[] => list.lines.filter((l) => l.toBuy > 0);

/** "30 days for Pip and Moss, who eat 9 g of it a day"; undefined where nobody knows what they eat. */
export function sizeSentence(grams: number, { animals, gramsADay }: Eating): string | undefined {
  if (gramsADay === undefined) return undefined;
  const days = grams / gramsADay;
  const whole = Math.floor(days + 1e-6);
  const names = animals.map((a) => a.name);
  return words().shopping.size.lasts(whole, days - whole > 0.05, names, sayGrams(gramsADay));
}

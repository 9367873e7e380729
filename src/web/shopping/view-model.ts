/** What the shopping page says: prices and packs in words, and the list as text. */
import { joined } from '../../formulation/explain/sentences.ts';
import type { Eating } from '../../household/reckon/shopping/eating.ts';
import type { Purchase } from '../../household/reckon/shopping/purchased-lots.ts';
import { countOfDays } from '../../kitchen/days.ts';
import type { FreshFood } from '../../kitchen/drying/yields.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { Order, PacksOf } from '../../kitchen/shopping/packs.ts';
import type { ShoppingLine, ShoppingList } from '../../kitchen/shopping/shopping-list.ts';

/** Money as the app writes it: no currency is assumed. */
export const money = (value: number): string => value.toFixed(2);

/** "3.20", "at least 3.20", "not known". A price of which nothing is known is never 0. */
export function priceWords(value: number, atLeast: boolean, decimals = 2): string {
  if (!atLeast) return value.toFixed(decimals);
  return value > 0 ? `at least ${value.toFixed(decimals)}` : 'not known';
}

/** "2 × 500 g", "1 × 1 kg fresh". */
export function packWords({ packs, offer }: Pick<PacksOf, 'packs' | 'offer'>): string {
  return `${packs} × ${sayGrams(offer.packGrams)}${offer.form === 'fresh' ? ' fresh' : ''}`;
}

/** What one seller's order holds, in the order of the list. */
export function orderPacks(list: ShoppingList, seller: string): Purchase[] {
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

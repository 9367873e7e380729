/** Which offers count for what is needed, and why the others do not. */
import { words } from '../../words/words.ts';
import type { Offer } from '../model.ts';

/** What is needed of one food. */
export interface PackNeed {
  readonly food: string;
  /** g still to buy, as mixed; 0 or more. */
  readonly grams: number;
}

/** What a seller asks for beside the price of the packs. A seller that is not listed asks for nothing. */
export interface Seller {
  readonly seller: string;
  /** Paid once where anything is bought there; 0 unless given. */
  readonly delivery?: number;
  /** The packs must cost at least this, delivery not counted; 0 unless given. */
  readonly minimumOrder?: number;
}

/** An offer that counts: what a pack gives, g as mixed. */
export interface UsableOffer {
  readonly offer: Offer;
  readonly gives: number;
}

/** Offers of wanted foods that count, by id, and those that do not. */
export function sortedOffers(
  wanted: readonly PackNeed[],
  offers: readonly Offer[],
  sellers: ReadonlyMap<string, Seller>,
  gives: (offer: Offer) => number | string,
): { usable: UsableOffer[]; refused: { offer: Offer; why: string }[] } {
  const foods = new Set(wanted.map((n) => n.food));
  const counted: UsableOffer[] = [];
  const refused: { offer: Offer; why: string }[] = [];
  for (const offer of [...offers].sort((a, b) => byText(a.id, b.id))) {
    if (!foods.has(offer.food)) continue;
    const given = gives(offer);
    if (typeof given === 'string') refused.push({ offer, why: given });
    else if (!(Number.isFinite(given) && given > 0))
      throw new RangeError(`offer ${offer.id}: a pack must give more than 0 g, not ${given}`);
    else counted.push({ offer, gives: given });
  }
  const usable = counted.filter(({ offer }) => {
    const least = sellers.get(offer.seller)?.minimumOrder ?? 0;
    const reaches = least === 0 || counted.some((c) => c.offer.seller === offer.seller && c.offer.price > 0);
    if (!reaches)
      refused.push({
        offer,
        why: words().shopping.why.minimum(offer.seller, words().figures.money(least)),
      });
    return reaches;
  });
  return { usable, refused };
}

/** Why a food cannot be bought, in a sentence. */
export function whyNot(
  need: PackNeed,
  name: string,
  offers: readonly Offer[],
  refused: readonly { offer: Offer; why: string }[],
): string {
  const t = words().shopping.why;
  if (!offers.some((o) => o.food === need.food)) return t.noSeller(name);
  const reasons = new Set(refused.filter((r) => r.offer.food === need.food).map((r) => r.why));
  return t.notCounted(name, [...reasons]);
}

/** @throws RangeError where a need is no weight, or a food is needed twice */
export function checkNeeds(needs: readonly PackNeed[]): void {
  const seen = new Set<string>();
  for (const { food, grams } of needs) {
    if (!(Number.isFinite(grams) && grams >= 0))
      throw new RangeError(`need of ${food}: grams must be 0 or more, not ${grams}`);
    if (seen.has(food)) throw new RangeError(`${food} is needed twice; add the two up`);
    seen.add(food);
  }
}

/** @throws RangeError where an offer's weight or price is none, or an id stands twice */
export function checkOffers(offers: readonly Offer[]): void {
  const seen = new Set<string>();
  for (const { id, packGrams, price } of offers) {
    if (seen.has(id)) throw new RangeError(`two offers have the id ${id}`);
    seen.add(id);
    if (!(Number.isFinite(packGrams) && packGrams > 0))
      throw new RangeError(`offer ${id}: packGrams must be above 0, not ${packGrams}`);
    if (!(Number.isFinite(price) && price >= 0))
      throw new RangeError(
        `offer ${id}: price must be 0 or more, not ${price}; leave out what has no price yet`,
      );
  }
}

/** Sellers by name. @throws RangeError where a charge is none, or a seller is listed twice */
export function checkedSellers(sellers: readonly Seller[]): ReadonlyMap<string, Seller> {
  const terms = new Map<string, Seller>();
  for (const asked of sellers) {
    const { seller, delivery = 0, minimumOrder = 0 } = asked;
    if (terms.has(seller)) throw new RangeError(`seller ${seller} is listed twice`);
    if (!(Number.isFinite(delivery) && delivery >= 0))
      throw new RangeError(`seller ${seller}: delivery must be 0 or more, not ${delivery}`);
    if (!(Number.isFinite(minimumOrder) && minimumOrder >= 0))
      throw new RangeError(`seller ${seller}: minimumOrder must be 0 or more, not ${minimumOrder}`);
    terms.set(seller, asked);
  }
  return terms;
}

/** By code unit, so that every machine sorts alike. */
export function byText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

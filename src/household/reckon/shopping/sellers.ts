/** The sellers that a household buys from, and their terms. */
import type { SellerTerms } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';

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

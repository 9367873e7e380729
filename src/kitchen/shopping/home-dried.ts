/** What comes of a food that is bought fresh and dried at home, in g as mixed, or why nobody can say. */
import { driedPerBought, type FreshFood } from '../drying/yields.ts';
import type { Offer } from '../model.ts';

/** How a food becomes what is mixed, where it is dried at home. */
export interface HomeDried {
  /** The fresh food that is bought. */
  readonly fresh: FreshFood;
  /** Of the dried food, g water per 100 g. */
  readonly moisture: number;
  /** Trim loss as the keeper weighed it, percent of the purchased weight. */
  readonly trimLoss?: number;
}

/** A food of the mix as shopping needs it. */
export interface ShoppingFood {
  /** Id, as the mix names it. */
  readonly food: string;
  /** The name for people. */
  readonly name: string;
  readonly dried?: HomeDried;
}

/** g as mixed from 1 g of a fresh lot as bought, or why nobody can say. */
export function fromFreshLot(food: ShoppingFood): number | string {
  return perBought(food) ?? `what is trimmed off ${food.name} is unknown; weigh some before and after`;
}

/** g as mixed from 1 g of fresh food as bought; undefined where the trim loss is unknown, words where drying is. */
function perBought(food: ShoppingFood): number | string | undefined {
  const { dried } = food;
  return notDried(food) ?? (dried && driedPerBought(dried.fresh, dried.moisture, dried.trimLoss));
}

/** Why nobody can say what is left of the fresh food once it is dried; undefined where it follows. */
export function notDried({ dried, name }: ShoppingFood): string | undefined {
  if (!dried) return `how much of ${name} is left after drying is unknown; name its fresh food and moisture`;
  const { fresh, moisture } = dried;
  const water = fresh.composition.WATER;
  if (water === undefined) return `the moisture of ${fresh.name} is unknown; enter it first`;
  if (moisture >= water)
    return `${fresh.name} holds ${water} g water per 100 g, no more than the ${moisture} it is to hold dried; choose the fresh food`;
  return undefined;
}

/** g as mixed that one pack gives, or why nobody can say. */
export function givesOf(offer: Offer, food: ShoppingFood): number | string {
  if (offer.form === 'dry') return offer.packGrams;
  const per = fromFreshLot(food);
  return typeof per === 'string' ? per : per * offer.packGrams;
}

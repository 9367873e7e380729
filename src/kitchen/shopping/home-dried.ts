/** What comes of a food that is bought fresh and dried at home, in g as mixed, or why nobody can say. */
import { words } from '../../words/words.ts';
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
  return perBought(food) ?? words().shopping.why.trimUnknown(food.name);
}

/** g as mixed from 1 g of fresh food as bought; undefined where the trim loss is unknown, words where drying is. */
function perBought(food: ShoppingFood): number | string | undefined {
  const { dried } = food;
  return notDried(food) ?? (dried && driedPerBought(dried.fresh, dried.moisture, dried.trimLoss));
}

/** Why nobody can say what is left of the fresh food once it is dried; undefined where it follows. */
export function notDried({ dried, name }: ShoppingFood): string | undefined {
  const t = words().shopping.why;
  if (!dried) return t.yieldUnknown(name);
  const { fresh, moisture } = dried;
  const water = fresh.composition.WATER;
  if (water === undefined) return t.waterUnknown(fresh.name);
  if (moisture >= water) return t.tooDry(fresh.name, water, moisture);
  return undefined;
}

/** g as mixed that one pack gives, or why nobody can say. */
export function givesOf(offer: Offer, food: ShoppingFood): number | string {
  if (offer.form === 'dry') return offer.packGrams;
  const per = fromFreshLot(food);
  return typeof per === 'string' ? per : per * offer.packGrams;
}

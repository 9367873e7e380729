/** A shopping list for a kilogram of oats and millet. */
import { loadHighs } from '../../src/formulation/solve/highs.ts';
import {
  type ShoppingList,
  type ShoppingQuestion,
  shoppingList,
} from '../../src/kitchen/shopping/shopping-list.ts';
import { offer } from './offers.ts';

const highs = await loadHighs();

/** The day of the list. */
export const DAY = '2026-03-10';

/** The list for an empty cupboard with one offer of each food, unless said otherwise. */
export function listOf(about: Partial<ShoppingQuestion> = {}): ShoppingList {
  return shoppingList(
    {
      foods: [
        { food: 'oats', name: 'Oats' },
        { food: 'millet', name: 'Millet' },
      ],
      shares: { oats: 60, millet: 40 },
      batch: { grams: 1000 },
      cupboard: [],
      offers: [
        offer({ id: 'o' }),
        offer({ id: 'm', food: 'millet', seller: 'Bramble Barn', packGrams: 400 }),
      ],
      aim: 'cost',
      on: DAY,
      ...about,
    },
    highs,
  );
}

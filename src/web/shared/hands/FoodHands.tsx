/** What hands should know of one food. The lists of names by which allergens are recognised are fetched when first needed. */
import { shownLater } from '../later/shown-later.tsx';

export const FoodHands = shownLater(() => import('./FoodHandsWords.tsx').then((m) => m.FoodHandsWords));

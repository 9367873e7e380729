/** A word beside a food that a keeper may be allergic to. The lists of names are fetched when first needed. */
import { shownLater } from '../later/shown-later.tsx';

export const AllergyMark = shownLater(() => import('./AllergyWords.tsx').then((m) => m.AllergyWords));

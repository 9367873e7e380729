/** Grams as people read them. */
import { words } from '../../../words/words.ts';

/** Grams as people read them: no more places than there are. */
export const gramWords = (g: number) => words().figures.grams(g);

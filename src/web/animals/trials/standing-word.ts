/** How a food stands, in a word or two; nothing of what was never tried. */
import type { FoodStanding } from '../../../household/reckon/care/food-standing.ts';
import { words } from '../../../words/words.ts';

export function standingWord({ is, judged }: FoodStanding): string | undefined {
  const t = words().trials.lists;
  if (is === 'known') return judged ? t.undecided : t.known;
  if (is === 'untried') return judged && t.undecided;
  return t[is];
}

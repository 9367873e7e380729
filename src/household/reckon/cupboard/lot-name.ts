/** A name for a new lot. */
import { dayInWords } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';

/**
 * A name for a new lot where the keeper gives none: the food's, told apart by the day, then by number.
 * @param taken names of the other lots
 */
export function lotName(food: string, boughtOn: Day, taken: readonly string[]): string {
  if (!taken.includes(food)) return food;
  const dated = `${food}, ${dayInWords(boughtOn)}`;
  for (let n = 1; ; n++) {
    const name = n === 1 ? dated : `${dated} (${n})`;
    if (!taken.includes(name)) return name;
  }
}

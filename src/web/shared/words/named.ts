/** Names in a sentence, no more than two of them. */
import { words } from '../../../words/words.ts';

/** "Rolled oats", "Rolled oats and 3 more". */
export function named(names: readonly string[]): string {
  if (names.length <= 2) return words().figures.list(names);
  return words().common.andMore(names[0] ?? '', names.length - 1);
}

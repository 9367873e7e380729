/** Names in a sentence, no more than two of them. */
import { joined } from '../../../formulation/explain/sentences.ts';

/** "Rolled oats", "Rolled oats and 3 more". */
export function named(names: readonly string[]): string {
  if (names.length <= 2) return joined([...names]);
  return `${names[0]} and ${names.length - 1} more`;
}

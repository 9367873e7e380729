/** Why a food is out because of an animal, in a few words: the graver reason where there are two. */
import type { OutRule } from '../../../household/reckon/care/out-foods.ts';
import { words } from '../../../words/words.ts';

/** @param rules one at least */
export function outWords(rules: readonly OutRule[]): string {
  const t = words().trials.mix;
  const upset = rules.find((r) => r.why === 'upset');
  if (upset) return t.upsetShort(upset.animal.name);
  return t.outShort(rules[0]?.animal.name ?? '');
}

/** Sources as people read them: a citation stays as it was written, its usual phrases are said in the language spoken. */
import { words } from '../words/words.ts';

export function sourceWords(source: string): string {
  return words().foods.source(source);
}

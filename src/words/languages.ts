/** All texts of each language; German and Dutch are fetched only where they are spoken. */
import { english } from './en/index.ts';
import type { Manner } from './manner.ts';
import type { Words } from './words.ts';

/** All texts in the manner's language and units. @throws where they could not be fetched */
export async function wordsIn(manner: Manner): Promise<Words> {
  switch (manner.language) {
    case 'de':
      return (await import('./de/index.ts')).german(manner);
    case 'nl':
      return (await import('./nl/index.ts')).dutch(manner);
    default:
      return english(manner);
  }
}

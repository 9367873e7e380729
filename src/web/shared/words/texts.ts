/** The texts of this page: those of the frame and of Now first, those of each screen with it. */
import type { Manner } from '../../../words/manner.ts';
import type { Part } from '../../../words/part-shapes.ts';
import { type WordsInParts, wordsInParts } from '../../../words/parts.ts';
import { speak, type Words } from '../../../words/words.ts';

let texts: WordsInParts;

/** Speaks as the manner says; a language whose texts cannot be fetched is no reason to show nothing: English is then said. */
export async function speakHere(manner: Manner): Promise<Words> {
  texts = wordsInParts(manner);
  try {
    await texts.fetch('first');
  } catch {
    texts = wordsInParts({ ...manner, language: 'en' });
    await texts.fetch('first');
  }
  speak(() => texts.words);
  return texts.words;
}

/** Fetches a part of the texts, once it was said how they are spoken. @throws where it cannot be had */
export function fetchTexts(part: Part): Promise<void> {
  return texts.fetch(part);
}

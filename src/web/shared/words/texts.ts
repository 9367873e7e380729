/** The texts of this page: those of the frame and of Now first, those of each screen with it. */
import type { Manner } from '../../../words/manner.ts';
import { type Part, type WordsInParts, wordsInParts } from '../../../words/parts.ts';
import { speak, type Words } from '../../../words/words.ts';

let texts: WordsInParts | undefined;

/** Speaks as the manner says; a language whose texts cannot be fetched is no reason to show nothing: English is then said. */
export async function speakHere(manner: Manner): Promise<Words> {
  const spoken = await begun(manner).catch(() => begun({ ...manner, language: 'en' }));
  texts = spoken;
  speak(() => spoken.words);
  return spoken.words;
}

async function begun(manner: Manner): Promise<WordsInParts> {
  const inParts = wordsInParts(manner);
  await inParts.fetch('first');
  return inParts;
}

/** Fetches parts of the texts. @throws where one cannot be had */
export async function fetchTexts(...parts: readonly Part[]): Promise<void> {
  await Promise.all(parts.map((part) => texts?.fetch(part)));
}

/** The texts of this page: those of the frame and of Now first, those of each screen with it. */
import type { Manner } from '../../../words/manner.ts';
import type { Part } from '../../../words/part-shapes.ts';
import { PARTS, type WordsInParts, wordsInParts } from '../../../words/parts.ts';
import { speak, type Words, words } from '../../../words/words.ts';
import { type Later, later } from '../later/later.ts';

/** Every part, each fetched once. */
let parts: { readonly [P in Part]: Later<void> };

/** What this page is to speak, and when it does. */
let asked: { readonly manner: Manner; readonly speaks: Promise<unknown> } | undefined;

/** The language of this page, also before its texts are here. */
export function languageHere(): Manner['language'] {
  return asked?.manner.language ?? words().figures.manner.language;
}

/** The texts, once they are here: for what may have something to say before anything is drawn. */
export async function wordsOnceHere(): Promise<Words> {
  await asked?.speaks;
  return words();
}

/** Speaks as the manner says; a language whose texts cannot be fetched is no reason to show nothing: English is then said. */
export function speakHere(manner: Manner): Promise<Words> {
  const speaks = spoken(manner);
  asked = { manner, speaks };
  return speaks;
}

async function spoken(manner: Manner): Promise<Words> {
  let texts = begin(manner);
  try {
    await parts.first.fetch();
  } catch {
    texts = begin({ ...manner, language: 'en' });
    await parts.first.fetch();
  }
  speak(() => texts.words);
  return texts.words;
}

function begin(manner: Manner): WordsInParts {
  // One that could not be had is told, and asked for anew when the keeper says so.
  const texts = wordsInParts(manner, (part) => parts[part].now());
  parts = Object.fromEntries(PARTS.map((part) => [part, later(() => texts.fetch(part))])) as typeof parts;
  return texts;
}

/** Fetches a part of the texts, once it was said how they are spoken. @throws where it cannot be had */
export function fetchTexts(part: Part): Promise<void> {
  return parts[part].fetch();
}

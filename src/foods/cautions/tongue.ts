/** Which language a name is in, as far as its describing and joining words tell. */
import { languagesSaying } from './states.ts';
import type { Language, Token } from './words.ts';

/** How much speaks for a language; 0 where nothing does. */
export type Tongue = (language: Language) => number;

/** Each describing word speaks for the languages that have it, the less the more of them there are. */
export function tongueOf(tokens: readonly Token[]): Tongue {
  const scores = new Map<Language, number>();
  for (const { word } of tokens) {
    const languages = languagesSaying(word);
    for (const language of languages ?? [])
      scores.set(language, (scores.get(language) ?? 0) + 1 / (languages?.size ?? 1));
  }
  return (language) => scores.get(language) ?? 0;
}

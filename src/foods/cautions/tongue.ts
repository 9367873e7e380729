/** Which language a name is in, as far as its describing words and the names of foods in it tell. */
import foodWords from '../data/food-words.json' with { type: 'json' };
import { languagesSaying } from './states.ts';
import { fold, type Language, type Token } from './words.ts';

/** How much speaks for a language; 0 where nothing does. */
export type Tongue = (language: Language) => number;

/** Less than one word that speaks for a language and its neighbour. */
const LIKELY = 0.2;

const languagesNaming = new Map<string, Set<Language>>();
function learn(names: readonly string[], language: Language): void {
  for (const word of names.flatMap((name) => fold(name).match(/\p{L}{3,}/gu) ?? []))
    languagesNaming.set(word, (languagesNaming.get(word) ?? new Set()).add(language));
}
for (const [name, { de, fr, nl, es }] of Object.entries(foodWords.foods)) {
  learn([name], 'en');
  learn(de, 'de');
  learn(fr, 'fr');
  learn(nl, 'nl');
  learn(es, 'es');
}

/**
 * Each word speaks for the languages that have it, the less the more of them there are.
 * @param likely the language that counts where no word speaks for another
 */
export function tongueOf(tokens: readonly Token[], likely?: Language): Tongue {
  const scores = new Map<Language, number>(likely && [[likely, LIKELY]]);
  for (const { word } of tokens) {
    const languages = languagesSaying(word) ?? languagesNaming.get(word);
    for (const language of languages ?? [])
      scores.set(language, (scores.get(language) ?? 0) + 1 / (languages?.size ?? 1));
  }
  return (language) => scores.get(language) ?? 0;
}

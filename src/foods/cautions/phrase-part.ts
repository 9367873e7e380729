/** One word of a listed phrase, and the words of a text that it fits. */
import { adjectiveForms, CUT_ENDINGS, DRIED_BEGINNINGS, familyWords, standsAnywhere } from './states.ts';
import { fold, type Language } from './words.ts';

export interface Part {
  /** The word itself, folded, without marks. */
  readonly bare: string;
  /** Written `zwiebel*`, or `*zwiebel`. */
  readonly begins: boolean;
  readonly ends: boolean;
  /** Whole words it fits, or endings where `ends`. */
  readonly forms: ReadonlySet<string>;
  fits(word: string, accented: string): boolean;
}

/** Endings a plural or an inflected form may take on, by language; changed vowels need no rule, since umlauts fold. */
const ENDINGS: Readonly<Record<Language, readonly string[]>> = {
  en: ['s', 'es'],
  de: ['e', 'n', 'en', 's', 'er', 'es', 'ern'],
  fr: ['s', 'x'],
  nl: ['s', 'en', 'n', 'e', 'es'],
  es: ['s', 'es'],
};
const SHORTEST = 3;

/** All forms of a folded word: itself and its plurals. Short words take no ending ("ui" would else catch "uie"). */
function formsOf(word: string, language: Language): string[] {
  if (word.length < SHORTEST) return [word];
  const forms = [word, ...ENDINGS[language].map((ending) => word + ending)];
  const but = (letters: number) => word.slice(0, -letters);
  if (language === 'en' && /[^aeiou]y$/.test(word)) forms.push(`${but(1)}ies`);
  if (language === 'en' && /[aeo]f$/.test(word)) forms.push(`${but(1)}ves`);
  if (language === 'es' && word.endsWith('z')) forms.push(`${but(1)}ces`);
  if (language === 'fr' && word.endsWith('al')) forms.push(`${but(1)}ux`);
  if (language === 'nl') {
    if (word.endsWith('f')) forms.push(`${but(1)}ven`);
    // "boon", "bonen"; "abrikoos", "abrikozen".
    const open = /([aeou])\1([^aeiou])$/.exec(word);
    if (open) forms.push(`${but(2)}${{ s: 'z', f: 'v' }[open[2] ?? ''] ?? open[2]}en`);
    forms.push(
      ...forms.filter((form) => !form.endsWith('s')).map((form) => `${form.replace(/en$/, '')}tjes`),
    );
  }
  return forms;
}

/**
 * @param alone true for a phrase of this one word: a state then stands for its like in every language
 * @throws RangeError for a beginning or ending shorter than three letters
 */
export function partOf(word: string, language: Language, phrase: string, alone: boolean): Part {
  const bare = fold(word.replace(/[*=]/g, ''));
  const begins = word.endsWith('*');
  const ends = !begins && word.startsWith('*');
  if (word.includes('*') && bare.length < SHORTEST)
    throw new RangeError(`"${phrase}": "${word}" is too short for a *`);
  const family = alone || standsAnywhere(bare) ? familyWords(bare, !alone) : undefined;
  const forms = new Set([...(family ?? []), ...(adjectiveForms(bare) ?? []), ...formsOf(bare, language)]);
  const part = { bare, begins, ends, forms };
  if (word.startsWith('=')) {
    const accented = word.slice(1).toLowerCase().normalize('NFC');
    const spelt = new Set([accented, `${accented}s`]);
    return { ...part, fits: (_, printed) => spelt.has(printed) };
  }
  if (begins) return { ...part, fits: (token) => token.startsWith(bare) };
  if (!ends) return { ...part, fits: (token) => forms.has(token) };
  return { ...part, fits: (token) => [...forms].some((form) => token.endsWith(form)) };
}

/** The food that a compound names, where the rest tells only that it is dried or how it is cut. */
export function restOfCompound(word: string): { readonly rest: string; readonly dried: boolean } | undefined {
  const prefix = DRIED_BEGINNINGS.find((p) => word.startsWith(p) && word.length - p.length >= 4);
  if (prefix !== undefined) return { rest: word.slice(prefix.length), dried: true };
  const ending = CUT_ENDINGS.find((e) => word.endsWith(e) && word.length - e.length >= 4);
  return ending === undefined ? undefined : { rest: word.slice(0, -ending.length), dried: false };
}

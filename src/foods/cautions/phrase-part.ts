/** One word of a listed phrase, and the words of a text that it fits. */
import { adjectiveForms, CUT_ENDINGS, DRIED_BEGINNINGS, familyWords, standsAnywhere } from './states.ts';
import { fold, type Language } from './words.ts';

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

/** A word of a phrase without its marks, folded. @throws RangeError for a beginning or ending shorter than three letters */
export function bareOf(word: string, phrase: string): string {
  const bare = fold(word.replace(/[*=]/g, ''));
  if (bare.length < SHORTEST && word.includes('*'))
    throw new RangeError(`"${phrase}": "${word}" is too short for a *`);
  return bare;
}

/**
 * Whether the forms of a word are words of their own ("dried", "sec"), and not the word with another ending.
 * @param alone true for a phrase of this one word: a state then stands for its like in every language
 */
export function isWide(bare: string, alone: boolean): boolean {
  if (adjectiveForms(bare) !== undefined) return true;
  return (alone || standsAnywhere(bare)) && familyWords(bare) !== undefined;
}

/** How all forms of a word begin that is not wide, in at most so many letters. */
export function beginningOf(bare: string, letters: number): string {
  // Endings are put on, or change the last two letters.
  return bare.length < SHORTEST ? bare : bare.slice(0, Math.min(letters, bare.length - 2));
}

/** One word of the phrases of one language. */
export class Part {
  /** The word itself, folded, without marks. */
  readonly bare: string;
  readonly language: Language;
  /** Written `zwiebel*`, or `*zwiebel`. */
  readonly begins: boolean;
  readonly ends: boolean;
  /** Whether it tells a state that may stand anywhere in the name. */
  readonly state: boolean;
  readonly #wide: boolean;
  readonly #alone: boolean;
  /** The spellings that count, where its accents do: written `=thé`. */
  readonly #spelt: ReadonlySet<string> | undefined;
  #forms: ReadonlySet<string> | undefined;

  /**
   * @param alone true for a phrase of this one word
   * @throws RangeError for a beginning or ending shorter than three letters
   */
  constructor(word: string, language: Language, phrase: string, alone: boolean) {
    this.bare = bareOf(word, phrase);
    this.language = language;
    this.begins = word.endsWith('*');
    this.ends = !this.begins && word.startsWith('*');
    this.state = standsAnywhere(this.bare);
    this.#alone = alone;
    this.#wide = isWide(this.bare, alone);
    if (word.startsWith('=')) {
      const accented = word.slice(1).toLowerCase().normalize('NFC');
      this.#spelt = new Set([accented, `${accented}s`]);
    }
  }

  /** Whole words it fits, or endings where `ends`; worked out when first asked, since lists name thousands of words. */
  get forms(): ReadonlySet<string> {
    this.#forms ??= this.#wide
      ? new Set([
          ...(this.#family() ?? []),
          ...(adjectiveForms(this.bare) ?? []),
          ...formsOf(this.bare, this.language),
        ])
      : new Set(formsOf(this.bare, this.language));
    return this.#forms;
  }

  /** Beginnings, at most so many letters long, of which each form has one. */
  beginnings(letters: number): Iterable<string> {
    if (this.#wide) return new Set([...this.forms].map((form) => form.slice(0, letters)));
    return [beginningOf(this.bare, letters)];
  }

  fits(word: string, accented: string): boolean {
    if (this.#spelt) return this.#spelt.has(accented);
    if (this.begins) return word.startsWith(this.bare);
    if (!this.ends) return this.forms.has(word);
    for (const form of this.forms) if (word.endsWith(form)) return true;
    return false;
  }

  #family(): ReadonlySet<string> | undefined {
    return this.#alone || this.state ? familyWords(this.bare, !this.#alone) : undefined;
  }
}

/** The food that a compound names, where the rest tells only that it is dried or how it is cut. */
export function restOfCompound(word: string): { readonly rest: string; readonly dried: boolean } | undefined {
  const prefix = DRIED_BEGINNINGS.find((p) => word.startsWith(p) && word.length - p.length >= 4);
  if (prefix !== undefined) return { rest: word.slice(prefix.length), dried: true };
  const ending = CUT_ENDINGS.find((e) => word.endsWith(e) && word.length - e.length >= 4);
  return ending === undefined ? undefined : { rest: word.slice(0, -ending.length), dried: false };
}

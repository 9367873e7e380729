/**
 * Finds listed phrases in tokens, in one pass over the text however long the list is.
 *
 * How a phrase is written in the data:
 * - `onion` a whole word, in the singular or plural of its language;
 * - `wild garlic` words in a row, with no comma or bracket between them;
 * - `zwiebel*` a word that begins so ("Zwiebelpulver"), `*zwiebel` one that ends so ("Röstzwiebeln");
 * - `=thé` a word whose accents count.
 */
import { fold, type Language, type Token } from './words.ts';

export interface Phrase<T> {
  readonly text: string;
  readonly language: Language;
  readonly value: T;
}

export interface PhraseHit<T> {
  readonly value: T;
  /** Index of the first and last token. */
  readonly first: number;
  readonly last: number;
  /** Place in the text, end exclusive. */
  readonly start: number;
  readonly end: number;
}

type Test = (token: Token) => boolean;

interface Compiled<T> {
  readonly value: T;
  readonly tests: readonly Test[];
}

/** Endings a plural or an inflected form may take on, by language; plain adding only, no changed vowels. */
const ENDINGS: Readonly<Record<Language, readonly string[]>> = {
  en: ['s', 'es'],
  de: ['e', 'n', 'en', 's', 'er', 'es', 'ern'],
  fr: ['s', 'x'],
  nl: ['s', 'en', 'n', 'e', 'es'],
  es: ['s', 'es'],
};
const KEY = 3;

/** All forms of a folded word: itself and its plurals. Short words take no ending ("ui" would else catch "uie"). */
function formsOf(word: string, language: Language): string[] {
  if (word.length < 3) return [word];
  const forms = [word, ...ENDINGS[language].map((ending) => word + ending)];
  if (language === 'en' && /[^aeiou]y$/.test(word)) forms.push(`${word.slice(0, -1)}ies`);
  if (language === 'es' && word.endsWith('z')) forms.push(`${word.slice(0, -1)}ces`);
  if (language === 'fr' && word.endsWith('al')) forms.push(`${word.slice(0, -1)}ux`);
  if (language === 'nl' && word.endsWith('f')) forms.push(`${word.slice(0, -1)}ven`);
  return forms;
}

/**
 * Makes a finder for a list of phrases. Hits come in the order of the text and may overlap.
 * @throws RangeError for a phrase without words or with a beginning or ending shorter than three letters
 */
export function phraseFinder<T>(phrases: readonly Phrase<T>[]): (tokens: readonly Token[]) => PhraseHit<T>[] {
  const whole = new Map<string, Compiled<T>[]>();
  const beginnings = new Map<string, Compiled<T>[]>();
  const endings = new Map<string, Compiled<T>[]>();
  for (const { text, language, value } of phrases) {
    const parts = text
      .replace(/['’]s\b/g, '')
      .split(/[\s\-'’]+/)
      .filter((part) => part !== '');
    const [first] = parts;
    if (first === undefined) throw new RangeError('a phrase needs at least one word');
    const compiled = { value, tests: parts.map((part) => testOf(part, language, text)) };
    const bare = fold(first.replace(/[*=]/g, ''));
    if (first.endsWith('*')) add(beginnings, bare.slice(0, KEY), compiled);
    else if (first.startsWith('*'))
      for (const key of new Set(formsOf(bare, language).map((form) => form.slice(-KEY))))
        add(endings, key, compiled);
    else for (const form of new Set(formsOf(bare, language))) add(whole, form, compiled);
  }

  return (tokens) => {
    const hits: PhraseHit<T>[] = [];
    for (const [i, { word }] of tokens.entries()) {
      collect(whole.get(word), tokens, i, hits);
      collect(beginnings.get(word.slice(0, KEY)), tokens, i, hits);
      collect(endings.get(word.slice(-KEY)), tokens, i, hits);
    }
    return hits;
  };
}

function collect<T>(
  list: readonly Compiled<T>[] | undefined,
  tokens: readonly Token[],
  first: number,
  hits: PhraseHit<T>[],
): void {
  const begins = tokens[first];
  if (!list || !begins) return;
  for (const { value, tests } of list) {
    const last = first + tests.length - 1;
    const ends = tokens[last];
    const fits = tests.every((test, at) => {
      const token = tokens[first + at];
      return token && !(at > 0 && token.apart) && test(token);
    });
    if (ends && fits) hits.push({ value, first, last, start: begins.start, end: ends.end });
  }
}

function testOf(part: string, language: Language, phrase: string): Test {
  const bare = fold(part.replace(/[*=]/g, ''));
  if (part.includes('*') && bare.length < KEY)
    throw new RangeError(`"${phrase}": "${part}" is too short for a *`);
  if (part.startsWith('=')) {
    const accented = part.slice(1).toLowerCase().normalize('NFC');
    const forms = new Set([accented, `${accented}s`]);
    return (token) => forms.has(token.accented);
  }
  if (part.startsWith('*') && part.endsWith('*')) return (token) => token.word.includes(bare);
  if (part.endsWith('*')) return (token) => token.word.startsWith(bare);
  const forms = new Set(formsOf(bare, language));
  if (!part.startsWith('*')) return (token) => forms.has(token.word);
  return (token) => {
    for (const form of forms) if (token.word.endsWith(form)) return true;
    return false;
  };
}

function add<T>(map: Map<string, Compiled<T>[]>, key: string, value: Compiled<T>): void {
  const had = map.get(key);
  if (had) had.push(value);
  else map.set(key, [value]);
}

/** The words that a list of phrases is made of: which are known, and what one that is not known may stand for. */
import { Speller } from '../spelling.ts';
import { type Part, restOfCompound } from './phrase-part.ts';
import { isAdjective, onlyDescribes, tellingStates } from './states.ts';
import type { Language, Token } from './words.ts';

/** How many letters of a beginning or an ending it is looked up by. */
export const KEY = 3;
/** Stands for any word of that state. */
const DRIED = 'dried';
const MOST_REMEMBERED = 20_000;

export function add<T>(map: Map<string, T[]>, key: string, value: T): void {
  const had = map.get(key);
  if (had) had.push(value);
  else map.set(key, [value]);
}

/** The words a finder knows, and what a word it does not know may be a slip of. */
export class Vocabulary {
  readonly #known = new Set<string>();
  /** Whole words of German and Dutch. */
  readonly #compounds = new Set<string>();
  readonly #parts = new Map<string, Part[]>();
  readonly #meant: (readonly [word: string, base: string])[] = [];
  readonly #begun: (readonly [word: string, base: string])[] = [];
  readonly #real: ReadonlySet<string>;
  readonly #read = new Map<string, readonly string[]>();
  #spellers: readonly Speller[] | undefined;

  constructor(real: ReadonlySet<string>) {
    this.#real = real;
  }

  add(part: Part, { language, strict }: { readonly language: Language; readonly strict?: boolean }): void {
    if (part.begins || part.ends) add(this.#parts, part.begins ? part.bare.slice(0, KEY) : '', part);
    else for (const form of part.forms) this.#known.add(form);
    if (language === 'de' || language === 'nl') for (const form of part.forms) this.#compounds.add(form);
    if (strict || (onlyDescribes(part.bare) && !isAdjective(part.bare))) return;
    if (part.begins && part.bare.length > 5) this.#begun.push([part.bare, part.bare]);
    if (!part.ends) for (const form of part.forms) this.#meant.push([form, part.bare]);
  }

  knows(word: string): boolean {
    return this.names(word) || this.#fitsPart(word, '');
  }

  /** Whether two words written as one are a word of German or Dutch, or begin as one that reaches into the second. */
  joins(word: string, front: number): boolean {
    if (this.#compounds.has(word)) return true;
    return (
      this.#parts
        .get(word.slice(0, KEY))
        ?.some((part) => part.bare.length > front && part.fits(word, word)) ?? false
    );
  }

  /** Whether a word is known as a whole or by its beginning. */
  names(word: string): boolean {
    return this.#known.has(word) || this.#fitsPart(word, word.slice(0, KEY));
  }

  #fitsPart(word: string, key: string): boolean {
    return this.#parts.get(key)?.some((part) => part.fits(word, word)) ?? false;
  }

  /** The words that a token may stand for: as printed, without a "dried" in front, and rid of slips. */
  readingsOf({ word }: Token): readonly string[] {
    const read = this.#read.get(word) ?? this.#readingsOf(word);
    // Any text may be pasted: what is remembered is kept small.
    if (this.#read.size > MOST_REMEMBERED) this.#read.clear();
    this.#read.set(word, read);
    return read;
  }

  #makeSpellers(): readonly Speller[] {
    const states = tellingStates().map((state) => [state, state] as const);
    return [new Speller([...this.#meant, ...states]), new Speller(this.#begun, true)];
  }

  #readingsOf(word: string): readonly string[] {
    if (word.length < 4 || /\d/.test(word)) return [word];
    // A word of which only the end is known may still be a slip of a longer one: "tolkirsche".
    if (this.names(word)) return [word];
    const compound = restOfCompound(word);
    if (compound && this.knows(compound.rest))
      return [word, compound.rest, ...(compound.dried ? [DRIED] : [])];
    if (this.#real.has(word) || onlyDescribes(word)) return [word];
    this.#spellers ??= this.#makeSpellers();
    const found = this.#spellers.flatMap((speller) => speller.meant(word));
    const least = Math.min(...found.map(({ cost }) => cost));
    return [word, ...found.filter(({ cost }) => cost === least).map((meant) => meant.word)];
  }
}

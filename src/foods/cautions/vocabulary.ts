/** The words that a list of phrases is made of: which are known, and what one that is not known may stand for. */
import { Speller, soundOf } from '../spelling.ts';
import { type Part, restOfCompound } from './phrase-part.ts';
import { isAdjective, onlyDescribes, tellingStates } from './states.ts';
import type { Token } from './words.ts';

/** How many letters of a beginning or an ending it is looked up by. */
export const KEY = 3;
/** Stands for any word of that state. */
const DRIED = 'dried';
const NONE: readonly Part[] = [];
/** Letters that words begin with which sound so. */
const LETTERS_OF = new Map([
  ['f', ['f', 'p']],
  ['k', ['k', 'q']],
]);
const MOST_REMEMBERED = 20_000;

export function add<K, T>(map: Map<K, T[]>, key: K, value: T): void {
  const had = map.get(key);
  if (had) had.push(value);
  else map.set(key, [value]);
}

/** What a vocabulary asks of the phrases that it is made of; they give their parts when a name first asks for them. */
interface Source {
  /** Makes known, by {@link Vocabulary.add}, all parts of which a form may begin so. */
  reach(beginning: string): void;
  /** Parts of which a slip is forgiven, in the order of the phrases: at least those whose forms begin with one of these letters. */
  forgiven(letters: readonly string[]): Iterable<Part>;
  /** Words that are no slip of any other. */
  readonly realWords: () => ReadonlySet<string>;
}

/** The words a finder knows, and what a word it does not know may be a slip of. */
export class Vocabulary {
  readonly #source: Source;
  /** By the beginnings of their forms. */
  readonly #byBeginning = new Map<string, Part[]>();
  /** The same by their forms, of those beginnings that a name has asked for. */
  readonly #forms = new Map<string, Map<string, Part[]>>();
  readonly #beginnings = new Map<string, Part[]>();
  readonly #endings: Part[] = [];
  #real: ReadonlySet<string> | undefined;
  readonly #read = new Map<string, readonly string[]>();
  readonly #spellers = new Map<string, readonly Speller[]>();

  constructor(source: Source) {
    this.#source = source;
  }

  /** Each part is added once. */
  add(part: Part): void {
    for (const key of part.beginnings(KEY)) add(this.#byBeginning, key, part);
    if (part.begins) add(this.#beginnings, part.bare.slice(0, KEY), part);
    else if (part.ends) this.#endings.push(part);
  }

  /** Parts that have a word among their forms. */
  having(word: string): readonly Part[] {
    let found: readonly Part[] = NONE;
    for (let letters = 1; letters <= Math.min(KEY, word.length); letters++) {
      const parts = this.#formsUnder(word.slice(0, letters)).get(word);
      if (parts) found = found === NONE ? parts : [...found, ...parts];
    }
    return found;
  }

  #formsUnder(beginning: string): ReadonlyMap<string, readonly Part[]> {
    const had = this.#forms.get(beginning);
    if (had) return had;
    this.#source.reach(beginning);
    const forms = new Map<string, Part[]>();
    for (const part of this.#byBeginning.get(beginning) ?? [])
      for (const form of part.forms) if (form.startsWith(beginning)) add(forms, form, part);
    this.#forms.set(beginning, forms);
    return forms;
  }

  knows(word: string): boolean {
    return this.names(word) || this.#endings.some((part) => part.fits(word, word));
  }

  /** Whether two words written as one are a word of German or Dutch, or begin as one that reaches into the second. */
  joins(word: string, front: number): boolean {
    if (this.having(word).some(({ language }) => language === 'de' || language === 'nl')) return true;
    return (
      this.#beginnings
        .get(word.slice(0, KEY))
        ?.some((part) => part.bare.length > front && part.fits(word, word)) ?? false
    );
  }

  /** Whether a word is known as a whole or by its beginning. */
  names(word: string): boolean {
    return (
      this.having(word).some((part) => !part.begins && !part.ends) ||
      (this.#beginnings.get(word.slice(0, KEY))?.some((part) => part.fits(word, word)) ?? false)
    );
  }

  /** The words that a token may stand for: as printed, without a "dried" in front, and rid of slips. */
  readingsOf({ word }: Token): readonly string[] {
    const read = this.#read.get(word) ?? this.#readingsOf(word);
    // Any text may be pasted: what is remembered is kept small.
    if (this.#read.size > MOST_REMEMBERED) this.#read.clear();
    this.#read.set(word, read);
    return read;
  }

  /** Of all words and of mere beginnings, those that begin with a letter when spoken. */
  #spellersFor(letter: string): readonly Speller[] {
    const had = this.#spellers.get(letter);
    if (had) return had;
    const parts = new Set<Part>();
    for (const part of this.#source.forgiven(LETTERS_OF.get(letter) ?? [letter]))
      if (!onlyDescribes(part.bare) || isAdjective(part.bare)) parts.add(part);
    const sounds = (word: string) => soundOf(word).startsWith(letter);
    const words = [...parts].flatMap(({ ends, forms, bare }) =>
      ends ? [] : [...forms].filter(sounds).map((form) => [form, bare] as const),
    );
    const states = tellingStates().filter(sounds);
    const begun = [...parts].filter(({ begins, bare }) => begins && bare.length > 5 && sounds(bare));
    const spellers = [
      new Speller([...words, ...states.map((state) => [state, state] as const)]),
      new Speller(
        begun.map(({ bare }) => [bare, bare]),
        true,
      ),
    ];
    this.#spellers.set(letter, spellers);
    return spellers;
  }

  #readingsOf(word: string): readonly string[] {
    if (word.length < 4 || /\d/.test(word)) return [word];
    // A word of which only the end is known may still be a slip of a longer one: "tolkirsche".
    if (this.names(word)) return [word];
    const compound = restOfCompound(word);
    if (compound && this.knows(compound.rest))
      return [word, compound.rest, ...(compound.dried ? [DRIED] : [])];
    this.#real ??= this.#source.realWords();
    if (this.#real.has(word) || onlyDescribes(word)) return [word];
    const found = this.#spellersFor(soundOf(word).charAt(0)).flatMap((speller) => speller.meant(word));
    const least = Math.min(...found.map(({ cost }) => cost));
    return [word, ...found.filter(({ cost }) => cost === least).map((meant) => meant.word)];
  }
}

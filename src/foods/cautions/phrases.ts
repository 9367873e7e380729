/**
 * Finds listed phrases in the tokens of a name, in one pass however long the list is. Word order, commas and brackets
 * do not matter where they do not change the sense, and slips of spelling are forgiven.
 *
 * How a phrase is written in the data:
 * - `onion` a whole word, in the singular or plural of its language;
 * - `wild garlic` words in a row; the text may hold describing words between them ("wild organic garlic"), and may
 *   turn them round where a comma, a bracket or "of" says so ("kernels, apricot"; "noyaux d'abricots"), or where the
 *   one that moves only describes ("beans, white");
 * - `dried apricot` a word for a state may stand anywhere in the name, in any language ("apricots, Turkish, dried");
 * - `zwiebel*` a word that begins so ("Zwiebelpulver"), `*zwiebel` one that ends so ("Röstzwiebeln");
 * - `=thé` a word whose accents count.
 */
import { bareOf, beginningOf, isWide, Part } from './phrase-part.ts';
import { LINKS, type Read, readAll, wholeStretch } from './reading.ts';
import { isAdjective, onlyDescribes } from './states.ts';
import { add, KEY, Vocabulary } from './vocabulary.ts';
import type { Language, Token } from './words.ts';

export interface Phrase<T> {
  readonly text: string;
  readonly language: Language;
  readonly value: T;
  /** True for what takes a find away: spelt as printed, and turned round only where nothing else is named beside it. */
  readonly strict?: boolean;
}

export interface PhraseHit<T> {
  readonly value: T;
  readonly language: Language;
  /** Indices of the tokens that matched, rising. */
  readonly at: readonly number[];
  /** Place in the text, end exclusive. */
  readonly start: number;
  readonly end: number;
}

/** A phrase by its words. */
class Worded<T> {
  readonly phrase: Phrase<T>;
  /** Its place in the list. */
  readonly order: number;
  readonly parts: readonly Part[];
  /** The part by which it is looked up: its longest word that tells no state. */
  readonly anchor: number;
  #free: readonly number[] | undefined | null = null;

  constructor(phrase: Phrase<T>, order: number, parts: readonly Part[]) {
    this.phrase = phrase;
    this.order = order;
    this.parts = parts;
    let anchor = 0;
    let most = -1;
    for (const [i, { bare, state }] of parts.entries()) {
      const length = state || LINKS.has(bare) ? 0 : bare.length;
      if (length > most) [anchor, most] = [i, length];
    }
    this.anchor = anchor;
  }

  /** Places of the parts that must be there in a free order; undefined where only the printed order will do. */
  get free(): readonly number[] | undefined {
    if (this.#free === null) this.#free = freeIn(this.parts, this.anchor);
    return this.#free;
  }
}

function freeIn(parts: readonly Part[], anchor: number): readonly number[] | undefined {
  const content = [...parts.keys()].filter((i) => !LINKS.has(parts[i]?.bare ?? ''));
  if (content.length < 2) return undefined;
  const stated = content.some((i) => i !== anchor && parts[i]?.state);
  const short = content.some((i) => (parts[i]?.bare.length ?? 0) < KEY && !parts[i]?.state);
  return !short || (stated && content.length === 2) ? content : undefined;
}

/** How many describing words may stand between two words of a phrase, and how far off a state may be told. */
const GAP = 3;
const STATE_REACH = 10;

/** Finds the phrases in the tokens of one name; hits come in the order of their anchors and may overlap. */
export type PhraseFinder<T> = (tokens: readonly Token[]) => PhraseHit<T>[];

/**
 * Makes a finder for a list of phrases. Of thousands a name asks for a few: they are filed by how their words begin, and
 * worked out when a name has a word that begins so.
 * @param acrossCommas true where all tokens tell of one food, so that a phrase may run across a comma or bracket
 * @param realWords gives the words that are no slip of any other, folded, when they are first wanted
 * @throws RangeError for a phrase without words or with a beginning or ending shorter than three letters
 */
export function phraseFinder<T>(
  phrases: readonly Phrase<T>[],
  { acrossCommas = false, realWords = () => new Set() as ReadonlySet<string> } = {},
): PhraseFinder<T> {
  const worded = new Map<number, Worded<T>>();
  const anchored = new Map<Part, Worded<T>[]>();
  const beginnings = new Map<string, Part[]>();
  const endings = new Map<string, Part[]>();
  const parts = new Map<string, Part>();

  const partOf = (word: string, { language, text }: Phrase<T>, alone: boolean): Part => {
    const key = `${language}${alone ? ' ' : ''}${word}`;
    const had = parts.get(key);
    if (had) return had;
    const part = new Part(word, language, text, alone);
    parts.set(key, part);
    vocabulary.add(part);
    return part;
  };

  const workOut = (order: number): Worded<T> | undefined => {
    const had = worded.get(order);
    const phrase = phrases[order];
    if (had || !phrase) return had;
    const words = wordsIn(phrase.text);
    const made = new Worded(
      phrase,
      order,
      words.map((word) => partOf(word, phrase, words.length === 1)),
    );
    worded.set(order, made);
    const anchor = made.parts[made.anchor];
    if (!anchor) return made;
    if (!anchored.has(anchor)) {
      if (anchor.begins) add(beginnings, anchor.bare.slice(0, KEY), anchor);
      else if (anchor.ends)
        for (const key of new Set([...anchor.forms].map((form) => form.slice(-KEY))))
          add(endings, key, anchor);
    }
    const all = anchored.get(anchor);
    if (!all) anchored.set(anchor, [made]);
    else if ((all.at(-1)?.order ?? 0) < order) all.push(made);
    else
      anchored.set(
        anchor,
        [...all, made].sort((a, b) => a.order - b.order),
      );
    return made;
  };

  const filed = new Map<string, number[]>();
  /** Phrases with a word that may begin with any letter. */
  const anywhere: number[] = [];
  const vocabulary = new Vocabulary({
    reach: (beginning) => {
      for (const order of filed.get(beginning) ?? []) workOut(order);
    },
    forgiven: function* (letters) {
      const begun = [...filed].flatMap(([key, orders]) => (letters.includes(key.charAt(0)) ? orders : []));
      for (const order of [...new Set([...begun, ...anywhere])].sort((a, b) => a - b)) {
        const made = workOut(order);
        if (made && !made.phrase.strict) yield* made.parts;
      }
    },
    realWords,
  });
  for (const [order, phrase] of phrases.entries()) {
    const words = wordsIn(phrase.text);
    const alone = words.length === 1;
    let wide = false;
    for (const word of words) {
      const bare = bareOf(word, phrase.text);
      if (word.startsWith('*') || isWide(bare, alone)) wide = true;
      else add(filed, beginningOf(bare, KEY), order);
    }
    if (!wide) continue;
    anywhere.push(order);
    // Looked up by a word that may begin with any letter, it has to be there before a name is read.
    workOut(order);
  }

  const inOrder = (anchors: readonly Part[] = []): readonly Worded<T>[] => {
    const [first, ...more] = anchors;
    if (!first) return [];
    if (more.length === 0) return anchored.get(first) ?? [];
    return anchors.flatMap((anchor) => anchored.get(anchor) ?? []).sort((a, b) => a.order - b.order);
  };
  return (tokens) => {
    const reads = readAll(tokens, vocabulary, acrossCommas);
    const hits: PhraseHit<T>[] = [];
    for (const [i, { words, joined }] of reads.entries()) {
      const tried = new Set<Worded<T>>();
      for (const word of [...words, ...joined])
        for (const anchors of [
          vocabulary.having(word).filter(({ begins, ends }) => !begins && !ends),
          beginnings.get(word.slice(0, KEY)),
          endings.get(word.slice(-KEY)),
        ])
          for (const phrase of inOrder(anchors)) {
            if (tried.has(phrase)) continue;
            tried.add(phrase);
            const at = placesOf(phrase, reads, i, acrossCommas);
            if (at) hits.push(hitOf(phrase, at, tokens));
          }
    }
    return hits;
  };
}

/** A finder that is made when it is first asked: a list of thousands of phrases takes a tenth of a second. */
export function madeWhenAsked<T>(make: () => PhraseFinder<T>): PhraseFinder<T> {
  let made: PhraseFinder<T> | undefined;
  return (tokens) => {
    made ??= make();
    return made(tokens);
  };
}

/** The words of a phrase, with their marks. @throws RangeError where there are none */
function wordsIn(text: string): string[] {
  // Most phrases are one word.
  if (/^[^\s\-'’]+$/.test(text)) return [text];
  const words = text
    .replace(/['’]s\b/g, '')
    .split(/[\s\-'’]+/)
    .filter((word) => word !== '');
  if (words.length === 0) throw new RangeError('a phrase needs at least one word');
  return words;
}

function hitOf<T>(
  { phrase: { value, language } }: Worded<T>,
  at: readonly number[],
  tokens: readonly Token[],
) {
  const places = at.flatMap((i) => tokens[i] ?? []);
  return {
    value,
    language,
    at,
    start: Math.min(...places.map(({ start }) => start)),
    end: Math.max(...places.map(({ end }) => end)),
  };
}

function fits({ parts, phrase: { strict } }: Worded<unknown>, at: number, read: Read | undefined): boolean {
  const part = parts[at];
  if (!part || !read) return false;
  const fit = (word: string) => part.fits(word, read.token.accented);
  return read.words.some(fit) || (!strict && read.joined.some(fit));
}

/** The tokens that make up a phrase whose anchor is a given token; undefined where it is not there. */
function placesOf<T>(
  phrase: Worded<T>,
  reads: readonly Read[],
  i: number,
  acrossCommas: boolean,
): number[] | undefined {
  if (!fits(phrase, phrase.anchor, reads[i])) return undefined;
  const first = i - phrase.anchor;
  const asPrinted = phrase.parts.every((_, at) => {
    const read = reads[first + at];
    return fits(phrase, at, read) && !(at > 0 && read?.token.apart);
  });
  if (asPrinted) return phrase.parts.map((_, at) => first + at);
  return phrase.free && inFreeOrder(phrase, phrase.free, reads, i, acrossCommas);
}

function inFreeOrder<T>(
  phrase: Worded<T>,
  free: readonly number[],
  reads: readonly Read[],
  anchor: number,
  acrossCommas: boolean,
): number[] | undefined {
  const places = new Map<number, number>([[phrase.anchor, anchor]]);
  const states = free.filter((p) => p !== phrase.anchor && phrase.parts[p]?.state);
  for (const p of free) {
    if (places.has(p) || states.includes(p)) continue;
    const used = [...places.values()];
    const at = nearest(
      reads,
      anchor,
      GAP + free.length,
      (j) => !used.includes(j) && fits(phrase, p, reads[j]),
    );
    if (at === undefined) return undefined;
    places.set(p, at);
  }
  if (!holdsTogether(phrase, places, reads, acrossCommas)) return undefined;
  for (const p of states) {
    const at = nearest(
      reads,
      anchor,
      STATE_REACH,
      (j) => fits(phrase, p, reads[j]) && tellsOf(reads, j, anchor, acrossCommas),
    );
    if (at === undefined) return undefined;
    places.set(p, at);
  }
  return [...places.values()].sort((a, b) => a - b);
}

/** The token nearest to a place that passes a test, within a reach and the same sentence. */
function nearest(
  reads: readonly Read[],
  from: number,
  reach: number,
  passes: (at: number) => boolean,
): number | undefined {
  let [back, on] = [true, true];
  for (let step = 1; step <= reach; step++) {
    back &&= !reads[from - step + 1]?.token.opens && from - step >= 0;
    on &&= reads[from + step] !== undefined && !reads[from + step]?.token.opens;
    if (back && passes(from - step)) return from - step;
    if (on && passes(from + step)) return from + step;
  }
  return undefined;
}

/** Whether a state told at one token tells of the food at another: in the same stretch, or in one that says only this. */
function tellsOf(reads: readonly Read[], state: number, food: number, acrossCommas: boolean): boolean {
  const [told, of] = [reads[state], reads[food]];
  if (!told || !of) return false;
  // "Not dried" denies it; "without stones, dried" and "sans noyau séché" do not.
  if (told.token.denied && !reads[state - 1]?.token.denied) return false;
  if (told.stretch === of.stretch) return true;
  return acrossCommas && wholeStretch(reads, state, []);
}

/** Whether the words of a phrase, found in some order, belong together. */
function holdsTogether<T>(
  phrase: Worded<T>,
  places: ReadonlyMap<number, number>,
  reads: readonly Read[],
  acrossCommas: boolean,
): boolean {
  const tokens = [...places.values()];
  const [low, high] = [Math.min(...tokens), Math.max(...tokens)];
  let linked = false;
  for (let j = low; j <= high; j++) {
    const word = reads[j]?.words[0] ?? '';
    if (tokens.includes(j)) continue;
    if (!onlyDescribes(word)) return false;
    linked ||= LINKS.has(word);
  }
  const [from, to] = [reads[low]?.stretch ?? 0, reads[high]?.stretch ?? 0];
  if (from !== to) {
    if (!acrossCommas) return false;
    const turned = [...places].some(([part, at]) => [...places].some(([p, a]) => p > part && a < at));
    // "Almonds, oil roasted" is no almond oil, "oil, almond" is.
    if (phrase.phrase.strict && !turned) return false;
    if (turned && !wholeStretch(reads, low, tokens)) return false;
    for (let j = low + 1; j <= high; j++)
      if (reads[j]?.stretch !== from && !wholeStretch(reads, j, tokens)) return false;
    return true;
  }
  // Turned round without a comma, "beet sugar" is "sugar beet": only a describing word may move.
  const inOrder = [...places].sort(([a], [b]) => a - b);
  return inOrder.every(([part, at], k) => {
    const next = inOrder[k + 1];
    if (!next || at < next[1] || linked) return true;
    return isAdjective(phrase.parts[part]?.bare ?? '') || isAdjective(phrase.parts[next[0]]?.bare ?? '');
  });
}

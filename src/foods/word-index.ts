/**
 * An index of short texts by their words, made in some hundredths of a second and asked at every letter that is typed.
 * Texts are weighed by BM25+ (Robertson and Zaragoza 2009, Foundations and Trends in Information Retrieval 3:333-389;
 * Lv and Zhai 2011, CIKM 7-16): a rare word says more than a common one, and a word of a short text more than one of a
 * long one.
 */
import { countBits, lettersOf } from './letters.ts';

/** A word that is looked for. */
export interface Wanted {
  readonly word: string;
  /** Whether it may go on. */
  readonly prefix: boolean;
  /** How many letters may be wrong. */
  readonly slips: number;
}

/** How soon a repeated word tells no more, how much the length of a text counts, and what a word is worth at least. */
const K = 1.2;
const B = 0.7;
const D = 0.5;
/** What a word that only begins so, or is only spelt nearly so, is worth beside the word itself. */
const PREFIX = 0.6;
const NEAR = 0.3;
/** Words whose texts are kept: of a query that grows by a letter all but the last were asked before. */
const KEPT = 40;

/** Where a word stands in one field: rows rising, and how often in each. */
interface Places {
  readonly rows: number[];
  readonly times: number[];
}

interface Entry {
  readonly word: string;
  /** Which letters it has, as bits. */
  readonly letters: number;
  readonly fields: (Places | undefined)[];
}

/** Rows that have a word, and how much it says of each. */
interface Told {
  readonly rows: readonly number[];
  readonly scores: readonly number[];
}

export class WordIndex {
  readonly #boosts: readonly number[];
  /** What each row's scores are multiplied with. */
  readonly #rowBoosts: number[] = [];
  readonly #entries = new Map<string, Entry>();
  /** Words in each text, by field. */
  readonly #lengths: number[][];
  #sorted: readonly Entry[] | undefined;
  readonly #told = new Map<string, Told>();

  /** @param boosts what a word is worth in each field */
  constructor(boosts: readonly number[]) {
    this.#boosts = boosts;
    this.#lengths = boosts.map(() => []);
  }

  /**
   * Adds the next row.
   * @param boost what its scores are multiplied with @param texts the words of each field
   * @param lengths how many words each field is taken to have
   */
  add(boost: number, texts: readonly (readonly string[])[], lengths: readonly number[]): void {
    const row = this.#rowBoosts.length;
    this.#rowBoosts.push(boost);
    this.#sorted = undefined;
    for (const [field, words] of texts.entries()) {
      this.#lengths[field]?.push(lengths[field] ?? words.length);
      for (const word of words) this.#addWord(word, field, row);
    }
  }

  #addWord(word: string, field: number, row: number): void {
    let entry = this.#entries.get(word);
    if (!entry) {
      entry = { word, letters: lettersOf(word), fields: [] };
      this.#entries.set(word, entry);
    }
    let places = entry.fields[field];
    if (!places) {
      places = { rows: [], times: [] };
      entry.fields[field] = places;
    }
    const last = places.rows.length - 1;
    if (places.rows[last] === row) places.times[last] = (places.times[last] ?? 0) + 1;
    else {
      places.rows.push(row);
      places.times.push(1);
    }
  }

  /** All words, in the order of their letters. */
  words(): readonly string[] {
    return this.#inOrder().map(({ word }) => word);
  }

  /** Rows that have all of the words, or any of them where none need be there; the best first. */
  search(wanted: readonly Wanted[], all: boolean): number[] {
    const size = this.#rowBoosts.length;
    const scores = new Float64Array(size);
    const had = new Uint32Array(size);
    const different = new Set<string>();
    const words = wanted.filter(({ word }) => word !== '');
    let rows: readonly number[] = [];
    const any: number[] = [];
    for (const [at, one] of words.entries()) {
      const told = this.#tell(one);
      // A word that is said twice is still one word of the text.
      const counts = all || !different.has(one.word) ? 1 : 0;
      different.add(one.word);
      for (let i = 0; i < told.rows.length; i++) {
        const row = told.rows[i]!;
        if (all ? had[row] !== at : false) continue;
        if (!all && had[row] === 0 && scores[row] === 0) any.push(row);
        scores[row] = scores[row]! + told.scores[i]!;
        had[row] = had[row]! + counts;
      }
      rows = told.rows;
    }
    const found = all ? rows.filter((row) => had[row] === words.length) : any;
    if (!all) for (const row of found) scores[row] = scores[row]! * had[row]!;
    return found.sort((a, b) => scores[b]! - scores[a]! || a - b);
  }

  #tell(one: Wanted): Told {
    const key = `${one.word} ${one.prefix} ${one.slips}`;
    const told = this.#told.get(key) ?? this.#tellAfresh(one);
    this.#told.delete(key);
    this.#told.set(key, told);
    for (const oldest of this.#told.keys()) {
      if (this.#told.size <= KEPT) break;
      this.#told.delete(oldest);
    }
    return told;
  }

  #tellAfresh({ word, prefix, slips }: Wanted): Told {
    const scores = new Float64Array(this.#rowBoosts.length);
    const rows: number[] = [];
    const exact = this.#entries.get(word);
    if (exact) this.#weigh(exact, 1, scores, rows);
    const begun = new Set<Entry>();
    if (prefix)
      for (const entry of this.#beginning(word)) {
        begun.add(entry);
        const { length } = entry.word;
        if (entry !== exact)
          this.#weigh(entry, (PREFIX * length) / (length + 0.3 * (length - word.length)), scores, rows);
      }
    if (slips > 0)
      for (const [entry, distance] of this.#near(word, slips))
        if (entry !== exact && !begun.has(entry))
          this.#weigh(entry, (NEAR * entry.word.length) / (entry.word.length + distance), scores, rows);
    return { rows, scores: rows.map((row) => scores[row]!) };
  }

  #weigh({ fields }: Entry, weight: number, scores: Float64Array, rows: number[]): void {
    const size = this.#rowBoosts.length;
    for (const [field, places] of fields.entries()) {
      if (!places) continue;
      const lengths = this.#lengths[field]!;
      const usual = this.#usual(field);
      const rare = Math.log(1 + (size - places.rows.length + 0.5) / (places.rows.length + 0.5));
      const worth = weight * this.#boosts[field]! * rare;
      for (let i = 0; i < places.rows.length; i++) {
        const row = places.rows[i]!;
        const times = places.times[i]!;
        const part = (times * (K + 1)) / (times + K * (1 - B + (B * lengths[row]!) / usual));
        if (scores[row] === 0) rows.push(row);
        scores[row] = scores[row]! + worth * this.#rowBoosts[row]! * (D + part);
      }
    }
  }

  readonly #usuals: number[] = [];

  /** Mean number of words of a field. */
  #usual(field: number): number {
    const lengths = this.#lengths[field]!;
    this.#usuals[field] ??= lengths.reduce((sum, length) => sum + length, 0) / lengths.length;
    return this.#usuals[field]!;
  }

  #inOrder(): readonly Entry[] {
    this.#sorted ??= [...this.#entries.values()].sort((a, b) => (a.word < b.word ? -1 : 1));
    return this.#sorted;
  }

  #beginning(start: string): Entry[] {
    const sorted = this.#inOrder();
    let low = 0;
    let high = sorted.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (sorted[middle]!.word < start) low = middle + 1;
      else high = middle;
    }
    const found: Entry[] = [];
    for (let i = low; sorted[i]?.word.startsWith(start); i++) found.push(sorted[i]!);
    return found;
  }

  /** Words that differ in at most so many letters: put in, left out or changed (Levenshtein 1966). */
  #near(word: string, most: number): (readonly [entry: Entry, distance: number])[] {
    const letters = lettersOf(word);
    const found: (readonly [Entry, number])[] = [];
    for (const entry of this.#inOrder()) {
      if (Math.abs(entry.word.length - word.length) > most) continue;
      // A letter changed takes at most one letter away and brings one.
      if (countBits(entry.letters ^ letters) > 2 * most) continue;
      const distance = distanceOf(word, entry.word, most);
      if (distance > 0 && distance <= most) found.push([entry, distance]);
    }
    return found;
  }
}

/** How many letters differ, or more than `most` where it is more. */
function distanceOf(a: string, b: string, most: number): number {
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const changed = last[j - 1]! + (a.charCodeAt(i - 1) === b.charCodeAt(j - 1) ? 0 : 1);
      const cost = Math.min(changed, last[j]! + 1, row[j - 1]! + 1);
      row.push(cost);
      if (cost < least) least = cost;
    }
    if (least > most) return most + 1;
    last = row;
  }
  return last[b.length]!;
}

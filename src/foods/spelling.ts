/** Words that keepers on either side of the Atlantic call differently, for search. */
import { countBits, lettersOf } from './letters.ts';

const PAIRS: readonly (readonly [string, string])[] = [
  ['fibre', 'fiber'],
  ['flavour', 'flavor'],
  ['yoghurt', 'yogurt'],
  ['grey', 'gray'],
  ['wholemeal', 'wholewheat'],
  ['courgette', 'zucchini'],
  ['aubergine', 'eggplant'],
  ['beetroot', 'beet'],
  ['maize', 'corn'],
  ['mangetout', 'snowpea'],
  ['linseed', 'flaxseed'],
  ['groundnut', 'peanut'],
  ['rocket', 'arugula'],
  ['chickpea', 'garbanzo'],
  ['swede', 'rutabaga'],
  ['coriander', 'cilantro'],
  ['prawn', 'shrimp'],
  ['sultana', 'raisin'],
  ['chilli', 'chili'],
  ['dried', 'dehydrated'],
  ['dried', 'dry'],
  ['fresh', 'raw'],
  ['soya', 'soy'],
];

const twins = new Map<string, string[]>();
for (const [a, b] of PAIRS) {
  twins.set(a, [...(twins.get(a) ?? []), b]);
  twins.set(b, [...(twins.get(b) ?? []), a]);
}

/** A word without case, accents and the plural: "Seeds" and "seed" are one. */
export function stem(word: string): string {
  const plain = word
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f'’]/g, '')
    .replaceAll('ß', 'ss')
    .replaceAll('œ', 'oe');
  if (plain.length > 4 && plain.endsWith('ies')) return `${plain.slice(0, -3)}y`;
  if (plain.length > 4 && plain.endsWith('oes')) return plain.slice(0, -2);
  if (plain.length > 3 && plain.endsWith('s') && !plain.endsWith('ss') && !plain.endsWith('us'))
    return plain.slice(0, -1);
  return plain;
}

/** A stemmed word and what it is called elsewhere; the word itself first. */
export function withTwins(stemmed: string): string[] {
  return [stemmed, ...(twins.get(stemmed) ?? [])];
}

/** How dear a slip of the pen is: what ears and fingers mix up costs half. */
const SLIP = 1;
const HALF = 0.5;
const VOWELS = 'aeiouy';
/** Letters that sound alike in one of the five languages. */
const ALIKE = new Set(['ck', 'cs', 'sz', 'fv', 'vw', 'dt', 'bp', 'gk', 'ij', 'gj', 'xs', 'cz', 'tz', 'mn']);

/** How much a word may differ from what is meant: nothing in short words, where one letter makes another word. */
function slipsForgiven(meant: string): number {
  if (meant.length < 5) return 0;
  if (meant.length === 5) return HALF;
  if (meant.length < 8) return SLIP;
  return meant.length < 11 ? 1.5 : 2;
}

/** The same where only the beginning of a longer word is compared, and chance is more likely to make it alike. */
function slipsForgivenAtStart(meant: string): number {
  return meant.length < 7 ? slipsForgiven(meant) / 2 : SLIP;
}

/** Writes one way what is only spelt two ways: "ph" and "f", "qu" and "k". Both words must be lower case without accents. */
export function soundOf(word: string): string {
  return word.replaceAll('ph', 'f').replaceAll('qu', 'k').replaceAll('q', 'k');
}

/**
 * The cost of the cheapest row of slips that makes one word of another: a letter left out, put in, changed or swapped
 * with its neighbour (Damerau 1964); doubled letters, vowels and letters that sound alike cost half.
 * @param begins true where only the beginning of the typed word has to be the word meant
 * @returns Infinity where it is above the limit
 */
function slipCost(typed: string, meant: string, limit: number, begins: boolean): number {
  const width = meant.length;
  let before: number[] = [];
  let last: number[] = [0];
  for (let j = 1; j <= width; j++) last.push((last[j - 1] ?? 0) + leftOut(meant, j - 1));
  let leastBefore = 0;
  let best = begins ? Number.POSITIVE_INFINITY : 0;
  const rows = begins ? Math.min(typed.length, width + Math.ceil(limit * 2)) : typed.length;
  for (let i = 1; i <= rows; i++) {
    const row = [(last[0] ?? 0) + leftOut(typed, i - 1)];
    let least = row[0] ?? 0;
    const t = typed.charAt(i - 1);
    for (let j = 1; j <= width; j++) {
      const m = meant.charAt(j - 1);
      let cost = (last[j - 1] ?? 0) + changed(t, m);
      cost = Math.min(
        cost,
        (last[j] ?? 0) + leftOut(typed, i - 1),
        (row[j - 1] ?? 0) + leftOut(meant, j - 1),
      );
      if (i > 1 && j > 1 && t === meant.charAt(j - 2) && typed.charAt(i - 2) === m)
        cost = Math.min(cost, (before[j - 2] ?? 0) + HALF);
      row.push(cost);
      least = Math.min(least, cost);
    }
    if (begins) best = Math.min(best, row[width] ?? best);
    // A swap reaches back two rows.
    if (least > limit && leastBefore > limit) break;
    leastBefore = least;
    before = last;
    last = row;
    if (i === rows && !begins)
      return (row[width] ?? 0) <= limit ? (row[width] ?? 0) : Number.POSITIVE_INFINITY;
  }
  return begins && best <= limit ? best : Number.POSITIVE_INFINITY;
}

/** Cost of a letter too many or too few: half where it only doubles its neighbour, is a mute h, or is the k of "ck". */
function leftOut(word: string, at: number): number {
  const letter = word.charAt(at);
  const neighbour = at > 0 ? word.charAt(at - 1) : '';
  if (letter === neighbour || letter === 'h') return HALF;
  return letter === 'k' && neighbour === 'c' ? HALF : SLIP;
}

function changed(a: string, b: string): number {
  if (a === b) return 0;
  if (VOWELS.includes(a) && VOWELS.includes(b)) return HALF;
  return ALIKE.has(a < b ? a + b : b + a) ? HALF : SLIP;
}

/** A word that may have been meant, and by how much the typed word differs from it. */
export interface Meant {
  readonly word: string;
  readonly cost: number;
}

interface Entry {
  readonly word: string;
  readonly sound: string;
  readonly letters: number;
  limit: number;
}

/** Finds the words of a vocabulary that a misspelt word may mean, the nearest only. */
export class Speller {
  readonly #byFirst = new Map<string, Map<string, Entry>>();
  readonly #begins: boolean;

  /**
   * @param words lower case, without accents, each with the base word by whose length slips are forgiven ("wine" for "wines")
   * @param begins true where the words are only beginnings of what is typed ("zwiebel" of "zwibelpulver")
   */
  constructor(words: Iterable<readonly [word: string, base: string]>, begins = false) {
    this.#begins = begins;
    for (const [word, base] of words) {
      const limit = begins ? slipsForgivenAtStart(base) : slipsForgiven(base);
      if (limit === 0) continue;
      const sound = soundOf(word);
      const first = this.#byFirst.get(sound.charAt(0)) ?? new Map<string, Entry>();
      this.#byFirst.set(sound.charAt(0), first);
      const had = first.get(word);
      if (had) had.limit = Math.max(had.limit, limit);
      else first.set(word, { word, sound, letters: lettersOf(sound), limit });
    }
  }

  /** The words nearest to a typed one, none where nothing is near. The first letter must be right. */
  meant(typed: string): readonly Meant[] {
    if (typed.length < 5 || typed.length > 40) return [];
    const sound = soundOf(typed);
    const letters = lettersOf(sound);
    let found: Meant[] = [];
    let least = Number.POSITIVE_INFINITY;
    for (const entry of this.#byFirst.get(sound.charAt(0))?.values() ?? []) {
      const limit = Math.min(entry.limit, least);
      if (!this.#begins && Math.abs(entry.sound.length - sound.length) > limit * 2) continue;
      // A slip of cost one half takes at most one letter away and brings one.
      const differing = this.#begins ? entry.letters & ~letters : entry.letters ^ letters;
      if (countBits(differing) > limit * (this.#begins ? 2 : 4)) continue;
      const cost = slipCost(sound, entry.sound, limit, this.#begins);
      if (cost > limit) continue;
      if (cost < least) found = [];
      least = cost;
      found.push({ word: entry.word, cost });
    }
    return found;
  }
}

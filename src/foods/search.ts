/**
 * Finding a reference food as its name is typed, in five languages: what keepers of the spoken language call so comes
 * first, then other foods keepers use; slips of spelling are forgiven, and what the tables do not have is said.
 */
import { LANGUAGES, type Language } from '../words/manner.ts';
import { words } from '../words/words.ts';
import { everydayNames } from './everyday-names.ts';
import { everydaySearch } from './everyday-search.ts';
import { foodName } from './food-name.ts';
import { furtherNames, NOT_THERE, type NotThere } from './food-words.ts';
import type { Reference, ReferenceFood } from './reference.ts';
import { Speller, stem, withTwins } from './spelling.ts';
import { WordIndex } from './word-index.ts';

export interface FoodSearch {
  /**
   * Foods for what was typed so far, best first; none for an empty query.
   * Where the tables do not have what was typed, only those that come nearest, if any do.
   * @param query words of a name in any order, the last may be unfinished; or a reference, "sr28:20038" or "20038"
   * @param limit most foods to give back, 20 by default
   */
  find(query: string, limit?: number): ReferenceFood[];
  /** A sentence for the keeper where the tables do not have what was typed; undefined where they have. */
  note(query: string): string | undefined;
}

/** Words of a text: letters and digits, everything else parts them. */
const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{M}\p{N}'’]+/gu) ?? [];

/** How many letters may be wrong in a word that is still being typed: one in five, none in words of one or two. */
const slipsIn = (term: string) => (term.length < 3 ? 0 : Math.max(1, Math.round(term.length * 0.2)));

/** What is searched of a food, and what a word is worth there. */
const FIELDS = [
  ['name', 3],
  ['own', 3],
  ['also', 1],
  ['further', 0.3],
] as const;

/** Words up to this length are always within a slip of another: nothing is said of them. */
const SHORT = 3;

/** The same words in any order, whatever their case, accents and plurals. */
const key = (text: string) => wordsOf(text).map(stem).sort().join(' ');

/** Rows by name: the foods called exactly so. */
type ByName = Map<string, number[]>;

/** One of the foods keepers use, by the stems of its names. */
interface PlainRow {
  readonly row: number;
  /** Of each name in plain English. */
  readonly names: readonly ReadonlySet<string>[];
  /** Of each name in any language, with what the words are called elsewhere. */
  readonly all: readonly (readonly string[])[];
  readonly cooked: boolean;
}

/** A food made ready to eat; nobody who looks for beans means them, unless they say so in one of five languages. */
const COOKED = /\b(cooked|boiled|canned|hard-boiled|sprouts?|leaves)\b/i;
const ASKS_COOKED =
  /cooked|boiled|canned|gekocht|gekookt|\bcuit|cocid|hervid|sprout|spross|keim|kiem|germe|brote|lea[fv]|blatt|blätt|blad|feuille|hoja/i;

/** Least length of each half of a word that may have been written as one. */
const HALF_WORD = 3;

/**
 * Builds the search over a reference, once; it takes a tenth of a second or two and holds the index in memory.
 * The reference must outlive it.
 * @param language whose everyday names go before those of the others, the spoken one by default
 */
export function createFoodSearch(
  reference: Reference,
  language: Language = words().figures.manner.language,
): FoodSearch {
  // 9,000 names are made of some 5,000 words: each is stemmed once.
  const terms = new Map<string, string[]>();
  const termsOf = (word: string) => {
    const known = terms.get(word) ?? withTwins(stem(word));
    terms.set(word, known);
    return known;
  };
  const index = new WordIndex(FIELDS.map(([, boost]) => boost));
  const exact: ByName = new Map();
  const further: ByName = new Map();
  const plain: PlainRow[] = [];
  const rowOf = new Map<string, number>();
  const byPlainName = new Map<string, number>();
  const plainFoods = new Map(reference.plainFoods().map((food) => [food.ref, food]));
  for (let row = 0; row < reference.size; row++) {
    const { ref, name } = reference.nameAt(row);
    const food = plainFoods.get(ref);
    const own = everydayNames(ref, language);
    const names = food ? furtherNames(name) : [];
    const everyday = LANGUAGES.flatMap((l) => everydayNames(ref, l));
    const [shown = name] = own;
    rowOf.set(ref, row);
    // The table's own title is worth searching only where a hand-made name stands in front of it.
    const texts = {
      name: wordsOf(name),
      own: shown === name ? [] : wordsOf(shown),
      also: food ? wordsOf([...food.also, food.tableName].join(' ')) : [],
      // Each word once: a food is not meant the more for having many names.
      further: [...new Set(wordsOf([...names, ...everyday].join(' ').toLowerCase()))],
    };
    index.add(
      // Keepers' own foods first, and short names before long ones: "Oats" before a ready meal with oats.
      (food || own.length > 0 ? 4 : 1) / (4 + wordsOf(shown).length),
      FIELDS.map(([field]) => texts[field].flatMap(termsOf)),
      FIELDS.map(([field]) => new Set(texts[field]).size),
    );
    if (!food && own.length === 0) continue;
    const called = [name, ...(food?.also ?? [])];
    byPlainName.set(name, row);
    for (const one of called) push(exact, key(one), row);
    for (const one of names) push(further, key(one), row);
    const stems = (text: string) => new Set(wordsOf(text).map(stem));
    plain.push({
      row,
      names: called.map(stems),
      all: [...called, ...names, ...everyday].map((one) => [...stems(one)].flatMap(withTwins)),
      cooked: COOKED.test(name),
    });
  }
  const inLanguage = everydaySearch(language, (ref) => rowOf.has(ref));
  const elsewhere = LANGUAGES.filter((l) => l !== language).map((l) =>
    everydaySearch(l, (ref) => rowOf.has(ref)),
  );
  const rowsWith = (refs: readonly string[]) => refs.flatMap((ref) => rowOf.get(ref) ?? []);
  const vocabulary = index.words();
  const known = new Set(vocabulary);
  const speller = new Speller(vocabulary.map((word) => [word, word]));
  const notThere = new Map<string, NotThere>();
  for (const thing of NOT_THERE) for (const name of thing.words) notThere.set(key(name), thing);

  const search = (query: string, { any = false, asTyped = false } = {}) => {
    const wanted = wordsOf(query).map((typed) => {
      const word = stem(typed);
      return {
        word,
        // A plural is a finished word: "peas" must not go on to "pearl barley".
        prefix: !asTyped && word.length > 1 && word === typed.toLowerCase(),
        slips: asTyped ? 0 : slipsIn(word),
      };
    });
    return index.search(wanted, !any);
  };

  const isKnown = (word: string) => known.has(word) || begins(vocabulary, word);

  /** The query with words that no name has, nor begins with, put right as a caution would read them. */
  const spelt = (query: string): string | undefined => {
    const words = wordsOf(query).map(stem);
    const right = words.map((word) => (isKnown(word) ? word : (speller.meant(word)[0]?.word ?? word)));
    return right.every((word, i) => word === words[i]) ? undefined : right.join(' ');
  };

  /** Rows that are called exactly so: in plain English first; by further names only where no plain English name has all words. */
  const named = (query: string): number[] => {
    const words = wordsOf(query).map(stem);
    const inEnglish = plain.some(({ names }) => names.some((name) => words.every((word) => name.has(word))));
    return [...(exact.get(key(query)) ?? []), ...(inEnglish ? [] : (further.get(key(query)) ?? []))];
  };

  /** What was looked for, where it is known to be lacking and no food is called so. */
  const lacking = (query: string): NotThere | undefined => {
    if (named(query).length > 0 || inLanguage.called(query).length > 0) return undefined;
    const right = spelt(query);
    if (right === undefined || named(right).length > 0) return notThere.get(key(query));
    return notThere.get(key(query)) ?? notThere.get(key(right));
  };

  /**
   * The query with words joined that names write as one ("sun flower"), and parted that they write apart ("mungbean"):
   * wherever the other way is a word of some name, and the way it was typed is not.
   */
  const otherwiseParted = (query: string): string | undefined => {
    const typed = wordsOf(query).map(stem);
    const made: string[] = [];
    for (let i = 0; i < typed.length; i++) {
      const word = typed[i] ?? '';
      const joined = stem(`${wordsOf(query)[i] ?? ''}${typed[i + 1] ?? ''}`);
      if (i + 1 < typed.length && known.has(joined)) {
        made.push(joined);
        i++;
      } else if (isKnown(word)) made.push(word);
      else made.push(...(halves(word) ?? [word]));
    }
    return made.join(' ') === typed.join(' ') ? undefined : made.join(' ');
  };

  const halves = (word: string): [string, string] | undefined => {
    for (let at = word.length - HALF_WORD; at >= HALF_WORD; at--) {
      const parts: [string, string] = [stem(word.slice(0, at)), stem(word.slice(at))];
      if (parts.every((part) => known.has(part))) return parts;
    }
    return undefined;
  };

  /**
   * Foods keepers use that have each word of the query in one of their names come first, cooked ones after the others;
   * all else stays in its order.
   */
  const plainFirst = (rows: ReadonlySet<number>, queries: readonly string[]): Set<number> => {
    const asked = queries.map((query) => wordsOf(query).map(stem));
    const asksCooked = queries.some((query) => ASKS_COOKED.test(query));
    const whole = plain.filter(
      ({ row, all }) =>
        rows.has(row) &&
        asked.some((words) => all.some((name) => words.every((word) => name.includes(word)))),
    );
    const cooked = new Set(asksCooked ? [] : whole.flatMap((p) => (p.cooked ? [p.row] : [])));
    const first = new Set(whole.map((p) => p.row));
    return new Set([...[...rows].filter((row) => first.has(row) && !cooked.has(row)), ...cooked, ...rows]);
  };

  /** Rows that have every word of the query, the best first. */
  const withAll = (query: string): Set<number> => {
    const right = spelt(query);
    const parted = otherwiseParted(query);
    const byParts = parted === undefined ? [] : named(parted);
    const strange = wordsOf(query).some((word) => !known.has(stem(word)));
    const called = rowsWith(inLanguage.called(query));
    const nearly = called.length === 0 && strange ? rowsWith(inLanguage.nearly(query)) : [];
    const others = elsewhere.flatMap((l) => l.called(query));
    const found = new Set([
      ...named(query),
      ...rowsWith(others),
      ...(strange ? byParts : []),
      ...(right === undefined ? [] : [...named(right), ...search(right)]),
      ...search(query),
      ...byParts,
      ...(parted === undefined ? [] : search(parted)),
    ]);
    const inOrder = plainFirst(
      found,
      [query, right, parted].filter((q) => q !== undefined),
    );
    return new Set([...called, ...nearly, ...inOrder]);
  };

  /** Whether somebody calls a food so, or nearly so. */
  const isCalled = (query: string) =>
    inLanguage.nearly(query).length > 0 || [inLanguage, ...elsewhere].some((l) => l.called(query).length > 0);

  return {
    find(query, limit = 20) {
      const byRef = byReference(reference, query);
      if (byRef) return [byRef];
      const thing = lacking(query);
      let rows = thing ? thing.nearest.flatMap((name) => byPlainName.get(name) ?? []) : [...withAll(query)];
      // No food has every word: better the foods that have some than nothing.
      if (!thing && rows.length === 0)
        rows = [
          ...new Set([
            ...search(spelt(query) ?? query, { any: true, asTyped: true }),
            ...search(query, { any: true }),
          ]),
        ];
      return rows.slice(0, limit).map((row) => reference.at(row));
    },
    note(query) {
      const [first] = wordsOf(query);
      if (first === undefined || byReference(reference, query)) return undefined;
      const thing = lacking(query);
      const t = words().search;
      const nearest = this.find(query, 1)[0];
      const near = nearest ? [t.nearest(foodName(nearest))] : [];
      if (thing) {
        const aside = thing.aside === undefined ? [] : [t.asides[thing.aside]];
        return [t.missing(thing.what, query.trim()), ...aside, ...(nearest ? near : [t.addOwn])].join(' ');
      }
      if (!nearest) return undefined;
      if (withAll(query).size === 0) return [t.notAll, ...near].join(' ');
      if (isCalled(query)) return undefined;
      const strange = wordsOf(otherwiseParted(query) ?? spelt(query) ?? query).find(
        (word) => word.length > SHORT && !isKnown(stem(word)),
      );
      return strange && t.notCalled(strange);
    },
  };
}

/** Whether a word of a sorted list begins so. */
function begins(sorted: readonly string[], start: string): boolean {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle] ?? '') < start) low = middle + 1;
    else high = middle;
  }
  return sorted[low]?.startsWith(start) ?? false;
}

function push(lists: ByName, at: string, row: number): void {
  const list = lists.get(at);
  if (!list) lists.set(at, [row]);
  else if (!list.includes(row)) list.push(row);
}

/** The food whose reference, NDB number or IFCT code was typed in. */
function byReference(reference: Reference, query: string): ReferenceFood | undefined {
  const typed = query.trim();
  if (/^\d{4,5}$/.test(typed)) return reference.get(`sr28:${typed.padStart(5, '0')}`);
  if (/^[a-z]\d{3}$/i.test(typed)) return reference.get(`ifct:${typed.toUpperCase()}`);
  const [printed = '', number] = typed.split(':');
  if (!number) return undefined;
  const table = printed.toLowerCase();
  return reference.get(`${table}:${number}`) ?? reference.get(`${table}:${number.toUpperCase()}`);
}

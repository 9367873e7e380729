/** Finding a reference food as its name is typed: foods keepers use come first, slips of the finger are forgiven. */
import MiniSearch from 'minisearch';
import type { Reference, ReferenceFood } from './reference.ts';
import { stem, withTwins } from './spelling.ts';

export interface FoodSearch {
  /**
   * Foods for what was typed so far, best first; none for an empty query.
   * @param query words of a name in any order, the last may be unfinished; or a reference, "sr28:20038" or "20038"
   * @param limit most foods to give back, 20 by default
   */
  find(query: string, limit?: number): ReferenceFood[];
}

/** Words of a text: letters and digits, everything else parts them. */
const wordsOf = (text: string): string[] => text.match(/[\p{L}\p{M}\p{N}']+/gu) ?? [];

/** How many slips are forgiven in a typed word: one in five letters, none in words of one or two. */
const slipsIn = (term: string) => (term.length < 3 ? false : Math.max(1, Math.round(term.length * 0.2)));

/**
 * Builds the search over a reference, once; it takes some tenths of a second and holds the index in memory.
 * The reference must outlive it.
 */
export function createFoodSearch(reference: Reference): FoodSearch {
  // 9,000 names are made of some 5,000 words: each is stemmed once.
  const terms = new Map<string, string[]>();
  const index = new MiniSearch<{ id: number; name: string; also: string }>({
    fields: ['name', 'also'],
    tokenize: wordsOf,
    processTerm: (word) => {
      const known = terms.get(word) ?? withTwins(stem(word));
      terms.set(word, known);
      return known;
    },
  });

  // Keepers' own foods first, and short names before long ones: "Oats" before a ready meal with oats.
  const boosts: number[] = [];
  const exact = new Map<string, number[]>();
  const key = (text: string) => wordsOf(text).map(stem).sort().join(' ');
  for (let row = 0; row < reference.size; row++) {
    const food = reference.at(row);
    // The table's own title is worth searching only where a hand-made name stands in front of it.
    index.add({ id: row, name: food.name, also: food.plain ? [...food.also, food.tableName].join(' ') : '' });
    boosts.push((food.plain ? 4 : 1) / (4 + wordsOf(food.name).length));
    if (food.plain) for (const name of [food.name, ...food.also]) push(exact, key(name), row);
  }

  const search = (query: string, combineWith: 'AND' | 'OR') => {
    const typed = wordsOf(query).map((word) => word.toLowerCase());
    return index.search(query, {
      combineWith,
      processTerm: stem,
      // A plural is a finished word: "peas" must not go on to "pearl barley".
      prefix: (term, i) => term.length > 1 && term === typed[i],
      fuzzy: slipsIn,
      maxFuzzy: 2,
      weights: { prefix: 0.6, fuzzy: 0.3 },
      boost: { name: 3 },
      boostDocument: (row: number) => boosts[row] ?? 1,
    });
  };

  return {
    find(query, limit = 20) {
      const byRef = byReference(reference, query);
      if (byRef) return [byRef];
      const hits = search(query, 'AND');
      const named = exact.get(key(query)) ?? [];
      const rows = new Set([...named, ...hits.map((hit) => hit.id as number)]);
      // No food has every word: better the foods that have some than nothing.
      if (rows.size === 0) for (const hit of search(query, 'OR')) rows.add(hit.id as number);
      return [...rows].slice(0, limit).map((row) => reference.at(row));
    },
  };
}

function push(lists: Map<string, number[]>, at: string, row: number): void {
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

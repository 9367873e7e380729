/** Finding foods by the names of one language that keepers know them by, however these are bent, joined, parted or slipped. */
import type { Language } from '../words/manner.ts';
import { everydayNames, everydayRefs } from './everyday-names.ts';
import { Speller } from './spelling.ts';

export interface EverydaySearch {
  /** Reference numbers of foods that are called so, the surest first. */
  called(query: string): readonly string[];
  /** The same where letters are wrong; none where the query has none of the names' letters near enough. */
  nearly(query: string): readonly string[];
}

/** What was done to a food, by the word for it in three languages, without accents. */
const STATES: readonly (readonly [state: string, word: RegExp])[] = [
  ['dried', /^(dried|dry|dehydrated|getrocknete?[rsnm]?|trocken|gedroogde?)$/],
  ['fresh', /^(fresh|raw|frische?[rsnm]?|rohe?[rsnm]?|verse?|rauwe?)$/],
  ['cooked', /^(cooked|boiled|gekochte?[rsnm]?|gegarte?[rsnm]?|gekookte?)$/],
  ['shelled', /^(shelled|hulled|peeled|geschalte?[rsnm]?|geschaelte?[rsnm]?|gepelde?)$/],
];

/** Said of any food, and of none in particular. */
const SAYS_NOTHING = new Set(['bio', 'organic', 'biologisch', 'biologische']);

/** Endings of plurals and of bent words; none is taken off where fewer than three letters would be left. */
const ENDING = /(?<=...)(ern|en|er|es|em|e|(?<!u)s|(?<=[elr])n)$/;

const unaccented = (word: string) =>
  word
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '');

/** A word by the letters that stay the same in singular and plural, with umlauts written either way: "Nüsse" and "nuss". */
function bare(word: string): string {
  let left = unaccented(word)
    .replace(/[^a-z0-9]/g, '')
    .replace(/([aou])e/g, '$1')
    .replace(/(.)\1+/g, '$1')
    .replace(/ies$/, 'y');
  while (ENDING.test(left)) left = left.replace(ENDING, '');
  return left;
}

interface Said {
  /** The food's own words as one, and one by one in the order of letters: names are written either way. */
  readonly keys: readonly [joined: string, sorted: string];
  /** What was done to it, in the order of letters. */
  readonly states: string;
}

/** What a name says; undefined where it names no food. */
function said(text: string): Said | undefined {
  const own: string[] = [];
  const states = new Set<string>();
  for (const word of text.match(/[\p{L}\p{M}\p{N}'’]+/gu) ?? []) {
    const plain = unaccented(word);
    const state = STATES.find(([, of]) => of.test(plain));
    if (state) states.add(state[0]);
    else if (!SAYS_NOTHING.has(plain)) own.push(word);
  }
  if (own.length === 0) return undefined;
  return { keys: [bare(own.join('')), own.map(bare).sort().join(' ')], states: [...states].sort().join(' ') };
}

interface Name {
  readonly ref: string;
  readonly states: string;
  /** As written, in small letters. */
  readonly text: string;
}

/** @param knows whether the tables at hand have a reference number */
export function everydaySearch(language: Language, knows: (ref: string) => boolean): EverydaySearch {
  const byKey = new Map<string, Name[]>();
  for (const ref of everydayRefs().filter(knows))
    for (const text of everydayNames(ref, language)) {
      const what = said(text);
      if (!what) continue;
      const name = { ref, states: what.states, text: text.toLowerCase() };
      for (const key of new Set(what.keys)) byKey.set(key, [...(byKey.get(key) ?? []), name]);
    }
  const speller = new Speller([...byKey.keys()].filter((k) => !k.includes(' ')).map((k) => [k, k]));

  /** Names that may be meant where nothing is said of the food's state, or the same as the name says, or less. */
  const fitting = (names: readonly Name[], states: string, text: string): string[] => {
    const rank = (name: Name) => {
      if (name.text === text) return 0;
      if (name.states === states) return 1;
      if (states === '') return name.states === 'dried' ? 2 : 3;
      // "Dried lentils", "shelled oats": where a name says nothing of it, the food is so.
      return name.states === '' && /^(dried|shelled|dried shelled)$/.test(states) ? 2 : undefined;
    };
    const ranked = names.flatMap((name) => {
      const at = rank(name);
      return at === undefined ? [] : [{ ref: name.ref, at }];
    });
    // Who writes no more than a food's own name means that food, whatever else may be made of it.
    const own = ranked.filter(({ at }) => at < 2);
    const meant = own.length > 0 ? own : ranked;
    return [...new Set(meant.sort((a, b) => a.at - b.at).map(({ ref }) => ref))];
  };
  const at = (keys: readonly string[]) => [...new Set(keys.flatMap((key) => byKey.get(key) ?? []))];

  return {
    called(query) {
      const what = said(query);
      return what ? fitting(at(what.keys), what.states, query.trim().toLowerCase()) : [];
    },
    nearly(query) {
      const what = said(query);
      if (!what) return [];
      const [typed] = what.keys;
      // The speller goes by the first letter, which may itself have changed places with the second.
      const meant = [typed, typed.charAt(1) + typed.charAt(0) + typed.slice(2)]
        .map((word) => speller.meant(word))
        .find((words) => words.length > 0);
      return fitting(at((meant ?? []).map(({ word }) => word)), what.states, '');
    },
  };
}

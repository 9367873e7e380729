/**
 * Which cautions a food or a text runs into, and what that means for a mix: refused, capped, or only a warning.
 */
import { words } from '../../words/words.ts';
import { CAUTIONS, type Caution, LANGUAGES } from './caution.ts';
import { OTHER_THINGS, realWords } from './names.ts';
import { madeWhenAsked, type Phrase, type PhraseHit, phraseFinder } from './phrases.ts';
import { familyWords, MADE_ENDINGS, saysDried, saysFresh, standsAnywhere } from './states.ts';
import { type Tongue, tongueOf } from './tongue.ts';
import { fold, type Language, type Token, tokensOf } from './words.ts';

interface CautionHit {
  readonly caution: Caution;
  /** The words as printed, or the reference number, that matched. */
  readonly found: string;
}

/** A food as far as cautions need it. */
interface NamedFood {
  /** Reference number ("sr28:11282"); rows of the open tables are matched by number as well as by name. */
  readonly ref?: string;
  readonly name: string;
  readonly also?: readonly string[];
  readonly tableName?: string;
  /** True when it is known to be raw, false when it is known to be cooked; left out when unknown. */
  readonly raw?: boolean;
}

/** A caution found at a place of a text. */
export interface PlacedHit extends CautionHit {
  /** Place in the text, end exclusive. */
  readonly start: number;
  readonly end: number;
}

type Part = 'word' | 'not' | 'except' | 'only';

interface Entry {
  /** Undefined for names of other things, which take the words of any caution away. */
  readonly caution: Caution | undefined;
  readonly part: Part;
  /** True for words that may be English: the only ones read in the titles of the tables. */
  readonly english: boolean;
}

const find = madeWhenAsked(() =>
  phraseFinder<Entry>([...CAUTIONS.flatMap((caution) => phrasesOf(caution)), ...otherThings()], {
    acrossCommas: true,
    realWords,
  }),
);
const byRef = new Map<string, Caution[]>();
for (const caution of CAUTIONS)
  for (const ref of caution.refs) byRef.set(ref, [...(byRef.get(ref) ?? []), caution]);

function phrasesOf(caution: Caution): Phrase<Entry>[] {
  const phrases: Phrase<Entry>[] = [];
  for (const language of LANGUAGES) {
    const value: Entry = { caution, part: 'word', english: language === 'en' };
    for (const text of caution.words[language]) phrases.push({ text, language, value });
  }
  const exact = (texts: readonly string[] | undefined, part: Part) => {
    const families = new Set<unknown>();
    for (const text of texts ?? [])
      if (part === 'except' && MADE_ENDINGS.has(fold(text)))
        phrases.push({
          text: `*${text}`,
          language: 'de',
          value: { caution, part, english: true },
          strict: true,
        });
    for (const text of texts ?? []) {
      // A state stands for its whole family: once is enough.
      const family = familyWords(fold(text));
      if (family && families.has(family)) continue;
      families.add(family);
      const value = { caution, part, english: true };
      phrases.push({ text, language: 'en', value, strict: part === 'not' || part === 'except' });
    }
  };
  exact(caution.notWords, 'not');
  exact(caution.exceptWhen, 'except');
  exact(caution.onlyWhen, 'only');
  return phrases;
}

function otherThings(): Phrase<Entry>[] {
  return LANGUAGES.flatMap((language) =>
    OTHER_THINGS[language].map((text) => ({
      text,
      language,
      value: { caution: undefined, part: 'not', english: true } as const,
      strict: true,
    })),
  );
}

/**
 * The cautions of a food, in the order of the list, one hit per caution. Never throws.
 * Names are read in five languages; words that the name denies ("onion-free") do not count.
 * Rows for some species only ("dwarf") count where the species is given and holds one of their words.
 */
export function cautionsFor(food: NamedFood, species?: string): readonly CautionHit[] {
  const key = JSON.stringify([food.ref, food.name, food.also, food.tableName, food.raw, species]);
  const known = asked.get(key);
  if (known) return known;
  const hits = freshCautionsFor(food, species);
  // Any name may be typed: what is remembered is kept small.
  if (asked.size >= MOST_REMEMBERED) asked.clear();
  asked.set(key, hits);
  return hits;
}

/**
 * Foods asked about so far. Every question about a mix asks for the cautions of its foods anew, and to read their names
 * took two thirds of the time of a whole answer.
 */
const asked = new Map<string, readonly CautionHit[]>();
const MOST_REMEMBERED = 2000;

function freshCautionsFor(food: NamedFood, species: string | undefined): CautionHit[] {
  // The tables, and the names made from them, are in English.
  const likely = food.tableName === undefined ? undefined : 'en';
  const read = [food.name, ...(food.also ?? [])].map((name) => reading(name, likely));
  if (food.tableName !== undefined) {
    const title = reading(food.tableName, likely);
    // "SEL" is a grade of beef there, not French salt.
    read.push({ ...title, hits: title.hits.filter((hit) => hit.value.english) });
  }
  const has = (caution: Caution, part: Part) =>
    read.some(({ hits }) => hits.some((h) => h.value.caution === caution && h.value.part === part));
  const found = new Map<Caution, string>();
  if (food.ref !== undefined)
    for (const caution of byRef.get(food.ref) ?? [])
      if (!(caution.rawOnly && food.raw === false)) found.set(caution, food.ref);
  for (const { text, tokens, hits, tongue } of read)
    for (const { caution, hit } of wordHits(tokens, hits, tongue)) {
      if (found.has(caution)) continue;
      if (!counts(caution, food.raw, (part) => has(caution, part))) continue;
      found.set(caution, text.slice(hit.start, closed(text, hit)));
    }
  return CAUTIONS.flatMap((caution) => {
    const words = found.get(caution);
    return words !== undefined && concerns(caution, species) ? [{ caution, found: words }] : [];
  });
}

function reading(text: string, likely?: Language) {
  const tokens = tokensOf(text);
  return { text, tokens, hits: undenied(tokens, find(tokens)), tongue: tongueOf(tokens, likely) };
}

/**
 * Reads a whole list once, and then tells for each ingredient which cautions it runs into: for every caution the
 * longest words. An ingredient is one or more stretches of tokens, first to last; words that show the danger gone
 * ("cooked") count only within it.
 */
export function cautionReader(
  text: string,
  tokens: readonly Token[],
  species?: string,
): (stretches: readonly (readonly [first: number, last: number])[]) => readonly PlacedHit[] {
  const tongue = tongueOf(tokens);
  return (stretches) => {
    const own = stretches.flatMap(([first, last]) =>
      tokens.slice(first, last + 1).map((token, i) => (i === 0 ? { ...token, apart: true } : token)),
    );
    const hits = undenied(own, find(own));
    const found = new Map<Caution, PhraseHit<Entry>>();
    for (const { caution, hit } of wordHits(own, hits, tongue)) {
      const had = found.get(caution);
      if (!concerns(caution, species) || (had && hit.at.length <= had.at.length)) continue;
      const has = (part: Part) => hits.some((h) => h.value.part === part && h.value.caution === caution);
      if (counts(caution, undefined, has)) found.set(caution, hit);
    }
    return [...found].map(([caution, hit]) => ({
      caution,
      found: text.slice(hit.start, closed(text, hit)),
      start: hit.start,
      end: closed(text, hit),
    }));
  };
}

/**
 * Hits of which the text does not say that they are not in it. "Without stones" itself is no denial of what it says, and
 * what follows a thing denied may tell of the food again: "without stones, dried".
 */
function undenied(tokens: readonly Token[], hits: readonly PhraseHit<Entry>[]): PhraseHit<Entry>[] {
  const word = (i: number) => tokens[i]?.word ?? '';
  const denied = (i: number) => tokens[i]?.denied && !(standsAnywhere(word(i)) && tokens[i - 1]?.denied);
  const dried = tokens.some((token, i) => saysDried(token.word) && !denied(i));
  return hits.filter(({ value, at }) => {
    if (value.part === 'not') return true;
    if (value.part === 'word') return !at.some(denied);
    const [first = -1] = at;
    if (denied(first)) return false;
    // "Dried figs, raw" are dried, whatever a shop means by raw.
    return !(value.part === 'except' && dried && saysFresh(word(first)) && !value.caution?.rawOnly);
  });
}

/** The end of a hit, with the bracket that closes one opened in it: "apricots (dried)". */
function closed(text: string, { start, end }: PhraseHit<Entry>): number {
  return text.slice(start, end).includes('(') && text.charAt(end) === ')' ? end + 1 : end;
}

interface WordHit {
  readonly caution: Caution;
  readonly hit: PhraseHit<Entry>;
}

/** Words that mean something else in another of the languages: French raisins are grapes, a Spanish pan is bread. */
const FALSE_FRIENDS = /^(raisin|prune|pan|pain|room|lima|mate|digital|col)s?$/;

/**
 * Hits on words proper that no name of another meaning holds. A false friend counts only in the language that the
 * rest of the text is in, and in all where that is not plain.
 */
function wordHits(tokens: readonly Token[], hits: readonly PhraseHit<Entry>[], tongue: Tongue): WordHit[] {
  const nots = new Map<number, PhraseHit<Entry>[]>();
  for (const hit of hits)
    if (hit.value.part === 'not') for (const i of hit.at) nots.set(i, [...(nots.get(i) ?? []), hit]);
  return hits.flatMap((hit) => {
    const { caution, part } = hit.value;
    if (part !== 'word' || !caution) return [];
    const named = hit.at.filter((i) => !standsAnywhere(tokens[i]?.word ?? ''));
    const meansElse = nots
      .get(named[0] ?? -1)
      ?.some(
        ({ value, at }) =>
          (value.caution === caution || value.caution === undefined) && named.every((i) => at.includes(i)),
      );
    if (meansElse) return [];
    const [only = -1, ...more] = hit.at;
    if (more.length === 0 && isUnit(tokens, only)) return [];
    const falseFriend = more.length === 0 && FALSE_FRIENDS.test(tokens[only]?.word ?? '');
    return falseFriend && LANGUAGES.some((other) => tongue(other) > tongue(hit.language))
      ? []
      : [{ caution, hit }];
  });
}

/** "12 000 UI" are international units in French and Spanish, no Dutch onion; "1 ui" is one. */
function isUnit(tokens: readonly Token[], at: number): boolean {
  const [before, token] = [tokens[at - 1], tokens[at]];
  if (token?.word !== 'ui' || token.apart || !before) return false;
  return /^\d{2,}$/.test(before.word) && token.start - before.end <= 1;
}

function counts(caution: Caution, raw: boolean | undefined, has: (part: Part) => boolean): boolean {
  if (caution.rawOnly && raw === false) return false;
  if (caution.onlyWhen && raw !== true && !has('only')) return false;
  return !(has('except') && !(caution.rawOnly && raw === true));
}

function concerns(caution: Caution, species: string | undefined): boolean {
  if (!caution.appliesTo) return true;
  if (species === undefined) return false;
  const folded = fold(species);
  return caution.appliesTo.some((word) => folded.includes(fold(word)));
}

/** What the cautions of a food mean for a mix. */
export type Ruling =
  | { readonly kind: 'block'; readonly reason: string }
  | { readonly kind: 'cap'; readonly maxShare: number; readonly reason: string };

/**
 * The strictest of some hits: a block for `never`, else the lowest cap for `limit`, else undefined.
 * A cap may be lifted by the keeper's own recorded choice, a block may not; `prepare` only warns.
 */
export function strictestRuling(hits: readonly CautionHit[]): Ruling | undefined {
  const never = hits.find((hit) => hit.caution.severity === 'never');
  if (never) return { kind: 'block', reason: sentence(never.caution) };
  let strictest: { readonly caution: Caution; readonly maxShare: number } | undefined;
  for (const { caution } of hits) {
    const { severity, maxShare } = caution;
    if (severity !== 'limit' || maxShare === undefined) continue;
    if (!strictest || maxShare < strictest.maxShare) strictest = { caution, maxShare };
  }
  return strictest && { kind: 'cap', maxShare: strictest.maxShare, reason: sentence(strictest.caution) };
}

function sentence({ title, reason }: Caution): string {
  return words().cautions.because(title, reason);
}

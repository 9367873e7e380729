/**
 * Which cautions a food or a text runs into, and what that means for a mix: refused, capped, or only a warning.
 */
import { CAUTIONS, type Caution, LANGUAGES } from './caution.ts';
import { type Phrase, type PhraseHit, phraseFinder } from './phrases.ts';
import { fold, type Token, tokensOf } from './words.ts';

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
interface PlacedHit extends CautionHit {
  /** Place in the text, end exclusive. */
  readonly start: number;
  readonly end: number;
}

type Part = 'word' | 'not' | 'except' | 'only';

interface Entry {
  readonly caution: Caution;
  readonly part: Part;
  /** True for words that may be English: the only ones read in the titles of the tables. */
  readonly english: boolean;
}

const find = phraseFinder<Entry>(CAUTIONS.flatMap((caution) => phrasesOf(caution)));
const byRef = new Map<string, Caution[]>();
for (const caution of CAUTIONS)
  for (const ref of caution.refs) byRef.set(ref, [...(byRef.get(ref) ?? []), caution]);

function phrasesOf(caution: Caution): Phrase<Entry>[] {
  const phrases: Phrase<Entry>[] = [];
  for (const language of LANGUAGES)
    for (const text of caution.words[language])
      phrases.push({ text, language, value: { caution, part: 'word', english: language === 'en' } });
  const exact = (texts: readonly string[] | undefined, part: Part) => {
    for (const text of texts ?? [])
      phrases.push({ text, language: 'en', value: { caution, part, english: true } });
  };
  exact(caution.notWords, 'not');
  exact(caution.exceptWhen, 'except');
  exact(caution.onlyWhen, 'only');
  return phrases;
}

/**
 * The cautions of a food, in the order of the list, one hit per caution. Never throws.
 * Names are read in five languages; words that the name denies ("onion-free") do not count.
 * Rows for some species only ("dwarf") count where the species is given and holds one of their words.
 */
export function cautionsFor(food: NamedFood, species?: string): readonly CautionHit[] {
  const read = [food.name, ...(food.also ?? [])].map(reading);
  if (food.tableName !== undefined) {
    const title = reading(food.tableName);
    // The tables are in English: "SEL" is a grade of beef there, not French salt.
    read.push({ ...title, hits: title.hits.filter((hit) => hit.value.english) });
  }
  const has = (caution: Caution, part: Part) =>
    read.some(({ hits }) => hits.some((h) => h.value.caution === caution && h.value.part === part));
  const found = new Map<Caution, string>();
  if (food.ref !== undefined)
    for (const caution of byRef.get(food.ref) ?? [])
      if (!(caution.rawOnly && food.raw === false)) found.set(caution, food.ref);
  for (const { text, tokens, hits } of read)
    for (const hit of wordHits(tokens, hits)) {
      const { caution } = hit.value;
      if (found.has(caution)) continue;
      if (!counts(caution, food.raw, (part) => has(caution, part))) continue;
      found.set(caution, text.slice(hit.start, hit.end));
    }
  return CAUTIONS.flatMap((caution) => {
    const words = found.get(caution);
    return words !== undefined && concerns(caution, species) ? [{ caution, found: words }] : [];
  });
}

function reading(text: string) {
  const tokens = tokensOf(text);
  return { text, tokens, hits: find(tokens) };
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
  const all = find(tokens);
  const words = new Set(wordHits(tokens, all).filter((hit) => concerns(hit.value.caution, species)));
  return (stretches) => {
    const held: PhraseHit<Entry>[] = [];
    for (const [first, last] of stretches)
      for (let i = firstHit(all, first), hit = all[i]; hit && hit.first <= last; hit = all[++i])
        if (hit.last <= last) held.push(hit);
    const found = new Map<Caution, PhraseHit<Entry>>();
    for (const hit of held) {
      const { caution } = hit.value;
      const had = found.get(caution);
      if (!words.has(hit) || (had && hit.last - hit.first <= had.last - had.first)) continue;
      const has = (part: Part) => held.some((h) => h.value.part === part && h.value.caution === caution);
      if (counts(caution, undefined, has)) found.set(caution, hit);
    }
    return [...found].map(([caution, hit]) => ({
      caution,
      found: text.slice(hit.start, hit.end),
      start: hit.start,
      end: hit.end,
    }));
  };
}

/** Index of the first hit that begins at a token or behind it. */
function firstHit(hits: readonly PhraseHit<Entry>[], token: number): number {
  let low = 0;
  let high = hits.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const hit = hits[middle];
    if (hit && hit.first < token) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Hits on words proper that no longer phrase of another meaning holds and that the text does not deny. */
function wordHits(tokens: readonly Token[], hits: readonly PhraseHit<Entry>[]): PhraseHit<Entry>[] {
  const nots = new Map<Caution, PhraseHit<Entry>[]>();
  for (const hit of hits) {
    if (hit.value.part !== 'not') continue;
    const had = nots.get(hit.value.caution);
    if (had) had.push(hit);
    else nots.set(hit.value.caution, [hit]);
  }
  const at = new Map<Caution, number>();
  return hits.filter((hit) => {
    if (hit.value.part !== 'word') return false;
    for (let i = hit.first; i <= hit.last; i++) if (tokens[i]?.denied) return false;
    const list = nots.get(hit.value.caution);
    if (!list) return true;
    // Both lists rise, so each "not" is passed by once.
    let from = at.get(hit.value.caution) ?? 0;
    let not = list[from];
    while (not && not.last < hit.first) not = list[++from];
    at.set(hit.value.caution, from);
    for (let i = from; not && not.first <= hit.first; not = list[++i]) if (not.last >= hit.last) return false;
    return true;
  });
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
  return `${title}: ${reason}`;
}

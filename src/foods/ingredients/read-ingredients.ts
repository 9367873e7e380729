/**
 * Reads the ingredient list of a bought food, pasted as printed in any of five languages: the ingredients in their
 * order, and what a keeper should look at, each with its place in the paste, its reason and its source.
 */
import { LANGUAGES } from '../cautions/caution.ts';
import { cautionReader, type PlacedHit } from '../cautions/find.ts';
import { realWords } from '../cautions/names.ts';
import { madeWhenAsked, type Phrase, type PhraseHit, phraseFinder } from '../cautions/phrases.ts';
import { onlyDescribes } from '../cautions/states.ts';
import { type Token, tokensOf } from '../cautions/words.ts';
import { ADDITIVES, type Additive, type AdditiveKind, type FlagSeverity } from './additive.ts';
import { eNumbersIn } from './e-numbers.ts';
import { type Item, type Piece, splitList } from './split.ts';

export type { Item } from './split.ts';

export interface Flag {
  readonly kind: AdditiveKind | 'caution';
  /** The words as printed; the same as the paste from `start` to `end`. */
  readonly found: string;
  readonly start: number;
  readonly end: number;
  /** What it is, in English. */
  readonly name: string;
  readonly why: string;
  /** A citation, "common practice, no source", or a citation that ends "(from memory)". */
  readonly source: string;
  /** `avoid`: not for a hamster, or not in the house range. `mind`: good to know. */
  readonly severity: FlagSeverity;
  readonly cautionId?: string;
}

export interface IngredientReading {
  readonly items: readonly Item[];
  /** In the order of the paste. */
  readonly flags: readonly Flag[];
  /** What was printed and could not be read. */
  readonly unread: readonly string[];
}

interface Entry {
  readonly additive: Additive;
  readonly not: boolean;
}

interface Span {
  readonly start: number;
  readonly end: number;
}

interface Found extends Span {
  readonly additive: Additive;
}

const find = madeWhenAsked(() =>
  phraseFinder<Entry>(
    ADDITIVES.flatMap((additive) => {
      const phrases: Phrase<Entry>[] = LANGUAGES.flatMap((language) =>
        additive.words[language].map((text) => ({ text, language, value: { additive, not: false } })),
      );
      for (const text of additive.notWords ?? [])
        phrases.push({ text, language: 'en', value: { additive, not: true }, strict: true });
      return phrases;
    }),
    { realWords },
  ),
);
const byNumber = new Map(ADDITIVES.flatMap((a) => (a.numbers ?? []).map((number) => [number, a] as const)));

/**
 * Reads a pasted ingredient list. Never throws, whatever the text; takes time in proportion to its length.
 * What the text denies ("ohne Zuckerzusatz", "sans colorants") is not flagged.
 * @param species for cautions that hold for some species only ("Campbell's dwarf hamster")
 */
export function readIngredients(text: string, species?: string): IngredientReading {
  const { pieces, unread } = splitList(text);
  const tokens = tokensOf(text);
  const additives = widest(additivesIn(text, tokens, pieces));
  const flags = additives.map(({ additive, start, end }) => flagOf(text, additive, start, end));
  const cautions: Flag[] = [];
  cautionsOfAll(pieces, tokens, cautionReader(text, tokens, species), (hit) =>
    cautions.push(cautionFlag(hit)),
  );
  const taken = (flag: Flag) => overlaps(additives, flag);
  return {
    items: pieces.map((piece) => piece.item),
    flags: [...flags, ...cautions.filter((flag) => !taken(flag))].sort(
      (a, b) => a.start - b.start || a.end - b.end,
    ),
    unread,
  };
}

/**
 * The cautions that a list of ingredients runs into, in the order of the list; added sugar left out, which is read with
 * the additives. Never throws.
 */
export function cautionsListed(text: string, species?: string): readonly PlacedHit[] {
  const tokens = tokensOf(text);
  const hits: PlacedHit[] = [];
  cautionsOfAll(splitList(text).pieces, tokens, cautionReader(text, tokens, species), (hit) =>
    hits.push(hit),
  );
  return hits.sort((a, b) => a.start - b.start || a.end - b.end);
}

function additivesIn(text: string, tokens: readonly Token[], pieces: readonly Piece[]): Found[] {
  const hits = find(tokens);
  const found: Found[] = [];
  const passed = notPhrases(hits);
  for (const { value, at, start, end } of hits) {
    if (value.not || passed(value.additive, at)) continue;
    if (at.some((i) => tokens[i]?.denied)) continue;
    found.push({ additive: value.additive, start, end });
  }
  for (const { number, start, end } of eNumbersIn(text, tokens)) {
    const additive = byNumber.get(number);
    if (additive) found.push({ additive, start, end });
  }
  return bareOnly(found, pieces);
}

/** Says whether a longer phrase of another meaning holds all tokens of an additive. */
function notPhrases(hits: readonly PhraseHit<Entry>[]) {
  const nots = new Map<Additive, Map<number, PhraseHit<Entry>[]>>();
  for (const hit of hits) {
    if (!hit.value.not) continue;
    const byToken = nots.get(hit.value.additive) ?? new Map<number, PhraseHit<Entry>[]>();
    nots.set(hit.value.additive, byToken);
    for (const i of hit.at) byToken.set(i, [...(byToken.get(i) ?? []), hit]);
  }
  return (additive: Additive, at: readonly number[]): boolean => {
    const [first = -1] = at;
    const near = nots.get(additive)?.get(first) ?? [];
    return near.some((not) => at.every((i) => not.at.includes(i)));
  };
}

/** What names a harmless member of a group: then the group name alone says nothing. */
const HARMLESS =
  /tocopherol|tocoferol|rosemary|rosmarin|romarin|rozemarijn|romero|vitamin|ascorb|carot|beetroot|\bE\s?\d{3}/iu;

/** Drops group names ("colourants") that have their members named after them. */
function bareOnly(found: readonly Found[], pieces: readonly Piece[]): Found[] {
  if (!found.some(({ additive }) => additive.onlyBare)) return [...found];
  const flat: Piece[] = [];
  const remarks = new Set<Piece>();
  const walk = (piece: Piece) => {
    flat.push(piece);
    const [remark, ...others] = piece.parts;
    if (remark && others.length === 0) remarks.add(remark);
    for (const part of piece.parts) walk(part);
  };
  for (const piece of pieces) walk(piece);
  flat.sort((a, b) => a.item.start - b.item.start);
  const groups = found.filter(({ additive }) => additive.id === 'permitted-additives');
  let at = 0;
  const sorted = [...found].sort((a, b) => a.start - b.start);
  return sorted.filter((hit, index) => {
    if (!hit.additive.onlyBare) return true;
    for (let next = flat[at + 1]; next && next.item.start <= hit.start; next = flat[at + 1]) at++;
    const piece = flat[at];
    if (!piece || hit.end > piece.item.end) return true;
    // "E 307 (preservative)": the group only explains the member before it.
    if (piece.heading || remarks.has(piece)) return false;
    if (piece.parts.some((part) => !groups.some((group) => within(group, part.item)))) return false;
    if (piece.item.end - piece.item.start < 200 && HARMLESS.test(piece.item.text)) return false;
    const near = [sorted[index - 1], sorted[index + 1]];
    return !near.some(
      (other) =>
        other?.additive.kind === hit.additive.kind &&
        other.additive !== hit.additive &&
        within(other, piece.item),
    );
  });
}

function within(inner: Span, outer: Span): boolean {
  return inner.start >= outer.start && inner.end <= outer.end;
}

/** Keeps of overlapping finds the widest: "glucose syrup" once, not also "glucose" and "syrup". */
function widest(found: readonly Found[]): Found[] {
  const kept: Found[] = [];
  for (const one of [...found].sort((a, b) => a.start - b.start || b.end - a.end)) {
    const last = kept.at(-1);
    if (!last || one.end > last.end) kept.push(one);
  }
  return kept;
}

/** Reads each of some pieces, together with those behind it that only describe it: "apricots, dried". */
function cautionsOfAll(
  pieces: readonly Piece[],
  tokens: readonly Token[],
  read: ReturnType<typeof cautionReader>,
  found: (hit: PlacedHit) => void,
): void {
  let food: Piece | undefined;
  let behind: Piece[] = [];
  const tell = () => food && cautionsOf(food, behind, tokens, read, found);
  for (const piece of pieces)
    if (food && describes(piece, tokens)) behind.push(piece);
    else {
      tell();
      [food, behind] = [piece, []];
    }
  tell();
}

function describes(piece: Piece, tokens: readonly Token[]): boolean {
  const stretches = stretchesOf(tokens, piece);
  return (
    piece.parts.length === 0 &&
    stretches.length > 0 &&
    stretches.every(([first, last]) => tokens.slice(first, last + 1).every(({ word }) => onlyDescribes(word)))
  );
}

function cautionsOf(
  piece: Piece,
  behind: readonly Piece[],
  tokens: readonly Token[],
  read: ReturnType<typeof cautionReader>,
  found: (hit: PlacedHit) => void,
): void {
  const stretches = stretchesOf(tokens, piece);
  // "beans (cooked)": a lone word in brackets tells of the food before it, and so do words that only describe.
  const [only, ...others] = piece.parts;
  const lone = only && others.length === 0 && only.parts.length === 0;
  const told = piece.parts.filter((part) => lone || describes(part, tokens));
  for (const each of [...told, ...behind]) stretches.push(...stretchesOf(tokens, each));
  cautionsOfAll(
    piece.parts.filter((part) => !told.includes(part)),
    tokens,
    read,
    found,
  );
  // Sugars are read word by word as additives, with what is no added sugar ("of which sugars").
  for (const hit of read(stretches)) if (hit.caution.id !== 'added-sugar') found(hit);
}

function cautionFlag({ caution, found, start, end }: PlacedHit): Flag {
  return {
    kind: 'caution',
    found,
    start,
    end,
    name: caution.title,
    why: caution.reason,
    source: caution.source,
    severity: caution.severity === 'never' ? 'avoid' : 'mind',
    cautionId: caution.id,
  };
}

/** The stretches of tokens that are the own words of a piece. */
function stretchesOf(tokens: readonly Token[], piece: Piece): [first: number, last: number][] {
  const stretches: [number, number][] = [];
  for (const [start, end] of piece.own) {
    const first = firstFrom(tokens, start);
    const last = firstFrom(tokens, end) - 1;
    if (last >= first) stretches.push([first, last]);
  }
  return stretches;
}

/** Index of the first token that starts at a place or behind it. */
function firstFrom(tokens: readonly Span[], place: number): number {
  let low = 0;
  let high = tokens.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const span = tokens[middle];
    if (span && span.start < place) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Whether a span overlaps one of some spans that rise and do not hold each other. */
function overlaps(spans: readonly Span[], { start, end }: Span): boolean {
  const next = firstFrom(spans, start);
  return (spans[next]?.start ?? Number.POSITIVE_INFINITY) < end || (spans[next - 1]?.end ?? 0) > start;
}

function flagOf(text: string, additive: Additive, start: number, end: number): Flag {
  const { kind, name, why, source, severity } = additive;
  return { kind, found: text.slice(start, end), start, end, name, why, source, severity };
}

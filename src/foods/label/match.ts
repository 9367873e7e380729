/** Tokens to items: phrases of the word table are found (the longest wins), spaced groups of digits become one number. */

import type { Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { NAMES } from './nutrient-words.ts';
import { LANGUAGES, type Language, type PrintedUnit } from './reading.ts';
import { ROLES } from './role-words.ts';
import { narrow, type Token, tokenize } from './tokens.ts';
import { UNIT_SPELLINGS } from './units.ts';
import { WITHOUT_TAG } from './untagged-words.ts';
import type { Mark, Role } from './words.ts';

/** A nutrient as the word table knows it: its possible tags, or why it has none. */
export interface Name {
  readonly tags: readonly Tag[];
  /** The English word of its row, for messages and ids. */
  readonly called: string;
  readonly mark?: Mark;
  readonly reason?: string;
}

export type Item = {
  readonly at: number;
  readonly end: number;
  readonly text: string;
  /** A gap as between columns stands before it. */
  readonly gap?: boolean;
  /** It stood in brackets that were opened. */
  readonly bracketed?: boolean;
  /** The line it was printed on, where it is read with another. */
  readonly line?: number;
} & (
  | { readonly kind: 'name'; readonly name: Name }
  /** `spaced` where a plain space stands between its groups, so that it may be two numbers. */
  | { readonly kind: 'number'; readonly spaced: boolean; readonly glued: boolean }
  | { readonly kind: 'unit'; readonly unit: PrintedUnit }
  | { readonly kind: 'role'; readonly roles: ReadonlySet<Role> }
  | { readonly kind: 'sign' }
  /** Recognised and of no weight: leaders, register codes, footnote marks. */
  | { readonly kind: 'noise' }
  | { readonly kind: 'word' }
  | { readonly kind: 'odd'; readonly why: string }
);

interface Node {
  readonly next: Map<string, Node>;
  name?: Name;
  unit?: PrintedUnit;
  roles?: Set<Role>;
  languages?: Set<Language>;
}

const root: Node = { next: new Map() };

function nodeOf(phrase: string): Node {
  let node = root;
  for (const { key } of tokenize(phrase)) {
    if (key === '-') continue;
    let next = node.next.get(key);
    if (!next) {
      next = { next: new Map() };
      node.next.set(key, next);
    }
    node = next;
  }
  return node;
}

function addRow(columns: readonly string[], put: (node: Node) => void): void {
  for (const [column, language] of LANGUAGES.entries())
    for (const phrase of spellingsIn(columns[column])) {
      const node = nodeOf(phrase);
      put(node);
      node.languages ??= new Set();
      node.languages.add(language);
    }
}

function spellingsIn(cell = ''): string[] {
  return cell.split('|').filter(Boolean);
}

/** "Vit. D3" and "Vit D3" beside "vitamin D3". */
function withShortened(cell: string): string {
  const spellings = spellingsIn(cell);
  const vitamins = spellings.filter((s) => /^vitamin[ae]? /.test(s)).map((s) => s.replace(/^\w+ /, ''));
  return [...spellings, ...vitamins.flatMap((rest) => [`vit ${rest}`, `vit. ${rest}`])].join('|');
}

for (const [tags, en, de, fr, nl, es, mark] of NAMES) {
  const [called = ''] = spellingsIn(en);
  addRow([en, de, fr, nl, es].map(withShortened), (node) => {
    node.name = { tags, called, ...(mark && { mark }) };
  });
}
for (const [reason, ...columns] of WITHOUT_TAG) {
  const [called = ''] = spellingsIn(columns[0]);
  addRow(columns, (node) => {
    node.name = { tags: [], called, reason };
  });
}
for (const [role, ...columns] of ROLES)
  addRow(columns, (node) => {
    node.roles ??= new Set();
    node.roles.add(role);
  });
for (const [unit, spellings] of UNIT_SPELLINGS)
  for (const spelling of spellings.split('|')) nodeOf(spelling).unit = unit;

const only = (role: Role): ReadonlySet<Role> => new Set([role]);
const SIGN_ROLES: ReadonlyMap<string, ReadonlySet<Role>> = new Map([
  ['<', only('high')],
  ['≤', only('high')],
  ['>', only('low')],
  ['≥', only('low')],
  ['~', only('about')],
  ['≈', only('about')],
  ['±', only('about')],
]);
const SIGN_UNITS: ReadonlyMap<string, PrintedUnit> = new Map([
  ['%', '%'],
  ['‰', '‰'],
]);
const FOOTNOTES = new Set(['*', '†', '‡', '"', '“', '”', '„', '«', '»', '®', '™', '#']);

/** The items of one line, and the languages whose names and roles it uses, once for each phrase. */
export function match(printed: string): { items: Item[]; languages: ReadonlySet<Language>[] } {
  const line = narrow(printed);
  const tokens = tokenize(line);
  const gaps = new Set(tokens.flatMap((t, k) => (k > 0 && t.space === 'gap' ? [t.at] : [])));
  const items: Item[] = [];
  const languages: ReadonlySet<Language>[] = [];
  let i = 0;
  for (let token = tokens[i]; token; token = tokens[i]) {
    const found = token.kind === 'word' || token.kind === 'sign' ? longest(tokens, i) : undefined;
    if (found) {
      const at = token.at;
      const end = found.last.at + found.last.text.length;
      const text = line.slice(at, end);
      const { unit, roles } = found.node;
      // "Dry matter 90 %" names an amount, "20 % of dry matter" says what the amount is part of.
      const named = !roles?.has('dry matter') || isFollowedByAmount(tokens, found.next);
      const name = named && !(roles?.has('dry matter') && continues(items)) ? found.node.name : undefined;
      if (found.node.languages) languages.push(found.node.languages);
      if (name && endsOnLooseDigit(found.last, tokens[found.next]))
        items.push({
          at,
          end,
          text,
          kind: 'odd',
          why: words().label.reading.why.nameOrFigure(text),
        });
      else if (name) items.push({ at, end, text, kind: 'name', name });
      else if (unit) items.push({ at, end, text, kind: 'unit', unit });
      else if (roles) items.push({ at, end, text, kind: 'role', roles });
      i = found.next;
      continue;
    }
    const { at, text, key, kind } = token;
    const end = at + text.length;
    if (kind === 'number') {
      const group = spacedGroup(token, tokens, i + 1);
      const until = group.last.at + group.last.text.length;
      const previous = tokens[i - 1];
      const glued = previous?.kind === 'sign' && '-−–—+'.includes(previous.text) && token.space === 'none';
      items.push({ at, end: until, text: line.slice(at, until), kind, spaced: group.plain, glued });
      i = group.next;
      continue;
    }
    const roles =
      kind === 'sign' ? SIGN_ROLES.get(key) : isDryMatterAbbreviation(token, items) ? DRY_MATTER : undefined;
    const unit = kind === 'sign' ? SIGN_UNITS.get(key) : undefined;
    if (kind === 'odd') items.push({ at, end, text, kind, why: token.why! });
    // Older register numbers of additives: "E672".
    else if (kind === 'word' && /^E\d{3,4}\p{L}{0,2}$/u.test(text))
      items.push({ at, end, text, kind: 'noise' });
    else if (kind === 'word' && /\p{N}/u.test(text))
      items.push({
        at,
        end,
        text,
        kind: 'odd',
        why: words().label.reading.why.runsTogether(text.slice(0, 20)),
      });
    else if (kind === 'leader' || FOOTNOTES.has(key)) items.push({ at, end, text, kind: 'noise' });
    else if (roles) items.push({ at, end, text, kind: 'role', roles });
    else if (unit) items.push({ at, end, text, kind: 'unit', unit });
    else items.push({ at, end, text, kind });
    i++;
  }
  return { items: items.map((item) => (gaps.has(item.at) ? { ...item, gap: true } : item)), languages };
}

/** Whether what comes next is a figure, at most a colon, leaders or a bound away. */
function isFollowedByAmount(tokens: readonly Token[], from: number): boolean {
  for (const token of tokens.slice(from, from + FARTHEST_AMOUNT)) {
    if (token.kind === 'number') return true;
    if (token.kind === 'word' && !/^(?:min|max|mind|maxi|mini)$/.test(token.key)) return false;
    if (token.kind === 'sign' && !':.=(),<>≥≤%'.includes(token.text)) return false;
  }
  return false;
}

const FARTHEST_AMOUNT = 5;

/** Whether the line so far leads on to what an amount is part of: a unit, "per", "of". */
function continues(items: readonly Item[]): boolean {
  const last = items.at(-1);
  return (
    last?.kind === 'unit' ||
    (last?.kind === 'role' &&
      (last.roles.has('per') || last.roles.has('filler') || last.roles.has('product')))
  );
}

const DRY_MATTER = only('dry matter');
/** Dry matter in letters: in capitals wherever it can stand, in small letters only right after a percent sign. */
const ABBREVIATIONS = new Set(['dm', 'ts', 'tm', 'trs', 'ms', 'ds', 'ss']);

function isDryMatterAbbreviation({ kind, key, text }: Token, items: readonly Item[]): boolean {
  if (kind !== 'word' || !ABBREVIATIONS.has(key)) return false;
  const last = items.at(-1);
  if (last?.kind === 'unit' && last.unit === '%') return true;
  if (last?.kind === 'role' && last.roles.has('kilogram')) return true;
  const capitals = text === text.toUpperCase() || text === 'TrS';
  return (
    capitals && (last === undefined || last.kind === 'unit' || last.kind === 'role' || last.kind === 'sign')
  );
}

/** A phrase of the word table in the tokens: its last token, and where the next thing begins. */
interface Phrase {
  readonly node: Node;
  readonly last: Token;
  readonly next: number;
}

function longest(tokens: readonly Token[], from: number): Phrase | undefined {
  let node: Node | undefined = root;
  let best: Phrase | undefined;
  for (let i = from, token = tokens[i]; token && node; token = tokens[++i]) {
    // "omega-3" and "Rohöle und -fette", but not "protein -5".
    const after = tokens[i + 1];
    const joins =
      token.key === '-' &&
      i > from &&
      after?.space === 'none' &&
      (token.space === 'none' || after.kind === 'word');
    if (joins) continue;
    node = node.next.get(token.key);
    if (node && (node.name || node.unit || node.roles)) best = { node, last: token, next: i + 1 };
  }
  return best;
}

/** "D 3 200": a name that took a digit set apart, before what may be the rest of a spaced number. */
function endsOnLooseDigit(last: Token, after: Token | undefined): boolean {
  return (
    last.kind === 'number' &&
    last.space !== 'none' &&
    after?.kind === 'number' &&
    after.space === 'one' &&
    /^\d{3}(?!\d)/.test(after.text)
  );
}

/** Joins "12 000" and "1 250,5"; a gap between columns never joins. */
function spacedGroup(
  first: Token,
  tokens: readonly Token[],
  from: number,
): { last: Token; next: number; plain: boolean } {
  let next = from;
  let last = first;
  if (!/^[1-9]\d{0,2}$/.test(first.text)) return { last, next, plain: false };
  for (let token = tokens[next]; token && continuesGroup(token); token = tokens[next]) {
    last = token;
    next++;
    if (token.text.length > 3) break;
  }
  return { last, next, plain: next > from };
}

function continuesGroup({ kind, space, text }: Token): boolean {
  return kind === 'number' && space === 'one' && /^\d{3}(?:[.,]\d+)?$/.test(text);
}

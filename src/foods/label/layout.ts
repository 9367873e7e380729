/**
 * Where names and figures do not stand name first on one line: a name on one line and its figures on the next, a column
 * of names before a column of figures, the figure before its name, energy by its unit alone. Such lines are put into the
 * usual order; where the order is not certain they are left as they are, and so unread.
 */
import { nutrient } from '../../nutrition/nutrients.ts';
import type { Item, Name } from './match.ts';
import { findQuantity, isEnergyUnit, isRole, isSign } from './per.ts';
import type { Role } from './words.ts';

/** A line to be read: its items, the text they are quoted from, and whether its name was taken to another line. */
export interface LaidLine {
  readonly items: readonly Item[];
  readonly text: string;
  /** Its names or figures are read with another line. */
  readonly taken: boolean;
}

type Line = { readonly items: readonly Item[]; readonly text: string };
type Kind = 'name' | 'figure' | 'heading' | 'blank' | 'other';

/** No more headings than this stand between a column of names and its column of figures. */
const MOST_HEADINGS = 3;
const BESIDE_NAME: readonly Role[] = ['break', 'low', 'high', 'filler', 'about'];
const BESIDE_FIGURE: readonly Role[] = ['low', 'high', 'to', 'about', 'between', 'and'];
const ENERGY: Name = { tags: ['ENERC_KCAL'], called: 'energy' };
/** The energy of an adult's day on EU labels, Regulation (EU) 1169/2011, Annex XIII: it is no food's. */
const DAY = new Set(['8400', '2000']);

export function layOut(lines: readonly Line[]): LaidLine[] {
  const laid: LaidLine[] = lines.map((line) => ({ ...line, taken: false }));
  const kinds = lines.map(kindOf);
  const chains = chainsOf(kinds).map((chain) => pairsOf(chain, kinds));
  const paired = new Set(chains.flat().flatMap(({ figures }) => figures));
  // A figure left over shows that lines are lost or out of order; then no pair is sure.
  const left = lines.some(
    ({ items }, k) => kinds[k] === 'figure' && !paired.has(k) && !items.some(isEnergyUnit),
  );
  if (!left) for (const pair of chains.flat()) putTogether(pair, lines, laid);
  let before: Line | undefined;
  for (const [k, line] of laid.entries()) {
    const { items } = line;
    if (items.length === 0) continue;
    const nameWaits = before !== undefined && kindOf(before) === 'name';
    const turned = nameWaits ? items : valueFirst(items);
    const footnote = before?.items.some((i) => isRole(i, 'daily')) || isSign(items[0], '*');
    laid[k] = { ...line, items: footnote ? turned : withEnergy(turned) };
    before = lines[k];
  }
  return laid;
}

function kindOf({ items }: Line): Kind {
  if (items.every((i) => i.kind === 'noise' || isSign(i, '|-–—*'))) return 'blank';
  const names = items.filter((i) => i.kind === 'name');
  const numbers = items.filter((i) => i.kind === 'number');
  const among = (item: Item, roles: readonly Role[]) => roles.some((role) => isRole(item, role));
  if (names.length === 1 && numbers.length === 0) {
    const plain = items.every(
      (i) =>
        i.kind === 'name' ||
        i.kind === 'noise' ||
        i.kind === 'unit' ||
        isSign(i, ':-–—,.') ||
        among(i, BESIDE_NAME),
    );
    return plain ? 'name' : 'other';
  }
  if (names.length > 0 || items.some((i) => i.kind === 'word' || i.kind === 'odd')) return 'other';
  if (findQuantity(items, 0) && !findQuantity(items, 0)?.bare) return 'heading';
  const figures = items.every(
    (i) =>
      i.kind === 'number' ||
      i.kind === 'unit' ||
      i.kind === 'noise' ||
      isSign(i, '/-–—.') ||
      among(i, BESIDE_FIGURE),
  );
  return numbers.length > 0 && figures ? 'figure' : 'other';
}

/** Runs of lines that hold names alone or figures alone, headings and blank lines between them. */
function chainsOf(kinds: readonly Kind[]): number[][] {
  const chains: number[][] = [];
  let chain: number[] = [];
  const end = () => {
    if (chain.length > 1) chains.push(chain);
    chain = [];
  };
  for (const [k, kind] of kinds.entries()) {
    if (kind === 'blank') continue;
    if (kind === 'other') end();
    else if (kind !== 'heading' || chain.length > 0) chain.push(k);
  }
  end();
  return chains;
}

interface Run {
  readonly kind: Kind;
  readonly lines: number[];
}

interface Pair {
  readonly name: number;
  readonly figures: readonly number[];
}

/** Names with their figures: one name and all figures up to the next, or as many figures as names, once or for each heading. */
function pairsOf(chain: readonly number[], kinds: readonly Kind[]): Pair[] {
  const runs: Run[] = [];
  for (const k of chain) {
    const kind = kinds[k] ?? 'other';
    const last = runs.at(-1);
    if (last?.kind === kind) last.lines.push(k);
    else runs.push({ kind, lines: [k] });
  }
  while (runs.at(-1)?.kind === 'heading') runs.pop();
  const pairs: Pair[] = [];
  let names: readonly number[] = [];
  let served = true;
  let headed = false;
  for (const run of runs) {
    if (run.kind === 'heading') {
      if (run.lines.length > MOST_HEADINGS) return [];
      headed = true;
      continue;
    }
    if (run.kind === 'name') {
      if (!served) return [];
      names = run.lines;
      served = headed = false;
      continue;
    }
    const [first] = names;
    if (first === undefined || (served && !headed)) return [];
    if (names.length === 1 && !headed) pairs.push({ name: first, figures: run.lines });
    else if (names.length !== run.lines.length) return [];
    else for (const [j, name] of names.entries()) pairs.push({ name, figures: run.lines.slice(j, j + 1) });
    served = true;
    headed = false;
  }
  return served ? pairs : [];
}

/** The figures' line with the name before them; the lines that are taken into it are left empty. */
function putTogether({ name, figures }: Pair, lines: readonly Line[], laid: LaidLine[]): void {
  const [first, ...rest] = figures;
  const from = lines[name];
  if (first === undefined || !from) return;
  let joined: Line = from;
  for (const k of figures) {
    const line = lines[k];
    if (line) joined = joinedWith(joined, line, k);
  }
  laid[first] = { ...joined, taken: false };
  for (const k of [name, ...rest]) laid[k] = { items: [], text: lines[k]?.text ?? '', taken: true };
}

function joinedWith(before: Line, line: Line, at: number): Line {
  const shift = before.text.length + 1;
  const moved = line.items.map((i) => ({ ...i, at: i.at + shift, end: i.end + shift, line: at }));
  return { items: [...before.items, ...moved], text: `${before.text} ${line.text}` };
}

interface Segment {
  readonly items: readonly Item[];
  readonly end: readonly Item[];
}

/** "12 g protein, 4 g fat" with each name before its figure; as it was where any part of the line stands otherwise. */
function valueFirst(items: readonly Item[]): readonly Item[] {
  if (!items.some((i) => i.kind === 'number')) return items;
  const segments = segmentsOf(items);
  const out: Item[] = [];
  let turned = 0;
  for (const { items: inner, end } of segments) {
    const pairs = turnedPairs(inner);
    if (pairs) turned++;
    else if (inner.length > 0 && !isPlain(inner)) return items;
    out.push(...(pairs ?? inner), ...end);
  }
  return turned > 0 ? out : items;
}

/** A segment without both name and figure, such as a heading. */
function isPlain(items: readonly Item[]): boolean {
  const [first] = items;
  if (items.some((i) => i.kind === 'name')) return false;
  const numbers = items.some((i) => i.kind === 'number');
  return !numbers || isRole(first, 'per') || isRole(first, 'serving') || items.some((i) => i.kind === 'word');
}

function segmentsOf(items: readonly Item[]): Segment[] {
  const segments: Segment[] = [];
  let inner: Item[] = [];
  for (const [k, item] of items.entries()) {
    const parts =
      isSign(item, ',;|•·.:&') ||
      isRole(item, 'break') ||
      (isRole(item, 'and') && items[k + 1]?.kind === 'number' && items[k - 1]?.kind === 'name');
    if (!parts) inner.push(item);
    else {
      segments.push({
        items: inner,
        end: isRole(item, 'and') && !isRole(item, 'break') ? [comma(item)] : [item],
      });
      inner = [];
    }
  }
  segments.push({ items: inner, end: [] });
  return segments;
}

function comma({ at, end }: Item): Item {
  return { kind: 'sign', text: ',', at, end };
}

/** The items of "12 g of protein" or "12 g protein 4 g fat" turned round; undefined where they are something else. */
function turnedPairs(items: readonly Item[]): Item[] | undefined {
  const out: Item[] = [];
  let figure: Item[] = [];
  let hasNumber = false;
  for (const item of items) {
    if (item.kind === 'name') {
      if (!hasNumber) return undefined;
      if (out.length > 0) out.push(comma(item));
      out.push(item, ...figure);
      figure = [];
      hasNumber = false;
    } else if (item.kind === 'number' || item.kind === 'unit') {
      figure.push(item);
      hasNumber ||= item.kind === 'number';
    } else if (BESIDE_FIGURE.some((role) => isRole(item, role)) || isSign(item, '-–')) figure.push(item);
    else if (item.kind !== 'noise' && !isRole(item, 'filler') && !isRole(item, 'contains')) return undefined;
  }
  return out.length > 0 && !hasNumber ? [...out, ...figure] : undefined;
}

/** A figure in kJ or kcal with no name before it is the energy. */
function withEnergy(items: readonly Item[]): readonly Item[] {
  if (items.some((i) => isRole(i, 'daily') || i.kind === 'word') || !items.some(isEnergyUnit)) return items;
  const out: Item[] = [];
  for (const { items: inner, end } of segmentsOf(items)) {
    const [first] = inner;
    const unit = inner.find((i) => i.kind === 'unit');
    const numbers = inner.filter((i) => i.kind === 'number');
    const day = numbers.length > 0 && numbers.every((i) => DAY.has(i.text.replace(/\D/g, '')));
    const starts =
      first?.kind === 'number' || isRole(first, 'about') || isRole(first, 'low') || isRole(first, 'high');
    if (first && starts && !day && isEnergyUnit(unit) && !inner.some((i) => i.kind === 'name'))
      out.push({
        kind: 'name',
        name: ENERGY,
        text: nutrient('ENERC_KCAL').name,
        at: first.at,
        end: first.at,
      });
    out.push(...inner, ...end);
  }
  return out;
}

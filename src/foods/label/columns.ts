/**
 * Headings as columns. What a run of headings says, one below or beside the other, is put together: "per 100 g" with
 * "in dry matter" and "min", "per 100 g" beside "per portion". What cannot be put together is unclear, with its words.
 */
import type { Atom, Part } from './part.ts';
import type { Basis, Bound, PrintedQuantity } from './quantity.ts';
import { headingMayChange } from './suspect.ts';

/** A column of figures: what they are per and of, and whether they are bounds. */
export interface Column {
  /** Undefined where nothing says what the figures are per, as under "Min." alone. */
  readonly quantity?: PrintedQuantity;
  readonly basis?: Basis;
  readonly bound?: Bound | 'mean';
  readonly text: string;
}

export interface Heading {
  /** Each once. */
  readonly columns: readonly Column[];
  /** As printed, with those that repeat. */
  readonly printed: readonly Column[];
  /** Columns of shares of a daily intake, of the energy, or of something unknown. */
  readonly shares: readonly string[];
  /** Weights with a basis: where rows have more figures than weights, the basis heads a column of its own. */
  readonly based?: string;
  /** Words that leave open what the amounts are of. */
  readonly unclear?: string | undefined;
}

type HeadingPart = Part & { readonly kind: 'heading' };

const MOST_COLUMNS = 6;
/** Unknown words from which on a text without a weight is prose and no heading. */
const PROSE = 4;
const DRY_BESIDE = /%|\b(?:basis|base|on|sur|sobre|op|auf|bezogen)\b/i;

/** Whether a heading says nothing that could change a figure: a title, a sentence of prose, a note on daily intakes. */
export function saysNothing({ atoms, words, text, leads }: HeadingPart): boolean {
  if (atoms.some((a) => a.kind === 'grams' || a.kind === 'serving')) return false;
  if (words.length >= PROSE) return true;
  if (atoms.some(isWeighty) || (leads && words.length > 0)) return false;
  return atoms.length === 0 && !headingMayChange(words, DRY_BESIDE.test(text));
}

/** Whether it can change what a figure means by itself; "average" and shares of a daily intake cannot. */
export function isWeighty(atom: Atom): boolean {
  return atom.kind !== 'share' && !(atom.kind === 'bound' && atom.side === 'mean');
}

/** The headings that stand together, as one. */
export function headingOf(parts: readonly HeadingPart[]): Heading {
  const atoms = parts.flatMap((p) => p.atoms);
  const shares = atoms.flatMap((a) => (a.kind === 'share' ? [a.text] : []));
  const quantities = atoms.filter(isQuantity);
  const weights = quantities.filter((q) => q.kind !== 'percent');
  const bases = quantities.filter((q) => q.kind === 'percent');
  const bounds = atoms.flatMap((a) => (a.kind === 'bound' ? [a] : []));
  // Words beside shares of a daily intake or beside "average" say nothing of the amounts.
  const strange = parts
    .filter((p) => p.words.length > 0 && (p.atoms.length === 0 || p.atoms.some(isWeighty)))
    .map((p) => p.text);
  // "% of dry matter" beside a weight may head percentages of its own.
  const percents = weights.length > 0 && bases.some((q) => q.text.includes('%'));
  const based = once(bases, (b) => b.basis ?? '');
  const printed = percents ? undefined : crossed(weights, based, bounds);
  const unclear = [...strange, ...(printed ? [] : [parts.map((p) => p.text).join(' ')])];
  return {
    columns: once(printed ?? [], keyOfColumn).slice(-MOST_COLUMNS),
    printed: printed ?? [],
    shares,
    ...(weights.length > 0 &&
      quantities.some((q) => q.basis) && { based: parts.map((p) => p.text).join(' ') }),
    ...(unclear.length > 0 && { unclear: unclear.join('; ') }),
  };
}

/** Weights, bases and bounds as columns; undefined where it is not plain which goes with which. */
function crossed(
  weights: readonly PrintedQuantity[],
  bases: readonly PrintedQuantity[],
  bounds: readonly (Atom & { kind: 'bound' })[],
): Column[] | undefined {
  let columns: Column[];
  const [basis] = bases;
  const open = weights.filter((w) => w.basis === undefined);
  if (weights.length === 0) columns = bases.map((b) => ({ quantity: b, basis: b.basis, text: b.text }));
  else if (basis === undefined) columns = weights.map(columnOf);
  else if (bases.length === 1) columns = weights.map((w) => (w.basis ? columnOf(w) : based(w, basis)));
  else if (open.length !== weights.length) return undefined;
  else if (weights.length === bases.length) columns = weights.map((w, k) => based(w, bases[k]));
  else if (new Set(weights.map((w) => w.grams)).size === 1)
    columns = bases.map((b) => based(weights[0] ?? b, b));
  else return undefined;
  const sides = bounds.filter((b) => b.side !== 'mean' || bounds.length > 1);
  const [only] = sides;
  if (only === undefined) return columns;
  if (sides.length === 1) {
    return columns.length === 0
      ? [{ bound: only.side, text: only.text }]
      : columns.map((c) => ({ ...c, bound: only.side }));
  }
  if (columns.length > 1) {
    if (columns.length !== sides.length) return undefined;
    return columns.map((c, k) => ({ ...c, bound: sides[k]?.side }));
  }
  return sides.map((s) => ({ ...columns[0], bound: s.side, text: s.text }));
}

function columnOf(quantity: PrintedQuantity): Column {
  return { quantity, basis: quantity.basis, text: quantity.text };
}

function based(quantity: PrintedQuantity, basis: PrintedQuantity | undefined): Column {
  return { quantity, basis: basis?.basis, text: `${quantity.text} ${basis?.text ?? ''}`.trim() };
}

function isQuantity(atom: Atom): atom is PrintedQuantity {
  return atom.kind !== 'share' && atom.kind !== 'bound';
}

function keyOfColumn({ quantity, basis, bound }: Column): string {
  const what = quantity && (quantity.kind === 'each' ? quantity.text : quantity.grams);
  return [quantity?.kind, what, basis, bound].join('|');
}

function once<T>(list: readonly T[], key: (one: T) => string): T[] {
  const seen = new Set<string>();
  return list.filter((one) => {
    const k = key(one);
    if (seen.has(k)) return false;
    seen.add(k);
    return true;
  });
}

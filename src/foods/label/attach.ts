/**
 * Attaches every figure to what it is per: its own quantity, its unit ("%", "ppm"), or the column it stands in.
 * A line of quantities heads the lines after it; when the label has only one such line, it holds for the lines before it too.
 */

import type { Figure } from './figure.ts';
import type { Name } from './match.ts';
import type { Column, LineParts, Part } from './part.ts';
import type { Quantity } from './reading.ts';
import { ownQuantity } from './units.ts';

/** A figure with its quantity, not yet settled. */
export interface Draft {
  readonly line: number;
  readonly name: Name;
  readonly heard: string;
  readonly figure: Figure;
  readonly per: Quantity;
  /** The columns it may belong to, when the line gives one figure for several. */
  readonly columns?: readonly Quantity[];
  /** A bare percentage under a heading by weight: share of the weight, or of a daily need. */
  readonly percentUnclear?: boolean;
}

interface Attached {
  readonly drafts: readonly Draft[];
  readonly quantities: readonly Quantity[];
  /** Weights of one serving, as the label defines it. */
  readonly servings: readonly number[];
  readonly missed: readonly Missed[];
  /** Lines with amounts recognised as shares of a daily intake and left out. */
  readonly daily: ReadonlySet<number>;
}

/** What could not be read of a line, and why. */
export interface Missed {
  readonly line: number;
  readonly text: string;
  readonly why: string;
}

/** The parts of a line, and whether a daily-intake word stands in it, as in a footnote. */
export interface AttachableLine extends LineParts {
  readonly daily: boolean;
}

const NO_QUANTITY: Quantity = { kind: 'unknown', basis: 'as fed', text: '' };

export function attach(lines: readonly AttachableLine[]): Attached {
  const drafts: Draft[] = [];
  const quantities: Quantity[] = [];
  const servings: number[] = [];
  const dailyLabel = lines.some((line) => line.daily);
  const missed: Missed[] = [];
  const daily = new Set<number>();
  const headings = lines.flatMap((line) => line.parts.filter((p) => headsAmounts(p)));
  let columns: readonly Column[] = [];
  let weights: readonly Quantity[] = [];
  let basis: Quantity['basis'] | undefined;
  const head = (list: readonly Column[]) => {
    columns = list;
    const section = columns.filter((c): c is Quantity => c !== 'daily');
    weights = section.filter((c) => c.kind !== 'percent');
    basis = (section.length === 1 ? section : weights)[0]?.basis;
  };
  const [heading, ...otherHeadings] = headings;
  head(heading && otherHeadings.length === 0 ? together(columnsOf(heading)) : []);
  let fresh = false;

  lines.forEach((line, index) => {
    for (const part of line.parts) {
      if (part.kind === 'missed') missed.push({ line: index, text: part.text, why: part.why });
      else if (part.kind === 'serving size') {
        quantities.push(part.quantity);
        if (part.quantity.grams !== undefined) servings.push(part.quantity.grams);
      } else if (part.kind === 'quantity') {
        for (const c of part.columns) if (c !== 'daily') quantities.push(c);
        if (!headsAmounts(part)) continue;
        // Headings one below the other, as a copied table gives them, are columns side by side.
        head(fresh && headings.length > 1 ? together([...columns, ...part.columns]) : together(part.columns));
        fresh = true;
      } else {
        fresh = false;
        attachPart(part, index);
      }
    }
  });
  return { drafts, quantities, servings, missed, daily };

  function attachPart(part: Part & { kind: 'amount' }, line: number): void {
    const { name, heard } = part;
    const rest: Figure[] = [];
    const put = (figure: Figure, per: Quantity, more: Partial<Draft> = {}) => {
      const basis = (figure.dryMatter ?? per.basis === 'dry matter') ? 'dry matter' : 'as fed';
      drafts.push({ line, name, heard, figure, per: per.basis === basis ? per : { ...per, basis }, ...more });
    };
    const weighed = part.figures.some((f) => f.unit !== '%' && !f.daily);
    for (const figure of part.figures) {
      const own = ownQuantity(figure.unit);
      if (figure.daily || (figure.unit === '%' && dailyLabel && weighed)) daily.add(line);
      else if (figure.per) put(figure, figure.per);
      else if (own !== undefined) {
        const unclear =
          figure.unit === '%' && (dailyLabel || weights.some((c) => c.grams !== 100 && c.grams !== 1000));
        const text = figure.unit === '%' ? '%' : `per ${own} g`;
        put(
          figure,
          { kind: figure.unit === '%' ? 'percent' : 'grams', grams: own, basis: basis ?? 'as fed', text },
          unclear ? { percentUnclear: true } : {},
        );
      } else rest.push(figure);
    }
    for (const unit of new Set(rest.map(dimension))) {
      const alike = joined(rest.filter((f) => dimension(f) === unit));
      const many = alike.length;
      if (weights.length > 1 && many === weights.length) {
        for (const [k, per] of weights.entries()) for (const f of alike[k] ?? []) put(f, per);
      } else if (many === 1) {
        for (const f of alike.flat())
          if (weights.length > 1) put(f, NO_QUANTITY, { columns: weights });
          else put(f, weights[0] ?? { ...NO_QUANTITY, basis: basis ?? 'as fed' });
      } else {
        const why = `${many} figures, but ${weights.length === 0 ? 'no line says' : `${weights.length} ${weights.length === 1 ? 'column' : 'columns'} to say`} what each is per; give one figure for each`;
        missed.push({ line, text: heard, why });
      }
    }
  }
}

/** A minimum and a maximum side by side are one cell. */
function joined(figures: readonly Figure[]): Figure[][] {
  const cells: Figure[][] = [];
  for (const figure of figures) {
    const before = cells.at(-1);
    const first = before?.[0];
    const pairs = before?.length === 1 && first && !first.value && !figure.value;
    if (pairs && !first.high !== !figure.high && !first.low !== !figure.low) before.push(figure);
    else cells.push([figure]);
  }
  return cells;
}

function dimension(figure: Figure): string {
  if (figure.unit === 'kJ' || figure.unit === 'MJ' || figure.unit === 'kcal' || figure.unit === 'IU')
    return figure.unit;
  return 'weight';
}

function headsAmounts(part: Part): boolean {
  return part.kind === 'quantity' && part.columns.some((c) => c !== 'daily');
}

function columnsOf(part: Part): readonly Column[] {
  return part.kind === 'quantity' ? part.columns : [];
}

const MOST_COLUMNS = 6;

/** Columns side by side, each once; a basis alone ("in dry matter") goes with the weights beside it. */
function together(columns: readonly Column[]): readonly Column[] {
  const bases = columns.filter((c): c is Quantity => c !== 'daily' && c.kind === 'percent');
  const weights = columns.filter((c) => c === 'daily' || c.kind !== 'percent');
  const same = (a: Column, b: Column) =>
    a === b ||
    (a !== 'daily' && b !== 'daily' && a.kind === b.kind && a.grams === b.grams && a.basis === b.basis);
  if (weights.length === 0) return bases.slice(-1);
  const basis = bases.at(-1)?.basis;
  const based = weights.map((c) => (c === 'daily' || !basis ? c : { ...c, basis }));
  return based.filter((c, i) => based.findIndex((other) => same(c, other)) === i).slice(-MOST_COLUMNS);
}

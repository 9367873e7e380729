/** What one cell of a column of figures says: an amount, a bound, that nothing is known, or what cannot be read. */

import { type Item, match } from '../../../foods/label/match.ts';
import { readNumber } from '../../../foods/label/numbers.ts';
import type { PrintedUnit } from '../../../foods/label/reading.ts';
import { words } from '../../../words/words.ts';
import type { Cell } from './grid.ts';
import { perOf } from './heading.ts';
import { saysTraces, saysUnknown } from './words.ts';

/** What "1,234" and "1.234" mean in this table, as the keeper answered. */
export type Marks = Readonly<Partial<Record<',' | '.', 'decimal' | 'thousands'>>>;

export type FigureCell =
  | { readonly kind: 'unknown'; readonly note?: string }
  | {
      readonly kind: 'amount';
      readonly value?: number;
      readonly low?: number;
      readonly high?: number;
      readonly unit?: PrintedUnit;
      /** g that it is in, as the cell itself says. */
      readonly per?: number;
      /** Mark of a number that could be read in one way only. */
      readonly shows?: ',' | '.';
    }
  /** Could be read in two ways. */
  | { readonly kind: 'two-ways'; readonly mark: ',' | '.'; readonly readings: readonly [number, number] }
  | { readonly kind: 'wrong'; readonly why: string };

const CURRENCY = /[€$£¥]|\b(?:eur|euro|euros|usd|gbp|chf)\b\.?/gi;
const SCIENTIFIC = /^\d+(?:[.,]\d+)?e[+-]?\d+$/i;

/** Beyond these a figure is a slip: a ton in mg, and less than any laboratory finds. */
const MOST = 1e9;
const LEAST = 1e-9;

export function readFigureCell(cell: Cell, marks: Marks): FigureCell {
  const read = readAny(cell, marks);
  if (read.kind !== 'amount') return read;
  const odd = [read.value, read.low, read.high].some(
    (v) => v !== undefined && v !== 0 && (v > MOST || v < LEAST),
  );
  return odd ? wrong(words().ownTable.cells.tooMuch) : read;
}

function readAny(cell: Cell, marks: Marks): FigureCell {
  if (typeof cell === 'number')
    return cell < 0 ? wrong(words().ownTable.cells.negative) : { kind: 'amount', value: cell };
  const text = cell
    .replace(/^'(?=[=+\-@])/, '')
    .replace(CURRENCY, ' ')
    .trim();
  if (saysUnknown(text)) return { kind: 'unknown' };
  if (saysTraces(text)) return { kind: 'unknown', note: words().ownTable.cells.traces(text) };
  if (SCIENTIFIC.test(text)) return { kind: 'amount', value: Number(text.replace(',', '.')) };
  return readItems(
    match(text).items.filter((i) => i.kind !== 'noise' && !(i.kind === 'sign' && i.text === '.')),
    marks,
  );
}

function wrong(why: string): FigureCell {
  return { kind: 'wrong', why };
}

function readItems(items: readonly Item[], marks: Marks): FigureCell {
  let at = 0;
  let bound: 'low' | 'high' | undefined;
  for (let item = items[at]; item?.kind === 'role'; item = items[++at]) {
    if (item.roles.has('low')) bound = 'low';
    else if (item.roles.has('high')) bound = 'high';
    else if (!item.roles.has('about') && !item.roles.has('mean')) break;
  }
  const first = items[at];
  if (first?.kind !== 'number') {
    if (first?.kind === 'sign' && '-−–'.includes(first.text) && items[at + 1]?.kind === 'number')
      return wrong(words().ownTable.cells.negative);
    return wrong(first?.kind === 'odd' ? first.why : words().ownTable.cells.noFigure);
  }
  const one = numberOf(first.text, marks);
  if ('kind' in one) return one;
  at++;
  let unit = unitAt(items[at]);
  if (unit) at++;
  // "1 kg" is a weight of its own, not one that something else is in.
  const kilo = items[at];
  if (!unit && kilo?.kind === 'role' && kilo.roles.has('kilogram') && items.length === at + 1)
    return { kind: 'amount', value: one.value * 1000, unit: 'g', ...(one.shows && { shows: one.shows }) };
  let two: Settled | undefined;
  const joint = items[at];
  const upper = items[at + 1];
  const joins =
    (joint?.kind === 'sign' && '-–—−'.includes(joint.text)) ||
    (joint?.kind === 'role' && joint.roles.has('to'));
  if (joins && upper?.kind === 'number') {
    const read = numberOf(upper.text, marks);
    if ('kind' in read) return read;
    if (read.value < one.value) return wrong(words().ownTable.cells.falling);
    two = read;
    at += 2;
    unit = unitAt(items[at]) ?? unit;
    if (unitAt(items[at])) at++;
  }
  const rest = items.slice(at);
  const per = perOf(rest);
  if (rest.length > 0 && (per === undefined || rest.length > 4)) {
    // "min" may stand after the figure too.
    const [only, ...more] = rest;
    const after =
      only?.kind === 'role' && (only.roles.has('low') ? 'low' : only.roles.has('high') ? 'high' : undefined);
    if (!after || more.length > 0 || bound)
      return wrong(words().ownTable.cells.strange(rest.map((i) => i.text).join(' ')));
    bound = after;
  }
  const shows = one.shows ?? two?.shows;
  const said = {
    kind: 'amount' as const,
    ...(unit && { unit }),
    ...(per !== undefined && { per }),
    ...(shows && { shows }),
  };
  if (two) return { ...said, low: one.value, high: two.value };
  return bound ? { ...said, [bound]: one.value } : { ...said, value: one.value };
}

interface Settled {
  readonly value: number;
  readonly shows?: ',' | '.';
}

function numberOf(text: string, marks: Marks): Settled | Extract<FigureCell, { kind: 'wrong' | 'two-ways' }> {
  const read = readNumber(text);
  if (typeof read === 'string') return { kind: 'wrong', why: read };
  const [decimal, thousands] = read.readings;
  if (thousands === undefined)
    return { value: decimal, ...(read.decimalMark && { shows: read.decimalMark }) };
  const mark = text.includes(',') ? ',' : '.';
  const meant = marks[mark];
  if (meant === undefined) return { kind: 'two-ways', mark, readings: [decimal, thousands] };
  return { value: meant === 'decimal' ? decimal : thousands };
}

function unitAt(item: Item | undefined): PrintedUnit | undefined {
  return item?.kind === 'unit' ? item.unit : undefined;
}

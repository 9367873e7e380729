/** Pasted or CSV text to a grid: which character parts the columns is found, and asked where two would do. */

import Papa from 'papaparse';
import { words } from '../../../words/words.ts';
import { type Grid, isBlank, plainText, type Row } from './grid.ts';

export type Delimiter = '\t' | ';' | ',' | '|' | 'spaces';

export interface SplitText {
  readonly grid: Grid;
  readonly delimiter: Delimiter;
  /** Others that part the text as evenly: the keeper says which. Empty where there is no doubt. */
  readonly rivals: readonly Delimiter[];
}

/** Each in words, in the order in which they are offered. */
export function delimiterWords(): readonly (readonly [Delimiter, string])[] {
  const t = words().ownTable.source.delimiters;
  return [
    ['\t', t.tabs],
    [';', t.semicolons],
    [',', t.commas],
    ['|', t.bars],
    ['spaces', t.spaces],
  ];
}

/** In the order in which they are believed. */
const CANDIDATES: readonly Delimiter[] = ['\t', ';', ',', '|', 'spaces'];
/** A text is parted evenly when this part of its rows have the same number of columns (common practice, no source). */
const EVEN = 0.8;

/** @param chosen the keeper's answer, where they were asked */
export function splitText(text: string, chosen?: Delimiter): SplitText {
  const plain = text.replace(/^\ufeff/, '').replace(/^sep=(.)\r?\n/i, '');
  if (chosen) return { grid: gridOf(plain, chosen), delimiter: chosen, rivals: [] };
  const even = CANDIDATES.filter((d) => d !== 'spaces').filter((d) => isEven(gridOf(plain, d)));
  const [first] = even;
  if (!first) {
    const delimiter = isEven(gridOf(plain, 'spaces')) ? 'spaces' : mostColumns(plain);
    return { grid: gridOf(plain, delimiter), delimiter, rivals: [] };
  }
  // Between digits a comma is a decimal mark, where something else parts the columns.
  const rivals = even.filter((d) => d !== first && !(d === ',' && onlyInNumbers(plain)) && first !== '\t');
  return { grid: gridOf(plain, first), delimiter: first, rivals };
}

function gridOf(text: string, delimiter: Delimiter): Grid {
  const rows =
    delimiter === 'spaces'
      ? text.split(/\r\n|\r|\n/).map((line) => line.trim().split(/\s{2,}/))
      : Papa.parse<string[]>(text, { delimiter, skipEmptyLines: false }).data;
  return withoutFrame(rows.map((row) => row.map(plainText)));
}

/** Tables drawn with bars have an empty column at each side and a line of dashes under the heading. */
function withoutFrame(grid: Grid): Grid {
  const rule = (row: Row) =>
    row.some((c) => /^:?-{3,}:?$/.test(String(c))) && row.every((c) => /^:?-*:?$/.test(String(c)));
  return grid.filter((row) => !rule(row));
}

function isEven(grid: Grid): boolean {
  const widths = new Map<number, number>();
  const rows = grid.filter((row) => !isBlank(row));
  // Empty cells at the end are often left out, or too many: they say nothing of the width.
  for (const row of rows) widths.set(row.length, (widths.get(row.length) ?? 0) + 1);
  const wide = rows.filter((row) => row.length > 1).length;
  const [[width, count] = [0, 0]] = [...widths].sort(([, a], [, b]) => b - a);
  return rows.length > 0 && width > 1 && (count / rows.length >= EVEN || wide / rows.length >= EVEN);
}

function onlyInNumbers(text: string): boolean {
  return !/(?:^|[^\d]),|,(?:$|[^\d])/m.test(text.replace(/"[^"]*"/g, ''));
}

function mostColumns(text: string): Delimiter {
  const width = (d: Delimiter) => Math.max(0, ...gridOf(text, d).map((row) => row.length));
  return CANDIDATES.reduce((best, d) => (width(d) > width(best) ? d : best));
}

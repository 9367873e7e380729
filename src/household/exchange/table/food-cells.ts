/** The cells of a column in the rows of foods, and the sums under them. */
import { words } from '../../../words/words.ts';
import type { Asked } from './asked.ts';
import { type FigureCell, type Marks, readFigureCell } from './figure-cell.ts';
import { type Cell, shown } from './grid.ts';
import { named, type ReadColumn } from './read-columns.ts';
import type { KindOfRow } from './row-kinds.ts';

/** The cells of a column in the rows of foods; what cannot be read is asked, one by one. */
export function foodCells(
  foods: readonly KindOfRow[],
  c: ReadColumn,
  at: (row: number, c: ReadColumn) => Cell,
  marks: Marks,
  asked: Asked,
): ReadonlyMap<number, FigureCell> {
  const t = words().ownTable;
  return new Map(
    foods.map(({ row, name }) => {
      const cell = at(row, c);
      const read = readFigureCell(cell, marks);
      const mustBeOne =
        (c.role === 'share' || c.role === 'grams' || c.role === 'price') &&
        read.kind === 'amount' &&
        read.value === undefined;
      if (read.kind !== 'wrong' && !mustBeOne) return [row, read];
      const why = read.kind === 'wrong' ? read.why : t.cells.needOne;
      const answer = asked.ask({
        id: `cell ${row} ${c.index}`,
        row,
        column: c.index,
        message: t.ask.cell(shown(name), named(c.heading, c.index), shown(cell), why),
        options: [{ answer: 'unknown', label: t.ask.notKnown }],
        free: 'figure',
      });
      const given = answer === undefined || answer === 'unknown' ? undefined : Number(answer);
      return [
        row,
        given === undefined ? { kind: 'unknown' as const } : { kind: 'amount' as const, value: given },
      ];
    }),
  );
}

export function valueIn(cell: FigureCell): number | undefined {
  return cell.kind === 'amount' ? cell.value : undefined;
}

const LEAST_SUMMED = 3;

/** Columns of nutrients whose sum stands in the row of sums. */
export function summedColumns(
  kinds: readonly KindOfRow[],
  columns: readonly ReadColumn[],
  at: (row: number, c: ReadColumn) => Cell,
  cellsIn: (c: ReadColumn) => ReadonlyMap<number, FigureCell>,
  marks: Marks,
): ReadonlySet<number> {
  const total = kinds.find((r) => r.kind === 'total');
  if (!total) return new Set();
  const summed = columns.filter((c) => {
    if (c.role === 'share' || c.role === 'grams' || c.role === 'price') return false;
    const printed = valueIn(readFigureCell(at(total.row, c), marks));
    const values = [...cellsIn(c).values()].flatMap((cell) => valueIn(cell) ?? []);
    if (printed === undefined || printed <= 0 || values.length < LEAST_SUMMED) return false;
    const sum = values.reduce((a, b) => a + b, 0);
    return Math.abs(sum - printed) <= printed / 100;
  });
  return new Set(summed.map((c) => c.index));
}

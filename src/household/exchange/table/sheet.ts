/** The cells of a spreadsheet's sheet as a grid. What a cell holds is read elsewhere (`read-excel-file`). */
import { type Cell, type Grid, plainText } from './grid.ts';

/** @param rows cells as `read-excel-file` gives them: text, number, boolean, day or nothing */
export function gridOfSheet(rows: readonly (readonly unknown[])[]): Grid {
  return rows.map((row) => row.map(cellOf));
}

function cellOf(value: unknown): Cell {
  if (typeof value === 'number') return Number.isFinite(value) ? value : '';
  if (typeof value === 'string') return plainText(value);
  if (value instanceof Date) return Number.isNaN(value.getTime()) ? '' : value.toISOString().slice(0, 10);
  return value === null || value === undefined ? '' : String(value);
}

/** A table as rows of cells, wherever it came from: pasted text, a CSV file, a sheet of a spreadsheet program. */

/** Text as printed, without space around it and empty where there is nothing; or a number as a spreadsheet holds it. */
export type Cell = string | number;
export type Row = readonly Cell[];
export type Grid = readonly Row[];

/** The cell of a row, empty beyond its end. */
export function cellAt(row: Row | undefined, column: number): Cell {
  return row?.[column] ?? '';
}

/** The text of a cell without space around or doubled inside it. */
export function plainText(text: string): string {
  return text.replace(/[\s\u00a0\u202f\u2009\ufeff]+/gu, ' ').trim();
}

export function isBlank(row: Row | undefined): boolean {
  return row === undefined || row.every((cell) => cell === '');
}

/** A cell as it is shown to the keeper. */
export function shown(cell: Cell): string {
  const text = String(cell);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

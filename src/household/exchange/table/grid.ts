/** A table as rows of cells, wherever it came from: pasted text, a CSV file, a sheet of a spreadsheet program. */

/** Text as printed, without space around it and empty where there is nothing; or a number as a spreadsheet holds it. */
export type Cell = string | number;
export type Row = readonly Cell[];
export type Grid = readonly Row[];

/** The cell of a row, empty beyond its end. */
export function cellAt(row: Row | undefined, column: number): Cell {
  return row?.[column] ?? '';
}

/** Control characters, halves of characters, and signs that turn the direction of all that follows. */
const UNSHOWN = /[\p{Cc}\p{Surrogate}\u202a-\u202e\u2066-\u2069]+/gu;

/** The text of a cell without space around or doubled inside it, and without what no screen shows. */
export function plainText(text: string): string {
  return text
    .replace(UNSHOWN, ' ')
    .replace(/[\s\u00a0\u202f\u2009\ufeff]+/gu, ' ')
    .trim();
}

export function isBlank(row: Row | undefined): boolean {
  return row === undefined || row.every((cell) => cell === '');
}

/** A cell as it is shown to the keeper. */
export function shown(cell: Cell): string {
  const text = String(cell);
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

/** The beginning of a text, no character cut in half. */
export function cut(text: string, most: number): string {
  return text
    .slice(0, most)
    .replace(/\p{Surrogate}$/u, '')
    .trim();
}

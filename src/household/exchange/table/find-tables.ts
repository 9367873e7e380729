/** Where the tables of a grid stand: a line of headings, what belongs to it above and below, and its rows. */
import { type Cell, cellAt, type Grid, isBlank, type Row } from './grid.ts';
import { isMeasureOnly, readHeading } from './heading.ts';

export interface FoundTable {
  /** Rows of the grid, first and one beyond the last. */
  readonly from: number;
  readonly to: number;
  /** Columns of the grid, first and one beyond the last. */
  readonly left: number;
  readonly right: number;
  /** Heading of each column from `left` on, with what stands above and below it; empty texts where there is no line of headings. */
  readonly headings: readonly string[];
  readonly hasHeadings: boolean;
  /** What stands above the table: a title, a note on what the figures are per. */
  readonly above: readonly string[];
}

/** Headings that must be understood for a line to be one of headings. */
const LEAST_KNOWN = 2;

export function findTables(grid: Grid): FoundTable[] {
  const heads = grid.flatMap((row, i) => (isHeadingLine(row) ? [i] : []));
  // Of lines of headings right below each other the last heads the columns; the same line again is a page break,
  // unless a blank row stands between.
  const starts = heads.filter((head, i) => {
    const before = heads[i - 1];
    if (heads[i + 1] === head + 1) return false;
    const again = before !== undefined && isSameLine(grid[head], grid[before]);
    return !again || grid.slice(before, head).some(isBlank);
  });
  if (starts.length === 0) return plainTable(grid);
  return starts.flatMap((head, i) =>
    sideBySide(grid, head, aboveOf(grid, starts[i + 1] ?? grid.length, head)),
  );
}

/** The first row that belongs to the next table: its title stands right above its headings, after a blank row. */
function aboveOf(grid: Grid, next: number, head: number): number {
  if (next >= grid.length) return grid.length;
  let from = next;
  while (from - 1 > head && !isBlank(grid[from - 1])) from--;
  return from - 1 > head ? from : next;
}

/** Whether a row is the line of headings again, as on every printed page. */
function isSameLine(a: Row | undefined, b: Row | undefined): boolean {
  return !isBlank(a) && JSON.stringify(a) === JSON.stringify(b);
}

/** Whether a row names at least two things that columns hold, and holds no figures. */
export function isHeadingLine(row: Row): boolean {
  const texts = row.filter((cell) => cell !== '');
  if (texts.length < LEAST_KNOWN || texts.some((cell) => typeof cell === 'number' || isFigure(cell)))
    return false;
  if (texts.every((cell) => isMeasureOnly(String(cell)))) return false;
  const known = texts.filter((cell) => readHeading(String(cell)).roles.length > 0);
  return known.length >= LEAST_KNOWN && known.length * 3 >= texts.length;
}

function isFigure(cell: Cell): boolean {
  return /^[<>~≤≥]?\s*\d[\d.,\s]*(?:%|\p{L}{1,4})?$/u.test(String(cell));
}

/** Without a line of headings all that is no blank row at either end is one table. */
function plainTable(grid: Grid): FoundTable[] {
  const from = grid.findIndex((row) => row.filter((cell) => cell !== '').length > 1);
  if (from < 0) return [];
  const width = Math.max(...grid.slice(from).map((row) => row.length));
  const above = grid.slice(0, from).flatMap(textsOf);
  if (isUnknownHeading(grid, from)) return [oneTable(grid, from, { to: grid.length, left: 0, right: width })];
  const headings = Array.from({ length: width }, () => '');
  return [{ from, to: grid.length, left: 0, right: width, headings, hasHeadings: false, above }];
}

/** A first row of words over a row of figures heads them, even where none of its words is known here. */
function isUnknownHeading(grid: Grid, at: number): boolean {
  const row = grid[at] ?? [];
  const below = grid[at + 1] ?? [];
  const isNumber = (cell: Cell) => typeof cell === 'number' || isFigure(cell);
  return (
    row.every((cell) => !isNumber(cell)) && row.some((cell, c) => cell !== '' && isNumber(cellAt(below, c)))
  );
}

function textsOf(row: Row): string[] {
  return row.filter((cell) => cell !== '').map(String);
}

/** The tables under one line of headings: several where an empty column parts them and each names its foods. */
function sideBySide(grid: Grid, head: number, to: number): FoundTable[] {
  const line = grid[head] ?? [];
  const width = Math.max(...grid.slice(head, to).map((row) => row.length));
  const rows = grid.slice(head, to);
  const empty = (column: number) => rows.every((row) => cellAt(row, column) === '');
  const names = line.flatMap((cell, c) => (readHeading(String(cell)).roles[0] === 'name' ? [c] : []));
  const cuts = names.slice(1).filter((c) => empty(c - 1));
  const edges = [0, ...cuts, width];
  return edges
    .slice(0, -1)
    .map((left, i) => oneTable(grid, head, { to, left, right: edges[i + 1] ?? width }));
}

function oneTable(
  grid: Grid,
  head: number,
  { to, left, right }: { to: number; left: number; right: number },
): FoundTable {
  const over = overLine(grid, head, left, right);
  let from = head + 1;
  const lines: (readonly string[])[] = [over, texts(grid[head], left, right)];
  // Units right below.
  while (from < to && isMeasureLine(grid[from], left, right)) {
    lines.push(texts(grid[from], left, right));
    from++;
  }
  const headings = Array.from({ length: right - left }, (_, c) =>
    [...new Set(lines.map((line) => line[c] ?? '').filter(Boolean))].join(' '),
  );
  const before = over.some(Boolean) ? head - 1 : head;
  return { from, to, left, right, headings, hasHeadings: true, above: titleAbove(grid, before, left, right) };
}

function texts(row: Row | undefined, left: number, right: number): string[] {
  return Array.from({ length: right - left }, (_, c) => String(cellAt(row, left + c)));
}

function isMeasureLine(row: Row | undefined, left: number, right: number): boolean {
  const cells = texts(row, left, right).filter(Boolean);
  return cells.length > 0 && cells.every(isMeasureOnly);
}

/** Merged headings right above, each spread over the columns to its right up to the next; none where that row is a title. */
function overLine(grid: Grid, head: number, left: number, right: number): string[] {
  const row = texts(grid[head - 1], left, right);
  const line = texts(grid[head], left, right);
  const filled = row.flatMap((text, c) => (text ? [c] : []));
  const [first] = filled;
  const isOver =
    first !== undefined && (filled.length > 1 || first > 0 || line[first] === '') && !row.some(isFigure);
  if (!isOver) return row.map(() => '');
  let last = '';
  return row.map((text, c) => {
    if (text) last = text;
    // A heading that fills both rows stands over its own column alone.
    return line[c] === '' ? text : last;
  });
}

const MOST_LINES_ABOVE = 8;

function titleAbove(grid: Grid, before: number, left: number, right: number): string[] {
  const found: string[] = [];
  for (let i = before - 1; i >= 0 && before - i <= MOST_LINES_ABOVE; i--) {
    const cells = texts(grid[i], left, right).filter(Boolean);
    if (cells.length > 2) break;
    found.unshift(...cells);
  }
  return found;
}

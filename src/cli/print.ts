/** Text for people: columns that line up. */

/** Rows as lines, each column as wide as its widest cell; the columns in `right` stand to the right. */
export function columns(rows: readonly (readonly string[])[], right: readonly number[] = []): string {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, i) => {
      widths[i] = Math.max(widths[i] ?? 0, cell.length);
    });
  return rows
    .map((row) =>
      row
        .map((cell, i) => {
          const width = widths[i] ?? cell.length;
          return right.includes(i) ? cell.padStart(width) : cell.padEnd(width);
        })
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

/** A number with as many digits as its table gives reason for. */
export function figure(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** Prints to standard output, with a line end. */
export function print(text: string): void {
  process.stdout.write(`${text}\n`);
}

/** Exit code of wrong input. */
export const BAD_INPUT = 2;

/** Says what went wrong, in one line on stderr. @returns the exit code */
export function complain(error: unknown): number {
  console.error(`pouchful: ${oneLine((error as Error).message)}`);
  return BAD_INPUT;
}

/** Most characters of a complaint. */
const LONGEST_LINE = 1000;

/**
 * Text as one line of a terminal, whatever it holds: white space of any kind becomes a blank, and characters that a
 * terminal obeys or that turn the reading direction are written as their codes.
 */
export function oneLine(text: string): string {
  const line = legible(text.replace(/\s+/g, ' ').trim());
  return line.length > LONGEST_LINE ? `${line.slice(0, LONGEST_LINE - 3)}...` : line;
}

/** Text whose line ends stay, and whose other control and format characters are written as their codes: "\u{1b}". */
export function legible(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (c) =>
    c === '\n' ? c : `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`,
  );
}

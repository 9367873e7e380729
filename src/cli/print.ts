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

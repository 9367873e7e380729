/** A part's report in the terminal. */
import type { Report, Table } from './report.ts';
import { cell } from './say.ts';

export function printed({ tables, limits }: Report): string {
  const asked = limits.map((l) => `  ${l.met ? 'met    ' : 'NOT MET'} ${l.asked}: ${l.measured}`);
  return [...tables.map(tableText), asked.join('\n')].filter(Boolean).join('\n\n');
}

function tableText({ title, of, columns, rows, notes = [] }: Table): string {
  const lines = [[of, ...columns], ...rows.map(([name, ...cells]) => [name, ...cells.map(cell)])];
  const widths = lines[0]?.map((_, i) => Math.max(...lines.map((l) => l[i]?.length ?? 0))) ?? [];
  const drawn = lines.map((line) =>
    line
      .map((text, i) => (i === 0 ? text.padEnd(widths[i] ?? 0) : text.padStart(widths[i] ?? 0)))
      .join('   ')
      .trimEnd(),
  );
  return [title, ...drawn.map((l) => `  ${l}`), ...notes.map((n) => `  (${n})`)].join('\n');
}

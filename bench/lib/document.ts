/** docs/benchmarks.md, from one whole run. */
import { isQuiet, type Machine } from './machine.ts';
import type { Report, Table } from './report.ts';
import { cell } from './say.ts';

export interface Section {
  readonly name: string;
  readonly title: string;
  readonly seconds: number;
  readonly report: Report;
}

export function documentOf(machine: Machine, sections: readonly Section[]): string {
  const minutes = sections.reduce((sum, s) => sum + s.seconds, 0) / 60;
  const limits = sections.flatMap(({ report }) => report.limits);
  const missed = limits.filter((l) => !l.met);
  return `${[
    '# Benchmarks',
    `Written by \`npm run bench\`, which took ${minutes.toFixed(0)} minutes; one part alone: \`npm run bench -- formulation\` (${sections.map((s) => s.name).join(', ')}), to try it out \`--quick\`.`,
    `**Machine.** ${machine.cpu}, ${machine.cores} cores, ${machine.memoryGb} GB; ${machine.system}; Node ${machine.node}, Chromium ${machine.chromium}. ${machine.at.slice(0, 10)}, load ${machine.load.toFixed(2)} at the start: ${isQuiet(machine) ? 'quiet' : '**not quiet, so times are too long; ratios taken side by side hold**'}. Browser and server share the cores.`,
    '**Figures** are medians, in brackets the 5th and 95th percentile, over the rounds that are named. What is compared runs in turn, round by round, in one process; ratios are taken round by round, then their median.',
    '## What was asked for, what was measured',
    `Our own limits. ${missed.length === 0 ? 'All are met.' : `${missed.length} of ${limits.length} are not met.`}`,
    lines(
      ['limit', 'measured', 'met'],
      limits.map((l) => [l.asked, l.measured, l.met ? 'yes' : '**no**']),
    ),
    ...sections.flatMap(({ title, report }) => [
      `## ${title}`,
      ...report.about,
      ...report.tables.map(tableText),
    ]),
  ].join('\n\n')}\n`;
}

function tableText({ title, of, columns, rows, notes = [] }: Table): string {
  const body = lines(
    [of, ...columns],
    rows.map(([name, ...cells]) => [name, ...cells.map(cell)]),
  );
  return [`### ${title}`, body, ...(notes.length > 0 ? [notes.join(' ')] : [])].join('\n\n');
}

function lines(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.map((c) => c.replaceAll('|', '\\|')).join(' | ')} |`;
  const rule = `|${head.map((_, i) => (i === 0 ? ' --- ' : ' ---: ')).join('|')}|`;
  return [line(head), rule, ...rows.map(line)].join('\n');
}

/** Rows pasted from a spreadsheet: which of them bring their own figures, and which are names alone. */
import type { TableAnswers, TableQuestion } from '../../household/exchange/table/asked.ts';
import { findTables } from '../../household/exchange/table/find-tables.ts';
import type { Grid } from '../../household/exchange/table/grid.ts';
import { type ReadTable, type ReadTableRow, readTable } from '../../household/exchange/table/read-table.ts';
import { ROW_ANSWERS } from '../../household/exchange/table/row-fate.ts';
import { splitText } from '../../household/exchange/table/split-text.ts';
import type { TypedFood } from './typed-lines.ts';

export interface PastedTable {
  /** Still to be answered before anything is taken. */
  readonly questions: readonly TableQuestion[];
  /** With figures of their own, in the order of the table's own foods. */
  readonly own: readonly ReadTableRow[];
  /** Names that are looked up in the tables. */
  readonly named: readonly TypedFood[];
  /** Rows that cannot come in as they stand, and why. */
  readonly wrong: readonly { readonly name: string; readonly why: string }[];
  /** The table with every row decided, once nothing is open: only those with figures of their own come in by it. */
  readonly settled: ReadTable | undefined;
}

/** A text as a table, where it has a line of headings; undefined where it is a list of lines. */
export function gridIn(text: string): Grid | undefined {
  if (text.trim().split(/\r\n|\r|\n/).length < 2) return undefined;
  const { grid } = splitText(text);
  return findTables(grid).some((t) => t.hasHeadings) ? grid : undefined;
}

/** @param ownNames names of the keeper's own foods by id */
export function readPasted(
  grid: Grid,
  answers: TableAnswers,
  ownNames: ReadonlyMap<string, string>,
): PastedTable {
  const first = readTable(grid, answers, ownNames);
  // How the columns are read is shown by what comes of them; with everything else answered it is taken as read.
  const open = first.questions.filter((q) => q.answer === undefined && q.id !== COLUMNS);
  const rows = first.rows.filter(
    (r) => r.kind === 'food' && (r.become === undefined || r.become.as === 'own'),
  );
  const own = rows.filter((r) => r.become?.as === 'own');
  const wrong = rows.flatMap(({ name, faults: [why] }) => (why === undefined ? [] : [{ name, why }]));
  const named = rows.filter((r) => r.become === undefined && r.faults.length === 0);
  const others = Object.fromEntries(
    first.rows.filter((r) => !own.includes(r)).map((r) => [`row ${r.row}`, ROW_ANSWERS.out]),
  );
  const columns = first.questions.find((q) => q.id === COLUMNS)?.options[0]?.answer;
  const settled =
    open.length === 0 && columns !== undefined
      ? readTable(grid, { ...answers, ...others, [COLUMNS]: columns }, ownNames)
      : undefined;
  return {
    questions: open,
    own,
    named: named.map(({ name, share }) => ({ name, ...(share !== undefined && share > 0 && { share }) })),
    wrong,
    settled: settled?.settled ? settled : undefined,
  };
}

const COLUMNS = 'columns';

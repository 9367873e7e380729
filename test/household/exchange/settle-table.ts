/** Reads a table and answers what is asked until nothing is open, as a keeper would who knows what the table means. */
import type { TableAnswers, TableQuestion } from '../../../src/household/exchange/table/asked.ts';
import type { Grid } from '../../../src/household/exchange/table/grid.ts';
import { type ReadTable, readTable } from '../../../src/household/exchange/table/read-table.ts';

export interface Settled {
  readonly table: ReadTable;
  /** Ids of all that was asked on the way, without the confirmation of the columns. */
  readonly asked: readonly string[];
}

/** @param known answers by id, or by the first word of the id ("unit", "fraction") */
export function settle(
  grid: Grid,
  known: TableAnswers = {},
  ownNames?: ReadonlyMap<string, string>,
): Settled {
  const asked = new Set<string>();
  // What a keeper chooses unasked stands from the start.
  let answers: TableAnswers = Object.fromEntries(
    Object.entries(known).filter(([id]) => id.startsWith('row ') || id === 'scale'),
  );
  for (let round = 0; round < 20; round++) {
    const table = readTable(grid, answers, ownNames);
    const open = table.questions.filter((q) => q.answer === undefined);
    for (const q of open) if (q.id !== 'columns') asked.add(q.id);
    const [first] = open.filter((q) => q.id !== 'columns');
    const next = first ?? open[0];
    if (!next) return { table, asked: [...asked] };
    const answer = answerTo(next, known);
    if (answer === undefined) return { table, asked: [...asked] };
    answers = { ...answers, [next.id]: answer };
  }
  throw new Error('the table asks without end');
}

function answerTo(question: TableQuestion, known: TableAnswers): string | undefined {
  if (question.id === 'columns') return question.options[0]?.answer;
  return known[question.id] ?? known[question.id.split(' ')[0] ?? ''];
}

/** Prices of a table, brought to a kilogram. */
import { words } from '../../../words/words.ts';
import type { Asked } from './asked.ts';
import type { FigureCell } from './figure-cell.ts';
import { named, type ReadColumn } from './read-columns.ts';
import { round } from './read-shares.ts';

const KILOGRAM = 1000;

/** In the keeper's money per kg, by row of the grid. */
export function pricePerKg(
  priced: { readonly column: ReadColumn; readonly cells: ReadonlyMap<number, FigureCell> } | undefined,
  asked: Asked,
): ReadonlyMap<number, number> {
  if (!priced) return new Map();
  const { column, cells } = priced;
  const per = column.heading.per ?? (/kilo/i.test(column.heading.text) ? KILOGRAM : askPer(column, asked));
  return new Map(
    [...cells].flatMap(([row, cell]) => {
      if (cell.kind !== 'amount' || cell.value === undefined) return [];
      const grams = cell.per ?? per;
      return grams === undefined ? [] : [[row, round((cell.value * KILOGRAM) / grams)] as const];
    }),
  );
}

function askPer(column: ReadColumn, asked: Asked): number | undefined {
  const t = words().ownTable.ask;
  const answer = asked.ask({
    id: 'price-per',
    column: column.index,
    message: t.priceFor(named(column.heading, column.index)),
    options: [
      { answer: '1000', label: t.kilogram },
      { answer: '100', label: t.hundred },
      { answer: 'none', label: t.otherWeights },
    ],
    free: 'grams',
  });
  return answer === undefined || answer === 'none' ? undefined : Number(answer);
}

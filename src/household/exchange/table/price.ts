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
  const answer = asked.ask({
    id: 'price per',
    column: column.index,
    message: words().table.reading.priceFor(named(column.heading, column.index)),
    options: [
      { answer: '1000', label: '1 kg' },
      { answer: '100', label: '100 g' },
      { answer: 'none', label: words().table.reading.noPrices },
    ],
    free: 'grams',
  });
  return answer === undefined || answer === 'none' ? undefined : Number(answer);
}

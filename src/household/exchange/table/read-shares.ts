/** The shares of the mix that a table gives: percent, parts of one, parts, or grams. */

import type { PrintedUnit } from '../../../foods/label/reading.ts';
import { words } from '../../../words/words.ts';
import type { Asked } from './asked.ts';
import type { FigureCell } from './figure-cell.ts';
import type { ReadColumn } from './read-columns.ts';

export interface ShareColumns {
  readonly share?: { readonly column: ReadColumn; readonly cells: ReadonlyMap<number, FigureCell> };
  readonly grams?: { readonly column: ReadColumn; readonly cells: ReadonlyMap<number, FigureCell> };
}

export interface ReadShares {
  /** Percent of the mix by row of the grid; empty where the table has none, or while it is asked. */
  readonly shares: ReadonlyMap<number, number>;
  /** g in the mix by row of the grid, where a column gives them. */
  readonly grams: ReadonlyMap<number, number>;
  /** Sum of the shares as printed, percent; absent where they follow from weights. */
  readonly sum?: number;
}

/** How far from 100 % printed shares may come by rounding (common practice, no source). */
export const NEAR_HUNDRED = 0.5;
const NONE: ReadonlyMap<number, number> = new Map();

export function readShares({ share, grams }: ShareColumns, asked: Asked): ReadShares {
  const weights = grams ? weightsOf(grams.column, grams.cells) : NONE;
  const byWeight = toParts(weights);
  if (!share) return { shares: byWeight, grams: weights };
  const values = valuesOf(share.cells);
  const meaning = meaningOf(share.column, share.cells, values, asked);
  if (meaning === undefined) return { shares: NONE, grams: weights };
  if (meaning === 'parts') return { shares: toParts(values), grams: weights };
  const printed = meaning === 'fraction' ? scaled(values, 100) : values;
  if (byWeight.size > 0 && differ(printed, byWeight)) {
    const t = words().ownTable.ask;
    const answer = asked.ask({
      id: 'share-or-grams',
      message: t.sharesOrGrams,
      options: [
        { answer: 'share', label: t.theShares },
        { answer: 'grams', label: t.theGrams },
      ],
    });
    if (answer === undefined) return { shares: NONE, grams: weights };
    if (answer === 'grams') return { shares: byWeight, grams: weights };
  }
  return { shares: printed, grams: weights, sum: sumOf(printed) };
}

const GRAMS: Readonly<Partial<Record<PrintedUnit, number>>> = { g: 1, mg: 1e-3, ug: 1e-6 };

/** g by row; a cell's own unit goes before that of the heading. */
function weightsOf(
  { heading }: ReadColumn,
  cells: ReadonlyMap<number, FigureCell>,
): ReadonlyMap<number, number> {
  const usual = heading.kilograms ? 1000 : ((heading.unit && GRAMS[heading.unit]) ?? 1);
  return new Map(
    [...cells].flatMap(([row, c]) => {
      if (c.kind !== 'amount' || c.value === undefined) return [];
      return [[row, round(c.value * ((c.unit && GRAMS[c.unit]) ?? usual))] as const];
    }),
  );
}

function valuesOf(cells: ReadonlyMap<number, FigureCell>): ReadonlyMap<number, number> {
  return new Map(
    [...cells].flatMap(([row, c]) =>
      c.kind === 'amount' && c.value !== undefined ? [[row, c.value] as const] : [],
    ),
  );
}

function meaningOf(
  column: ReadColumn,
  cells: ReadonlyMap<number, FigureCell>,
  values: ReadonlyMap<number, number>,
  asked: Asked,
): 'percent' | 'fraction' | 'parts' | undefined {
  if (values.size === 0) return 'percent';
  const sum = sumOf(values);
  const all = [...values.values()];
  const amounts = [...cells.values()].filter((c) => c.kind === 'amount');
  const marked = amounts.every((c) => c.kind === 'amount' && c.unit === '%');
  const weighed = amounts.some((c) => c.kind === 'amount' && c.unit !== undefined && c.unit !== '%');
  const asParts = all.every((v) => v <= 1) && values.size > 1;
  if (
    marked ||
    (!asParts && !weighed && (column.heading.unit === '%' || Math.abs(sum - 100) <= NEAR_HUNDRED))
  )
    return 'percent';
  const example = column.example;
  const t = words().ownTable.ask;
  const options = [
    { answer: 'percent', label: t.percent(example) },
    ...(asParts ? [{ answer: 'fraction', label: t.fraction(example, round(100 * (all[0] ?? 0))) }] : []),
    {
      answer: 'parts',
      label: t.parts(example, round((100 * (all[0] ?? 0)) / sum), round(sum)),
    },
  ];
  const message = column.heading.unit === '%' ? t.sharesSmall(round(sum)) : t.sharesUnmarked(round(sum));
  return asked.ask({ id: 'share-means', column: column.index, message, options }) as
    | 'percent'
    | 'fraction'
    | 'parts'
    | undefined;
}

function toParts(values: ReadonlyMap<number, number>): ReadonlyMap<number, number> {
  const sum = sumOf(values);
  return sum > 0 ? scaled(values, 100 / sum) : NONE;
}

export function scaled(values: ReadonlyMap<number, number>, factor: number): ReadonlyMap<number, number> {
  return new Map([...values].map(([row, v]) => [row, round(v * factor)]));
}

function differ(a: ReadonlyMap<number, number>, b: ReadonlyMap<number, number>): boolean {
  return [...new Set([...a.keys(), ...b.keys()])].some(
    (row) => Math.abs((a.get(row) ?? 0) - (b.get(row) ?? 0)) > NEAR_HUNDRED,
  );
}

export function sumOf(values: ReadonlyMap<number, number>): number {
  let sum = 0;
  for (const v of values.values()) sum += v;
  return round(sum);
}

/** Without the last digits that binary arithmetic leaves. */
export function round(value: number): number {
  return Number(value.toPrecision(10));
}

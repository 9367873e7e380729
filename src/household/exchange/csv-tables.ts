/** Tables for a spreadsheet as CSV: what is in the kitchen, the animals, and what was written down of them. See docs/export.md. */
import Papa from 'papaparse';
import { NUTRIENTS, unitWord } from '../../nutrition/nutrients.ts';
import type { Household } from '../model.ts';
import {
  animalRows,
  type Cell,
  feedingRows,
  noteRows,
  type Table,
  trialRows,
  weighingRows,
} from './csv-care.ts';

export const TABLES = [
  'foods',
  'lots',
  'batches',
  'pours',
  'mixes',
  'animals',
  'weighings',
  'feedings',
  'trials',
  'notes',
] as const;
export type TableName = (typeof TABLES)[number];

export interface CsvStyle {
  /** Decimal mark of figures. With a comma the columns are parted by semicolons, as such spreadsheets expect. */
  readonly decimal: '.' | ',';
  /** A mark before the text by which spreadsheet programs know UTF-8. */
  readonly mark: boolean;
}

/** The table as text, line ends as RFC 4180 has them. Unknown is empty, never 0. */
export function csvOf(table: TableName, household: Household, { decimal, mark }: CsvStyle): string {
  const rows = ROWS[table](household).map((row) => row.map((cell) => cellText(cell, decimal)));
  const text = Papa.unparse(rows, { delimiter: decimal === ',' ? ';' : ',', newline: '\r\n' });
  return `${mark ? '\ufeff' : ''}${text}\r\n`;
}

/**
 * Free text that begins like a formula is written with an apostrophe before it: spreadsheet programs would reckon it.
 * Numbers are written by us, so a minus before one is what it is.
 */
function cellText(cell: Cell, decimal: CsvStyle['decimal']): string {
  if (cell === undefined) return '';
  if (typeof cell === 'number') return String(cell).replace('.', decimal);
  return /^\s*[=+\-@\t\r]/.test(cell) ? `'${cell}` : cell;
}

const ROWS: Readonly<Record<TableName, (h: Household) => Table>> = {
  foods: ({ foods }) => {
    const told = NUTRIENTS.filter(({ tag }) =>
      foods.some(
        (f) => f.composition[tag] !== undefined || f.low?.[tag] !== undefined || f.high?.[tag] !== undefined,
      ),
    );
    return [
      [
        'id',
        'name',
        'kind',
        'group',
        'price per kg',
        'source',
        ...told.flatMap(({ tag, unit }) => [
          `${tag} (${unitWord(unit)}/100 g)`,
          `${tag} at least`,
          `${tag} at most`,
        ]),
      ],
      ...foods.map((f) => [
        f.id,
        f.name,
        f.kind,
        f.group,
        f.pricePerKg,
        f.source,
        ...told.flatMap(({ tag }) => [f.composition[tag], f.low?.[tag], f.high?.[tag]]),
      ]),
    ];
  },
  lots: ({ lots }) => [
    [
      'id',
      'food',
      'name',
      'grams',
      'form',
      'bought on',
      'opened on',
      'best before',
      'in the freezer',
      'seller',
      'price',
      'moisture (%)',
      'barred',
      'barred on',
    ],
    ...lots.map((l) => [
      l.id,
      l.food,
      l.name,
      l.grams,
      l.form,
      l.boughtOn,
      l.openedOn,
      l.bestBefore,
      l.frozen ? 'yes' : 'no',
      l.seller,
      l.price,
      l.moisture,
      l.barred?.why,
      l.barred?.on,
    ]),
  ],
  batches: ({ batches, animals }) => [
    [
      'id',
      'name',
      'mix',
      'grams planned',
      'grams poured',
      'started at',
      'finished at',
      'made by',
      'animals',
      'foods',
      'accepted out of range',
      'given up',
      'grams left',
      'left on',
    ],
    ...batches.map((b) => [
      b.id,
      b.name,
      b.mixId,
      b.grams,
      tidy(b.pours.reduce((sum, p) => sum + p.grams, 0)),
      b.startedAt,
      b.finishedAt,
      b.madeBy,
      b.animalIds.map((id) => animals.find((a) => a.id === id)?.name ?? id).join(', '),
      new Set(b.pours.map((p) => p.food)).size,
      b.accepted?.note,
      b.givenUp?.note,
      b.left?.grams,
      b.left?.on,
    ]),
  ],
  pours: ({ batches }) => [
    ['batch', 'batch name', 'food', 'food name', 'grams asked', 'grams poured', 'at', 'lots'],
    ...batches.flatMap((b) =>
      b.pours.map((p) => [
        b.id,
        b.name,
        p.food,
        b.problem.foods.find((f) => f.id === p.food)?.name,
        p.target,
        p.grams,
        p.at,
        p.lots.map((l) => `${l.lot}: ${l.grams} g`).join('; '),
      ]),
    ),
  ],
  mixes: ({ mixes }) => [
    [
      'mix',
      'mix name',
      'food',
      'food name',
      'group',
      'reference',
      'share (%)',
      'least (%)',
      'most (%)',
      'held',
      'refused',
    ],
    ...mixes.flatMap((m) =>
      m.problem.foods.map((f) => [
        m.id,
        m.name,
        f.id,
        f.name,
        f.group,
        f.ref,
        Object.hasOwn(m.shares, f.id) ? m.shares[f.id] : undefined,
        f.min,
        f.max,
        m.held.includes(f.id) ? 'yes' : 'no',
        f.refused ? 'yes' : 'no',
      ]),
    ),
  ],
  animals: animalRows,
  weighings: weighingRows,
  feedings: feedingRows,
  trials: trialRows,
  notes: noteRows,
};

/** Without the last digits that binary sums leave. */
function tidy(grams: number): number {
  return Number(grams.toPrecision(12));
}

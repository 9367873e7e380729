/**
 * Reads a keeper's own table of foods. Nothing is guessed in silence: what is in doubt becomes a question, and the
 * reading of the columns as a whole is confirmed before anything comes of it. Pure; read again after each answer.
 */

import type { Figures, FoodGroup } from '../../../foods/food.ts';
import { keyOf } from '../../../foods/label/tokens.ts';
import { words } from '../../../words/words.ts';
import { Asked, type TableAnswers, type TableQuestion } from './asked.ts';
import { type FigureCell, readFigureCell } from './figure-cell.ts';
import { type FoundTable, findTables } from './find-tables.ts';
import { foodCells, summedColumns, valueIn } from './food-cells.ts';
import { cellAt, type Grid, shown } from './grid.ts';
import { askMeasures, type Figured, isNutrient, type Measures } from './measures.ts';
import { pricePerKg } from './price.ts';
import { askMarks, cellsOf, holdsFigures, type ReadColumn, readColumns } from './read-columns.ts';
import { NEAR_HUNDRED, readShares, scaled, sumOf } from './read-shares.ts';
import { type Become, becomeOf, faultsOf, faultsOfRow } from './row-fate.ts';
import { type RowCell, rowFigures } from './row-figures.ts';
import { readGroups } from './row-groups.ts';
import { askSameNames, askSums, type KindOfRow, kindsOfRows } from './row-kinds.ts';

export interface ReadTableRow {
  /** Row of the grid, and the key of its answer: `row N`. */
  readonly row: number;
  readonly name: string;
  readonly kind: KindOfRow['kind'];
  readonly figures: Figures;
  readonly group?: FoodGroup;
  readonly source?: string;
  readonly pricePerKg?: number;
  /** Percent of the mix. */
  readonly share?: number;
  readonly notes: readonly string[];
  /** Why its figures cannot come in as they stand. */
  readonly faults: readonly string[];
  /** Absent until the keeper says. */
  readonly become?: Become;
}

export interface ReadTable {
  readonly columns: readonly ReadColumn[];
  readonly rows: readonly ReadTableRow[];
  readonly questions: readonly TableQuestion[];
  /** Sum of the shares as printed, percent, where it is not 100. */
  readonly offHundred?: number;
  /** Whether the keeper pressed to bring the shares to 100. */
  readonly scaled: boolean;
  /** Why there is nothing to bring in. */
  readonly lacking?: string;
  /** Nothing is open: all questions are answered and every row is decided. */
  readonly settled: boolean;
}

/** @param ownNames names of the keeper's own foods by id */
export function readTable(
  grid: Grid,
  answers: TableAnswers,
  ownNames: ReadonlyMap<string, string> = new Map(),
): ReadTable {
  const asked = new Asked(answers);
  const table = chosenTable(findTables(grid), asked);
  if (!table) return nothing(asked, words().ownTable.rowsTold.noTable);
  const columns = readColumns(grid, table, asked);
  const marks = askMarks(columns, (c) => cellsOf(grid, table, c.index), asked);
  const nameColumn = columns.find((c) => c.role === 'name')?.index;
  const at = (row: number, c: ReadColumn) => cellAt(grid[row], table.left + c.index);
  const all = kindsOfRows(grid, table, nameColumn);
  const weighed = columns.find((c) => c.role === 'grams') ?? columns.find((c) => c.role === 'share');
  const kinds = askSums(
    all,
    (row) => (weighed ? valueIn(readFigureCell(at(row, weighed), marks)) : undefined),
    asked,
  );
  const foods = kinds.filter((r) => r.kind === 'food');
  const figureColumns = columns.filter(holdsFigures);
  const figures = new Map(figureColumns.map((c) => [c.index, foodCells(foods, c, at, marks, asked)]));
  const cellsIn = (c: ReadColumn) => figures.get(c.index) ?? new Map<number, FigureCell>();
  const column = (role: string) => {
    const found = figureColumns.find((c) => c.role === role);
    return found && { column: found, cells: cellsIn(found) };
  };
  const shareColumn = column('share');
  const gramsColumn = column('grams');
  const { shares, grams, sum } = readShares(
    { ...(shareColumn && { share: shareColumn }), ...(gramsColumn && { grams: gramsColumn }) },
    asked,
  );
  const figured = figureColumns.map((c): Figured => ({ column: c, cells: [...cellsIn(c).values()] }));
  const measures = askMeasures(
    {
      above: table.above,
      figured,
      hasShares: shareColumn !== undefined,
      hasGrams: gramsColumn !== undefined,
      hasMoisture: figureColumns.some(
        (c) =>
          (c.role === 'WATER' || c.role === 'dry matter') &&
          [...cellsIn(c).values()].every((cell) => valueIn(cell) !== undefined),
      ),
      summed: summedColumns(kinds, figureColumns, at, cellsIn, marks),
    },
    asked,
  );
  const prices = pricePerKg(column('price'), asked);
  const groups = readGroups(foods, columns, at, asked);
  const same = askSameNames(kinds, asked);
  confirmColumns(columns, measures, asked);
  const off = sum !== undefined && Math.abs(sum - 100) > NEAR_HUNDRED ? sum : undefined;
  const isScaled = off !== undefined && asked.chosen('scale') === 'yes';
  const told = isScaled && off > 0 ? scaled(shares, 100 / off) : shares;
  const seen = new Set<string>();
  const rows = kinds.map((r): ReadTableRow => {
    const bare = {
      row: r.row,
      name: r.name,
      kind: r.kind,
      figures: { composition: {}, sd: {} },
      notes: [],
      faults: [],
    };
    if (r.kind !== 'food') return { ...bare, become: { as: 'left-out' } };
    const key = keyOf(r.name);
    const repeated = seen.has(key);
    seen.add(key);
    const meaning = same.get(key);
    if (repeated && (meaning === 'first' || meaning === 'add'))
      return {
        ...bare,
        ...shareOf(meaning === 'add' ? told.get(r.row) : undefined),
        become: { as: 'left-out' },
        notes: [
          meaning === 'add' ? words().ownTable.rowsTold.shareAdded : words().ownTable.rowsTold.firstCounts,
        ],
      };
    const cells = figureColumns.flatMap((c): RowCell[] => {
      const cell = cellsIn(c).get(r.row);
      return cell ? [{ column: c, cell }] : [];
    });
    const own = rowFigures(cells, measures, { grams: grams.get(r.row), share: shares.get(r.row) });
    const share = together(told, r, meaning, foods);
    const ofRow = faultsOfRow(share, prices.get(r.row));
    const faults = [...ofRow, ...own.faults, ...faultsOf(own.figures)];
    const notes = [
      ...own.notes,
      ...cells.flatMap(({ cell }) => (cell.kind === 'unknown' && cell.note ? [cell.note] : [])),
    ];
    const group = groups.get(r.row) ?? r.section;
    const source = columns.find((c) => c.role === 'source');
    const price = prices.get(r.row);
    const become = becomeOf(r, own.figures, faults, asked, ownNames, ofRow.length > 0);
    return {
      ...bare,
      figures: own.figures,
      notes,
      faults,
      ...(group && { group }),
      ...(source && at(r.row, source) !== '' && { source: String(at(r.row, source)) }),
      ...(price !== undefined && { pricePerKg: price }),
      ...shareOf(share),
      ...(become && { become }),
    };
  });
  const lacking =
    nameColumn === undefined
      ? words().ownTable.rowsTold.noNames
      : foods.length === 0
        ? words().ownTable.rowsTold.noFoods
        : undefined;
  const open =
    asked.questions.some((q) => q.answer === undefined) || rows.some((r) => r.become === undefined);
  return {
    columns: columns.map((c) => withMeasures(c, measures)),
    rows,
    questions: asked.questions,
    ...(off !== undefined && { offHundred: off }),
    scaled: isScaled,
    ...(lacking && { lacking }),
    settled: !open && lacking === undefined,
  };
}

/** The column with what its amounts are per and part of, as far as that is known. */
function withMeasures(column: ReadColumn, measures: Measures): ReadColumn {
  if (!isNutrient(column)) return column;
  const [per, basis] = [measures.per(column), measures.basis(column)];
  return { ...column, ...(per !== undefined && { per }), ...(basis && { basis }) };
}

function nothing(asked: Asked, lacking: string): ReadTable {
  return { columns: [], rows: [], questions: asked.questions, scaled: false, lacking, settled: false };
}

function chosenTable(tables: readonly FoundTable[], asked: Asked): FoundTable | undefined {
  if (tables.length < 2) return tables[0];
  const t = words().ownTable.ask;
  const answer = asked.ask({
    id: 'table',
    message: t.tables(tables.length),
    options: tables.map((one, i) => ({
      answer: String(i),
      label: `${one.above.at(-1) ?? t.nthTable(i + 1)}: ${one.headings.filter(Boolean).slice(0, 4).map(shown).join(', ')}`,
    })),
  });
  return tables[answer === undefined ? 0 : Number(answer)];
}

function shareOf(share: number | undefined): { share?: number } {
  return share === undefined ? {} : { share };
}

/** The share of a row, with those of the rows of the same name where they are one food. */
function together(
  shares: ReadonlyMap<number, number>,
  r: KindOfRow,
  meaning: string | undefined,
  foods: readonly KindOfRow[],
) {
  if (meaning !== 'add') return shares.get(r.row);
  const all = foods.filter((f) => keyOf(f.name) === keyOf(r.name) && shares.has(f.row));
  return all.length === 0 ? undefined : sumOf(new Map(all.map((f) => [f.row, shares.get(f.row) ?? 0])));
}

/** The reading of the columns as a whole: any change of it is confirmed anew. */
function confirmColumns(
  columns: readonly ReadColumn[],
  measures: ReturnType<typeof askMeasures>,
  asked: Asked,
): void {
  const reading = columns.map((c) => [
    c.index,
    c.role,
    c.unit,
    holdsFigures(c) ? measures.per(c) : undefined,
    measures.basis(c),
  ]);
  asked.ask({
    id: 'columns',
    message: words().ownTable.ask.rightly,
    options: [{ answer: JSON.stringify(reading), label: words().ownTable.ask.yesRightly }],
  });
}

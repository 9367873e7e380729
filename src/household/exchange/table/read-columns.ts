/** What each column of a table holds, read from its heading and its cells; what is in doubt is asked. */

import type { PrintedUnit } from '../../../foods/label/reading.ts';
import { unitFits } from '../../../foods/label/units.ts';
import { isTag, NUTRIENTS, nutrient, type Tag, unitWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import type { Asked, TableOption } from './asked.ts';
import { type FigureCell, type Marks, readFigureCell } from './figure-cell.ts';
import type { FoundTable } from './find-tables.ts';
import { type Cell, cellAt, type Grid, shown } from './grid.ts';
import { type Heading, readHeading } from './heading.ts';
import { isTotal, type Role } from './words.ts';

/** What amounts are per: some g of the food, what the row weighs in the mix, or 100 g of the mix. */
export type Per = number | 'row' | 'mix';

export interface ReadColumn {
  /** From the table's left. */
  readonly index: number;
  readonly heading: Heading;
  /** Absent while it is asked. */
  readonly role?: Role;
  readonly unit?: PrintedUnit;
  /** The first cell that says something, as printed. */
  readonly example: string;
  /** Why nothing is taken from it. */
  readonly why?: string;
  readonly per?: Per;
  readonly basis?: 'as fed' | 'dry matter';
}

/** Every role, in words, in the order in which they are offered. */
export function roleOptions(): TableOption[] {
  const { roles } = words().table;
  return [
    ...Object.entries(roles).map(([answer, label]) => ({ answer, label })),
    ...NUTRIENTS.map((n) => ({ answer: n.tag, label: n.name.toLowerCase() })),
  ];
}

function roleWords(role: Role): string {
  return roleOptions().find((o) => o.answer === role)?.label ?? role;
}

/** Cells of one column under the headings, sums left out. */
export function cellsOf(grid: Grid, table: FoundTable, column: number): Cell[] {
  return grid.slice(table.from, table.to).flatMap((row) => {
    const first = row.slice(table.left, table.right).find((cell) => cell !== '');
    if (first === undefined || isTotal(String(first))) return [];
    const cell = cellAt(row, table.left + column);
    return cell === '' ? [] : [cell];
  });
}

export function readColumns(grid: Grid, table: FoundTable, asked: Asked): ReadColumn[] {
  const drafts = table.headings.map((text, index) => {
    const cells = cellsOf(grid, table, index);
    return {
      index,
      heading: readHeading(text),
      cells,
      example: cells.length > 0 ? shown(cells[0] ?? '') : '',
    };
  });
  const used = drafts.filter((d) => d.cells.length > 0);
  const columns = used.map((draft): ReadColumn => {
    const { index, heading, cells, example } = draft;
    const role = roleOf(index, heading, cells, asked);
    const unit =
      role === undefined || role === 'none' ? undefined : unitOf(index, role, heading, cells, asked);
    return {
      index,
      heading,
      example,
      ...(role !== undefined && { role }),
      ...(unit && { unit }),
      ...(role === 'none' && heading.why && { why: heading.why }),
    };
  });
  return oneOfEach(columns, asked);
}

/** Of columns that hold the same, one counts: the keeper says which. */
function oneOfEach(columns: readonly ReadColumn[], asked: Asked): ReadColumn[] {
  const alike = new Map<string, ReadColumn[]>();
  for (const c of columns) {
    if (c.role === undefined || c.role === 'none') continue;
    const key = `${c.role}${c.heading.bound ? ` ${c.heading.bound}` : ''}`;
    alike.set(key, [...(alike.get(key) ?? []), c]);
  }
  const left = new Set<ReadColumn>();
  for (const [key, [first, ...others]] of alike) {
    if (!first?.role || others.length === 0) continue;
    const all = [first, ...others];
    const answer = asked.ask({
      id: `twice ${key}`,
      message: words().table.reading.whichCounts(all.length, roleWords(first.role)),
      options: all.map((c) => ({
        answer: String(c.index),
        label: words().table.reading.example(called(c.heading, c.index), c.example),
      })),
    });
    for (const c of all) if (answer !== undefined && answer !== String(c.index)) left.add(c);
  }
  return columns.map((c) =>
    left.has(c) ? { ...c, role: 'none' as const, why: words().table.reading.anotherCounts } : c,
  );
}

function roleOf(index: number, heading: Heading, cells: readonly Cell[], asked: Asked): Role | undefined {
  const id = `column ${index}`;
  const chosen = asked.chosen(id);
  const sure = heading.roles.length === 1 && fits(heading.roles[0], cells);
  const refused = heading.roles.length === 0 && heading.why !== undefined;
  if ((sure || refused) && !(chosen !== undefined && roleOptions().some((o) => o.answer === chosen)))
    return refused ? 'none' : heading.roles[0];
  const first = heading.roles.map((r) => ({ answer: r, label: roleWords(r) }));
  const others = roleOptions().filter((o) => !first.some((f) => f.answer === o.answer));
  return asked.ask({
    id,
    column: index,
    message: words().table.reading.what(named(heading, index), why(heading, sure)),
    options: [...first, ...others],
  }) as Role | undefined;
}

/** A column at the head of what is said of it. */
export function named(heading: Heading, index: number): string {
  const t = words().table.reading;
  return heading.text ? t.column(shown(heading.text)) : t.columnNo(index + 1);
}

/** A column within a sentence. */
export function called(heading: Heading, index: number): string {
  return heading.text ? shown(heading.text) : words().table.reading.plainColumn(index + 1);
}

function why(heading: Heading, sure: boolean): string {
  const t = words().table.reading;
  if (sure) return t.chosen;
  if (heading.roles.length > 1) return t.several;
  return heading.roles.length === 1 ? t.doesNotFit : t.notKnown;
}

/** Whether names stand under a name and figures under an amount. */
function fits(role: Role | undefined, cells: readonly Cell[]): boolean {
  const said = cells.map((cell) => readFigureCell(cell, {})).filter((read) => read.kind !== 'unknown');
  const figures = said.filter(looksLikeFigure).length;
  if (role === 'name' || role === 'group') return figures * 2 <= said.length;
  if (role === 'source' || role === 'none' || role === undefined) return true;
  return figures * 2 >= said.length;
}

function looksLikeFigure({ kind }: FigureCell): boolean {
  return kind === 'amount' || kind === 'two ways';
}

/** Unit of the column's figures; cells with one of their own keep theirs. Asked where it matters and nobody says it. */
function unitOf(
  index: number,
  role: Role,
  heading: Heading,
  cells: readonly Cell[],
  asked: Asked,
): PrintedUnit | undefined {
  if (heading.unit && !(isTag(role) && !unitFits(role, heading.unit))) return heading.unit;
  const without = cells.filter((cell) => {
    const read = readFigureCell(cell, { ',': 'decimal', '.': 'decimal' });
    return read.kind === 'amount' && read.unit === undefined;
  });
  if (role === 'dry matter' || role === 'share') return role === 'share' ? undefined : '%';
  if (role === 'salt' || role === 'carbohydrate without fibre') return 'g';
  if (!isTag(role)) return undefined;
  // Grams are what is meant of protein, fat and the like; it is shown, and confirmed with the column.
  if (nutrient(role).unit === 'g') return 'g';
  if (without.length === 0) return undefined;
  return asked.ask({
    id: `unit ${index}`,
    column: index,
    message: words().table.reading.whichUnit(named(heading, index)),
    options: unitsFor(role),
  }) as PrintedUnit | undefined;
}

function unitsFor(tag: Tag): TableOption[] {
  const units: readonly PrintedUnit[] = ['mg', 'ug', 'g', '%', 'kcal', 'kJ', 'MJ', 'IU', 'ppm'];
  const fitting = units.filter((u) => unitFits(tag, u));
  const t = words().table.reading;
  const said: Partial<Record<PrintedUnit, string>> = {
    ug: unitWord('ug'),
    ppm: t.ppm,
    '%': t.percentUnit,
  };
  return fitting.map((u) => ({ answer: u, label: said[u] ?? u }));
}

/** Columns whose cells are figures. */
export function holdsFigures({ role }: ReadColumn): boolean {
  return role !== undefined && role !== 'none' && role !== 'name' && role !== 'group' && role !== 'source';
}

/** What "1,234" means, asked for each mark that some figure leaves in doubt. */
export function askMarks(
  columns: readonly ReadColumn[],
  cells: (c: ReadColumn) => readonly Cell[],
  asked: Asked,
): Marks {
  const marks: { -readonly [K in keyof Marks]: Marks[K] } = {};
  const figures = columns
    .filter(holdsFigures)
    .flatMap((c) => cells(c).map((cell) => ({ cell, read: readFigureCell(cell, {}) })));
  const sure = figures.filter(({ read }) => read.kind === 'amount' && read.shows);
  for (const mark of [',', '.'] as const) {
    const doubtful = figures.find(({ read }) => read.kind === 'two ways' && read.mark === mark);
    if (doubtful?.read.kind !== 'two ways') continue;
    const [decimal, thousands] = doubtful.read.readings;
    const other = sure.find(({ read }) => read.kind === 'amount' && read.shows !== undefined);
    const t = words().table.reading;
    const hint = other ? t.elsewhere(shown(other.cell)) : '';
    const printed = shown(doubtful.cell);
    const answer = asked.ask({
      id: `mark ${mark}`,
      message: mark === ',' ? t.commaTwoWays(printed, hint) : t.pointTwoWays(printed, hint),
      options: [
        { answer: 'decimal', label: t.asDecimal(printed, decimal) },
        { answer: 'thousands', label: t.asThousands(printed, thousands) },
      ],
    });
    if (answer === 'decimal' || answer === 'thousands') marks[mark] = answer;
  }
  return marks;
}

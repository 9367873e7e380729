/** What each column of a table holds, read from its heading and its cells; what is in doubt is asked. */

import type { PrintedUnit } from '../../../foods/label/reading.ts';
import { unitFits } from '../../../foods/label/units.ts';
import {
  isTag,
  NUTRIENTS,
  nutrient,
  nutrientWord,
  type Tag,
  unitWord,
} from '../../../nutrition/nutrients.ts';
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
export function roleOptions(): readonly TableOption[] {
  const { dryMatter, netCarbohydrate, ...t } = words().ownTable.roles;
  return [
    { answer: 'none', label: t.none },
    { answer: 'name', label: t.name },
    { answer: 'share', label: t.share },
    { answer: 'grams', label: t.grams },
    { answer: 'group', label: t.group },
    { answer: 'price', label: t.price },
    { answer: 'source', label: t.source },
    { answer: 'dry matter', label: dryMatter },
    { answer: 'salt', label: t.salt },
    { answer: 'net-carbohydrate', label: netCarbohydrate },
    ...NUTRIENTS.map((n) => ({ answer: n.tag, label: nutrientWord(n.tag) })),
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
  const t = words().ownTable.ask;
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
      message: t.twice(all.length, roleWords(first.role)),
      options: all.map((c) => ({
        answer: String(c.index),
        label: t.forExample(c.heading.text || words().ownTable.columns.nth(c.index + 1), c.example),
      })),
    });
    for (const c of all) if (answer !== undefined && answer !== String(c.index)) left.add(c);
  }
  return columns.map((c) => (left.has(c) ? { ...c, role: 'none' as const, why: t.otherCounts } : c));
}

function roleOf(index: number, heading: Heading, cells: readonly Cell[], asked: Asked): Role | undefined {
  const id = `column ${index}`;
  const chosen = asked.chosen(id);
  const sure = heading.roles.length === 1 && fits(heading.roles[0], cells);
  const refused = heading.roles.length === 0 && heading.why !== undefined;
  const options = roleOptions();
  if ((sure || refused) && !(chosen !== undefined && options.some((o) => o.answer === chosen)))
    return refused ? 'none' : heading.roles[0];
  const first = heading.roles.map((r) => ({ answer: r, label: roleWords(r) }));
  const others = options.filter((o) => !first.some((f) => f.answer === o.answer));
  return asked.ask({
    id,
    column: index,
    message: holdsWords(heading, named(heading, index), sure),
    options: [...first, ...others],
  }) as Role | undefined;
}

export function named(heading: Heading, index: number): string {
  const t = words().ownTable.ask;
  return heading.text ? t.column(shown(heading.text)) : t.unheaded(index + 1);
}

function holdsWords(heading: Heading, column: string, sure: boolean): string {
  const t = words().ownTable.ask.holds;
  if (sure) return t.chosen(column);
  if (heading.roles.length > 1) return t.several(column);
  return heading.roles.length === 1 ? t.unfit(column) : t.strange(column);
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
  return kind === 'amount' || kind === 'two-ways';
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
  if (role === 'salt' || role === 'net-carbohydrate') return 'g';
  if (!isTag(role)) return undefined;
  // Grams are what is meant of protein, fat and the like; it is shown, and confirmed with the column.
  if (nutrient(role).unit === 'g') return 'g';
  if (without.length === 0) return undefined;
  return asked.ask({
    id: `unit ${index}`,
    column: index,
    message: words().ownTable.ask.unit(named(heading, index)),
    options: unitsFor(role),
  }) as PrintedUnit | undefined;
}

function unitsFor(tag: Tag): TableOption[] {
  const units: readonly PrintedUnit[] = ['mg', 'ug', 'g', '%', 'kcal', 'kJ', 'MJ', 'IU', 'ppm'];
  const fitting = units.filter((u) => unitFits(tag, u));
  const t = words().ownTable.ask;
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
    const doubtful = figures.find(({ read }) => read.kind === 'two-ways' && read.mark === mark);
    if (doubtful?.read.kind !== 'two-ways') continue;
    const [decimal, thousands] = doubtful.read.readings;
    const other = sure.find(({ read }) => read.kind === 'amount' && read.shows !== undefined);
    const elsewhere = other && shown(other.cell);
    const t = words().ownTable.ask;
    const answer = asked.ask({
      id: `mark ${mark}`,
      message:
        mark === ',' ? t.comma(shown(doubtful.cell), elsewhere) : t.point(shown(doubtful.cell), elsewhere),
      options: [
        { answer: 'decimal', label: t.decimal(shown(doubtful.cell), decimal) },
        { answer: 'thousands', label: t.thousands(shown(doubtful.cell), thousands) },
      ],
    });
    if (answer === 'decimal' || answer === 'thousands') marks[mark] = answer;
  }
  return marks;
}

/** Which rows of a table are foods, and which are sums, headings of a section, or nothing. */

import type { FoodGroup } from '../../../foods/food.ts';
import { keyOf } from '../../../foods/label/tokens.ts';
import { words } from '../../../words/words.ts';
import type { Asked } from './asked.ts';
import { type FoundTable, isHeadingLine } from './find-tables.ts';
import { cellAt, type Grid, isBlank, plainText, shown } from './grid.ts';
import { groupOfWords, isTotal } from './words.ts';

export interface KindOfRow {
  /** Row of the grid. */
  readonly row: number;
  readonly name: string;
  readonly kind: 'food' | 'total' | 'section' | 'heading-again' | 'nameless';
  /** Group of the section it stands in. */
  readonly section?: FoodGroup;
}

/** @param nameColumn from the table's left; undefined where no column names the foods */
export function kindsOfRows(grid: Grid, table: FoundTable, nameColumn: number | undefined): KindOfRow[] {
  const found: KindOfRow[] = [];
  let section: FoodGroup | undefined;
  for (let row = table.from; row < table.to; row++) {
    const cells = (grid[row] ?? []).slice(table.left, table.right);
    if (isBlank(cells)) continue;
    const printed = nameColumn === undefined ? '' : String(cellAt(cells, nameColumn));
    const said = plainText(printed.replace(/^'(?=[=+\-@])/, ''));
    // Spaces of no width alone are no name.
    const name = /[\p{L}\p{N}\p{P}\p{S}]/u.test(said) ? said : '';
    const first = String(cells.find((cell) => cell !== ''));
    const alone = cells.filter((cell) => cell !== '').length === 1;
    const group = alone && name !== '' ? groupOfWords(name) : undefined;
    if (table.hasHeadings && isHeadingLine(cells)) found.push({ row, name, kind: 'heading-again' });
    else if (isTotal(name) || (name === '' && isTotal(first)))
      found.push({ row, name: name || first, kind: 'total' });
    else if (group) {
      section = group;
      found.push({ row, name, kind: 'section' });
    } else if (name === '') found.push({ row, name, kind: 'nameless' });
    else found.push({ row, name, kind: 'food', ...(section && { section }) });
  }
  return found;
}

/** A last row whose share is what all others come to may be a sum under a name of its own. */
export function askSums(
  rows: readonly KindOfRow[],
  valueAt: (row: number) => number | undefined,
  asked: Asked,
): KindOfRow[] {
  const foods = rows.filter((r) => r.kind === 'food');
  const last = foods.at(-1);
  const value = last && valueAt(last.row);
  if (!last || value === undefined || foods.length < 3) return [...rows];
  const others = foods.slice(0, -1).reduce((sum, r) => sum + (valueAt(r.row) ?? 0), 0);
  if (value <= 0 || Math.abs(others - value) > value / 1000) return [...rows];
  const answer = asked.ask({
    id: `sum ${last.row}`,
    row: last.row,
    message: words().ownTable.ask.isSum(shown(last.name)),
    options: [
      { answer: 'total', label: words().ownTable.ask.yesSum },
      { answer: 'food', label: words().ownTable.ask.noSum },
    ],
  });
  return rows.map((r) => (r === last && answer !== 'food' ? { ...r, kind: 'total' as const } : r));
}

/** What becomes of several rows with one name. */
export type SameName = 'add' | 'apart' | 'first';

/** Asked of each name that stands on several rows. */
export function askSameNames(
  rows: readonly KindOfRow[],
  asked: Asked,
): ReadonlyMap<string, SameName | undefined> {
  const byName = new Map<string, KindOfRow[]>();
  for (const r of rows.filter((r) => r.kind === 'food'))
    byName.set(keyOf(r.name), [...(byName.get(keyOf(r.name)) ?? []), r]);
  return new Map(
    [...byName].flatMap(([name, [first, second, ...more]]) => {
      if (!first || !second) return [];
      const answer = asked.ask({
        id: `same ${name}`,
        row: second.row,
        message: words().ownTable.ask.same(shown(first.name), 2 + more.length),
        options: [
          { answer: 'add', label: words().ownTable.ask.sameAdd },
          { answer: 'apart', label: words().ownTable.ask.sameApart },
          { answer: 'first', label: words().ownTable.ask.sameFirst },
        ],
      });
      return [[name, answer as SameName | undefined] as const];
    }),
  );
}

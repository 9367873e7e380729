/** The group of foods that a column gives each row. */

import { FOOD_GROUPS, type FoodGroup } from '../../../foods/food.ts';
import { words } from '../../../words/words.ts';
import type { Asked } from './asked.ts';
import { type Cell, shown } from './grid.ts';
import type { ReadColumn } from './read-columns.ts';
import type { KindOfRow } from './row-kinds.ts';
import { groupOfWords } from './words.ts';

/** By row of the grid. A word that is not known is asked about. */
export function readGroups(
  foods: readonly KindOfRow[],
  columns: readonly ReadColumn[],
  at: (row: number, c: ReadColumn) => Cell,
  asked: Asked,
): ReadonlyMap<number, FoodGroup> {
  const column = columns.find((c) => c.role === 'group');
  if (!column) return new Map();
  const meant = new Map<string, FoodGroup | undefined>();
  for (const { row } of foods) {
    const text = String(at(row, column));
    if (text === '' || meant.has(text)) continue;
    meant.set(text, groupOfWords(text) ?? askGroup(text, column.index, asked));
  }
  return new Map(
    foods.flatMap(({ row }) => {
      const group = meant.get(String(at(row, column)));
      return group ? [[row, group] as const] : [];
    }),
  );
}

function askGroup(text: string, column: number, asked: Asked): FoodGroup | undefined {
  const answer = asked.ask({
    id: `group ${text}`,
    column,
    message: words().ownTable.ask.group(shown(text)),
    options: [
      ...Object.entries(FOOD_GROUPS).map(([answer, label]) => ({ answer, label })),
      { answer: 'none', label: words().ownTable.ask.noGroup },
    ],
  });
  return answer === 'none' ? undefined : (answer as FoodGroup | undefined);
}

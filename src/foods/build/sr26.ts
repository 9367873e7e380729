/**
 * USDA National Nutrient Database for Standard Reference, release 26, in full (public domain), from the
 * tab-separated tables in `tables/usda-sr26`: what the abbreviated table of release 28 leaves out.
 */
import { gramsPer, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { significant } from './encode.ts';
import { TableError } from './table.ts';

/** USDA's nutrient numbers (`definitions.tsv`) and the tagnames they go by here. */
const NUTRIENT_NUMBERS: readonly (readonly [number: string, tag: Tag])[] = [
  ['255', 'WATER'],
  ['203', 'PROCNT'],
  ['204', 'FAT'],
  ['207', 'ASH'],
  ['205', 'CHOCDF'],
  ['208', 'ENERC_KCAL'],
  ['291', 'FIBTG'],
  ['269', 'SUGAR'],
  ['209', 'STARCH'],
  ['301', 'CA'],
  ['303', 'FE'],
  ['304', 'MG'],
  ['305', 'P'],
  ['306', 'K'],
  ['307', 'NA'],
  ['309', 'ZN'],
  ['312', 'CU'],
  ['315', 'MN'],
  ['317', 'SE'],
  ['401', 'VITC'],
  ['404', 'THIA'],
  ['405', 'RIBF'],
  ['406', 'NIA'],
  ['410', 'PANTAC'],
  ['415', 'VITB6A'],
  ['417', 'FOL'],
  ['431', 'FOLAC'],
  ['432', 'FOLFD'],
  ['435', 'FOLDFE'],
  ['421', 'CHOLN'],
  ['418', 'VITB12'],
  ['318', 'VITA_IU'],
  ['320', 'VITA_RAE'],
  ['319', 'RETOL'],
  ['322', 'CARTA'],
  ['321', 'CARTB'],
  ['334', 'CRYPX'],
  ['337', 'LYCPN'],
  ['338', 'LUT+ZEA'],
  ['323', 'TOCPHA'],
  ['328', 'VITD'],
  ['324', 'VITD_IU'],
  ['430', 'VITK1'],
  ['606', 'FASAT'],
  ['645', 'FAMS'],
  ['646', 'FAPU'],
  ['675', 'F18D2CN6'],
  ['851', 'F18D3N3'],
  ['601', 'CHOLE'],
  ['501', 'TRP'],
  ['502', 'THR'],
  ['503', 'ILE'],
  ['504', 'LEU'],
  ['505', 'LYS'],
  ['506', 'MET'],
  ['507', 'CYS'],
  ['508', 'PHE'],
  ['509', 'TYR'],
  ['510', 'VAL'],
  ['511', 'ARG'],
  ['512', 'HIS'],
  ['513', 'ALA'],
  ['514', 'ASP'],
  ['515', 'GLU'],
  ['516', 'GLY'],
  ['517', 'PRO'],
  ['518', 'SER'],
];

/** The tagnames a nutrient number stands for: its own, and in plants those of {@link UNDIVIDED}. */
const TAG_OF = new Map(NUTRIENT_NUMBERS);

/**
 * Fatty acids that most plant foods print only as a sum over their isomers: 18:2 (of which linoleic acid is the n-6
 * one) and 18:3 (alpha-linolenic acid is the n-3 one). Where a plant food prints both figures, linoleic acid is 0.96
 * to 1.00 of 18:2 in every group (medians 0.98 to 1.00: 42 foods of groups 2, 9, 11, 12, 16 and 20), and 18:3 less
 * its printed n-6 part is alpha-linolenic acid. So in these groups the sum stands for the acid, at most some 4 % too
 * much. In meat, milk, eggs and fried or hardened fats the sum holds far more else (down to a third is linoleic
 * acid): there it stays unknown, which rules count as none.
 */
const UNDIVIDED: readonly (readonly [number: string, tag: Tag])[] = [
  ['618', 'F18D2CN6'],
  ['619', 'F18D3N3'],
];
const N6_OF_18_3 = '685';
/** Spices and herbs, fruit, vegetables, nuts and seeds, legumes, grains. */
const PLANT_GROUPS = ['02', '09', '11', '12', '16', '20'];

export interface Sr26Amount {
  /** Per 100 g as fed, unit of the tagname. */
  readonly value: number;
  /** Standard deviation between analyses, same unit; where 3 or more were made and did not all agree. */
  readonly sd?: number;
  /** How many were made; 0 where the amount was calculated or imputed. */
  readonly analyses: number;
}

export interface Sr26Food {
  /** Five-digit NDB number, the same as in release 28. */
  readonly ndb: string;
  /** The description in full words. */
  readonly name: string;
  /** Food group, two digits. */
  readonly group: string;
  /** Nitrogen to protein; absent where the table gives none. */
  readonly proteinFactor?: number;
  readonly scientific?: string;
  /** What the part is that is not eaten. */
  readonly refuseDescription?: string;
  readonly amounts: ReadonlyMap<Tag, Sr26Amount>;
}

/**
 * Foods by NDB number.
 * @param foodsTsv text of `foods.tsv` @param nutrientsTsv text of `nutrients.tsv`
 * @throws TableError on a missing column, a food that is not in `foodsTsv`, or a figure that is no amount
 */
export function readSr26(foodsTsv: string, nutrientsTsv: string): Map<string, Sr26Food> {
  const printed = printedAmounts(nutrientsTsv);
  const foods = new Map<string, Sr26Food>();
  for (const row of rowsOf(foodsTsv)) {
    const [id, groupNumber, name, factor] = [row('food_id'), row('grp_id'), row('food'), row('n_factor')];
    const group = groupNumber.padStart(4, '0').slice(0, 2);
    const ndb = id.padStart(5, '0');
    foods.set(ndb, {
      ndb,
      name,
      group,
      // 0 stands where nothing holds nitrogen.
      ...(Number(factor) > 0 && { proteinFactor: Number(factor) }),
      ...(row('scientific') !== '' && { scientific: row('scientific') }),
      ...(row('refuse') !== '' && { refuseDescription: row('refuse') }),
      amounts: amountsOf(printed.get(id) ?? new Map(), PLANT_GROUPS.includes(group)),
    });
  }
  const stray = [...printed.keys()].find((id) => !foods.has(id.padStart(5, '0')));
  if (stray) throw new TableError(`SR26 ${stray}`, 'has amounts but no name');
  return foods;
}

/** Amounts as printed, by nutrient number. */
type Printed = Map<string, Sr26Amount>;

/** Codes of `source-types.tsv` for what was analysed, by whomever; the rest is from makers, labels or calculation. */
const ANALYSED = ['1', '6', '13'];

const READ_NUMBERS = new Set([...TAG_OF.keys(), ...UNDIVIDED.map(([number]) => number), N6_OF_18_3]);

function printedAmounts(tsv: string): Map<string, Printed> {
  const byFood = new Map<string, Printed>();
  for (const row of rowsOf(tsv)) {
    const number = row('nutr_id');
    if (!READ_NUMBERS.has(number)) continue;
    const [id, value, points, error] = [
      row('food_id'),
      Number(row('value')),
      Number(row('num_points')),
      Number(row('se')),
    ];
    if (!(value >= 0 && points >= 0 && error >= 0))
      throw new TableError(`SR26 ${id}`, `nutrient ${number} is no amount`);
    const printed = byFood.get(id) ?? new Map<string, Sr26Amount>();
    byFood.set(id, printed);
    // The standard error of a mean of n samples is their standard deviation / sqrt(n).
    const sd =
      ANALYSED.includes(row('source_type_id')) && points >= 3 && error > 0
        ? Number((error * Math.sqrt(points)).toPrecision(3))
        : undefined;
    printed.set(number, { value, analyses: points, ...(sd !== undefined && { sd }) });
  }
  return byFood;
}

function amountsOf(printed: Printed, plant: boolean): Map<Tag, Sr26Amount> {
  const found = new Map<Tag, Sr26Amount>();
  for (const [number, amount] of printed) {
    const tag = TAG_OF.get(number);
    if (tag) found.set(tag, inUnitOf(tag, amount));
  }
  if (!plant) return found;
  for (const [number, tag] of UNDIVIDED) {
    const sum = printed.get(number);
    if (!sum || found.has(tag)) continue;
    const n6 = tag === 'F18D3N3' ? printed.get(N6_OF_18_3)?.value : undefined;
    // The spread of a difference of two figures is not printed.
    const { analyses, value } = sum;
    found.set(tag, n6 ? { value: significant(Math.max(0, value - n6)), analyses } : sum);
  }
  return found;
}

/** The table prints amino acids in g; all else stands in the unit of the tagname already. */
function inUnitOf(tag: Tag, { value, sd, analyses }: Sr26Amount): Sr26Amount {
  const { group, unit } = nutrient(tag);
  const times = group === 'amino acid' ? 1 / (gramsPer(unit) ?? 1) : 1;
  return {
    value: significant(value * times),
    analyses,
    ...(sd !== undefined && { sd: significant(sd * times) }),
  };
}

/** Rows of a tab-separated table, each a look-up by the name of the column. */
function* rowsOf(tsv: string): Generator<(column: string) => string> {
  const [head = '', ...lines] = tsv.replace(/\n$/, '').split('\n');
  const columns = new Map(head.split('\t').map((name, i) => [name, i]));
  for (const line of lines) {
    const cells = line.split('\t');
    yield (column) => {
      const cell = cells[columns.get(column) ?? -1];
      if (cell === undefined)
        throw new TableError('SR26', `no "${column}" in the row "${line.slice(0, 40)}"`);
      return cell;
    };
  }
}

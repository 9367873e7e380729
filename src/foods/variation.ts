/**
 * How much a figure that prints no standard deviation is taken to vary from bag to bag.
 *
 * The figures are the root mean squares of the coefficients of variation between samples of one food in USDA SR26
 * (`data/variation.json`; what the spread means and the rules stand in `build/variation.ts`). The rule for what they do
 * not cover: the nutrient in the food group, shrunk towards the nutrient in all groups; where the group has none,
 * the nutrient in all groups; an amino acid as the protein it is a part of; where the table prints no error for the
 * nutrient, its kind (a crude fibre varies as the measured fibres do).
 *
 * A second look, at another source: the coefficients of variation by food and nutrient of table 3 in
 * archive.unu.edu/unupress/unupbooks/80633e/80633E0n.htm (the first eight foods were read). Their medians are
 * about 11 % for protein, 20 % for calcium and 33 % for iron; here, over all groups, they are 7 to 15, 21 to 30 and 20
 * to 37 % (median and what is declared). So the size is confirmed.
 */
import { gramsPer, isTag, nutrient, type Tag } from '../nutrition/nutrients.ts';
import table from './data/variation.json' with { type: 'json' };
import { variationBase, variationClass } from './variation-class.ts';

export interface Variation {
  /** Sd as a part of the amount; for WATER as a part of sqrt(water x dry matter). */
  readonly cv: number;
  /** The same for the middle one of the foods: half of them vary less. To judge whether two figures can be of one food. */
  readonly usual: number;
  readonly source: string;
  /** Foods behind it. */
  readonly n: number;
}

interface Row {
  readonly of: string;
  readonly group: string;
  readonly n: number;
  readonly median: number;
  readonly cv: number;
}

const SOURCE = 'USDA SR26';
const rowOf = new Map((table.rows as readonly Row[]).map((row) => [`${row.of} ${row.group}`, row]));

/**
 * The coefficient of variation declared for a nutrient in a food group (undefined: whatever the food).
 * Undefined only where not even the kind of nutrient is covered.
 */
export function variationOf(tag: Tag, group: string | undefined): Variation | undefined {
  const lead = nutrient(tag).group === 'amino acid' ? 'PROCNT' : tag;
  const kind = variationClass(tag);
  const row = rowOf.get(`${lead} ${group ?? 'any'}`) ?? rowOf.get(`${lead} any`) ?? rowOf.get(`${kind} any`);
  if (!row) return undefined;
  const foods = row.group === 'any' ? 'foods of all groups' : `foods of the group ${row.group}`;
  const what = isTag(row.of) ? nutrient(row.of).name.toLowerCase() : `${row.of} figures`;
  return {
    cv: row.cv,
    usual: row.median,
    n: row.n,
    source: `variation of ${what} between samples, ${row.n} ${foods}, ${SOURCE}`,
  };
}

/**
 * Standard deviation to take for an amount that prints none, in its unit: cv x value, but for WATER
 * cv x sqrt(value x (100 - value)). 0 for an amount of 0.
 * @param value per 100 g as fed, in the unit of the tagname
 */
export function spreadOf(value: number, tag: Tag, group: string | undefined): number {
  return (variationOf(tag, group)?.cv ?? 0) * variationBase(tag, value);
}

/** Where a declared amount begins (g per 100 g), and the tolerance below and above it, in g or as a part. */
type Step = readonly [from: number, below: number, above: number, as: 'g' | 'part'];

/**
 * Permitted tolerances for feed for animals that give no food, percent of the feed: Regulation (EC) No 767/2009,
 * Annex IV, Part A, as amended by Regulation (EU) 2017/2279. That Annex IV sets them and that they "include
 * technical and analytical deviations" was read; the figures themselves are from memory.
 */
const FEED: Partial<Record<Tag, readonly Step[]>> = {
  FAT: [
    [0, 2, 4, 'g'],
    [16, 0.125, 0.25, 'part'],
    [24, 3, 6, 'g'],
  ],
  PROCNT: [
    [0, 2, 2, 'g'],
    [16, 0.125, 0.125, 'part'],
    [24, 3, 3, 'g'],
  ],
  ASH: [
    [0, 2, 1, 'g'],
    [8, 0.25, 0.125, 'part'],
    [32, 8, 4, 'g'],
  ],
  FIBC: [
    [0, 1.75, 1.75, 'g'],
    [10, 0.175, 0.175, 'part'],
    [20, 3.5, 3.5, 'g'],
  ],
  SUGAR: [
    [0, 1.75, 3.5, 'g'],
    [10, 0.175, 0.35, 'part'],
    [20, 3.5, 7, 'g'],
  ],
  STARCH: [
    [0, 3.5, 3.5, 'g'],
    [10, 0.35, 0.35, 'part'],
    [20, 7, 7, 'g'],
  ],
  CA: [
    [0, 0.3, 0.6, 'g'],
    [1, 0.3, 0.6, 'part'],
    [5, 1.5, 3, 'g'],
  ],
  MG: [
    [0, 0.3, 0.6, 'g'],
    [1, 0.3, 0.6, 'part'],
    [5, 1.5, 3, 'g'],
  ],
  NA: [
    [0, 0.3, 0.6, 'g'],
    [1, 0.3, 0.6, 'part'],
    [5, 1.5, 3, 'g'],
  ],
  P: [
    [0, 0.3, 0.3, 'g'],
    [1, 0.3, 0.3, 'part'],
    [5, 1.5, 1.5, 'g'],
  ],
  K: [
    [0, 0.2, 0.4, 'g'],
    [1, 0.2, 0.4, 'part'],
    [5, 1, 2, 'g'],
  ],
};
const FEED_SOURCE =
  'tolerance of a feed label, Regulation (EC) 767/2009, Annex IV as amended by (EU) 2017/2279 (figures from memory), read as 1.96 sd';

/**
 * Tolerances for foods: European Commission, December 2012, guidance on the setting of tolerances for nutrient
 * values declared on a label. The steps in grams are from memory; +50/-35 % for vitamins and +45/-35 % for
 * minerals were read at the Finnish Food Authority, ruokavirasto.fi, "Tolerances for nutrients".
 */
const STEADY: readonly Step[] = [
  [0, 2, 2, 'g'],
  [10, 0.2, 0.2, 'part'],
  [40, 8, 8, 'g'],
];
const FATTY: readonly Step[] = [
  [0, 0.8, 0.8, 'g'],
  [4, 0.2, 0.2, 'part'],
];
const FOOD: Partial<Record<Tag, readonly Step[]>> = {
  PROCNT: STEADY,
  CHOCDF: STEADY,
  SUGAR: STEADY,
  FIBTG: STEADY,
  FAT: [
    [0, 1.5, 1.5, 'g'],
    [10, 0.2, 0.2, 'part'],
    [40, 8, 8, 'g'],
  ],
  FASAT: FATTY,
  FAMS: FATTY,
  FAPU: FATTY,
  NA: [
    [0, 0.15, 0.15, 'g'],
    [0.5, 0.2, 0.2, 'part'],
  ],
};
const FOOD_SOURCE =
  'tolerance of a food label, European Commission guidance of December 2012 (figures from memory), read as 1.96 sd';
const MICRONUTRIENT_SOURCE =
  'tolerance of a food label, European Commission guidance of December 2012, read as 1.96 sd';

/**
 * Standard deviation of an amount printed on a label, from the tolerance the law leaves its maker, read as 1.96 sd;
 * where the tolerance differs below and above, the mean of both. Undefined where no tolerance is known.
 * A maker aims inside the tolerance, so this is rather too wide than too narrow.
 * @param value per 100 g as fed, in the unit of the tagname
 * @param kind whether the label stands on a feed (pellets) or on food for people
 * @throws RangeError unless value is a finite number of at least 0
 */
export function labelSpread(
  value: number,
  tag: Tag,
  kind: 'feed' | 'food',
): { readonly sd: number; readonly source: string } | undefined {
  if (!Number.isFinite(value) || value < 0)
    throw new RangeError(`${tag} on the label must be 0 or more, not ${value}; correct the figure`);
  const grams = gramsPer(nutrient(tag).unit);
  const step = (kind === 'feed' ? FEED : FOOD)[tag]?.findLast(([from]) => value * (grams ?? 1) >= from);
  if (step && grams !== undefined) {
    const [, below, above, as] = step;
    const unit = as === 'g' ? 1 / grams : value;
    return { sd: ((below + above) / 2 / 1.96) * unit, source: kind === 'feed' ? FEED_SOURCE : FOOD_SOURCE };
  }
  if (kind === 'feed') return undefined;
  const { group } = nutrient(tag);
  if (group !== 'vitamin' && group !== 'mineral') return undefined;
  const width = group === 'vitamin' ? 0.5 + 0.35 : 0.45 + 0.35;
  return { sd: (width / 2 / 1.96) * value, source: MICRONUTRIENT_SOURCE };
}

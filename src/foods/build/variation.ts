/**
 * Makes `data/variation.json`: how much a nutrient varies between samples of one food, as a coefficient of
 * variation (sd / mean), from the standard errors that release 26 of the USDA table prints (public domain).
 *
 * What the spread means: a food's analyses are of samples bought or gathered at several places and times, some of them
 * composites of a few packs, by several laboratories. Their sd, se x sqrt(n), holds the food's own variation (variety,
 * soil, season, trade), and the laboratories' error besides. It is the spread to expect of a bag bought blindly.
 *
 * Per nutrient and food group, over the foods with both figures and 3 analyses or more:
 * - grains, seeds, nuts and legumes count where they are dry, as they go into a mix;
 * - the same figure printed for several rows (boiled with salt, boiled without) counts once;
 * - foods that hold less than a tenth of the group's median amount are left out: near nothing a coefficient
 *   of variation measures the detection limit, and such a food moves no mix;
 * - a coefficient above {@link ODD} times the group's median counts as that, and above 1 as 1, so that one odd food does
 *   not speak for a whole group; spreads that are no spread between samples are gone before (`odd-spread.ts`);
 * - `median` and `p75` are printed to look at; `rms`, the root mean square, is what is declared, because
 *   the variance of a mix adds squares: with it the mean variance over the foods is right. The median is
 *   lower and would promise too much (`variation.test.ts` shows both on foods held out);
 * - "any" is over all groups, each counting once: three of four foods with a spread are meat;
 * - `cv` is `rms` after shrinking: as though {@link PRIOR} foods of "any" stood beside the group's.
 *
 * Moisture is measured against the geometric mean of water and dry matter, sqrt(W x (100 - W)). An sd of
 * water is also the sd of dry matter, so a share of either explodes where that one is small: 0.5 g is 5 % of
 * the water in a dry seed and 5 % of the dry matter in a fresh leaf. Against the geometric mean the figure is
 * nearly the same from 5 to 95 % of water.
 *
 * Energy and carbohydrate by difference are reckoned and not measured, so the table prints no error for them. Theirs
 * follows from their parts, taken as independent: carbohydrate is 100 less water, protein, fat and ash; energy, with
 * 4 kcal/g of protein and carbohydrate and 9 of fat, is 400 + 5 x fat - 4 x (water + ash).
 *
 * Amino acids have no rows: the table prints an error for half a dozen foods only. They vary with the protein.
 */
import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Composition } from '../food.ts';
import { type VariationClass, variationBase, variationClass } from '../variation-class.ts';
import type { TableRow } from './table.ts';

/** Foods of the whole table that count beside a group's own. */
const PRIOR = 5;

/** So many times the median of a group a coefficient counts at most. */
const ODD = 4;

/** Fewest foods that say something of a nutrient. */
const FEWEST = 5;

/** Our food groups, by USDA's; group 12 holds nuts and seeds, told apart by the first word. The rest are made-up foods. */
const GROUPS: Readonly<Record<string, string>> = {
  '01': 'animal',
  '02': 'herb',
  '05': 'animal',
  '09': 'fruit',
  '10': 'animal',
  '11': 'vegetable',
  '13': 'animal',
  '15': 'animal',
  '16': 'legume',
  '17': 'animal',
  '20': 'seed',
};

/** Grains, seeds, nuts and legumes are fed dry; boiled, they vary with the water they took up besides. */
const FED_DRY = ['12', '16', '20'];
/** g of water per 100 g above which such a food is not dry (common practice, no source). */
const DAMPEST = 20;

function groupOf({ tableGroup, tableName, composition }: TableRow): string | undefined {
  if (FED_DRY.includes(tableGroup) && !((composition.WATER ?? 100) <= DAMPEST)) return undefined;
  if (tableGroup === '12') return tableName.startsWith('Seeds') ? 'seed' : 'nut';
  return GROUPS[tableGroup];
}

/** Order of the rows within a nutrient. */
const GROUP_ORDER = ['seed', 'legume', 'vegetable', 'herb', 'animal', 'nut', 'fruit'];

interface VariationRow {
  /** A tagname, or the class of nutrients that the row speaks for. */
  readonly of: Tag | VariationClass;
  readonly group: string;
  /** Foods behind `rms`. */
  readonly n: number;
  readonly median: number;
  readonly p75: number;
  readonly rms: number;
  /** What is declared: `rms` shrunk towards the nutrient's own over all groups. */
  readonly cv: number;
}

/** The coefficients of variation of one nutrient in one group, one per figure, traces left out. */
export function coefficients(rows: readonly TableRow[], tag: Tag, group: string): number[] {
  const seen = new Set<string>();
  const known = rows.flatMap((row) => {
    if (groupOf(row) !== group) return [];
    const value = row.composition[tag];
    const spread = spreadOf(row.composition, row.sd, tag);
    if (value === undefined || value <= 0 || spread === undefined || spread <= 0) return [];
    const figure = `${value} ${spread}`;
    if (seen.has(figure)) return [];
    seen.add(figure);
    return [{ value, spread }];
  });
  if (known.length === 0) return [];
  const trace =
    quantile(
      known.map((k) => k.value),
      0.5,
    ) / 10;
  const cvs = known
    .filter((k) => k.value >= trace)
    .map((k) => Math.min(1, k.spread / variationBase(tag, k.value)));
  const most = ODD * quantile(cvs, 0.5);
  return cvs.map((cv) => Math.min(most, cv));
}

/** The printed sd, or for what is reckoned the one that follows from its parts; undefined where a part has none. */
function spreadOf(composition: Composition, sd: Composition, tag: Tag): number | undefined {
  const parts = RECKONED[tag];
  if (!parts) return sd[tag];
  if ((composition[tag] ?? 0) < LEAST_RECKONED) return undefined;
  let squares = 0;
  for (const [part, times] of parts) {
    // A part that is not there does not vary.
    const spread = composition[part] === 0 ? 0 : sd[part];
    if (spread === undefined) return undefined;
    squares += (times * spread) ** 2;
  }
  return Math.sqrt(squares);
}

/** g or kcal per 100 g: of less carbohydrate (meat), the errors of the other parts are larger than the rest they leave. */
const LEAST_RECKONED = 5;

/** Sums over parts, with the weight of each. */
const RECKONED: Partial<Record<Tag, readonly (readonly [part: Tag, times: number])[]>> = {
  CHOCDF: [
    ['WATER', 1],
    ['PROCNT', 1],
    ['FAT', 1],
    ['ASH', 1],
  ],
  ENERC_KCAL: [
    ['FAT', 5],
    ['WATER', 4],
    ['ASH', 4],
  ],
};

/** Root mean square over all groups with some foods, each group counting once; undefined where there is none. */
export function overGroups(rows: readonly TableRow[], tag: Tag): number | undefined {
  const groups = GROUP_ORDER.map((group) => coefficients(rows, tag, group)).filter((c) => c.length >= FEWEST);
  return groups.length === 0 ? undefined : rms(groups.map(rms));
}

/** Root mean square shrunk towards another, as though {@link PRIOR} foods of that one stood beside. */
export function shrunk(cvs: readonly number[], towards: number): number {
  return Math.sqrt((sumOfSquares(cvs) + PRIOR * towards ** 2) / (cvs.length + PRIOR));
}

/** Every row: per nutrient all groups and then each, and last the classes of nutrients. */
function variationRows(rows: readonly TableRow[]): VariationRow[] {
  const found: VariationRow[] = [];
  const byClass = new Map<VariationClass, { squares: number; tags: number; all: number[] }>();
  for (const { tag } of NUTRIENTS) {
    if (nutrient(tag).group === 'amino acid') continue;
    const any = overGroups(rows, tag);
    if (any === undefined) continue;
    const groups = GROUP_ORDER.map((group) => ({ group, cvs: coefficients(rows, tag, group) }));
    const all = groups.flatMap(({ cvs }) => cvs);
    found.push(describe(tag, 'any', all, any));
    for (const { group, cvs } of groups)
      if (cvs.length > 0) found.push(describe(tag, group, cvs, shrunk(cvs, any)));
    const kind = variationClass(tag);
    const sum = byClass.get(kind) ?? { squares: 0, tags: 0, all: [] };
    byClass.set(kind, { squares: sum.squares + any ** 2, tags: sum.tags + 1, all: [...sum.all, ...all] });
  }
  // Each nutrient of a class counts once, however many foods know it.
  for (const [kind, { squares, tags, all }] of byClass)
    found.push(describe(kind, 'any', all, Math.sqrt(squares / tags)));
  return found;
}

/** The text of `data/variation.json`, one row a line. The same table always gives the same text. */
export function variationJson(rows: readonly TableRow[]): string {
  const about =
    'Coefficient of variation (sd / mean, as fed) by nutrient and food group, from the standard errors and numbers of ' +
    'analyses in: U.S. Department of Agriculture, Agricultural Research Service, 2013. USDA National Nutrient Database ' +
    'for Standard Reference, Release 26. WATER is against sqrt(water x dry matter). n foods; median, p75 and rms of the ' +
    'group; cv is declared. Made by npm run reference; the rules stand in build/variation.ts.';
  const lines = variationRows(rows).map((row) => `    ${JSON.stringify(row)}`);
  return `{\n  "about": ${JSON.stringify(about)},\n  "rows": [\n${lines.join(',\n')}\n  ]\n}\n`;
}

function describe(of: Tag | VariationClass, group: string, cvs: readonly number[], cv: number): VariationRow {
  const round = (x: number) => Number(x.toFixed(4));
  return {
    of,
    group,
    n: cvs.length,
    median: round(quantile(cvs, 0.5)),
    p75: round(quantile(cvs, 0.75)),
    rms: round(rms(cvs)),
    cv: round(cv),
  };
}

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v * v, 0);
}

/** Root mean square. */
export function rms(values: readonly number[]): number {
  return Math.sqrt(sumOfSquares(values) / values.length);
}

/** Quantile by linear interpolation between order statistics. @throws RangeError where there are no values */
export function quantile(values: readonly number[], p: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = p * (sorted.length - 1);
  const below = Math.floor(at);
  const low = sorted[below];
  if (low === undefined) throw new RangeError(`no quantile ${p} of ${values.length} values`);
  return low + (at - below) * ((sorted[below + 1] ?? low) - low);
}

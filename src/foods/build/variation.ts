/**
 * Makes `data/variation.json`: how much a nutrient varies between samples of one food, as a coefficient of
 * variation (sd / mean), from the standard deviations that the Indian Food Composition Tables 2017 print.
 *
 * Longvah T, Ananthan R, Bhaskarachary K, Venkaiah K. Indian Food Composition Tables. National Institute of
 * Nutrition, Hyderabad, 2017. Their sd is between composite samples of up to six regions of India (the number
 * of regions: from memory), so it holds the food's own variation (variety, soil, season, trade) and not only
 * the laboratory's error. A composite is already a mean of several shops, so single bags vary somewhat more.
 *
 * Per nutrient and food group, over the foods with both figures:
 * - foods that hold less than a tenth of the group's median amount are left out: near nothing a coefficient
 *   of variation measures the detection limit, and such a food moves no mix;
 * - a coefficient above 1 counts as 1, so that one odd sample of six does not speak for a whole group;
 * - `median` and `p75` are printed to look at; `rms`, the root mean square, is what is declared, because
 *   the variance of a mix adds squares: with it the mean variance over the foods is right. The median is
 *   lower and would promise too much (`variation.test.ts` shows both on foods held out);
 * - `cv` is `rms` after shrinking: as though {@link PRIOR} foods of the whole table stood beside the group's.
 *
 * Moisture is measured against the geometric mean of water and dry matter, sqrt(W x (100 - W)). An sd of
 * water is also the sd of dry matter, so a share of either explodes where that one is small: 0.5 g is 5 % of
 * the water in a dry seed and 5 % of the dry matter in a fresh leaf. Against the geometric mean the figure is
 * nearly the same from 5 to 95 % of water.
 */
import { NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import { type VariationClass, variationBase, variationClass } from '../variation-class.ts';
import type { TableRow } from './table.ts';

/** Foods of the whole table that count beside a group's own. */
const PRIOR = 5;

/** Our food groups, by the first letter of an IFCT code. Oil seeds are seeds and nuts to a keeper. */
const GROUPS: Readonly<Record<string, readonly string[]>> = {
  A: ['seed'],
  B: ['legume'],
  C: ['vegetable'],
  D: ['vegetable'],
  E: ['fruit'],
  F: ['vegetable'],
  G: ['herb'],
  H: ['nut', 'seed'],
  J: ['vegetable'],
  L: ['animal'],
  M: ['animal'],
  N: ['animal'],
  O: ['animal'],
  P: ['animal'],
  Q: ['animal'],
  R: ['animal'],
  S: ['animal'],
};

/** Order of the rows within a nutrient. */
const GROUP_ORDER = ['any', 'seed', 'legume', 'vegetable', 'herb', 'animal', 'nut', 'fruit'];

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

/** The coefficients of variation of one nutrient in one group ("any": the whole table), one per food, traces left out. */
export function coefficients(rows: readonly TableRow[], tag: Tag, group: string): number[] {
  const known = rows
    .filter((row) => group === 'any' || GROUPS[row.ref.charAt('ifct:'.length)]?.includes(group))
    .flatMap(({ composition, sd }) => {
      const value = composition[tag];
      const spread = sd[tag];
      return value !== undefined && value > 0 && spread !== undefined && spread > 0
        ? [{ value, spread }]
        : [];
    });
  if (known.length === 0) return [];
  const trace =
    quantile(
      known.map((k) => k.value),
      0.5,
    ) / 10;
  return known
    .filter((k) => k.value >= trace)
    .map((k) => Math.min(1, k.spread / variationBase(tag, k.value)));
}

/** Root mean square shrunk towards another, as though {@link PRIOR} foods of that one stood beside. */
export function shrunk(cvs: readonly number[], towards: number): number {
  return Math.sqrt((sumOfSquares(cvs) + PRIOR * towards ** 2) / (cvs.length + PRIOR));
}

/** Every row: per nutrient the whole table and then each group, and last the classes of nutrients. */
function variationRows(rows: readonly TableRow[]): VariationRow[] {
  const found: VariationRow[] = [];
  const byClass = new Map<VariationClass, { squares: number; tags: number; all: number[] }>();
  for (const { tag } of NUTRIENTS) {
    const all = coefficients(rows, tag, 'any');
    if (all.length < 5) continue;
    const any = rms(all);
    for (const group of GROUP_ORDER) {
      const cvs = group === 'any' ? all : coefficients(rows, tag, group);
      if (cvs.length === 0) continue;
      found.push(describe(tag, group, cvs, group === 'any' ? any : shrunk(cvs, any)));
    }
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
    'Coefficient of variation (sd / mean, as fed) by nutrient and food group, from the standard deviations in: ' +
    'Longvah T, Ananthan R, Bhaskarachary K, Venkaiah K. Indian Food Composition Tables. National Institute of ' +
    'Nutrition, Hyderabad, 2017. WATER is against sqrt(water x dry matter). n foods; median, p75 and rms of the ' +
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

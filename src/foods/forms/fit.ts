/**
 * How far measured dried rows lie from the dry-matter figure, nutrient by nutrient: what `drying-spread.json` holds.
 *
 * The ratio "kept" = dried figure / dry-matter figure is heavy-tailed (soil in ground spices, other varieties,
 * decades between the analyses), so no normal distribution is fitted. Limits are order statistics of the pairs,
 * the k-th smallest of n with k = ceil((n + 1) x level): where pairs are exchangeable, a new pair lies inside with
 * at least that probability, whatever the distribution (conformal prediction; Vovk, Gammerman, Shafer 2005,
 * "Algorithmic Learning in a Random World": from memory).
 */
import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Comparison } from './compare-pairs.ts';
import { publishedDrying } from './retention.ts';

/** Share of new pairs that a declared 95 % interval, value +- 1.96 sd cut at 0, is built to hold. */
export const LEVEL = 0.92;
/** Share of new pairs that may lie below the low bound, and above the high one: the upper tail is the long one. */
export const BELOW = 0.03;
export const ABOVE = 0.07;
/** The normal quantile that readers of an sd apply. */
export const Z = 1.96;
/** Above this sd of log(kept), or relative sd, a single figure would mislead: bounds are given instead. */
export const TOO_WIDE = 0.7;
/** Fewest figures that give a limit of their own; with fewer, the class is pooled. */
const ENOUGH = 12;

export interface Fit {
  /** Figures it rests on. */
  readonly figures: number;
  /** Tagnames it rests on, spaces between: the nutrient itself, or its class where it has too few figures. */
  readonly from: string;
  /** Share that drying keeps of the dry-matter figure. */
  readonly kept: number;
  readonly basis: 'dry matter' | 'published factor' | 'median of the pairs';
  /** Sd relative to the predicted value; null where only bounds are given. */
  readonly sd: number | null;
  /** Bounds, relative to the dry-matter figure. */
  readonly low: number;
  readonly high: number;
}

export interface Spread {
  /** For fruit: vitamins by USDA's factors for dried fruit where there is one. */
  readonly fruit: Partial<Record<Tag, Fit>>;
  /** For everything else, and for fruit where `fruit` has no entry. */
  readonly general: Partial<Record<Tag, Fit>>;
}

/** Nutrients that follow another one's fit, so that sums and conversions stay true. */
const FOLLOWS: Partial<Record<Tag, Tag>> = {
  FOLAC: 'FOL',
  FOLFD: 'FOL',
  FOLDFE: 'FOL',
  VITA_RAE: 'VITA_IU',
  RETOL: 'VITA_IU',
  CARTA: 'VITA_IU',
  CARTB: 'VITA_IU',
  CRYPX: 'VITA_IU',
  VITD_IU: 'VITD',
  FIBC: 'FIBTG',
  FIBND: 'FIBTG',
  FIBAD: 'FIBTG',
  FIBINS: 'FIBTG',
  FIBSOL: 'FIBTG',
  F18D2CN6: 'FAPU',
  F18D3N3: 'FAPU',
};

/** The nutrient whose fit another one takes. Amino acids go with the protein (heat takes some of the lysine besides). */
function leadOf(tag: Tag): Tag {
  return FOLLOWS[tag] ?? (nutrient(tag).group === 'amino acid' ? 'PROCNT' : tag);
}

/** Classes pooled for a nutrient that has too few figures of its own. */
const CLASSES: readonly (readonly Tag[])[] = [
  ['FIBTG', 'SUGAR', 'STARCH'],
  ['FAT', 'CHOLE'],
  ['CA', 'FE', 'MG', 'P', 'K', 'NA', 'ZN', 'CU', 'MN', 'SE', 'ID'],
  ['THIA', 'RIBF', 'NIA', 'PANTAC', 'VITB6A', 'FOL', 'VITB12', 'CHOLN'],
  ['VITA_IU', 'LYCPN', 'LUT+ZEA'],
  ['TOCPHA', 'VITD', 'VITK1'],
];

/** Nothing is known of these: no pair has them, and no table of factors. */
const NOTHING_KNOWN: readonly Tag[] = ['BIOT'];

const isVitamin = (tag: Tag) => NUTRIENTS.some((n) => n.tag === tag && n.group === 'vitamin');

/** Every nutrient's fit to a set of comparisons. A nutrient without one stays unknown when a food is dried. */
export function fitSpread(comparisons: readonly Comparison[]): Spread {
  const fruit: Partial<Record<Tag, Fit>> = {};
  const general: Partial<Record<Tag, Fit>> = {};
  for (const { tag } of NUTRIENTS) {
    if (tag === 'WATER' || NOTHING_KNOWN.includes(tag)) continue;
    const lead = leadOf(tag);
    if (!isVitamin(lead)) {
      general[tag] = fitOne(lead, comparisons, 1, 'dry matter');
      continue;
    }
    general[tag] = fitOne(lead, notFruit(comparisons, lead));
    const factor = publishedDrying(lead);
    if (factor !== undefined)
      fruit[tag] = fitOne(lead, onlyFruit(comparisons, lead), factor, 'published factor');
  }
  return { fruit, general };
}

/** Figures of other foods than fruit, or of all where the others are too few. */
function notFruit(comparisons: readonly Comparison[], lead: Tag): readonly Comparison[] {
  const others = comparisons.filter((c) => c.pair.kind !== 'fruit');
  return countOf(others, [lead]) >= ENOUGH ? others : comparisons;
}

function onlyFruit(comparisons: readonly Comparison[], lead: Tag): readonly Comparison[] {
  const fruit = comparisons.filter((c) => c.pair.kind === 'fruit');
  return countOf(fruit, [lead]) >= ENOUGH ? fruit : comparisons;
}

function countOf(comparisons: readonly Comparison[], tags: readonly Tag[]): number {
  return comparisons.filter((c) => tags.includes(c.tag)).length;
}

function fitOne(
  lead: Tag,
  comparisons: readonly Comparison[],
  factor?: number,
  basis: Fit['basis'] = 'median of the pairs',
): Fit {
  const pool = CLASSES.find((tags) => tags.includes(lead)) ?? [lead];
  const from = countOf(comparisons, [lead]) >= ENOUGH ? [lead] : pool;
  const kept = comparisons
    .filter((c) => from.includes(c.tag))
    .map((c) => c.kept)
    .sort((a, b) => a - b);
  const centre = round(Math.min(1, factor ?? median(kept)));
  const deviations = kept.map((k) => Math.abs(k / centre - 1)).sort((a, b) => a - b);
  const sd = roundUp(ordered(deviations, LEVEL) / Z);
  const single = sd <= TOO_WIDE && sdOfLogs(kept) <= TOO_WIDE;
  return {
    figures: kept.length,
    from: from.join(' '),
    kept: centre,
    basis,
    sd: single ? sd : null,
    low: Math.floor(1e4 * orderedBelow(kept, BELOW)) / 1e4,
    high: roundUp(ordered(kept, 1 - ABOVE)),
  };
}

/** The k-th smallest, k = ceil((n + 1) x level), at most the largest. */
function ordered(rising: readonly number[], level: number): number {
  const k = Math.min(rising.length, Math.ceil((rising.length + 1) * level - 1e-9));
  return rising[k - 1]!;
}

/** The mirror image of {@link ordered}: at most `tail` of new pairs lie below. */
function orderedBelow(rising: readonly number[], tail: number): number {
  const k = Math.floor((rising.length + 1) * tail + 1e-9);
  // Too few figures to leave any out: nothing is sure but that no amount is below 0.
  return k < 1 ? 0 : rising[k - 1]!;
}

/** Median of rising numbers, at least one. */
export function median(rising: readonly number[]): number {
  const middle = rising.length / 2;
  return (rising[Math.ceil(middle) - 1]! + rising[Math.floor(middle)]!) / 2;
}

/** Sd of the logs of the ratios above 0, at least two; printed zeros have no log and are counted by the order statistics alone. */
export function sdOfLogs(kept: readonly number[]): number {
  const logs = kept.filter((k) => k > 0).map(Math.log);
  const mean = logs.reduce((a, b) => a + b, 0) / logs.length;
  return Math.sqrt(logs.reduce((a, b) => a + (b - mean) ** 2, 0) / (logs.length - 1));
}

const round = (x: number) => Math.round(x * 1e4) / 1e4;
const roundUp = (x: number) => Math.ceil(x * 1e4) / 1e4;

/** The fit that holds for a food: fruit by its own where there is one. */
export function fitFor(spread: Spread, tag: Tag, isFruit: boolean): Fit | undefined {
  return (isFruit ? spread.fruit[tag] : undefined) ?? spread.general[tag];
}

/** Whether a measured ratio lies in what a fit declares: the 95 % interval of its sd, or its bounds. */
export function covers(fit: Fit, kept: number): boolean {
  if (fit.sd === null) return fit.low <= kept && kept <= fit.high;
  return Math.abs(kept - fit.kept) <= Z * fit.sd * fit.kept;
}

export interface HeldOut extends Comparison {
  readonly covered: boolean;
}

/** Leaves out one plant at a time, fits on the rest, and checks every figure of the plant left out. */
export function holdOut(comparisons: readonly Comparison[]): HeldOut[] {
  const plants = [...new Set(comparisons.map((c) => c.pair.plant))];
  return plants.flatMap((plant) => {
    const spread = fitSpread(comparisons.filter((c) => c.pair.plant !== plant));
    return comparisons
      .filter((c) => c.pair.plant === plant)
      .map((c) => {
        const fit = fitFor(spread, c.tag, c.pair.kind === 'fruit');
        return { ...c, covered: fit !== undefined && covers(fit, c.kept) };
      });
  });
}

/** The text of `drying-spread.json`. */
export function spreadJson(spread: Spread): string {
  return `${JSON.stringify(spread, null, 2)}\n`;
}

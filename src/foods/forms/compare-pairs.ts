/**
 * What the figures of foods that the USDA table holds both fresh and dried say about drying. `pairs-left-out.json` names
 * what is not compared, and why: single figures of a pair, and dried rows as a whole.
 */
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import type { Figures } from '../food.ts';
import type { Reference } from '../reference.ts';
import { concentration } from './concentration.ts';
import { PAIRS, type Pair } from './pairs.ts';
import listed from './pairs-left-out.json' with { type: 'json' };

/** Figures of a pair that are not compared. */
interface FiguresLeftOut {
  readonly fresh: string;
  readonly dried: string;
  readonly leftOut: readonly { readonly tags: readonly Tag[]; readonly why: string }[];
}

/** A dried row that is not compared at all. */
interface PairLeftOut {
  readonly fresh?: string;
  readonly dried: string;
  readonly why: string;
}

const FIGURES_LEFT_OUT = listed.figures as unknown as readonly FiguresLeftOut[];
export const PAIRS_LEFT_OUT: readonly PairLeftOut[] = listed.pairs;

/** One figure of one pair. */
export interface Comparison {
  readonly pair: Pair;
  readonly tag: Tag;
  /** The dried row's figure over the dry-matter figure: what drying kept, by the table. */
  readonly kept: number;
}

/** A figure that was not compared, with the reason. */
export interface Skipped {
  readonly pair: Pair;
  readonly tag: Tag;
  readonly why: string;
}

export interface Compared {
  readonly comparisons: readonly Comparison[];
  readonly skipped: readonly Skipped[];
  /** Pairs most of whose figures prove calculated; none of their figures is compared. */
  readonly calculated: readonly Pair[];
}

/** Steps in which SR28 prints a figure. */
const STEPS: Partial<Record<Tag, number>> = {
  FIBTG: 0.1,
  FE: 0.01,
  ZN: 0.01,
  CU: 0.001,
  MN: 0.001,
  SE: 0.1,
  VITC: 0.1,
  THIA: 0.001,
  RIBF: 0.001,
  NIA: 0.001,
  PANTAC: 0.001,
  VITB6A: 0.001,
  CHOLN: 0.1,
  VITB12: 0.01,
  TOCPHA: 0.01,
  VITD: 0.1,
  VITK1: 0.1,
  FASAT: 0.001,
  FAMS: 0.001,
  FAPU: 0.001,
};
const GRAMS: readonly Tag[] = ['PROCNT', 'FAT', 'ASH', 'CHOCDF', 'SUGAR'];

/** Half of the step in which the table prints a nutrient. */
function halfStep(tag: Tag): number {
  return (STEPS[tag] ?? (GRAMS.includes(tag) ? 0.01 : 1)) / 2;
}

/** Figures worked out from others, so equal dry-matter figures prove nothing about them. */
const DERIVED: readonly Tag[] = ['ENERC_KCAL', 'CHOCDF'];
/** Repeats of a figure already compared, by definition or in another unit. */
export const REPEATS: readonly Tag[] = ['FOLFD', 'FOLDFE', 'FOLAC', 'VITD_IU', 'VITA_RAE'];
/**
 * Not compared: release 26 filled most of these in by ratio, from another form of the food or from the protein or fat
 * they are a part of, so that they say nothing of drying that the whole does not say.
 */
const isFilledIn = (tag: Tag) =>
  tag === 'STARCH' || tag === 'F18D2CN6' || tag === 'F18D3N3' || nutrient(tag).group === 'amino acid';
/** A window this narrow does not hold the dry-matter figure by chance. */
const NARROW = 0.06;
/** Share of calculated figures above which the whole row counts as calculated. */
const MOSTLY = 0.5;

/**
 * Whether a dried figure is, within the rounding of both, exactly `factor` times the dry-matter figure.
 * Such a figure was worked out from the fresh row, so it cannot test the model.
 */
function looksCalculated(tag: Tag, fresh: number, dried: number, factor: number): boolean {
  const half = halfStep(tag);
  if (fresh <= half) return false;
  const low = (dried - half) / ((fresh + half) * factor);
  const high = (dried + half) / ((fresh - half) * factor);
  return low <= 1 && 1 <= high && high - low < NARROW;
}

/**
 * Compares every pair in every nutrient that both rows give, the fresh one above 0.
 * @throws RangeError when a pair names a food that the reference does not hold, or one without moisture
 */
export function comparePairs(reference: Reference): Compared {
  const comparisons: Comparison[] = [];
  const skipped: Skipped[] = [];
  const calculated: Pair[] = [];
  for (const pair of PAIRS) {
    const leftOut = FIGURES_LEFT_OUT.find((p) => p.fresh === pair.fresh && p.dried === pair.dried)?.leftOut;
    const fresh = figuresOf(reference, pair.fresh);
    const dried = figuresOf(reference, pair.dried);
    const factor = concentration(moistureOf(fresh, pair.fresh), moistureOf(dried, pair.dried));
    const known = (Object.entries(fresh.composition) as [Tag, number][]).flatMap(([tag, before]) => {
      const after = dried.composition[tag];
      return tag !== 'WATER' && !isFilledIn(tag) && before > 0 && after !== undefined
        ? [{ tag, before, after }]
        : [];
    });
    const worked = known.filter(
      ({ tag, before, after }) => !DERIVED.includes(tag) && looksCalculated(tag, before, after, factor),
    );
    if (worked.length > MOSTLY * known.filter(({ tag }) => !DERIVED.includes(tag)).length) {
      calculated.push(pair);
      continue;
    }
    for (const one of known) {
      const { tag, before, after } = one;
      const left = leftOut?.find((entry) => entry.tags.includes(tag));
      if (left) skipped.push({ pair, tag, why: left.why });
      else if (worked.includes(one)) skipped.push({ pair, tag, why: 'calculated from the fresh row' });
      else comparisons.push({ pair, tag, kept: after / (before * factor) });
    }
  }
  return { comparisons, skipped, calculated };
}

function figuresOf(reference: Reference, ref: string): Figures {
  const food = reference.get(ref);
  if (!food) throw new RangeError(`pairs.json names ${ref}, which the reference does not hold`);
  return food;
}

function moistureOf(figures: Figures, ref: string): number {
  const moisture = figures.composition.WATER;
  if (moisture === undefined || moisture >= 100)
    throw new RangeError(`pairs.json names ${ref}, whose moisture is unknown`);
  return moisture;
}

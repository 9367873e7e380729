/** The weights that one press keeps, and those that are asked about first. */
import type { WeightRange } from '../../../care/figures/adult-weights.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { isUnlikely } from '../../../care/weight/weight-story.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { LifeStage } from '../../../targets/life-stage.ts';
import { GRAMS_PER_OUNCE } from '../../../words/manner.ts';

/** From this weight on a day's ups and downs go beyond the small pad, g. */
const LARGE = 250;
const SMALL_PAD = 15;
const LARGE_PAD = 25;
/** One step of the pad: a gram, or as finely as scales in ounces read. */
const STEP = { g: 1, oz: 0.05 * GRAMS_PER_OUNCE } as const;
/** A first weighing outside of so many times the weights of its kind is asked about. */
const WIDE = 2;

export interface PadFigure {
  /** g on the scale, with the tub where there is one. */
  readonly onScale: number;
  /** g of the animal alone. */
  readonly net: number;
  /** The one to be expected most. */
  readonly likely: boolean;
}

/** Round which weight the pad lies, g; undefined where nothing is known of the animal itself. */
export function padCentre(story: WeightStory, usualGrams: number | undefined): number | undefined {
  const { likely } = story;
  const last = story.trend.at(-1)?.grams ?? usualGrams;
  // What its kind weighs is too wide for a pad.
  if (!likely || last === undefined) return last;
  // Long after the last weighing, of a young one say, that weight may no longer be likely.
  return Math.min(likely.high, Math.max(likely.low, last));
}

/**
 * Figures as the scale shows them, lowest first.
 * @param centre g of the animal alone @param tub g of the tub it sits in, 0 without one
 */
export function padFigures(centre: number, tub: number, unit: 'g' | 'oz'): readonly PadFigure[] {
  const step = STEP[unit];
  const count = centre < LARGE ? SMALL_PAD : LARGE_PAD;
  const middle = Math.round((centre + tub) / step);
  // Nothing at or below the tub's own weight.
  const first = Math.max(middle - (count - 1) / 2, Math.floor(tub / step + 1e-9) + 1);
  return Array.from({ length: count }, (_, i) => {
    const onScale = (first + i) * step;
    return { onScale, net: netOf(onScale, tub), likely: first + i === middle };
  });
}

/** g of the animal alone; without the crumbs of subtraction. */
export function netOf(onScale: number, tub: number): number {
  return Math.round((onScale - tub) * 1000) / 1000;
}

/** Why a weight is asked about: against the last one that counts, what is likely without one, or what its kind weighs. */
export type Unlikely =
  | { readonly against: 'last'; readonly grams: number; readonly on: Day }
  | { readonly against: 'likely'; readonly low: number; readonly high: number }
  | { readonly against: 'kind'; readonly range: WeightRange };

/** @param grams of the animal alone @returns undefined where the weight may well be */
export function unlikelyWeight(
  grams: number,
  p: { readonly story: WeightStory; readonly range: WeightRange | undefined; readonly lifeStage: LifeStage },
): Unlikely | undefined {
  const { story, range, lifeStage } = p;
  const last = story.points.findLast((point) => !point.unlikely);
  if (story.likely) {
    if (!isUnlikely(story, grams)) return undefined;
    return last
      ? { against: 'last', grams: last.grams, on: last.day }
      : { against: 'likely', ...story.likely };
  }
  if (!range) return undefined;
  const least = lifeStage === 'growing' ? 0 : range.low / WIDE;
  return grams < least || grams > range.high * WIDE ? { against: 'kind', range } : undefined;
}

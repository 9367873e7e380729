/** What a problem feeds: the foods that may be used, what is fed beside them, and the ration that both make. */
import type { Reference } from '../../foods/reference.ts';
import { normalQuantile } from '../../nutrition/normal.ts';
import { applyCautions, type Caps } from '../amounts/apply-cautions.ts';
import { airDry, type FoodAmounts, foodAmounts } from '../amounts/food-amounts.ts';
import type { Problem } from '../problem/problem.ts';
import { Ration } from './bounds.ts';
import type { Highs } from './highs.ts';
import { leavesShareOpen, type RationShare, rationShares } from './ration-share.ts';
import { elementAt } from './vectors.ts';
import { type WholeRation, wholeRationOf } from './whole-ration.ts';

export interface FormulationOptions {
  readonly reference: Reference;
  readonly highs: Highs;
}

export interface BuiltRation {
  /** Rows in `problem.foods` of the foods that are neither refused nor blocked: the columns of the model. */
  readonly open: readonly number[];
  /** What cautions allow. */
  readonly caps: Caps;
  /** Share of the ration of each food beside the mix; with its span where it may be chosen. */
  readonly besideShares: readonly (Pick<RationShare, 'share'> & Partial<RationShare>)[];
  /** All that is fed, where no shares beside allow a mix: there the collision is told over all of them. */
  readonly unshared?: WholeRation;
  readonly ration: Ration;
  /** Standard deviations that a bound keeps from the mean. */
  readonly z: number;
}

export function buildRation(problem: Problem, { reference, highs }: FormulationOptions): BuiltRation {
  const { blocked, caps } = applyCautions(problem, reference);
  const open = problem.foods.flatMap((f, i) => (f.refused || blocked.has(i) ? [] : [i]));
  const foods = open.map((i) => foodAmounts(elementAt(problem.foods, i), reference, problem.variation));
  const beside = besideAmounts(problem, reference);
  const z = sdsFromMean(problem);
  const written = problem.beside.map((b) => ({ share: b.share_of_ration }));
  const whole = leavesShareOpen(problem)
    ? wholeRationOf({ problem, open, foods, beside, caps, z })
    : undefined;
  const wanted = written.map((b) => b.share);
  const chosen = whole && open.length > 0 ? rationShares(highs, whole, wanted) : undefined;
  const besideShares = chosen ?? written;
  const ration = new Ration(
    foods,
    beside.map((food, i) => ({ food, part: elementAt(besideShares, i).share / 100 })),
  );
  return { open, caps, besideShares, ...(whole && !chosen ? { unshared: whole } : {}), ration, z };
}

/** What is fed beside the mix, as its amounts count; by row in `problem.beside`. */
export function besideAmounts(problem: Problem, reference: Reference): FoodAmounts[] {
  return problem.beside.map((b) => {
    const food = foodAmounts(b, reference, problem.variation);
    return b.counts_as === 'air dry' ? airDry(food) : food;
  });
}

/**
 * How many standard deviations a bound keeps from the mean. For each rule by itself: the quantile that leaves the
 * part (1 - c) outside, half at either end. For all at once: the same part shared out over every bound (Bonferroni),
 * so that the chance of any of them being missed is 1 - c at most.
 */
export function sdsFromMean({ confidence, confidence_for, rules }: Problem): number {
  if (confidence === 0) return 0;
  const bounds = rules.flatMap((r) => ('nutrient' in r ? [r.min, r.max] : [])).filter((b) => b !== undefined);
  const ends = confidence_for === 'all' ? Math.max(2, bounds.length) : 2;
  return normalQuantile(1 - (1 - confidence) / ends);
}

/** A food without a wanted share wants an equal part of what the others leave of 100, never below 0. */
export function wantedShares(wants: readonly (number | undefined)[]): Float64Array {
  const given = wants.reduce<number>((sum, w) => sum + (w ?? 0), 0);
  const open = wants.filter((w) => w === undefined).length;
  const part = open > 0 ? Math.max(0, (100 - given) / open) : 0;
  return Float64Array.from(wants, (w) => w ?? part);
}

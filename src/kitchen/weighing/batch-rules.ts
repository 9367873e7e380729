/**
 * The rules of a batch as they bind what lies in the bowl. A rule about shares holds for grams of any total: with
 * `g . x >= h` on shares that add up to 100, `(g - h/100) . y >= 0` holds for the grams y. So one set of rows serves
 * a batch of any size.
 *
 * Which foods are in stays as planned: counting rules are never decided anew beside the scale. A food that a counting
 * rule needs keeps its least share; one that is left out for good (0 g on record) is freed from it.
 */

import { breaks } from '../../formulation/explain/in-range.ts';
import { type Problem, ProblemError } from '../../formulation/problem/problem.ts';
import { type Bound, type HalfSpace, type LinearBound, shortfall } from '../../formulation/solve/bounds.ts';
import type { FormulationOptions } from '../../formulation/solve/build-ration.ts';
import type { CountBound } from '../../formulation/solve/counting.ts';
import { allBounds, mixModelOf } from '../../formulation/solve/mix-model.ts';
import { boundsAt } from '../../formulation/solve/outer-approximation.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import { SAME } from '../tolerances.ts';

const LEAST_GRAMS = '/least_grams';

export class BatchRules {
  readonly problem: Problem;
  /** Ids and names of the foods that may go in, by column. */
  readonly ids: readonly string[];
  readonly names: readonly string[];
  /** Bounds of the rules; the foods' own stand in `lower` and `upper`. */
  readonly bounds: readonly LinearBound[];
  readonly spaces: readonly HalfSpace[];
  /** Least and most share, percent, that the problem allows each food. */
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  private readonly columns: ReadonlyMap<string, number>;
  /** All that a verdict asks, but what the scale can weigh: that is asked of the grams. */
  private readonly judged: readonly Bound[];
  private readonly shareCounts: readonly CountBound[];

  /** @throws ProblemError as {@link mixModelOf} does */
  constructor(problem: Problem, options: FormulationOptions) {
    const model = mixModelOf(problem, options);
    const { ration, question } = model;
    this.problem = problem;
    this.ids = ration.foods.map((f) => f.id);
    this.names = ration.foods.map((f) => f.name);
    this.columns = new Map(this.ids.map((id, i) => [id, i]));
    this.bounds = question.bounds;
    this.spaces = question.bounds.map((b) => b.halfSpace(b.bound));
    this.lower = question.lower;
    this.upper = question.upper;
    this.judged = allBounds(model).filter((b) => b.pointer !== LEAST_GRAMS);
    this.shareCounts = question.counts.filter((c) => c.pointer !== LEAST_GRAMS);
  }

  get size(): number {
    return this.ids.length;
  }

  /** Column of a food. @throws ProblemError where it is none of this batch's */
  column(food: string, field: string): number {
    const column = this.columns.get(food);
    if (column === undefined) {
      throw new ProblemError(
        field,
        `"${food}" is no food of this batch (it is not in its mix, is refused, or may not be fed); choose one of ${this.ids.join(', ')}`,
      );
    }
    return column;
  }

  /** By column, from a record by food id; a food that is not named counts as 0. */
  vector(record: Readonly<Record<string, number>>, field: string): Float64Array {
    const out = new Float64Array(this.size);
    for (const [food, value] of Object.entries(record)) {
      if (value === 0) continue;
      out[this.column(food, field)] = value;
    }
    return out;
  }

  /** Least shares that keep the counting rules with the foods that carry a share now. */
  leastShares(shares: ArrayLike<number>): Float64Array {
    const { lower, upper, shareCounts: counts } = this;
    return boundsAt({ lower, upper, counts }, shares).lower;
  }

  /** Whether grams, whatever they weigh together, keep every rule and bound, as a verdict on them says. */
  hold(grams: ArrayLike<number>): boolean {
    const shares = sharesOf(grams);
    if (!shares) return false;
    const least = this.problem.least_grams ?? 0;
    for (let i = 0; i < this.size; i++) {
      if (grams[i]! > 0 && grams[i]! < least * (1 - SAME)) return false;
    }
    return this.judged.every((bound) => !breaks(bound, bound.value(shares)));
  }

  /** By how much grams miss the rules and bounds together, each miss in parts of its bound. */
  miss(grams: ArrayLike<number>): number {
    const shares = sharesOf(grams);
    if (!shares) return Number.POSITIVE_INFINITY;
    let missed = 0;
    for (const [k, space] of this.spaces.entries()) {
      const { bound } = elementAt(this.bounds, k);
      missed += Math.max(0, shortfall(space, shares)) * partOfBound(space.scale, bound);
    }
    for (let i = 0; i < this.size; i++) {
      missed += Math.max(0, this.lower[i]! - shares[i]!) * partOfBound(1, this.lower[i]!);
      missed += Math.max(0, shares[i]! - this.upper[i]!) * partOfBound(1, this.upper[i]!);
    }
    return missed;
  }
}

/** Percent of what grams weigh together; undefined where there is nothing. */
export function sharesOf(grams: ArrayLike<number>): Float64Array | undefined {
  const total = sum(grams);
  return total > 0 ? Float64Array.from(grams, (g) => (100 * g) / total) : undefined;
}

/** What one unit of a scaled row is in parts of its bound; of 1 where the bound is 0. */
export function partOfBound(scale: number, bound: number): number {
  return scale / (Math.abs(bound) || 1);
}

export function sum(values: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < values.length; i++) total += values[i]!;
  return total;
}

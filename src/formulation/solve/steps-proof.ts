/**
 * What a search over whole steps claims, proven from the rows themselves: neither proof rests on how the solver came to
 * its numbers. The first row is the sum, an equality; every other is kept from below.
 */
import type { StepsBox } from './steps-box.ts';

/** `a . k >= h` over whole steps, scaled so that the largest |a| is 1. */
export interface StepRow {
  readonly a: Float64Array;
  readonly h: number;
}

/** A row with what it is weighted by; anything for the sum, else 0 or more. */
export interface WeightedRow {
  readonly row: StepRow;
  readonly weight: number;
}

/** How far the largest that a sum of rows can come to must lie below 0, in parts of their weights. */
const BELOW = 1e-9;

/**
 * A sum of squares that no steps in the box which keep the rows come below: each food by itself at its best, for a price
 * on each row (Lagrange).
 * @param saving gets what one step of each food saves at those prices
 */
export function pricedBound(box: StepsBox, prices: readonly WeightedRow[], saving: Float64Array): number {
  saving.fill(0);
  let bound = 0;
  for (const { row, weight } of prices) {
    bound += weight * row.h;
    for (let j = 0; j < saving.length; j++) saving[j]! += weight * row.a[j]!;
  }
  for (let j = 0; j < saving.length; j++) {
    const wish = box.target[j]!;
    const k = box.nearest(j, wish + saving[j]! / 2);
    bound += (k - wish) ** 2 - saving[j]! * k;
  }
  return bound;
}

/** Whether no steps in the box keep the rows: their weighted sum asks for more than the box can give (Farkas). */
export function noneKeeps(box: StepsBox, weights: readonly WeightedRow[]): boolean {
  const sum = new Float64Array(box.target.length);
  let most = 0;
  let size = 1;
  for (const { row, weight } of weights) {
    for (let j = 0; j < sum.length; j++) sum[j]! += weight * row.a[j]!;
    most -= weight * row.h;
    size = Math.max(size, Math.abs(weight));
  }
  for (let j = 0; j < sum.length; j++) most += sum[j]! * (sum[j]! > 0 ? box.high[j]! : box.low[j]!);
  return most < -BELOW * size;
}

/** Numbers cleaned up for showing. Whole steps of the scale are found in `formulation/solve/grams.ts`. */

/** To one decimal. */
export function tenths(value: number): number {
  return Number(value.toFixed(1));
}

/** Grams without the last digits that sums of decimal steps leave: 0.1 + 0.2 is 0.3. */
export function withoutFloatNoise(grams: number): number {
  return Number(grams.toPrecision(12));
}

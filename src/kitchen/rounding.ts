/** Numbers cleaned up for showing. Whole steps of the scale are found in `formulation/solve/grams.ts`. */
import { WHOLE } from './tolerances.ts';

/** To one decimal. */
export function tenths(value: number): number {
  return Number(value.toFixed(1));
}

/** Grams without the last digits that sums of decimal steps leave: 0.1 + 0.2 is 0.3. */
export function withoutFloatNoise(grams: number): number {
  return Number(grams.toPrecision(12));
}

/** Decimals in which grams read on a scale with this step are written: 1 for steps of 0.5 or 0.1 g, 0 for whole grams. */
export function decimalsOf(step: number): number {
  return Math.max(0, Math.ceil(-Math.log10(step) - WHOLE));
}

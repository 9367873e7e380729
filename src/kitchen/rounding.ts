/** Numbers for people and for the scale. */

/** To one decimal. */
export function tenths(value: number): number {
  return Number(value.toFixed(1));
}

/** Grams without the last digits that sums of decimal steps leave: 0.1 + 0.2 is 0.3. */
export function clean(grams: number): number {
  return Number(grams.toPrecision(12));
}

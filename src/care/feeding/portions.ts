/** A day's food in portions to scatter, each of whole steps of the scale. */
import { largestRemainder } from '../../formulation/solve/largest-remainder.ts';
import { withoutFloatNoise } from '../../kitchen/rounding.ts';

/**
 * Every portion's grams of every food. The day's total is the nearest whole number of steps and is shared out among
 * the foods by largest remainder; steps of each food go round the portions in turn, so that no portion holds more than
 * one step more than another, of one food and in all.
 * @param grams of each food a day, 0 or more @param n portions, whole, 1 or more @param step g that the scale tells
 * @returns a row a portion, a column a food, g
 * @throws RangeError naming what is no weight or no number of portions
 */
export function portionsOf(grams: readonly number[], n: number, step: number): number[][] {
  if (!(Number.isInteger(n) && n >= 1))
    throw new RangeError(`portions: ${n} is no whole number, 1 or more; give one`);
  if (!(step > 0 && Number.isFinite(step)))
    throw new RangeError(`step: ${step} is no step of a scale; give it in grams, such as 0.1`);
  for (const g of grams)
    if (!(g >= 0 && Number.isFinite(g)))
      throw new RangeError(`grams: ${g} is no weight; give the grams of a day, 0 or more`);
  const steps = grams.map((g) => g / step);
  const total = Math.round(steps.reduce((sum, s) => sum + s, 0));
  const whole = largestRemainder(steps, total);
  const rows = Array.from({ length: n }, () => grams.map(() => 0));
  let next = 0;
  for (const [k, count] of whole.entries()) {
    for (const row of rows) row[k] = Math.floor(count / n);
    for (let left = count % n; left > 0; left--) {
      const row = rows[next % n];
      if (row) row[k] = (row[k] ?? 0) + 1;
      next++;
    }
  }
  return rows.map((row) => row.map((count) => withoutFloatNoise(count * step)));
}

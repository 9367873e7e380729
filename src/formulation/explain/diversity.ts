/** How varied a mix is, in one number. */

/**
 * How many foods in equal shares would be as varied: the sum of the shares squared, over the sum of their squares. The
 * Hill number of order 2 (Hill 1973, Diversity and evenness, Ecology 54:427-432). Shares count by their part of the
 * sum, so percent, fractions and grams give the same.
 * @returns at least 1 and at most the number of shares above 0; undefined where all are 0: what is not there has no
 *   parts, so it is neither varied nor plain, and 0 would be drawn as a mix plainer than a single food
 */
export function effectiveFoods(shares: readonly number[]): number | undefined {
  const sum = shares.reduce((s, v) => s + v, 0);
  const squares = shares.reduce((s, v) => s + v * v, 0);
  return squares > 0 ? (sum * sum) / squares : undefined;
}

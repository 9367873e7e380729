/**
 * Random-effects mean of several measured values of one thing: DerSimonian R, Laird N. Meta-analysis in clinical
 * trials. Controlled Clinical Trials 1986; 7:177-188. Each source measures its own true value; those lie around a
 * common mean with variance tau2, and each measurement around its true value with its own variance.
 */

interface RandomEffects {
  readonly mean: number;
  /** Standard error of the mean. */
  readonly se: number;
  /** Variance of the true values between sources. */
  readonly tau2: number;
  /** Cochran's Q: weighted sum of squares around the fixed-effect mean. */
  readonly q: number;
  /** Parts of the mean, in the order given, sum 1. */
  readonly weights: readonly number[];
}

/**
 * @param values one per source, at least one
 * @param variances of each value as an estimate, same order, each above 0 (all 0 only where all values are equal)
 */
export function randomEffects(values: readonly number[], variances: readonly number[]): RandomEffects {
  const k = values.length;
  const [first] = values;
  if (first === undefined || variances.length !== k)
    throw new RangeError('one variance for each of at least one value is needed');
  // Nothing measured is without error; equal values without one (an amount of 0 by nature) need no weighing.
  if (variances.every((v) => v === 0) && values.every((v) => v === first))
    return { mean: first, se: 0, tau2: 0, q: 0, weights: values.map(() => 1 / k) };
  if (!variances.every((v) => v > 0 && Number.isFinite(v)))
    throw new RangeError(`variances must be above 0, not ${variances.join(', ')}`);

  // Scaled by the greatest weight, so that no sum overflows; the scale cancels out wherever it can.
  const least = Math.min(...variances);
  const w = variances.map((v) => least / v);
  const sum = total(w);
  const fixed = weightedMean(values, w);
  const q = total(values.map((y, i) => w[i]! * (y - fixed) ** 2)) / least;
  // Sum less sum of squares over sum, written so that one weight that dwarfs all others leaves something of it.
  const apart = total(w.map((x, i) => x * total(w.filter((_, j) => j !== i)))) / sum;
  const tau2 = k === 1 ? 0 : Math.max(0, ((q - (k - 1)) * least) / apart);

  const random = variances.map((v) => least / (v + tau2));
  const all = total(random);
  return {
    mean: weightedMean(values, random),
    se: Math.sqrt(least / all),
    tau2,
    q,
    weights: random.map((x) => x / all),
  };
}

/** Weighted mean, never outside the values. */
function weightedMean(values: readonly number[], weights: readonly number[]): number {
  const mean = total(values.map((y, i) => y * weights[i]!)) / total(weights);
  return Math.min(Math.max(mean, Math.min(...values)), Math.max(...values));
}

/** Sum from the least to the greatest, so that it does not depend on the order given. */
function total(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b).reduce((sum, v) => sum + v, 0);
}

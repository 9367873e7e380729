/** The normal distribution, to double precision. */

/** Probability that a standard normal value is at most z. */
export function normalBelow(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  if (z > 0) return 1 - normalBelow(-z);
  if (z < -38) return 0;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  if (z > -3) {
    // Series: 1/2 + density x (z + z^3/3 + z^5/(3 x 5) + ...). Abramowitz and Stegun 26.2.11.
    let term = z;
    let sum = z;
    for (let k = 3; Math.abs(term) > 1e-17 * Math.abs(sum); k += 2) {
      term *= (z * z) / k;
      sum += term;
    }
    return 0.5 + density * sum;
  }
  // Continued fraction of the upper tail. Abramowitz and Stegun 26.2.14.
  let tail = -z;
  for (let k = 200; k >= 1; k--) tail = -z + k / tail;
  return density / tail;
}

/** The z below which a standard normal value lies with probability p, 0 < p < 1. */
export function normalQuantile(p: number): number {
  if (!(p > 0 && p < 1)) throw new RangeError(`a probability must lie between 0 and 1, not ${p}`);
  if (p > 0.5) return -normalQuantile(1 - p);
  let low = -38;
  let high = 0;
  for (let i = 0; i < 200 && high - low > 1e-15 * Math.max(1, -low); i++) {
    const middle = (low + high) / 2;
    if (normalBelow(middle) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The beta distribution: what is known of a chance after so many looks. */

/** Natural logarithm of the gamma function, x > 0 (Lanczos, g = 7, nine terms: from memory; held by tests). */
function logGamma(x: number): number {
  const C = [
    0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
    12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
  ];
  const [first = 0, ...rest] = C;
  const z = x - 1;
  const t = z + 7.5;
  const sum = rest.reduce((s, c, i) => s + c / (z + i + 1), first);
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Probability that a Beta(a, b) value is at most x (continued fraction, Abramowitz and Stegun 26.5.8, by Lentz's way). */
export function betaBelow(x: number, a: number, b: number): number {
  if (!(a > 0 && b > 0)) throw new RangeError(`a beta distribution needs a and b above 0, not ${a} and ${b}`);
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - betaBelow(1 - x, b, a);
  const front = Math.exp(
    logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x) - Math.log(a),
  );
  const tiny = 1e-300;
  const safe = (v: number) => (Math.abs(v) < tiny ? tiny : v);
  let c = 1;
  let d = 1 / safe(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= 1000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / safe(1 + even * d);
    c = safe(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / safe(1 + odd * d);
    c = safe(1 + odd / c);
    const change = d * c;
    fraction *= change;
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return front * fraction;
}

/** The x below which a Beta(a, b) value lies with probability p. @param p 0 to 1 */
export function betaQuantile(p: number, a: number, b: number): number {
  if (!(p >= 0 && p <= 1)) throw new RangeError(`a probability must lie from 0 to 1, not ${p}`);
  let low = 0;
  let high = 1;
  for (let turn = 0; turn < 100; turn++) {
    const middle = (low + high) / 2;
    if (betaBelow(middle, a, b) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

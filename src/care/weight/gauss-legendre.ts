/** Points and weights of Gauss-Legendre quadrature (Abramowitz and Stegun 25.4.30). */

/** @param n points @param from, to the interval @returns points in order, and the weight of each */
export function gaussLegendre(
  n: number,
  from: number,
  to: number,
): { readonly at: readonly number[]; readonly weight: readonly number[] } {
  const half = (to - from) / 2;
  const middle = (to + from) / 2;
  const points = Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (n - i - 0.25)) / (n + 0.5));
    let slope = 0;
    for (let turn = 0; turn < 100; turn++) {
      let [before, now] = [1, x];
      for (let k = 2; k <= n; k++) [before, now] = [now, ((2 * k - 1) * x * now - (k - 1) * before) / k];
      slope = (n * (x * now - before)) / (x * x - 1);
      const step = now / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    return { x, weight: 2 / ((1 - x * x) * slope * slope) };
  });
  return { at: points.map((p) => middle + half * p.x), weight: points.map((p) => half * p.weight) };
}

/**
 * How long a test of a series of weights goes on before it alarms, on the average: the average run length. With no change
 * it is the wait for a false alarm, with one it is how late the change is found. Readings are independent and normal, in
 * units of their standard deviation.
 *
 * Both are integral equations of the second kind, solved by the Nyström method on Gauss-Legendre points: for the
 * cumulative sum Goel and Wu 1971, Technometrics 13:221-230; for the moving average Crowder 1987, Technometrics 29:401-407.
 */
import { normalBelow } from '../../nutrition/normal.ts';
import { gaussLegendre } from './gauss-legendre.ts';
import { solved } from './linear-system.ts';

const POINTS = 48;

const density = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Run length of a one-sided sum that begins at `start`. @param k reference value @param h decision value @param shift of the mean */
function oneSided({ k, h, shift }: { k: number; h: number; shift: number }): (start: number) => number {
  const { at, weight } = gaussLegendre(POINTS, 0, h);
  // The unknowns: the run length from 0, where the sum rests, and from each point.
  const from = [0, ...at];
  const rows = from.map((s) => [
    normalBelow(k - s - shift),
    ...at.map((y, i) => (weight[i] ?? 0) * density(y - s + k - shift)),
  ]);
  const lengths = solved(
    rows.map((row, i) => row.map((v, j) => Number(i === j) - v)),
    from.map(() => 1),
  );
  const [resting = Number.NaN, ...within] = lengths;
  return (start) =>
    1 +
    resting * normalBelow(k - start - shift) +
    within.reduce((sum, l, i) => sum + l * (weight[i] ?? 0) * density((at[i] ?? 0) - start + k - shift), 0);
}

/**
 * Average run length of a two-sided cumulative sum, in readings (Lucas and Crosier 1982, Technometrics 24:199-205).
 * @param p.k reference value @param p.h decision value @param p.headStart where both sums begin @param p.shift of the mean
 */
export function cusumRunLength(p: { k: number; h: number; headStart?: number; shift: number }): number {
  const { k, h, shift, headStart = 0 } = p;
  const up = oneSided({ k, h, shift });
  const down = oneSided({ k, h, shift: -shift });
  const [u, d] = [up(0), down(0)];
  if (headStart === 0) return 1 / (1 / u + 1 / d);
  return (up(headStart) * d + down(headStart) * u - u * d) / (u + d);
}

/**
 * Average run length of an exponentially weighted moving average with limits for the long run, in readings.
 * @param p.lambda weight of the newest reading @param p.width of the limits, in standard deviations of the average
 */
export function ewmaRunLength(p: { lambda: number; width: number; shift: number }): number {
  const { lambda, width, shift } = p;
  const limit = width * Math.sqrt(lambda / (2 - lambda));
  const { at, weight } = gaussLegendre(POINTS, -limit, limit);
  const kernel = (u: number, i: number) =>
    ((weight[i] ?? 0) / lambda) * density(((at[i] ?? 0) - (1 - lambda) * u) / lambda - shift);
  const lengths = solved(
    at.map((u, i) => at.map((_, j) => Number(i === j) - kernel(u, j))),
    at.map(() => 1),
  );
  return 1 + lengths.reduce((sum, l, i) => sum + l * kernel(0, i), 0);
}

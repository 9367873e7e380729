/** Student's t distribution: how far a mean of few nights may be off. */
import { betaQuantile } from '../trials/beta.ts';

/**
 * The t below which a value with so many degrees of freedom lies with a chance p, from 0.5 to below 1: nu / (nu + t^2) is
 * Beta(nu / 2, 1 / 2) (Abramowitz and Stegun 26.7.1).
 */
export function tQuantile(p: number, freedom: number): number {
  if (!(p >= 0.5 && p < 1)) throw new RangeError(`a chance must lie from 0.5 to below 1, not ${p}`);
  if (!(freedom > 0)) throw new RangeError(`degrees of freedom must be above 0, not ${freedom}`);
  const x = betaQuantile(2 * (1 - p), freedom / 2, 0.5);
  return Math.sqrt((freedom * (1 - x)) / x);
}

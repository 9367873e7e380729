/** When a mix is whole, and when it keeps a bound: the one rule for the verdict and for every pour. */
import type { Bound } from '../solve/bounds.ts';
import { AT_BOUND, WHOLE_MIX } from '../solve/tolerances.ts';

/** Room that a value leaves to a bound, in parts of the bound (of 1 where that is smaller); below 0 beyond it. */
export function roomTo({ side, bound }: Pick<Bound, 'side' | 'bound'>, actual: number): number {
  return (side === 'min' ? actual - bound : bound - actual) / Math.max(1, Math.abs(bound));
}

/** Whether a value is beyond a bound by more than arithmetic leaves; so is one that cannot be told. */
export function breaks(bound: Pick<Bound, 'side' | 'bound'>, actual: number): boolean {
  return !(roomTo(bound, actual) >= -AT_BOUND);
}

/** Whether shares are a whole mix: 100 % together, but for rounding. @param total percent */
export function isWhole(total: number): boolean {
  return Math.abs(total - 100) <= WHOLE_MIX;
}

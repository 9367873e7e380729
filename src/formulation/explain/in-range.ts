/** Whether shares are a whole mix: 100 % together, but for rounding. */
import { WHOLE_MIX } from '../solve/tolerances.ts';

/** @param total percent */
export function isWhole(total: number): boolean {
  return Math.abs(total - 100) <= WHOLE_MIX;
}

/** Whether a mix may be called in range. */
import type { Evaluation } from '../problem/result.ts';
import { WHOLE_MIX } from '../solve/tolerances.ts';

/** Whether shares are a whole mix: 100 % together, but for rounding. @param total percent */
export function isWhole(total: number): boolean {
  return Math.abs(total - 100) <= WHOLE_MIX;
}

/** Whether an evaluated mix is whole and breaks no rule. */
export function isInRange({ total, breaches }: Pick<Evaluation, 'total' | 'breaches'>): boolean {
  return breaches.length === 0 && isWhole(total);
}

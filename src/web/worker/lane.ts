/** Which answers are long: those a drag must never wait behind. */
import type { Problem } from '../../formulation/problem/problem.ts';

/**
 * Whether the best mix of a problem, what collides in it, or the price of its limits may take long: where foods are
 * counted, so that it is proven which of them are in, and where a confidence rounds off the mixes.
 */
export function takesLong({ rules, foods, aims, least_grams, confidence }: Problem): boolean {
  return (
    confidence > 0 ||
    (aims !== undefined && aims.length > 0) ||
    (least_grams !== undefined && least_grams > 0) ||
    rules.some((rule) => 'count' in rule) ||
    foods.some((food) => (food.if_used ?? 0) > 0)
  );
}

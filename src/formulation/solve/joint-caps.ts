/**
 * Foods that one caution is about count together: three kinds of raw pulses are as much raw pulse as one. The bound stands
 * under "/cautions", since it is there because cautions are applied.
 */
import { words } from '../../words/words.ts';
import type { JointCap } from '../amounts/apply-cautions.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';

/**
 * @param foods by column @param open row in `problem.foods` of each column
 * @param ask the bound on a sum of shares of the foods that count
 */
export function jointCapBounds<Bound extends object>(
  caps: readonly JointCap[],
  foods: readonly FoodAmounts[],
  open: readonly number[],
  ask: (pointer: string, max: number, subject: string, counts: (food: FoodAmounts) => boolean) => Bound,
): (Bound & { readonly because: string })[] {
  return caps.map(({ rows, max, reason }) => {
    const together = new Set(foods.filter((_, column) => rows.includes(open[column] ?? -1)));
    const names = [...together].map((f) => f.name);
    return {
      ...ask('/cautions', max, words().formulation.subject.together(names), (f) => together.has(f)),
      because: reason,
    };
  });
}

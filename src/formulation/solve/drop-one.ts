/**
 * What an animal eats that leaves one food uneaten: the rest of the mix, and all that is fed beside it. The rules on
 * nutrients and ratios are asked of that; how the mix is split into groups and foods is not.
 *
 * Means alone count here: where the problem asks a confidence, it holds for the whole mix and not for what is left of
 * it.
 */

import { words } from '../../words/words.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { Problem } from '../problem/problem.ts';
import { type LinearBound, quotientBound, type Ration, valueAt } from './bounds.ts';
import { measureOf } from './measure.ts';

/** Pointer of the wish that the mix stays in range whichever food is left. */
export const DROP_ONE = '/drop_one';

/** Where no more than this is eaten, percent, nothing is: a content of nothing keeps every rule. */
const NOTHING = 1e-6;

/**
 * The bounds of all nutrient and ratio rules, asked of what is eaten when `left` is not. Each row is `top - bound x
 * bottom` summed over what is eaten, so a food that is left weighs nothing in it and the row stays linear in the
 * shares. Without `left` the same rows for all that is fed.
 */
export function boundsWithout(problem: Problem, ration: Ration, left?: FoodAmounts): LinearBound[] {
  return problem.rules.flatMap((rule, i) => {
    if (!('nutrient' in rule || 'ratio' in rule)) return [];
    const { subject, unit, on, top, bottom } = measureOf(rule);
    const eaten = (of: (f: FoodAmounts) => number) => (f: FoodAmounts) => (f === left ? 0 : of(f));
    const weight = ration.line(
      on,
      eaten(() => 100),
    );
    return (['min', 'max'] as const).flatMap((end): LinearBound[] => {
      const bound = rule[end];
      if (bound === undefined) return [];
      const linear = quotientBound(
        `/rules/${i}/${end}`,
        end,
        bound,
        words().formulation.subject[on](subject),
        unit,
        ration,
        on,
        eaten(top),
        eaten(bottom(end)),
      );
      const value = (x: ArrayLike<number>) => {
        const content = valueAt(weight, x) <= NOTHING ? bound : linear.value(x);
        return Number.isNaN(content) ? bound : content;
      };
      return [{ ...linear, value }];
    });
  });
}

/**
 * What `drop_one` adds to a problem: one bound for each food and each bound of a nutrient or ratio rule. A mix that
 * keeps them all stays in range whichever one food is left. They are linear, so they go beside the problem's own
 * bounds as they are; a further food counts as eaten in each of them.
 */
export function dropOneBounds(problem: Problem, ration: Ration): LinearBound[] {
  return ration.foods.flatMap((left) =>
    boundsWithout(problem, ration, left).map((bound) => whenLeft(bound, left)),
  );
}

/** A rule's bound over what is eaten without a food, as a part of the wish that every food may be left. */
export function whenLeft(bound: LinearBound, left: FoodAmounts): LinearBound {
  return {
    ...bound,
    pointer: DROP_ONE,
    restsOn: bound.pointer,
    subject: words().formulation.subject.without(bound.subject, left.name),
    because: words().formulation.leave.because,
  };
}

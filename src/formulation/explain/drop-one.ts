/** Which rules break when the animal leaves one food of the mix uneaten: food by food, and in a sentence. */
import { words } from '../../words/words.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { Problem } from '../problem/problem.ts';
import type { Breach } from '../problem/result.ts';
import type { LinearBound, Ration } from '../solve/bounds.ts';
import { boundsWithout } from '../solve/drop-one.ts';
import { AT_BOUND, NO_SHARE } from '../solve/tolerances.ts';
import { elementAt } from '../solve/vectors.ts';
import { breachSentence } from './sentences.ts';

/** What leaving one food does. */
export interface Leaving {
  /** Id of the food. */
  readonly food: string;
  readonly name: string;
  /** Its share, percent of the mix. */
  readonly share: number;
  /** Rules that what is eaten breaks; pointers name the rules. */
  readonly breaches: readonly Breach[];
}

export interface DropOne {
  /** Whether what is eaten keeps every rule, whichever one food is left. */
  readonly safe: boolean;
  /** Foods of the mix, in the problem's order. */
  readonly foods: readonly Leaving[];
  readonly sentence: string;
}

/**
 * For each food of the mix: which nutrient and ratio rules break when the animal leaves it.
 * @param x shares of the ration's foods, percent; counted as parts of what they weigh together
 */
export function dropOne(problem: Problem, ration: Ration, x: ArrayLike<number>): DropOne {
  const total = Array.from(x).reduce((sum, v) => sum + v, 0);
  const shares = total > 0 ? Float64Array.from(x, (v) => (100 * v) / total) : Float64Array.from(x);
  const foods = ration.foods.flatMap((food, column): Leaving[] => {
    const share = elementAt(shares, column);
    if (share <= NO_SHARE) return [];
    const breaches = boundsWithout(problem, ration, food).flatMap((bound) => breachOf(bound, food, shares));
    return [{ food: food.id, name: food.name, share, breaches }];
  });
  const missed = foods.filter((f) => f.breaches.length > 0);
  return { safe: missed.length === 0, foods, sentence: summary(missed) };
}

function breachOf(bound: LinearBound, left: FoodAmounts, x: Float64Array): Breach[] {
  const actual = bound.value(x);
  const room = bound.side === 'min' ? actual - bound.bound : bound.bound - actual;
  if (room >= -AT_BOUND * Math.max(1, Math.abs(bound.bound))) return [];
  const sentence = words().formulation.leave.without(left.name, breachSentence(bound, actual));
  return [{ pointer: bound.pointer, sentence, actual, bound: bound.bound, side: bound.side }];
}

function summary(missed: readonly Leaving[]): string {
  const t = words().formulation.leave;
  if (missed.length === 0) return t.any;
  const names = missed.slice(0, 3).map((f) => f.name);
  if (missed.length > 3) names.push(t.more(missed.length - 3));
  return t.out(names);
}

/**
 * From the present food to a new one over some days: how much of each to weigh out every day, and on which days what
 * is fed is in range.
 *
 * A day's food is one part of the new ration, p, and the rest of the old food. Contents are weighed means, so each
 * rule on a nutrient or a ratio is a straight line in p and all of them together leave one span of p. Means alone
 * count: no confidence is asked of a passing blend.
 *
 * Days and steps are common practice, no source. Nothing here is veterinary advice.
 */

import type { FoodAmounts } from '../../formulation/amounts/food-amounts.ts';
import type { Formulation } from '../../formulation/formulation.ts';
import type { Ingredient, Problem, Shares } from '../../formulation/problem/problem.ts';
import type { Statement } from '../../formulation/problem/result.ts';
import type { Ration } from '../../formulation/solve/bounds.ts';
import { largestRemainder } from '../../formulation/solve/largest-remainder.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import { dayNumber, plusDays } from '../days.ts';
import type { Day } from '../model.ts';
import { withoutFloatNoise } from '../rounding.ts';
import { SAME } from '../tolerances.ts';
import { blend, boundsOf, breachOf, spanOfParts } from './blend-bounds.ts';
import { type ChangeCaution, changeCautions } from './change-cautions.ts';
import { CHANGE_DAYS } from './change-days.ts';
import { type ChangeDay, type ChangeReason, overall, reason } from './change-words.ts';
import { FIRST_MOST, partsByDay } from './parts-by-day.ts';

/** What scales for the kitchen show at best where nothing is said of the keeper's, g (common practice, no source). */
const FINE_STEP = 0.1;

export interface ChangeOverPlan {
  /** Whole days until only the new ration is fed, 7 to 21; 14 unless given. */
  readonly days?: number;
  /** Most of the new ration on the first day, above 0 to 1; 1/4 unless given. */
  readonly firstMost?: number;
  /** Most that the new part may rise from one day to the next, 1/days to 1; twice the even step unless given. */
  readonly mostStep?: number;
  /** What is fed in a day, g as weighed; `daily_grams` of the problem unless given. */
  readonly dailyGrams?: number;
  /** Step of the scale, g; 0.1 unless given. */
  readonly stepGrams?: number;
  /** First day. */
  readonly start?: Day;
}

export interface ChangeOver {
  readonly days: readonly ChangeDay[];
  readonly days_in_range: number;
  /** Overall. */
  readonly sentence: string;
  /** What is out of range on which days, and why. */
  readonly reasons: readonly ChangeReason[];
  /** Rules that cannot be asked of the blends, since nobody knows what the old food holds. */
  readonly unchecked: readonly Statement[];
  readonly cautions: readonly ChangeCaution[];
}

/**
 * A plan for the change to a mix of a live formulation.
 * @param shares of the new mix, percent by food id @param old the present food, per 100 g as fed
 * @throws RangeError as {@link changeOver}; ProblemError where the old food's `ref` is unknown
 */
export function changeOverTo(
  formulation: Pick<Formulation, 'problem' | 'ration' | 'vector' | 'amountsOf'>,
  shares: Shares,
  old: Ingredient,
  plan?: ChangeOverPlan,
): ChangeOver {
  const { problem, ration } = formulation;
  return changeOver(problem, ration, formulation.vector(shares), formulation.amountsOf(old), plan);
}

/**
 * A plan for the change.
 * @param ration of the problem @param x shares of its foods in the new mix, percent
 * @param old the present food; amounts per 100 g as fed
 * @throws RangeError naming the field, its value and the way out
 */
export function changeOver(
  problem: Problem,
  ration: Ration,
  x: ArrayLike<number>,
  old: FoodAmounts,
  plan: ChangeOverPlan = {},
): ChangeOver {
  const { days, firstMost, mostStep, steps, stepGrams, start } = checked(problem, plan);
  const { bounds, unchecked } = boundsOf(problem, ration, x, old);
  const [low, high] = spanOfParts(bounds, ration);
  const parts = partsByDay({ days, firstMost, mostStep, low, high });
  const list = parts.map((part, d): ChangeDay => {
    const whole = inSteps(part, ration, steps);
    const weighed = {
      old: whole.old / steps,
      mix: whole.mix / steps,
      beside: whole.beside.map((k) => k / steps),
    };
    const planned = blend(part, ration);
    const grams = (k: number) => withoutFloatNoise(k * stepGrams);
    const breaches = bounds.flatMap((b) => breachOf(b, planned));
    return {
      day: d + 1,
      ...(start === undefined ? {} : { date: plusDays(start, d) }),
      part,
      parts: { old: planned.old, mix: planned.mix, beside: named(ration, planned.beside) },
      grams: {
        old: grams(whole.old),
        mix: grams(whole.mix),
        beside: named(ration, whole.beside.map(grams)),
      },
      in_range: breaches.length === 0,
      in_range_as_weighed: bounds.every((b) => breachOf(b, weighed).length === 0),
      breaches,
    };
  });
  return {
    days: list,
    days_in_range: list.filter((d) => d.in_range).length,
    sentence: overall(list, bounds.length, unchecked.length, stepGrams),
    reasons: bounds.flatMap((b) => reason(b, list, ration)),
    unchecked,
    cautions: changeCautions(),
  };
}

function checked(problem: Problem, plan: ChangeOverPlan) {
  const { days = CHANGE_DAYS.usual, firstMost = FIRST_MOST, stepGrams = FINE_STEP, start } = plan;
  const { least, most } = CHANGE_DAYS;
  if (!Number.isInteger(days) || days < least || days > most)
    throw new RangeError(`days: ${days} is no whole number from ${least} to ${most}; choose one that is`);
  if (!(firstMost > 0 && firstMost <= 1))
    throw new RangeError(`firstMost: ${firstMost} is not above 0 and at most 1; give a part such as 0.25`);
  const mostStep = plan.mostStep ?? 2 / days;
  // 1 / days itself may come with a rounding error.
  if (!(mostStep >= 1 / days - SAME && mostStep <= 1))
    throw new RangeError(
      `mostStep: ${mostStep} is not from 1/${days} (an even step) to 1; choose a part between`,
    );
  if (firstMost + (days - 1) * mostStep < 1 - SAME)
    throw new RangeError(
      `mostStep: with steps of ${mostStep} after a first day of ${firstMost} the change takes more than ${days} days; allow larger steps or more days`,
    );
  const dailyGrams = plan.dailyGrams ?? problem.daily_grams;
  if (dailyGrams === undefined || !(dailyGrams > 0 && Number.isFinite(dailyGrams)))
    throw new RangeError(`dailyGrams: ${dailyGrams} is no weight; give the grams that are fed in a day`);
  if (!(stepGrams > 0 && Number.isFinite(stepGrams)))
    throw new RangeError(`stepGrams: ${stepGrams} is no step of a scale; give it in grams, such as 0.1`);
  const steps = Math.round(dailyGrams / stepGrams);
  if (steps === 0 || Math.abs(steps * stepGrams - dailyGrams) > SAME * dailyGrams)
    throw new RangeError(
      `dailyGrams: ${dailyGrams} g is no whole number of ${stepGrams} g steps; choose a multiple of the step`,
    );
  if (start !== undefined) dayNumber(start, 'start');
  return { days, firstMost, mostStep, steps, stepGrams, start };
}

/**
 * Whole steps of old food, mix and each food beside it. The old food is rounded first, so that it never rises from one
 * day to the next; the rest is shared out by largest remainder.
 */
function inSteps(part: number, ration: Ration, total: number) {
  const { old, mix, beside } = blend(part, ration);
  const first = Math.round(old * total);
  const rest = total - first;
  const fresh = [mix, ...beside];
  const sum = fresh.reduce((a, b) => a + b, 0);
  const parts = fresh.map((v) => (sum > 0 ? (v / sum) * rest : 0));
  const whole = largestRemainder(parts, rest);
  return { old: first, mix: elementAt(whole, 0), beside: whole.slice(1) };
}

function named(ration: Ration, amounts: readonly number[]): Record<string, number> {
  return Object.fromEntries(ration.beside.map((b, k) => [b.food.id, elementAt(amounts, k)]));
}

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
import { AT_BOUND } from '../../formulation/explain/evaluate.ts';
import { breachSentence, capital, joined, nearBound } from '../../formulation/explain/sentences.ts';
import type { Formulation, Shares } from '../../formulation/formulation.ts';
import type { Ingredient, Problem, Rule } from '../../formulation/problem/problem.ts';
import type { Breach, Statement } from '../../formulation/problem/result.ts';
import { type Ration, valueAt, words } from '../../formulation/solve/bounds.ts';
import { type Measure, measureOf } from '../../formulation/solve/measure.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { dayNumber, plusDays } from '../days.ts';
import type { Day } from '../model.ts';

/** Days that a change takes: the least, the usual and the most (common practice, no source). */
export const CHANGE_DAYS = { least: 7, usual: 14, most: 21 } as const;
/** Most new food on the first day, as a part (common practice, no source). */
const FIRST_MOST = 1 / 4;
/** What scales for the kitchen show at best where nothing is said of the keeper's, g (common practice, no source). */
const FINE_STEP = 0.1;
/** Parts as near as this are the same: the arithmetic is no finer. */
const CLOSE = 1e-12;

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

/** What is fed in one day: the old food, the new mix, and each food beside it by id. */
export interface FedPart {
  readonly old: number;
  readonly mix: number;
  readonly beside: Readonly<Record<string, number>>;
}

export interface ChangeDay {
  /** 1 for the first. */
  readonly day: number;
  /** Where a start was given. */
  readonly date?: Day;
  /** The new ration's part, 0 to 1. */
  readonly part: number;
  /** Parts of all that is fed, 1 together. */
  readonly parts: FedPart;
  /** Whole steps of the scale, the day's grams together. */
  readonly grams: FedPart;
  /** Whether the parts as planned keep every rule that can be asked. */
  readonly in_range: boolean;
  /** The same of the rounded grams. */
  readonly in_range_as_weighed: boolean;
  /** Rules that the planned parts break. */
  readonly breaches: readonly Breach[];
}

/** What to watch while the food changes. */
export interface ChangeCaution {
  readonly id: string;
  readonly sentence: string;
  readonly source: string;
}

/** One bound that is missed, on which days, and whose fault it is. */
export interface ChangeReason extends Statement {
  /** First and last such day. */
  readonly from: number;
  readonly to: number;
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

const PRACTICE = 'common practice, no source; not veterinary advice';

export const CHANGE_CAUTIONS: readonly ChangeCaution[] = [
  {
    id: 'slowly',
    sentence: 'Change slowly; keep some of the old food until the change is done.',
    source: PRACTICE,
  },
  {
    id: 'droppings',
    sentence: 'Look at the droppings every day: they should stay dry, dark and formed.',
    source: PRACTICE,
  },
  {
    id: 'weigh',
    sentence:
      'Weigh the animal every two or three days, and look into its hoard: what is carried off is not yet eaten.',
    source: PRACTICE,
  },
  {
    id: 'slow-down',
    sentence:
      'If droppings turn soft or the new food is left, stay at this step or go back to the last one that went well.',
    source: PRACTICE,
  },
  {
    id: 'vet',
    sentence:
      'With diarrhoea, if nothing is eaten, or if weight is lost, go back to the old food and see a vet the same day.',
    source: PRACTICE,
  },
];

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
      old: whole[0]! / steps,
      mix: whole[1]! / steps,
      beside: whole.slice(2).map((k) => k / steps),
    };
    const planned = blend(part, ration);
    const grams = (k: number) => Number((k * stepGrams).toPrecision(12));
    const breaches = bounds.flatMap((b) => breachOf(b, planned));
    return {
      day: d + 1,
      ...(start === undefined ? {} : { date: plusDays(start, d) }),
      part,
      parts: { old: planned.old, mix: planned.mix, beside: named(ration, planned.beside) },
      grams: {
        old: grams(whole[0]!),
        mix: grams(whole[1]!),
        beside: named(ration, whole.slice(2).map(grams)),
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
    cautions: CHANGE_CAUTIONS,
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
  if (!(mostStep >= 1 / days - 1e-9 && mostStep <= 1))
    throw new RangeError(
      `mostStep: ${mostStep} is not from 1/${days} (an even step) to 1; choose a part between`,
    );
  if (firstMost + (days - 1) * mostStep < 1 - 1e-9)
    throw new RangeError(
      `mostStep: with steps of ${mostStep} after a first day of ${firstMost} the change takes more than ${days} days; allow larger steps or more days`,
    );
  const dailyGrams = plan.dailyGrams ?? problem.daily_grams;
  if (dailyGrams === undefined || !(dailyGrams > 0 && Number.isFinite(dailyGrams)))
    throw new RangeError(`dailyGrams: ${dailyGrams} is no weight; give the grams that are fed in a day`);
  if (!(stepGrams > 0 && Number.isFinite(stepGrams)))
    throw new RangeError(`stepGrams: ${stepGrams} is no step of a scale; give it in grams, such as 0.1`);
  const steps = Math.round(dailyGrams / stepGrams);
  if (steps === 0 || Math.abs(steps * stepGrams - dailyGrams) > 1e-9 * dailyGrams)
    throw new RangeError(
      `dailyGrams: ${dailyGrams} g is no whole number of ${stepGrams} g steps; choose a multiple of the step`,
    );
  if (start !== undefined) dayNumber(start, 'start');
  return { days, firstMost, mostStep, steps, stepGrams, start };
}

/** One bound of a rule as a line in the parts of what is fed: kept where sign (top - bound bottom) >= 0. */
interface BlendBound {
  readonly pointer: string;
  readonly side: 'min' | 'max';
  readonly bound: number;
  readonly measure: Measure;
  readonly old: Sums;
  readonly mix: Sums;
  readonly beside: readonly Sums[];
}

interface Sums {
  readonly top: number;
  readonly bottom: number;
}

/** Parts of what is fed, 1 together; foods beside the mix in the ration's order. */
interface Parts {
  readonly old: number;
  readonly mix: number;
  readonly beside: readonly number[];
}

function boundsOf(problem: Problem, ration: Ration, x: ArrayLike<number>, old: FoodAmounts) {
  const total = Array.from(x).reduce((sum, v) => sum + v, 0);
  const shares = Float64Array.from(x, (v) => (total > 0 ? (100 * v) / total : v));
  const bounds: BlendBound[] = [];
  const unchecked: Statement[] = [];
  problem.rules.forEach((rule, i) => {
    if (!('nutrient' in rule || 'ratio' in rule) || !isOnAll(rule, ration)) return;
    const measure = measureOf(rule);
    const missing = tagsOf(rule).filter((tag) => {
      const amount = old.amount(tag);
      return amount.status === 'unknown' && amount.value === 0;
    });
    if (missing.length > 0) {
      const what = joined(missing.map(words));
      unchecked.push({
        pointer: `/rules/${i}`,
        sentence: `${capital(measure.subject)} is not checked while the food changes: nobody knows the ${what} of the old food.`,
      });
      return;
    }
    const sums = (f: FoodAmounts): Sums => ({ top: measure.top(f), bottom: measure.bottom(f) });
    for (const side of ['min', 'max'] as const) {
      const bound = rule[side];
      if (bound === undefined) continue;
      bounds.push({
        pointer: `/rules/${i}/${side}`,
        side,
        bound,
        measure,
        old: sums(old),
        mix: {
          top: valueAt(ration.line('mix', measure.top), shares),
          bottom: valueAt(ration.line('mix', measure.bottom), shares),
        },
        beside: ration.beside.map((b) => sums(b.stocked)),
      });
    }
  });
  return { bounds, unchecked };
}

/** Whether a rule is about all that is fed: where nothing is fed beside it, the mix is the ration. */
function isOnAll(rule: Rule, ration: Ration): boolean {
  return rule.on === 'ration' || ration.beside.length === 0;
}

function tagsOf(rule: Rule): readonly Tag[] {
  return 'nutrient' in rule ? [rule.nutrient] : 'ratio' in rule ? rule.ratio : [];
}

function blend(part: number, ration: Ration): Parts {
  return { old: 1 - part, mix: part * ration.mixPart, beside: ration.beside.map((b) => part * b.part) };
}

function sumsOf(b: BlendBound, parts: Parts): Sums {
  const sum = (of: (s: Sums) => number) =>
    b.beside.reduce(
      (all, s, k) => all + parts.beside[k]! * of(s),
      parts.old * of(b.old) + parts.mix * of(b.mix),
    );
  return { top: sum((s) => s.top), bottom: sum((s) => s.bottom) };
}

/** What is left before the bound, in units of the row; as near as {@link AT_BOUND} counts as kept. */
function roomOf(b: BlendBound, parts: Parts, tolerance = AT_BOUND): number {
  const { top, bottom } = sumsOf(b, parts);
  const close = tolerance * Math.max(1, Math.abs(b.bound)) * bottom;
  return (b.side === 'min' ? top - b.bound * bottom : b.bound * bottom - top) + close;
}

/** The parts p of the new ration that keep every bound; the low end lies above the high one where none does. */
function spanOfParts(bounds: readonly BlendBound[], ration: Ration): readonly [number, number] {
  let [low, high] = [0, 1];
  for (const b of bounds) {
    // Inside what counts as kept, so that a part at the very end of the span surely does.
    const before = roomOf(b, blend(0, ration), AT_BOUND / 2);
    const after = roomOf(b, blend(1, ration), AT_BOUND / 2);
    if (before < 0 && after < 0) return [1, 0];
    const crossing = before / (before - after);
    if (before < 0) low = Math.max(low, crossing);
    else if (after < 0) high = Math.min(high, crossing);
  }
  return [low, high];
}

/** How the new part may rise: days, most on the first, most from day to day, and the span of parts in range. */
export interface Corridor {
  readonly days: number;
  readonly firstMost: number;
  readonly mostStep: number;
  /** Parts in range; none where `low` is above `high`. */
  readonly low: number;
  readonly high: number;
}

/**
 * The new ration's part on each day: never falling, at most `firstMost` on the first day and `mostStep` more on each
 * further one, 1 on the last. As many days as possible are in range; no such plan comes nearer, on any single day, to
 * the even one (day / days).
 *
 * Why one pass suffices. The part on day d can be anything from L_d (the last day is still reached) to U_d (as fast as
 * allowed), so day d can be in range only where [L_d, U_d] meets [low, high]. All such days can be so at once: go up
 * with U, stop at `high`, and leave it with L; both rise by no more than a step a day. They are next to each other,
 * since L and U never fall. Asking all of them to be in range leaves bounds for each day; carried forwards and
 * backwards these never fall and rise by no more than a step. The even plan does so too, and so does the middle of the
 * three, which on each day is the part nearest to the even plan that any such plan can have.
 */
export function partsByDay({ days, firstMost, mostStep, low, high }: Corridor): number[] {
  const least = Array.from({ length: days }, (_, d) => Math.max(0, 1 - (days - 1 - d) * mostStep));
  const most = Array.from({ length: days }, (_, d) => Math.min(1, firstMost + d * mostStep));
  for (let d = 0; d < days; d++) {
    const possible = low <= high && low <= most[d]! + CLOSE && least[d]! <= high + CLOSE;
    if (!possible || d === days - 1) continue;
    least[d] = Math.max(least[d]!, low);
    most[d] = Math.min(most[d]!, high);
  }
  for (let d = 1; d < days; d++) {
    least[d] = Math.max(least[d]!, least[d - 1]!);
    most[d] = Math.min(most[d]!, most[d - 1]! + mostStep);
  }
  for (let d = days - 2; d >= 0; d--) {
    least[d] = Math.max(least[d]!, least[d + 1]! - mostStep);
    most[d] = Math.min(most[d]!, most[d + 1]!);
  }
  return least.map((l, d) => (d === days - 1 ? 1 : Math.max(l, Math.min((d + 1) / days, most[d]!))));
}

/**
 * Whole steps of old food, mix and each food beside it. The old food is rounded first, so that it never rises from one
 * day to the next; the rest is shared out by largest remainder.
 */
function inSteps(part: number, ration: Ration, total: number): number[] {
  const { old, mix, beside } = blend(part, ration);
  const first = Math.round(old * total);
  const rest = total - first;
  const fresh = [mix, ...beside];
  const sum = fresh.reduce((a, b) => a + b, 0);
  const ideal = fresh.map((v) => (sum > 0 ? (v / sum) * rest : 0));
  // A hair below a whole step is that step.
  const steps = ideal.map((v) => Math.floor(v + 1e-9));
  const order = ideal
    .map((v, k) => ({ k, left: v - steps[k]! }))
    .sort((a, b) => b.left - a.left || a.k - b.k);
  const missing = rest - steps.reduce((a, b) => a + b, 0);
  for (let n = 0; n < missing; n++) steps[order[n]!.k]!++;
  return [first, ...steps];
}

function named(ration: Ration, amounts: readonly number[]): Record<string, number> {
  return Object.fromEntries(ration.beside.map((b, k) => [b.stocked.id, amounts[k]!]));
}

function breachOf(b: BlendBound, parts: Parts): Breach[] {
  if (roomOf(b, parts) >= 0) return [];
  const { pointer, side, bound, measure } = b;
  const { top, bottom } = sumsOf(b, parts);
  const actual = top / bottom;
  const said = { pointer, side, bound, unit: measure.unit, subject: `${measure.subject} of the day's food` };
  const sentence = `${capital(breachSentence({ ...said, value: () => actual }, actual))}.`;
  return [{ pointer, sentence, actual, bound, side }];
}

/** "Day 1 to 4: protein is below 17 %, since the old food holds 13 %." A straight line is out at one end only. */
function reason(b: BlendBound, list: readonly ChangeDay[], ration: Ration): ChangeReason[] {
  const out = list.filter((d) => d.breaches.some((breach) => breach.pointer === b.pointer));
  const [first, last] = [out[0]?.day, out.at(-1)?.day];
  if (first === undefined || last === undefined) return [];
  const { measure, bound, side, pointer } = b;
  const unit = measure.unit && ` ${measure.unit}`;
  const holds = unit ? 'holds' : 'has';
  const ends = (
    [
      ['the old food', 0],
      ['the new ration', 1],
    ] as const
  ).flatMap(([who, part]) => {
    const parts = blend(part, ration);
    if (roomOf(b, parts) >= 0) return [];
    const { top, bottom } = sumsOf(b, parts);
    return [`${who} ${holds} ${nearBound(top / bottom, bound)}${unit}`];
  });
  const when = first === last ? `Day ${first}` : `Day ${first} to ${last}`;
  const how = `${measure.subject} is ${side === 'min' ? 'below' : 'above'} ${bound}${unit}`;
  return [{ pointer, from: first, to: last, sentence: `${when}: ${how}, since ${joined(ends)}.` }];
}

function overall(list: readonly ChangeDay[], asked: number, unchecked: number, stepGrams: number): string {
  const missing =
    unchecked > 0
      ? ` ${unchecked === 1 ? 'One rule' : `${unchecked} rules`} cannot be checked meanwhile.`
      : '';
  if (asked === 0) return `No rule can be asked of these days.${missing}`;
  const kept = list.filter((d) => d.in_range);
  const [first, last] = [kept[0]?.day, kept.at(-1)?.day];
  const coarse = list.filter((d) => d.in_range && !d.in_range_as_weighed).map((d) => d.day);
  const rounded =
    coarse.length > 0
      ? ` Weighed in steps of ${stepGrams} g, ${coarse.length === 1 ? 'day' : 'days'} ${joined(coarse.map(String))} ${coarse.length === 1 ? 'falls' : 'fall'} just outside.`
      : '';
  return `${whenInRange(first, last, list.length)}${rounded}${missing}`;
}

function whenInRange(first: number | undefined, last: number | undefined, days: number): string {
  if (first === undefined || last === undefined) return 'Out of range on every day.';
  if (first === 1 && last === days) return 'In range on every day.';
  if (first === days) return `In range on the last day, day ${days}.`;
  if (last === days) return `In range from day ${first} on.`;
  return first === last
    ? `In range on day ${first} only.`
    : `In range from day ${first} to day ${last} only.`;
}

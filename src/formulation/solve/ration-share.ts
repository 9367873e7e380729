/**
 * How much of the ration each food beside the mix gets, where it may be chosen within bounds: its wanted share, or the
 * nearest to it for which some mix keeps every rule. Asked over the whole ration (percent of the ration of every food
 * of the mix and beside it), where every rule is linear: the content of the mix is a quotient over the mix's own foods.
 */
import type { Cap } from '../amounts/apply-cautions.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { CountRule, Problem, Rule } from '../problem/problem.ts';
import { type LinearBound, quotientBound, Ration, type Spread } from './bounds.ts';
import type { Highs } from './highs.ts';
import { measureOf } from './measure.ts';
import { Polytope } from './polytope.ts';
import { elementAt } from './vectors.ts';

/** The mix has to be something: least part of the ration, percent. */
const LEAST_MIX = 1;

interface RationQuestion {
  readonly highs: Highs;
  readonly problem: Problem;
  /** Rows in `problem.foods` of the foods that may be used, and those foods. */
  readonly open: readonly number[];
  readonly foods: readonly FoodAmounts[];
  readonly beside: readonly FoodAmounts[];
  readonly caps: ReadonlyMap<number, Cap>;
  /** Standard deviations that a bound keeps from the mean. */
  readonly z: number;
}

export interface RationShare {
  /** Percent of the ration. */
  readonly share: number;
  /** Lowest and highest for which some mix keeps every rule, the foods before it at their shares. */
  readonly span: readonly [number, number];
}

/** Whether the share of any food beside the mix is left open. */
export function leavesShareOpen({ beside }: Problem): boolean {
  return beside.some((b) => b.share_min !== undefined || b.share_max !== undefined);
}

/** @returns share and span of each food beside the mix; undefined where no shares within the bounds allow a mix */
export function rationShares(question: RationQuestion): RationShare[] | undefined {
  const { problem, foods, highs } = question;
  const n = foods.length;
  const lower = Float64Array.from([
    ...foods.map(() => 0),
    ...problem.beside.map((b) => b.share_min ?? b.share_of_ration),
  ]);
  const upper = Float64Array.from([
    ...foods.map(() => 100),
    ...problem.beside.map((b) => b.share_max ?? b.share_of_ration),
  ]);
  const polytope = new Polytope(highs, lower, upper, wholeRationSides(question));
  polytope.require({ g: Float64Array.from(lower, (_, i) => Number(i < n)), h: LEAST_MIX });
  try {
    if (polytope.cheapest(new Float64Array(lower.length)).status !== 'optimal') return undefined;
    return problem.beside.map((b, j) => {
      const span = polytope.span(n + j);
      const share = Math.min(span[1], Math.max(span[0], b.share_of_ration));
      lower[n + j] = share;
      upper[n + j] = share;
      polytope.setBounds(lower, upper);
      return { share, span };
    });
  } finally {
    polytope.dispose();
  }
}

function wholeRationSides({ problem, open, foods, beside, caps, z }: RationQuestion): LinearBound[] {
  const ration = new Ration([...foods, ...beside], []);
  const inMix = new Set(foods);
  const bounds: LinearBound[] = [];
  const add = (
    pointer: string,
    side: 'min' | 'max',
    bound: number,
    top: (f: FoodAmounts) => number,
    bottom: (f: FoodAmounts) => number,
    spread?: Spread,
  ) => bounds.push(quotientBound(pointer, side, bound, '', '', ration, 'mix', top, bottom, spread));
  const ofMix = (of: (f: FoodAmounts) => number) => (f: FoodAmounts) => (inMix.has(f) ? of(f) : 0);
  const one = () => 1;
  problem.rules.forEach((rule, i) => {
    if ('count' in rule) return;
    const { top, bottom, sd } = parts(rule);
    const on = rule.on === 'ration' ? (of: (f: FoodAmounts) => number) => of : ofMix;
    // A share counts foods of the mix alone.
    const over = 'group' in rule || 'food' in rule ? ofMix(top) : on(top);
    const spread =
      sd && z > 0
        ? {
            q: ration.line(
              'mix',
              on((f) => z * sd(f)),
            ).w,
            q0: 0,
          }
        : undefined;
    for (const side of ['min', 'max'] as const) {
      const bound = rule[side];
      if (bound !== undefined) add(`/rules/${i}/${side}`, side, bound, over, on(bottom(side)), spread);
    }
  });
  open.forEach((row, column) => {
    const { min = 0, max = 100 } = elementAt(problem.foods, row);
    const top = (f: FoodAmounts) => (f === foods[column] ? 100 : 0);
    const most = Math.min(max, caps.get(row)?.max ?? 100);
    if (min > 0) add(`/foods/${row}/min`, 'min', min, top, ofMix(one));
    if (most < 100) add(`/foods/${row}/max`, 'max', most, top, ofMix(one));
  });
  return bounds;
}

/** What a rule bounds, as one content over another, and its standard deviation. */
function parts(rule: Exclude<Rule, CountRule>): {
  top: (f: FoodAmounts) => number;
  bottom: (side: 'min' | 'max') => (f: FoodAmounts) => number;
  sd?: (f: FoodAmounts) => number;
} {
  if ('group' in rule) return { top: (f) => (f.group === rule.group ? 100 : 0), bottom: () => () => 1 };
  if ('food' in rule) return { top: (f) => (f.id === rule.food ? 100 : 0), bottom: () => () => 1 };
  const { top, bottom } = measureOf(rule);
  return 'nutrient' in rule ? { top, bottom, sd: (f) => f.amount(rule.nutrient).sd } : { top, bottom };
}

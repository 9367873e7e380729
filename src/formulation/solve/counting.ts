/**
 * Rules that count foods: how many are used, how many carry a given share, and the least share of a food that is
 * used at all. They are no half-spaces: a food is in or out, and {@link OuterApproximation} decides which.
 */

import { words } from '../../words/words.ts';
import type { FoodAmounts } from '../amounts/food-amounts.ts';
import type { Problem } from '../problem/problem.ts';
import { type Bound, groupWord } from './bounds.ts';
import { AT_BOUND, NO_SHARE } from './tolerances.ts';
import { elementAt } from './vectors.ts';

/** One bound of a counting rule. `columns` are the foods it counts. */
export interface CountBound extends Bound {
  /**
   * "some": at least `bound` foods have `atLeast` percent each. "few": at most `bound` foods are used.
   * "used": a food that is used has `atLeast` percent or more.
   */
  readonly counts: 'some' | 'few' | 'used';
  readonly columns: readonly number[];
  /** Percent of the mix; 0 for "few". */
  readonly atLeast: number;
}

/**
 * The counting bounds of a problem: of its rules, of its foods, and of what the scale can weigh.
 * @param open rows in `problem.foods` of the columns @param foods by column
 */
export function countBoundsOf(
  problem: Problem,
  open: readonly number[],
  foods: readonly FoodAmounts[],
): CountBound[] {
  const t = words().formulation.subject;
  const bounds: CountBound[] = [];
  problem.rules.forEach((rule, i) => {
    if (!('count' in rule)) return;
    const { group, at_least = 0 } = rule.count;
    const columns = foods.flatMap((f, column) => (group === undefined || f.group === group ? [column] : []));
    if (rule.min !== undefined && rule.min > 0) {
      bounds.push({
        pointer: `/rules/${i}/min`,
        side: 'min',
        bound: rule.min,
        subject: group === undefined ? t.some(at_least) : t.someOf(groupWord(group), at_least),
        unit: '',
        counts: 'some',
        columns,
        atLeast: at_least,
        value: (x) => columns.filter((c) => elementAt(x, c) >= at_least - AT_BOUND).length,
      });
    }
    if (rule.max !== undefined) {
      bounds.push({
        pointer: `/rules/${i}/max`,
        side: 'max',
        bound: rule.max,
        subject: group === undefined ? t.few : t.fewOf(groupWord(group)),
        unit: '',
        counts: 'few',
        columns,
        atLeast: 0,
        value: (x) => columns.filter((c) => elementAt(x, c) > NO_SHARE).length,
      });
    }
  });
  open.forEach((row, column) => {
    const least = elementAt(problem.foods, row).if_used;
    if (least === undefined || least === 0) return;
    bounds.push({
      pointer: `/foods/${row}/if_used`,
      side: 'min',
      bound: least,
      subject: t.whereUsed(elementAt(foods, column).name),
      unit: '%',
      counts: 'used',
      columns: [column],
      atLeast: least,
      value: (x) => {
        const share = elementAt(x, column);
        return share > NO_SHARE ? share : least;
      },
    });
  });
  const grams = problem.least_grams;
  if (grams !== undefined) {
    bounds.push({
      pointer: '/least_grams',
      side: 'min',
      bound: grams,
      subject: t.smallest,
      unit: 'g',
      counts: 'used',
      columns: open.map((_, column) => column),
      atLeast: (100 * grams) / problem.batch_grams,
      value: (x) => {
        const used = Array.from(x).filter((v) => v > NO_SHARE);
        return used.length > 0 ? (Math.min(...used) * problem.batch_grams) / 100 : grams;
      },
    });
  }
  return bounds;
}

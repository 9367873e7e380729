/** The rules of a problem as they bind a day of the change: straight lines in the part of the new ration. */

import type { FoodAmounts } from '../../formulation/amounts/food-amounts.ts';
import { breachSentence, capital } from '../../formulation/explain/sentences.ts';
import type { Problem, Rule } from '../../formulation/problem/problem.ts';
import type { Breach, Statement } from '../../formulation/problem/result.ts';
import { type Ration, words as tagWords, valueAt } from '../../formulation/solve/bounds.ts';
import { type Measure, measureOf } from '../../formulation/solve/measure.ts';
import { AT_BOUND } from '../../formulation/solve/tolerances.ts';
import { elementAt } from '../../formulation/solve/vectors.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';

/** One bound of a rule as a line in the parts of what is fed: kept where sign (top - bound bottom) >= 0. */
export interface BlendBound {
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

/**
 * Every bound on all that is fed, and the rules that cannot be asked since the old food's amount is not known.
 * @param x shares of the new mix by column, percent @param old the old food, per 100 g as fed
 */
export function boundsOf(problem: Problem, ration: Ration, x: ArrayLike<number>, old: FoodAmounts) {
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
      unchecked.push({
        pointer: `/rules/${i}`,
        sentence: words().feedingChange.unchecked(capital(measure.subject), missing.map(tagWords)),
      });
      return;
    }
    for (const side of ['min', 'max'] as const) {
      const bound = rule[side];
      if (bound === undefined) continue;
      const bottom = measure.bottom(side);
      const sums = (f: FoodAmounts): Sums => ({ top: measure.top(f), bottom: bottom(f) });
      bounds.push({
        pointer: `/rules/${i}/${side}`,
        side,
        bound,
        measure,
        old: sums(old),
        mix: {
          top: valueAt(ration.line('mix', measure.top), shares),
          bottom: valueAt(ration.line('mix', bottom), shares),
        },
        beside: ration.beside.map((b) => sums(b.food)),
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

/** What is fed on a day. @param part the new ration's, 0 to 1 */
export function blend(part: number, ration: Ration): Parts {
  return { old: 1 - part, mix: part * ration.mixPart, beside: ration.beside.map((b) => part * b.part) };
}

/** Numerator and denominator of a bound's measure in what is fed. */
export function sumsOf(b: BlendBound, parts: Parts): Sums {
  const sum = (of: (s: Sums) => number) =>
    b.beside.reduce(
      (all, s, k) => all + elementAt(parts.beside, k) * of(s),
      parts.old * of(b.old) + parts.mix * of(b.mix),
    );
  return { top: sum((s) => s.top), bottom: sum((s) => s.bottom) };
}

/** What is left before the bound, in units of the row; as near as {@link AT_BOUND} counts as kept. */
export function roomOf(b: BlendBound, parts: Parts, tolerance = AT_BOUND): number {
  const { top, bottom } = sumsOf(b, parts);
  const close = tolerance * Math.max(1, Math.abs(b.bound)) * bottom;
  return (b.side === 'min' ? top - b.bound * bottom : b.bound * bottom - top) + close;
}

/** The parts p of the new ration that keep every bound; the low end lies above the high one where none does. */
export function spanOfParts(bounds: readonly BlendBound[], ration: Ration): readonly [number, number] {
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

/** The bound as a broken rule; empty where it is kept. */
export function breachOf(b: BlendBound, parts: Parts): Breach[] {
  if (roomOf(b, parts) >= 0) return [];
  const { pointer, side, bound, measure } = b;
  const { top, bottom } = sumsOf(b, parts);
  const actual = top / bottom;
  const said = {
    pointer,
    side,
    bound,
    unit: measure.unit,
    subject: words().feedingChange.ofDay(measure.subject),
  };
  const sentence = `${capital(breachSentence({ ...said, value: () => actual }, actual))}.`;
  return [{ pointer, sentence, actual, bound, side }];
}

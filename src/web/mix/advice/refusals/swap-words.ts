/** What goes wrong when a food is left, and how much of another takes its place, in words. */

import type { Swap } from '../../../../formulation/advice/substitutes.ts';
import { ruleAt } from '../../../../formulation/problem/at-pointer.ts';
import type { Problem } from '../../../../formulation/problem/problem.ts';
import type { Breach } from '../../../../formulation/problem/result.ts';
import { words as nutrientWords } from '../../../../formulation/solve/bounds.ts';
import { words } from '../../../../words/words.ts';

/** What goes wrong when a food is left, in a few words: "fat too high", "protein too low and 2 more". */
export function breachWords(problem: Problem, breaches: readonly Pick<Breach, 'pointer' | 'side'>[]): string {
  const t = words().refusals.food;
  const said = breaches.map(({ pointer, side }) => {
    const rule = ruleAt(problem, pointer);
    const subject = !rule
      ? t.aRule
      : 'nutrient' in rule
        ? nutrientWords(rule.nutrient)
        : 'ratio' in rule
          ? t.ratio(nutrientWords(rule.ratio[0]), nutrientWords(rule.ratio[1]))
          : t.aShare;
    return side === 'min' ? t.low(subject) : t.high(subject);
  });
  const [first = ''] = said;
  return said.length > 1 ? t.andMore(first, said.length - 1) : first;
}

/**
 * How much of the other food to use, and the span: "8.3 % (6 to 10 %)". The span is rounded inwards, so that every
 * share named keeps the rules; a span finer than that is said to leave no choice.
 */
export function shareWords({ share, low, high }: Pick<Swap, 'share' | 'low' | 'high'>): string {
  const up = Math.ceil(low * 10 - 1e-6) / 10;
  const down = Math.floor(high * 10 + 1e-6) / 10;
  const t = words().refusals.swap;
  if (up >= down) return t.hardly(share);
  const near = Math.min(down, Math.max(up, Math.round(share * 10) / 10));
  return up === 0 ? t.upTo(near, down) : t.from(near, up, down);
}

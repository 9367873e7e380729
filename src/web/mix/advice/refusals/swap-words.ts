/** What goes wrong when a food is left, and how much of another takes its place, in words. */
import type { Swap } from '../../../../formulation/advice/substitutes.ts';
import { ruleAt } from '../../../../formulation/problem/at-pointer.ts';
import type { Problem } from '../../../../formulation/problem/problem.ts';
import type { Breach } from '../../../../formulation/problem/result.ts';
import { words } from '../../../../formulation/solve/bounds.ts';

/** What goes wrong when a food is left, in a few words: "fat too high", "protein too low and 2 more". */
export function breachWords(problem: Problem, breaches: readonly Pick<Breach, 'pointer' | 'side'>[]): string {
  const said = breaches.map(({ pointer, side }) => {
    const rule = ruleAt(problem, pointer);
    const subject = !rule
      ? 'a rule'
      : 'nutrient' in rule
        ? words(rule.nutrient)
        : 'ratio' in rule
          ? rule.ratio.map(words).join(' to ')
          : 'a share';
    return `${subject} too ${side === 'min' ? 'low' : 'high'}`;
  });
  return said.length > 1 ? `${said[0]} and ${said.length - 1} more` : (said[0] ?? '');
}

/**
 * How much of the other food to use, and the span: "8.3 % (6 to 10 %)". The span is rounded inwards, so that every
 * share named keeps the rules; a span finer than that is said to leave no choice.
 */
export function shareWords({ share, low, high }: Pick<Swap, 'share' | 'low' | 'high'>): string {
  const up = Math.ceil(low * 10 - 1e-6) / 10;
  const down = Math.floor(high * 10 + 1e-6) / 10;
  if (up >= down) return `${Number(share.toFixed(2))} % (hardly any other share)`;
  const near = Math.min(down, Math.max(up, Math.round(share * 10) / 10));
  return up === 0 ? `${near} % (up to ${down} %)` : `${near} % (${up} to ${down} %)`;
}

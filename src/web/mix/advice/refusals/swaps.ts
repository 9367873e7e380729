/** Foods that may be left or are refused, as changes to a mix: one food in another's place, and the wish to be safe. */

import { type Swap, swapped } from '../../../../formulation/advice/substitutes.ts';
import { ruleAt } from '../../../../formulation/problem/at-pointer.ts';
import type { Ingredient, Problem } from '../../../../formulation/problem/problem.ts';
import type { Breach } from '../../../../formulation/problem/result.ts';
import { words } from '../../../../formulation/solve/bounds.ts';
import type { Animal, Mix } from '../../../../household/model.ts';
import { addFood, ingredientFromReference, withProblem } from '../../../../household/reckon/mix-edits.ts';

/** The food that a swap brings in, as an ingredient; undefined where it is one of the mix's own foods already. */
export function broughtIn(swap: Pick<Swap, 'ref' | 'name' | 'group'>): Ingredient | undefined {
  const { ref, name, group } = swap;
  if (ref === undefined) return undefined;
  // A food without a group of the tables keeps none.
  return { ...ingredientFromReference({ ref, name }), ...(group === undefined ? {} : { group }) };
}

/**
 * The mix with a swap made, as one change. The food that goes stays listed at 0 %.
 * @param mix as it is kept
 * @param shares as the swap was worked out for, percent by food id, 100 in all
 * @param food id of the food that goes
 */
export function withSwap(
  mix: Mix,
  shares: Mix['shares'],
  food: string,
  swap: Pick<Swap, 'id' | 'ref' | 'name' | 'group' | 'share'>,
): Mix {
  const further = broughtIn(swap);
  const next = further ? addFood(mix, further) : mix;
  const other = further
    ? next.problem.foods.find((f) => f.id === further.id || f.ref === further.ref)!.id
    : swap.id!;
  return {
    ...next,
    shares: swapped(shares, food, other, swap.share),
    held: next.held.filter((id) => id !== food),
  };
}

/** The mix with the wish to stay in range whichever one food is left, or without it. */
export function withDropOne(mix: Mix, wanted: boolean): Mix {
  return withProblem(mix, { drop_one: wanted || undefined });
}

/** The animal with one more food that it refuses. */
export function refusing(animal: Animal, food: string): Animal {
  return animal.refuses.includes(food) ? animal : { ...animal, refuses: [...animal.refuses, food] };
}

/** The animal without that refusal. */
export function notRefusing(animal: Animal, food: string): Animal {
  return { ...animal, refuses: animal.refuses.filter((id) => id !== food) };
}

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

/** Foods that may be left or are refused, as changes to a mix: one food in another's place, and the wish to be safe. */

import { type Swap, swapped } from '../../../formulation/advice/substitutes.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Animal, Mix } from '../../model.ts';
import { addFood, ingredientFromReference, withProblem } from './mix-edits.ts';

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
 * @throws RangeError where the swap names neither a food of the mix nor one of the tables
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
    ? next.problem.foods.find((f) => f.id === further.id || f.ref === further.ref)?.id
    : swap.id;
  if (other === undefined) throw new RangeError(`the swap "${swap.name}" names no food`);
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

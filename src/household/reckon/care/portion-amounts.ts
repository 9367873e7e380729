/** What portions are made of: their amounts by the food tables, at the moisture that their packs were measured to have. */
import { sumOf } from '../../../care/leftovers/pile.ts';
import type { OfferedFood } from '../../../care/leftovers/pile-of.ts';
import type { Reference } from '../../../foods/reference.ts';
import { type FoodAmounts, foodAmounts } from '../../../formulation/amounts/food-amounts.ts';
import type { Beside, Ingredient } from '../../../formulation/problem/problem.ts';
import { ingredientAt } from '../../../kitchen/drying/ingredient-at.ts';
import { isFresh } from '../mix/beside.ts';
import type { IntakeQuestion, Portion } from './intake-question.ts';

/** Amounts of each food of a question, by the name that its portions have for it. */
export type PortionAmounts = ReadonlyMap<string, FoodAmounts>;

export function portionAmounts(made: IntakeQuestion['made'], reference: Reference): PortionAmounts {
  return new Map(
    Object.entries(made).map(([id, food]) => [id, foodAmounts(asItIs(food, reference), reference)]),
  );
}

function asItIs({ made, lots }: IntakeQuestion['made'][string], reference: Reference): Ingredient | Beside {
  const water =
    made.composition?.WATER ??
    (made.ref === undefined ? undefined : reference.get(made.ref)?.composition.WATER);
  if (lots.every(({ lot }) => lot.moisture === undefined)) return made;
  // Of packs that nobody measured the food's own moisture is the best that can be said, else that of the others.
  const known = lots.flatMap(({ lot, grams }) => {
    const moisture = lot.moisture ?? water;
    return moisture === undefined ? [] : [{ grams, moisture }];
  });
  const grams = sumOf(known.map((l) => l.grams));
  if (!(grams > 0)) return made;
  return ingredientAt(made, sumOf(known.map((l) => l.grams * l.moisture)) / grams, reference);
}

/** Each food once, with whether any of it is fresh: that dries while it lies in the cage. */
export function offeredFoods(portions: readonly Portion[], amounts: PortionAmounts): OfferedFood[] {
  const all = new Map<string, OfferedFood>();
  for (const { food, made, grams } of portions) {
    const water = amounts.get(made)?.amount('WATER');
    const before = all.get(food);
    const fresh = before?.fresh || (water?.status !== 'unknown' && isFresh(water?.value));
    all.set(food, { food, grams: (before?.grams ?? 0) + grams, ...(fresh && { fresh: true }) });
  }
  return [...all.values()];
}

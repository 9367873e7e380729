/** The problem that a batch is judged by, from its first pour to its label: its foods as its packs really are. */
import type { Reference } from '../../foods/reference.ts';
import type { Ingredient, Problem } from '../../formulation/problem/problem.ts';
import type { CupboardContents } from '../cupboard/cupboard.ts';
import { ingredientAt } from '../drying/ingredient-at.ts';
import type { Batch, Lot } from '../model.ts';
import { CRUMB } from '../tolerances.ts';

/** So much of a food, and the packs that it comes from as far as they are named. */
export interface WeighedFood {
  readonly food: string;
  /** g on the scale. */
  readonly grams: number;
  readonly lots: readonly { readonly lot: Lot; readonly grams: number }[];
}

/**
 * What was poured into a batch, food by food, in the order in which they came.
 * @throws RangeError where a pour names a lot that is not kept
 */
export function pouredFoods(batch: Batch, kept: Pick<CupboardContents, 'lots'>): WeighedFood[] {
  const lots = new Map(kept.lots.map((l) => [l.id, l]));
  return [...new Set(batch.pours.map((pour) => pour.food))].map((food) => {
    const pours = batch.pours.filter((pour) => pour.food === food);
    const taken = new Map<string, number>();
    for (const pour of pours)
      for (const { lot, grams } of pour.lots) taken.set(lot, (taken.get(lot) ?? 0) + grams);
    const named = [...taken].flatMap(([id, g]) => {
      const lot = lots.get(id);
      if (!lot)
        throw new RangeError(
          `batch ${batch.id}: lot "${id}" of ${food} is not kept; put it back or correct the batch`,
        );
      // All of it may have been taken out again.
      return g > CRUMB ? [{ lot, grams: g }] : [];
    });
    return { food, grams: pours.reduce((sum, pour) => sum + pour.grams, 0), lots: named };
  });
}

/**
 * The problem of a batch with what is weighed into it: every food at the moisture its packs were measured to have, those
 * that an animal refuses counted all the same, since they are in it.
 */
export function weighedProblem(
  problem: Problem,
  weighed: readonly WeighedFood[],
  reference: Reference,
): Problem {
  const there = new Set(weighed.map((f) => f.food));
  const actual = atActualMoisture(problem, weighed, reference);
  return {
    ...actual,
    foods: actual.foods.map((f) => (f.refused && there.has(f.id) ? { ...f, refused: false } : f)),
  };
}

/**
 * The problem with every food at the moisture its lots were measured to have; where only some of it was measured,
 * the rest counts as the food says. Foods of which nothing was measured stay as they are.
 */
export function atActualMoisture(
  problem: Problem,
  poured: readonly WeighedFood[],
  reference: Reference,
): Problem {
  const of = new Map(poured.map((p) => [p.food, p]));
  return {
    ...problem,
    foods: problem.foods.map((food) => {
      const { grams: all = 0, lots = [] } = of.get(food.id) ?? {};
      const measured = lots.flatMap(({ lot, grams }) =>
        lot.moisture === undefined ? [] : [{ grams, moisture: lot.moisture }],
      );
      const grams = measured.reduce((sum, l) => sum + l.grams, 0);
      if (!(grams > 0)) return food;
      const rest = Math.max(0, all - grams);
      const own = waterOf(food, reference);
      const water = measured.reduce((sum, l) => sum + l.grams * l.moisture, 0);
      // Of a rest whose moisture nobody knows, the measured part is the best that can be said.
      const moisture = own === undefined ? water / grams : (water + rest * own) / (grams + rest);
      return ingredientAt(food, moisture, reference);
    }),
  };
}

const waterOf = (food: Ingredient, reference: Reference) =>
  food.composition?.WATER ??
  (food.ref === undefined ? undefined : reference.get(food.ref)?.composition.WATER);

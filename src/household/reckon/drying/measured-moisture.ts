/** A food of a mix, or of the keeper's own, at the moisture that it was measured to have. */
import { atMoisture } from '../../../foods/forms/dried-composition.ts';
import type { ReferenceFood } from '../../../foods/reference.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { ingredientAt } from '../../../kitchen/drying/ingredient-at.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Mix, OwnFood } from '../../model.ts';
import { withProblem } from '../mix/mix-edits.ts';

/** Foods of the tables, by reference number. */
export type FoodTable = ReadonlyMap<string, ReferenceFood>;

/** The mix with one of its foods at the moisture it was measured to have. */
export function withMoisture(mix: Mix, food: string, moisture: number, table: FoodTable): Mix {
  return withProblem(mix, {
    foods: mix.problem.foods.map((f) => (f.id === food ? ingredientAt(f, moisture, table) : f)),
  });
}

/**
 * The keeper's own food at that moisture. What its sources print stays as it was: the figures that count follow
 * from them no more, and the words that name the source say so.
 */
export function ownAtMoisture(food: OwnFood, moisture: number, on: Day): OwnFood {
  const { WATER: water = 100 } = food.composition;
  const known = water < 100;
  const figures = known
    ? atMoisture(food, moisture)
    : { composition: { ...food.composition, WATER: moisture }, sd: food.sd };
  const { WATER: _, ...sd } = figures.sd;
  const said = food.source.replace(/; at [\d.]+ % water as dried on .*$/, '');
  const measured = Number(moisture.toFixed(1));
  return { ...food, ...figures, sd, source: `${said}; at ${measured} % water as dried on ${dayInWords(on)}` };
}

/** A food of a mix, or of the keeper's own, at the moisture that it was measured to have. */
import { atMoisture } from '../../../foods/forms/dried-composition.ts';
import type { ReferenceFood } from '../../../foods/reference.ts';
import { dayInWords } from '../../../kitchen/days.ts';
import { ingredientAt } from '../../../kitchen/drying/ingredient-at.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
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
  // What was said so before, in whichever language, does not hold any more.
  const said = food.source.replace(/; (at|mit|met) [\d.,]+ % (water|Wasser)[^;]*$/, '');
  return { ...food, ...figures, sd, source: words().drying.asDried(said, moisture, dayInWords(on)) };
}

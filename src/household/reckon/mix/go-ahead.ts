/** The keeper's recorded choice to feed a food against a caution: why, and since when. */
import type { Day } from '../../../kitchen/model.ts';
import type { Mix } from '../../model.ts';
import { patchFood } from './mix-edits.ts';

/**
 * The mix with cautions on one of its foods lifted; those lifted before stay lifted, with what was said of them.
 * @param cautions ids, one at least @param note why, in the keeper's words @param on that day
 */
export function withGoneAhead(
  mix: Mix,
  food: string,
  cautions: readonly string[],
  note: string,
  on: Day,
): Mix {
  const before = mix.problem.foods.find((f) => f.id === food)?.override;
  const [caution, ...also] = new Set([
    ...(before ? [before.caution, ...(before.also ?? [])] : []),
    ...cautions,
  ]);
  if (caution === undefined) return mix;
  const said = before && before.note !== note ? `${before.note}; ${note}` : note;
  return patchFood(mix, food, {
    override: { caution, note: said, on, ...(also.length > 0 && { also }) },
  });
}

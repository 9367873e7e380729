/** A mix to begin anew with: its animals, its target and what is fed beside it stay, its foods go. */
import type { Mix } from '../../model.ts';
import { removeFood } from './mix-edits.ts';

/** Rules and wishes about single foods go with them. */
export function emptied(mix: Mix): Mix {
  return { ...mix.problem.foods.reduce((m, food) => removeFood(m, food.id), mix), shares: {}, held: [] };
}

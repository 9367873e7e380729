/** Where a batch stands on the scale: what is in the bowl, what comes next, and what the last pour did. */

import type { FoodGroup } from '../../../foods/food.ts';
import { foodName } from '../../../foods/food-name.ts';
import type { FormulationOptions } from '../../../formulation/solve/build-ration.ts';
import type { Batch } from '../../../kitchen/model.ts';
import type { WeighOut } from '../../../kitchen/weighing/weigh-out.ts';
import type { Finished, NextPour, Poured, WeighState } from '../../../kitchen/weighing/weigh-state.ts';
import { groupsOfFoods } from './problem-groups.ts';

/** Where a batch stands: all that the page beside the scale shows. */
export interface Standing {
  readonly state: WeighState;
  readonly next?: NextPour;
  /** What the last pour did; absent before the first. */
  readonly told?: Pick<Poured, 'sentence' | 'changed' | 'spoonBack'>;
  /** How the batch is in the end, as it is aimed at now; of what lies in the bowl once all is poured. */
  readonly evaluation: Finished['evaluation'];
  /** g by food id. */
  readonly planned: Readonly<Record<string, number>>;
  readonly inBowl: Readonly<Record<string, number>>;
  /** g in all in the bowl. */
  readonly total: number;
  readonly names: Readonly<Record<string, string>>;
  /** Groups of its foods, of those that have one; by food id. */
  readonly groups: Readonly<Record<string, FoodGroup>>;
}

/** Where a batch stands once its last pour is weighed in. @param weighOut of the batch without that pour; it takes it in */
export function standingAfter(batch: Batch, weighOut: WeighOut, parts: FormulationOptions): Standing {
  const last = batch.pours.at(-1);
  const poured = last && weighOut.pour(last.food, last.grams);
  const state = weighOut.state();
  const next = weighOut.next();
  const ids = Object.keys(state.targets);
  const groupOf = groupsOfFoods(batch.problem, parts);
  const names = new Map(batch.problem.foods.map((f) => [f.id, f.name ?? nameIn(f.ref, parts) ?? f.id]));
  return {
    state,
    ...(next && { next }),
    ...(poured && {
      told: {
        sentence: poured.sentence,
        changed: poured.changed,
        ...(poured.spoonBack && { spoonBack: poured.spoonBack }),
      },
    }),
    evaluation: weighOut.aimedAt(),
    planned: weighOut.planned,
    inBowl: Object.fromEntries(ids.map((id) => [id, weighOut.inBowl(id)])),
    total: weighOut.inBowl(),
    names: Object.fromEntries(names),
    groups: Object.fromEntries(
      batch.problem.foods.flatMap(({ id }) => {
        const group = groupOf(id);
        return group === undefined ? [] : [[id, group]];
      }),
    ),
  };
}

function nameIn(ref: string | undefined, { reference }: FormulationOptions): string | undefined {
  const food = ref === undefined ? undefined : reference.get(ref);
  return food && foodName(food);
}

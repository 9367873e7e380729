/** What a mix counts as in the cupboard, taken over from the lots. */
import { totals } from '../../../kitchen/cupboard/cupboard.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { Household, Mix } from '../../model.ts';
import { withProblem } from '../mix/mix-edits.ts';
import { asNamed } from './as-named.ts';
import { contentsOf } from './contents.ts';
import { groupsIn } from './lot-foods.ts';
import { isWeighableOn } from './weighable.ts';

/** What differs between a mix's "in the cupboard" and what may be weighed out today, g; foods without a lot are left. */
export function cupboardChanges(
  all: Household,
  mix: Mix,
  day: Day,
): { readonly food: string; readonly name: string; readonly from?: number; readonly to: number }[] {
  const house = asNamed(all, mix.problem.foods);
  const ready = new Map(
    totals(contentsOf(house), isWeighableOn(day, groupsIn(house))).map((t) => [t.food, t.ready]),
  );
  return mix.problem.foods.flatMap((f) => {
    const to = ready.get(f.id);
    if (to === undefined || to === f.on_hand_grams) return [];
    return [
      {
        food: f.id,
        name: f.name ?? f.id,
        to,
        ...(f.on_hand_grams !== undefined && { from: f.on_hand_grams }),
      },
    ];
  });
}

/** The mix with what its lots hold as "in the cupboard". */
export function withCupboard(
  mix: Mix,
  changes: readonly { readonly food: string; readonly to: number }[],
): Mix {
  const to = new Map(changes.map((c) => [c.food, c.to]));
  return withProblem(mix, {
    foods: mix.problem.foods.map((f) => {
      const grams = to.get(f.id);
      return grams === undefined ? f : { ...f, on_hand_grams: grams };
    }),
  });
}

/** Whether a lot may be weighed out on a day, by what its food needs. */
import type { Ready } from '../../../kitchen/cupboard/cupboard.ts';
import { isWeighable, mayBeWeighed } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../../kitchen/model.ts';
import type { GroupOf } from './lot-foods.ts';

export function weighableOn(day: Day, groupOf: GroupOf): Ready {
  return (lot) => mayBeWeighed(lot, day, groupOf(lot.food));
}

/** The same without the words. */
export function isWeighableOn(day: Day, groupOf: GroupOf): (lot: Lot) => { readonly ok: boolean } {
  return (lot) => ({ ok: isWeighable(lot, day, groupOf(lot.food)) });
}

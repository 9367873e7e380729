/** Whether a lot may be weighed out on a day, by what its food needs. */
import type { Ready } from '../../../kitchen/cupboard/cupboard.ts';
import { mayBeWeighed } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { GroupOf } from './lot-foods.ts';

export function weighableOn(day: Day, groupOf: GroupOf): Ready {
  return (lot) => mayBeWeighed(lot, day, groupOf(lot.food));
}

/** What lies on the trays of the dryer. */
import type { OnTrays } from '../../../kitchen/shopping/at-hand.ts';
import type { Household } from '../../model.ts';
import { driedIn, lotById } from '../cupboard/lot-index.ts';

/** Drying runs of which nobody has said what became of them, each with its fresh lot; a lot dried in it counts itself. */
export function onTrays(house: Pick<Household, 'dryingRuns' | 'lots'>): OnTrays[] {
  return house.dryingRuns.flatMap((run) => {
    const lot = lotById(house, run.lot);
    const over = run.endedAt !== undefined || driedIn(house, run.id) !== undefined;
    return lot && !over ? [{ run, lot }] : [];
  });
}

/** What a household holds at its start. */
import type { Household } from '../model.ts';

/** Whether nothing was bought, dried or weighed yet. */
export function isNew(house: Household): boolean {
  return house.lots.length + house.batches.length + house.dryingRuns.length === 0;
}

/** What is made up for a start, by name. */
export function inventedIn(house: Household): string[] {
  return [...house.animals, ...house.foods].flatMap((o) => (o.invented ? [o.name] : []));
}

/** What a household keeps that says what came into its cupboard and what went out. */
import type { CupboardContents } from '../../../kitchen/cupboard/cupboard.ts';
import type { Household } from '../../model.ts';

/** What a household keeps that says what came in and what went out. */
export function contentsOf(house: Household): CupboardContents {
  return { lots: house.lots, runs: house.dryingRuns, batches: house.batches };
}

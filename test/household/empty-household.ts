import type { Household } from '../../src/household/model.ts';

/** A household that keeps nothing. */
export const EMPTY: Household = {
  foods: [],
  profiles: [],
  animals: [],
  mixes: [],
  versions: [],
  lots: [],
  offers: [],
  dryingRuns: [],
  batches: [],
  kitchen: [],
  weighings: [],
  feedings: [],
  trials: [],
  notes: [],
  photos: [],
  keeper: [],
};

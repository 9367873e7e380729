import type { Kind } from '../model.ts';

/** What a message calls one object of a kind. */
export const NOUNS = {
  foods: 'food of your own',
  profiles: 'target profile of your own',
  animals: 'animal',
  mixes: 'mix',
  versions: 'version of a mix',
  lots: 'lot',
  offers: 'offer',
  dryingRuns: 'drying run',
  batches: 'batch',
  kitchen: 'kitchen',
} as const satisfies Record<Kind, string>;

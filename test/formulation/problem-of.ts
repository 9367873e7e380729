import type { Problem } from '../../src/formulation/problem/problem.ts';

/** A problem without foods or rules, for 300 g weighed in whole grams, unless said otherwise. */
export function problemOf(about: Partial<Problem> = {}): Problem {
  return {
    foods: [],
    rules: [],
    beside: [],
    objective: 'nearest',
    confidence: 0,
    batch_grams: 300,
    scale_step_grams: 1,
    ...about,
  };
}

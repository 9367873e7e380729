import type { Evaluation } from '../../src/formulation/problem/result.ts';

/** The evaluation of a whole mix of which nothing is to be said, unless said otherwise. */
export function evaluation(about: Partial<Evaluation> = {}): Evaluation {
  return {
    total: 100,
    nutrients: {},
    in_range_chance: {},
    all_in_range_chance: 1,
    breaches: [],
    binding: [],
    estimated: [],
    unsure: [],
    cautions: [],
    verdict: '',
    ...about,
  };
}

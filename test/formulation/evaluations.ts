import { isInRange } from '../../src/formulation/explain/in-range.ts';
import type { Evaluation } from '../../src/formulation/problem/result.ts';

/** The evaluation of a whole mix of which nothing is to be said, unless said otherwise. */
export function evaluation(about: Partial<Evaluation> = {}): Evaluation {
  return {
    total: 100,
    nutrients: {},
    in_range_chance: {},
    all_in_range_chance: 1,
    in_range: isInRange({ total: 100, breaches: [], ...about })
      ? about.unsure?.length
        ? 'not surely'
        : 'surely'
      : 'no',
    breaches: [],
    binding: [],
    estimated: [],
    unsure: [],
    cautions: [],
    verdict: '',
    ...about,
  };
}

import { isWhole } from '../../src/formulation/explain/in-range.ts';
import type { Doubt, Evaluation, Unproven } from '../../src/formulation/problem/result.ts';

/** The evaluation of a whole mix of which nothing is to be said, unless said otherwise. */
export function evaluation(about: Partial<Evaluation> = {}): Evaluation {
  const { total = 100, breaches = [] } = about;
  const fits = isWhole(total) && breaches.length === 0;
  const open = fits ? (about.unsure ?? []) : [];
  return {
    total,
    nutrients: {},
    in_range_chance: {},
    all_in_range_chance: 1,
    in_range: !fits ? 'no' : open.length > 0 ? 'not surely' : 'surely',
    ...(open.length > 0 && { reservations: { no_spread: false, unproven: open.map(unproven) } }),
    ruled: [],
    breaches,
    binding: [],
    estimated: [],
    unsure: [],
    cautions: [],
    verdict: '',
    ...about,
  };
}

const unproven = ({ pointer, nutrient }: Doubt): Unproven => ({
  pointer,
  on: 'ration',
  nutrients: [nutrient],
  side: 'max',
  bound: 0,
  figures: [],
});

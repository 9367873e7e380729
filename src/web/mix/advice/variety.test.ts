/** Trade-offs and versions tell the same variety of the same mix. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { problemOf } from '../../../../test/formulation/problem-of.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import { openFoods } from '../../../household/reckon/mix/shares.ts';
import { measure, tradeGoals } from './trade-off/trade-off.ts';
import { compareMixes } from './versions/compare.ts';

const problem = problemOf({
  foods: [{ id: 'oats' }, { id: 'peas' }, { id: 'garlic' }, { id: 'nuts', refused: true }],
});
/** Garlic must not be fed. */
const evaluation = {
  nutrients: {},
  in_range_chance: {},
  breaches: [],
  unsure: [],
  cautions: [{ food: 'garlic', applied: 'blocked' }],
} as unknown as Evaluation;

function varieties(shares: Readonly<Record<string, number>>) {
  const mix = { problem, open: openFoods(problem, evaluation), groups: {} };
  const goal = tradeGoals(mix).find((g) => g.key === 'varied')!;
  const one = { problem, shares, evaluation };
  return [measure(goal, mix, shares, undefined), compareMixes(one, one).whole.a.variety] as const;
}

test('whatever the shares, of what may be fed', () => {
  const share = fc.constantFrom(0, 1, 20, 33.3, 50, 100);
  fc.assert(
    fc.property(fc.record({ oats: share, peas: share, garlic: share, nuts: share }), (shares) => {
      const [traded, compared] = varieties(shares);
      expect(traded).toBe(compared);
    }),
  );
});

test('of nothing both tell none', () => {
  expect(varieties({})).toEqual([undefined, undefined]);
  expect(varieties({ garlic: 50, nuts: 50 })).toEqual([undefined, undefined]);
});

/** Remedies as a mix can take them: what the keeper asked gives way first. */
import { describe, expect, test } from 'vitest';
import { mix } from '../../../../test/mix/insisting-mix.ts';
import type { Remedy } from '../../../formulation/problem/result.ts';
import { heldAt, insisted, sortedRemedies, wishedInstead, withRemedy } from './mix-remedies.ts';

const loosen = (pointer: string, from: number | boolean, to: number | boolean): Remedy => ({
  kind: 'loosen',
  pointer,
  from,
  to,
  sentence: pointer,
});
const together: Remedy = {
  kind: 'loosen-together',
  sentence: 'both',
  changes: [
    { pointer: '/rules/0/max', from: 7, to: 9 },
    { pointer: '/rules/1/max', from: 50, to: 61 },
  ],
};
const barley: Remedy = {
  kind: 'add',
  sentence: 'add',
  food: { id: 'barley', ref: 'sr28:20004', name: 'Barley' },
  share: 4,
};

describe('remedies', () => {
  test('what was asked comes before foods, and those before the target', () => {
    const group = loosen('/rules/1/max', 50, 60);
    const safe = loosen('/drop_one', true, false);
    const fat = loosen('/rules/0/max', 7, 8);
    const sorted = sortedRemedies([fat, together, barley, group, safe], mix, 3);
    expect(sorted).toEqual({ asked: [group, safe], foods: [barley], target: [fat, together] });
  });

  test("a held food's share and a rule of an animal's are not offered", () => {
    const remedies = [loosen('/foods/2/min', 5, 1), loosen('/rules/2/min', 1, 0.5), together];
    expect(sortedRemedies(remedies, mix, 2).target).toEqual([together]);
    expect(sortedRemedies(remedies, mix, 1)).toEqual({ asked: [], foods: [], target: [] });
    expect(heldAt(mix, '/foods/2/min')).toBe('dill');
    expect(heldAt(mix, '/foods/2')).toBeUndefined();
    expect(heldAt(mix, '/foods/0/min')).toBeUndefined();
  });

  test('every change of a remedy is written', () => {
    const { rules } = withRemedy(mix, together, '2026-03-14').problem;
    expect(rules.slice(0, 2)).toEqual([
      {
        nutrient: 'FAT',
        max: 9,
        on: 'ration',
        source: 'own choice since 2026-03-14; the target has at most 7 (no source)',
      },
      { group: 'seed', max: 61 },
    ]);
    expect(withRemedy(mix, barley, '2026-03-14').shares.barley).toBe(0);
    expect(withRemedy(mix, loosen('/drop_one', true, false), '2026-03-14').problem.drop_one).toBe(false);
  });

  test('least shares become wishes, a held food aside', () => {
    const conflict = [{ pointer: '/foods/0/min', sentence: '' }];
    expect(insisted(mix, conflict)).toEqual(['oats', 'linseed']);
    expect(insisted(mix, [{ pointer: '/foods/2/min', sentence: '' }])).toEqual([]);
    expect(insisted(mix, [{ pointer: '/rules/0/max', sentence: '' }])).toEqual([]);
    const [oats, linseed, dill] = wishedInstead(mix, ['oats', 'linseed']).problem.foods;
    expect([oats!.min, oats!.want]).toEqual([undefined, 15]);
    expect([linseed!.min, linseed!.want, linseed!.max]).toEqual([undefined, 20, 30]);
    expect(dill).toBe(mix.problem.foods[2]);
  });
});

/** Two goals of a mix against each other: which goals there are, where mixes lie on their axes, and the words for it. */
import { describe, expect, test } from 'vitest';
import { problemOf } from '../../../../../test/formulation/problem-of.ts';
import type { Evaluation } from '../../../../formulation/problem/result.ts';
import { openFoods } from '../../../../household/reckon/mix/shares.ts';
import {
  measure,
  pointWords,
  presentPoint,
  type TradeMix,
  tradeGoals,
  tradePoints,
  unknownIn,
  usualPair,
} from './trade-off.ts';

const problem = problemOf({
  foods: [
    { id: 'oats', group: 'seed', price_per_kg: 2, want: 50 },
    { id: 'peas', group: 'legume', price_per_kg: 4 },
    { id: 'dill', group: 'herb', price_per_kg: 30 },
    { id: 'nuts', group: 'nut', refused: true },
  ],
  rules: [
    { nutrient: 'FAT', max: 7, on: 'ration' },
    { nutrient: 'FAT', max: 9, on: 'mix' },
    { nutrient: 'FAT', min: 4, on: 'ration' },
    { ratio: ['CA', 'P'], min: 1 },
    { group: 'seed', min: 30 },
  ],
});
const mix: TradeMix = {
  problem,
  open: ['oats', 'peas', 'dill'],
  groups: { oats: 'seed', peas: 'legume', dill: 'herb', nuts: 'nut' },
};
const goalOf = (key: string) => tradeGoals(mix).find((g) => g.key === key)!;
const line = { mix: 5, ration: 4.5, coverage: 100, coverage_mix: 100 };
const evaluation = { nutrients: { FAT: line }, cautions: [] } as unknown as Evaluation;

describe('the goals', () => {
  test('contents that rules name, each once for the mix and once for the ration, and groups in use', () => {
    const keys = tradeGoals(mix).map((g) => g.key);
    expect(keys).toEqual([
      'cheap',
      'near',
      'varied',
      'less FAT ration',
      'more FAT ration',
      'less FAT mix',
      'more FAT mix',
      'less group seed',
      'more group seed',
      'less group legume',
      'more group legume',
      'less group herb',
      'more group herb',
    ]);
    expect(goalOf('less FAT ration').name).toBe('less fat of the whole ration');
  });

  test('cost is asked only where every food that may be used has a price', () => {
    const { price_per_kg: _, ...unpriced } = problem.foods[1]!;
    const foods = [problem.foods[0]!, unpriced, ...problem.foods.slice(2)];
    const without = { ...mix, problem: { ...problem, foods } };
    expect(tradeGoals(without).some((g) => g.key === 'cheap')).toBe(false);
    expect(usualPair(tradeGoals(without)).map((g) => g.key)).toEqual(['less FAT ration', 'near']);
    expect(usualPair(tradeGoals(mix)).map((g) => g.key)).toEqual(['cheap', 'varied']);
    const bare = { ...without, problem: { ...without.problem, rules: [] } };
    expect(usualPair(tradeGoals(bare)).map((g) => g.key)).toEqual(['varied', 'near']);
  });

  test('a food that a caution keeps out is not open', () => {
    const blocked = { cautions: [{ food: 'peas', applied: 'blocked' }] } as unknown as Evaluation;
    expect(openFoods(problem, blocked)).toEqual(['oats', 'dill']);
    expect(openFoods(problem, undefined)).toEqual(['oats', 'peas', 'dill']);
  });
});

describe('a mix on an axis', () => {
  const shares = { oats: 40, peas: 40, dill: 20 };

  test('price, group, nearness and variety, worked out by hand', () => {
    expect(measure(goalOf('cheap'), mix, shares, undefined)).toBeCloseTo(0.8 + 1.6 + 6, 12);
    expect(measure(goalOf('less group legume'), mix, shares, undefined)).toBe(40);
    // 50, 25 and 25 are wanted: 10 and 5 too little, 15 too much.
    expect(measure(goalOf('near'), mix, shares, undefined)).toBe(15);
    expect(measure(goalOf('varied'), mix, shares, undefined)).toBeCloseTo(10000 / 3600, 12);
    expect(measure(goalOf('more FAT mix'), mix, shares, 6.5)).toBe(6.5);
  });

  test('a price that is not known leaves the present mix without a place', () => {
    const foods = problem.foods.map((f) => ({ ...f, price_per_kg: undefined }) as (typeof problem.foods)[0]);
    const unpriced = { ...mix, problem: { ...problem, foods } };
    expect(measure(goalOf('cheap'), unpriced, shares, undefined)).toBeUndefined();
    expect(presentPoint([goalOf('cheap'), goalOf('near')], unpriced, shares, evaluation)).toBeUndefined();
  });

  test('the present mix takes its contents from how it stands', () => {
    const pair = [goalOf('less FAT ration'), goalOf('less FAT mix')] as const;
    expect(presentPoint(pair, mix, shares, evaluation)).toEqual({ shares, a: 4.5, b: 5 });
    expect(presentPoint(pair, mix, shares, undefined)).toBeUndefined();
  });

  test('points keep their order and are told in both units', () => {
    const pair = [goalOf('less FAT ration'), goalOf('near')] as const;
    const points = tradePoints(
      [
        { a: 4, b: 999, shares },
        { a: 5, b: 0, shares: { oats: 50, peas: 25, dill: 25 } },
      ],
      pair,
      mix,
    );
    expect(points.map(({ a, b }) => [a, b])).toEqual([
      [4, 15],
      [5, 0],
    ]);
    expect(pointWords(pair, points[0]!)).toBe(
      'fat of the whole ration 4 %, differs from the wanted shares by 15 %',
    );
  });

  test('a content with missing figures is named', () => {
    const partly = { nutrients: { FAT: { ...line, coverage: 90 } } } as unknown as Evaluation;
    const pair = [goalOf('less FAT ration'), goalOf('less FAT mix')];
    expect(unknownIn(pair, partly).map((g) => g.key)).toEqual(['less FAT ration']);
    expect(unknownIn(pair, evaluation)).toEqual([]);
  });
});

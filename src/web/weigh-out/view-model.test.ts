/** What is said beside the scale, and what a reading means. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { evaluation as evaluationOf } from '../../../test/formulation/evaluations.ts';
import { batch, pour } from '../../../test/kitchen/first-mix-batch.ts';
import { withPour, withScaleStep } from '../../household/reckon/batch/batch-edits.ts';
import type { Standing } from '../../household/reckon/batch/batch-standing.ts';
import type { NextPour, WeighState } from '../../kitchen/weighing/weigh-state.ts';
import {
  endWords,
  foodLines,
  gramsOf,
  insteadOf,
  otherFoods,
  shownTarget,
  statusWords,
  toleranceWords,
} from './view-model.ts';

const next: NextPour = {
  food: 'oats',
  name: 'Rolled oats',
  target: 15,
  reading: 115,
  again: false,
  asPlanned: { low: 14, high: 17 },
  poured: 100,
  remaining: 200,
};
const evaluation = evaluationOf();
const state: WeighState = { status: 'as planned', targets: {}, total: 300, done: false };

describe('a reading of the scale', () => {
  test('poured as shown, it is the target, however the scale is read', () => {
    for (const reads of ['food', 'bowl'] as const)
      expect(gramsOf(shownTarget(next, reads), 100, reads)).toEqual({ grams: 15 });
  });

  test('of the whole bowl is the food and what lay there before', () => {
    const tenths = fc.integer({ min: 1, max: 20_000 }).map((n) => n / 10);
    fc.assert(
      fc.property(tenths, tenths, (inBowl, grams) => {
        const read = gramsOf(Number((inBowl + grams).toFixed(1)), inBowl, 'bowl');
        expect('grams' in read && read.grams).toBeCloseTo(grams, 9);
        expect(gramsOf(grams, inBowl, 'food')).toEqual({ grams });
      }),
    );
  });

  test('that is none is refused with the way out', () => {
    const fault = (reading: number | undefined, reads: 'food' | 'bowl') => {
      const read = gramsOf(reading, 100, reads);
      return 'fault' in read ? read.fault : undefined;
    };
    expect(fault(undefined, 'food')).toMatch(/^Write what the scale shows/);
    expect(fault(Number.NaN, 'food')).toMatch(/not a number/);
    expect(fault(-1, 'food')).toMatch(/below 0/);
    expect(fault(15, 'bowl')).toBe(
      '15 g is less than the 100 g that lay in the bowl. If the scale was set to zero, choose “this food alone”.',
    );
    expect(fault(0, 'food')).toMatch(/Leave it out/);
    expect(fault(100, 'bowl')).toMatch(/Leave it out/);
  });
});

describe('the tolerance in words', () => {
  test('follows what the scale shows', () => {
    expect(toleranceWords(next, 'food', 300)).toBe('Anything from 14 to 17 g keeps the ration in range.');
    expect(toleranceWords(next, 'bowl', 300)).toBe(
      'Anything from 114 to 117 g on the scale keeps the ration in range.',
    );
  });

  test('names the size of another batch, one weight alone, and where nothing serves', () => {
    const grown = { low: 14, high: 40, total: 420 };
    expect(toleranceWords({ ...next, grown }, 'food', 300)).toBe(
      'Anything from 14 to 17 g keeps the ration in range. From 14 to 40 g if the batch comes to 420 g.',
    );
    const { asPlanned: _, ...late } = next;
    expect(toleranceWords({ ...late, grown: { ...grown, total: 280 } }, 'food', 300)).toBe(
      'Anything from 14 to 40 g keeps the ration in range. The batch then comes to 280 g.',
    );
    expect(toleranceWords({ ...next, asPlanned: { low: 15, high: 15 } }, 'food', 300)).toBe(
      'Only 15 g keeps the ration in range.',
    );
    expect(toleranceWords({ ...next, asPlanned: { low: 0, high: 9 } }, 'food', 300)).toBe(
      'Anything up to 9 g keeps the ration in range.',
    );
    expect(toleranceWords(late, 'food', 300)).toMatch(/^No amount/);
  });
});

test('every state has words and a shape of its own', () => {
  const all = (['as planned', 'corrected', 'grown', 'asked', 'out'] as const).map((status) =>
    statusWords({ state: { ...state, status, total: 360 }, planned: {} }, 300),
  );
  expect(new Set(all.map((s) => s.shape)).size).toBe(5);
  expect(all.map((s) => s.words)).toEqual([
    'As planned',
    'Corrected: other amounts than planned',
    'Grown to 360 g: other amounts than planned',
    'Your choice is needed',
    'Out of range',
  ]);
});

test('a batch corrected before stays corrected, though the last pour changed nothing', () => {
  const planned = { oats: 150, maize: 150 };
  const of = (targets: Record<string, number>) => statusWords({ state: { ...state, targets }, planned }, 300);
  expect(of({ oats: 160, maize: 140 }).status).toBe('corrected');
  expect(of(planned).status).toBe('as planned');
});

test('the list tells what is poured, what is now, what comes and what is left out', () => {
  const standing: Standing = {
    state: { ...state, targets: { oats: 150, maize: 90, dill: 0, linseed: 0 } },
    next: { ...next, food: 'maize' },
    planned: { oats: 150, maize: 90, dill: 60, linseed: 0 },
    inBowl: { oats: 150, maize: 0, dill: 0, linseed: 0 },
    total: 150,
    groups: {},
    names: { oats: 'Rolled oats', maize: 'Maize', dill: 'Dill, dried' },
    evaluation,
  };
  const lines = (s: Standing) =>
    foodLines({ ...batch, pours: [pour('oats', 150)] }, s).map((l) => [l.name, l.state]);
  expect(lines(standing)).toEqual([
    ['Rolled oats', 'poured'],
    ['Maize', 'now'],
    ['Dill, dried', 'left out'],
  ]);
  const more = { ...standing, state: { ...standing.state, targets: { oats: 170, maize: 90, dill: 60 } } };
  expect(lines(more).map((l) => l[1])).toEqual(['to come', 'now', 'to come']);
});

test('another food than the one asked for stands with its own target and no promise', () => {
  const standing: Standing = {
    state: { ...state, targets: { oats: 150, maize: 90, dill: 0 } },
    next: { ...next, food: 'maize' },
    planned: { oats: 150, maize: 90, dill: 60 },
    inBowl: { oats: 140, maize: 0, dill: 0 },
    total: 140,
    names: { oats: 'Rolled oats', maize: 'Maize', dill: 'Dill' },
    evaluation,
    groups: {},
  };
  const begun = withPour(batch, pour('oats', 140));
  expect(insteadOf(standing, begun, 'oats')).toMatchObject({
    target: 10,
    reading: 150,
    again: true,
    poured: 140,
  });
  expect(insteadOf(standing, begun, 'dill')).toMatchObject({ name: 'Dill', target: 0, again: false });
  expect(otherFoods(begun, standing).map(([, words]) => words)).toEqual([
    'more of Rolled oats, 140 g in the bowl',
    'Dill, left out now',
  ]);
});

test('a scale with other steps is kept with the batch alone', () => {
  const of = withScaleStep(batch, 0.1);
  expect(of.problem.scale_step_grams).toBe(0.1);
  expect(batch.problem.scale_step_grams).not.toBe(0.1);
});

test('how a batch ended is told', () => {
  expect(endWords(batch)).toBe('');
  expect(endWords({ ...batch, givenUp: { note: 'spilt', on: '2026-03-15' } })).toBe(
    'Given up; not to be fed: spilt',
  );
  expect(endWords({ ...batch, accepted: { note: 'compost', on: '2026-03-15' } })).toMatch(
    /out of range: compost/,
  );
});

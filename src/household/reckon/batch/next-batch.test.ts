import { describe, expect, test } from 'vitest';
import type { NextBatch } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household } from '../../model.ts';
import { afterBatch, nextBatchOf, resized, sizeOfNext } from './next-batch.ts';

const demo = demoHousehold();
const mix = { ...demo.mixes[0]!, animalIds: [demo.animals[0]!.id] };
const kept = (next: NextBatch, dailyGrams?: number): Household => ({
  ...demo,
  animals: [{ ...demo.animals[0]!, dailyGrams }],
  kitchen: [{ id: 'kitchen', next }],
});

describe('the next batch', () => {
  test('is as large as the mix says until something else is said, and another mix says nothing of it', () => {
    expect(sizeOfNext(demo, mix).grams).toBe(mix.problem.batch_grams);
    expect(sizeOfNext(kept({ mixId: mix.id, grams: 450, pins: [] }), mix).grams).toBe(450);
    expect(nextBatchOf(kept({ mixId: 'other', grams: 450, pins: [] }), mix)).toEqual({
      mixId: mix.id,
      pins: [],
    });
  });

  test('lasts so many days for its animals, or says what is not known', () => {
    // Half of the ration is the mix.
    expect(sizeOfNext(kept({ mixId: mix.id, days: 30, pins: [] }, 12), mix).grams).toBeCloseTo(180, 9);
    const unknown = sizeOfNext(kept({ mixId: mix.id, days: 30, pins: [] }), mix);
    expect(unknown.grams).toBeUndefined();
    expect(unknown.fault).toContain(demo.animals[0]!.name);
  });

  test('keeps its size, not its days, once a batch was weighed out', () => {
    const pins = [{ step: 'weigh', day: '2026-03-01' }];
    expect(afterBatch({ mixId: mix.id, days: 30, from: '2026-03-01', until: '2026-04-01', pins })).toEqual({
      mixId: mix.id,
      days: 30,
      pins: [],
    });
    expect(afterBatch({ mixId: mix.id, grams: 300, untilRunsOut: true, pins })).toEqual({
      mixId: mix.id,
      grams: 300,
      untilRunsOut: true,
      pins: [],
    });
  });
});

test('said in another measure leaves the rest of the plan', () => {
  const pins = [{ step: 'buy', day: '2026-03-10' }];
  const before = { mixId: 'm', grams: 300, until: '2026-04-01', pins };
  expect(resized(before, { days: 30 })).toEqual({ mixId: 'm', days: 30, until: '2026-04-01', pins });
  expect(resized({ mixId: 'm', days: 30, pins }, { grams: 5 })).toEqual({ mixId: 'm', grams: 5, pins });
});

/** A tick writes what the meal says, keeps what was noted, and is taken back without losing any of it. */
import { expect, test } from 'vitest';

import { batch, today } from '../../../../test/kitchen/calendar-house.ts';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import { type Feeding, feedingId } from '../../../care/model.ts';
import type { DailyMeal } from './daily-meal.ts';
import { isWeighed, ticked, unticked } from './tick-feeding.ts';

const at = `${today}T18:00:00.000Z`;
const meal: DailyMeal = {
  mix: { batch: batch('b', today), name: 'batch 1', grams: 6.04 },
  beside: [{ food: 'pellet', name: 'Pellet', grams: 5.96 }],
};
const tick = (kept?: Feeding) => ticked('bramble', meal, { on: today, at, kept });

test('a tick is the record of the day, in what a kitchen scale shows', () => {
  expect(tick()).toEqual({
    id: feedingId('bramble', today),
    animalId: 'bramble',
    on: today,
    at,
    mix: { batchId: 'b', grams: 6 },
    beside: [{ food: 'pellet', grams: 6 }],
  });
  expect(unticked(tick())).toBeUndefined();
});

test('while food changes, the record holds all of the mix; what is fed beside it names its pack', () => {
  const changing: DailyMeal = {
    ...meal,
    mix: { ...meal.mix!, grams: 4 },
    old: { batch: batch('a', today), name: 'batch 0', grams: 2 },
    beside: [{ ...meal.beside[0]!, lot: lotOf({ id: 'pack', food: 'pellet' }) }],
  };
  expect(ticked('bramble', changing, { on: today, at, kept: undefined })).toMatchObject({
    mix: { batchId: 'b', grams: 6 },
    beside: [{ food: 'pellet', lot: 'pack', grams: 6 }],
  });
});

test('what was noted of the day stays, with the tick and without it', () => {
  const noted: Feeding = {
    id: feedingId('bramble', today),
    animalId: 'bramble',
    on: today,
    mix: { grams: 4 },
    beside: [],
    left: { on: today, bowl: { grams: 1 } },
  };
  expect(tick(noted)).toEqual({ ...noted, at });
  expect(unticked(tick(noted))).toEqual(noted);
  const { mix: _, ...only } = noted;
  expect(tick(only)).toEqual({ ...tick(), left: noted.left });
});

test('a meal with an amount that nobody knows is not ticked off', () => {
  expect(isWeighed(meal)).toBe(true);
  expect(isWeighed({ ...meal, beside: [{ food: 'pellet', name: 'Pellet' }] })).toBe(false);
  expect(isWeighed({ ...meal, mix: { batch: batch('b', today), name: 'batch 1' } })).toBe(false);
  expect(isWeighed({ beside: [] })).toBe(false);
});

test('two batches of one day are one record: of the larger where they are of one mix, of none where they are not', () => {
  const mixOf = (old: ReturnType<typeof batch>, grams: number) =>
    ticked(
      'bramble',
      { ...meal, old: { batch: old, name: 'batch 0', grams } },
      { on: today, at, kept: undefined },
    ).mix;
  expect(mixOf(batch('a', today), 2)).toEqual({ batchId: 'b', grams: 8 });
  expect(mixOf(batch('a', today), 9)).toEqual({ batchId: 'a', grams: 15 });
  expect(mixOf(batch('a', today, { mixId: 'other' }), 2)).toEqual({ grams: 8 });
});

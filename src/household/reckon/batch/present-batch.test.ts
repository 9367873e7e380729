import { describe, expect, test } from 'vitest';
import type { Batch } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household, Mix } from '../../model.ts';
import { leftOn, presentOf } from './present-batch.ts';

const today = '2026-03-10';

const demo = demoHousehold();

const mix: Mix = demo.mixes[0]!;

const house = (about: Partial<Household> = {}): Household => ({ ...demo, ...about });

const batch = (id: string, on: string, about: Partial<Batch> = {}): Batch => ({
  id,
  mixId: mix.id,
  name: mix.name,
  problem: mix.problem,
  shares: mix.shares,
  order: [],
  grams: 300,
  pours: [{ food: 'millet', lots: [], target: 300, grams: 300, at: `${on}T09:00:00` }],
  animalIds: mix.animalIds,
  startedAt: `${on}T09:00:00`,
  finishedAt: `${on}T11:00:00`,
  ...about,
});

describe('the present batch', () => {
  test('is the last finished one, by what is eaten of it', () => {
    const present = presentOf(
      house({ batches: [batch('a', '2026-01-01'), batch('b', '2026-03-01')] }),
      mix,
      today,
    )!;
    // 300 g at half of 12 g a day.
    expect(present).toMatchObject({ name: 'batch 2', runsOut: { day: '2026-04-20', gramsADay: 6 } });
    expect(leftOn(present, today)).toBe(300 - 9 * 6);
    expect(leftOn(present, '2027-01-01')).toBe(0);
  });

  test('goes by what was weighed, counts none that was given up, and knows when all is eaten', () => {
    const weighed = batch('b', '2026-03-01', { left: { grams: 60, on: '2026-03-09' } });
    const given = batch('c', '2026-03-05', { givenUp: { note: 'spilt', on: '2026-03-05' } });
    const old = batch('a', '2026-01-01');
    expect(presentOf(house({ batches: [old, weighed, given] }), mix, today)).toMatchObject({
      name: 'batch 2',
      runsOut: { day: '2026-03-19' },
    });
    const eaten = { ...weighed, left: { grams: 0, on: today } };
    // The older one ran out long ago by what is eaten.
    expect(presentOf(house({ batches: [old, eaten] }), mix, today)).toBeUndefined();
    expect(presentOf(house({ batches: [batch('a', '2026-02-01'), eaten] }), mix, today)?.batch.id).toBe('a');
  });

  test('of an animal whose food nobody weighed runs out on no day that is guessed', () => {
    const animals = demo.animals.map(({ dailyGrams: _, ...a }) => a);
    const present = presentOf(house({ animals, batches: [batch('a', '2026-03-01')] }), mix, today)!;
    expect(present.runsOut.status).toBe('unknown');
    expect(leftOn(present, today)).toBeUndefined();
  });
});

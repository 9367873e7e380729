import { describe, expect, test } from 'vitest';
import { batch, demo, house, mix, today, under } from '../../../../test/kitchen/calendar-house.ts';
import { leftOn, presentOf } from './present-batch.ts';

describe('the present batch', () => {
  test('is the last finished one, by what is eaten of it', () => {
    const present = presentOf(
      house({ batches: [batch('a', '2026-01-01'), batch('b', '2026-03-01')] }),
      mix,
      under(today),
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
    expect(presentOf(house({ batches: [old, weighed, given] }), mix, under(today))).toMatchObject({
      name: 'batch 2',
      runsOut: { day: '2026-03-19' },
    });
    const eaten = { ...weighed, left: { grams: 0, on: today } };
    // The older one ran out long ago by what is eaten.
    expect(presentOf(house({ batches: [old, eaten] }), mix, under(today))).toBeUndefined();
    expect(
      presentOf(house({ batches: [batch('a', '2026-02-01'), eaten] }), mix, under(today))?.batch.id,
    ).toBe('a');
  });

  test('of an animal whose food nobody weighed runs out on no day that is guessed', () => {
    const animals = demo.animals.map(({ dailyGrams: _, ...a }) => a);
    const present = presentOf(house({ animals, batches: [batch('a', '2026-03-01')] }), mix, under(today))!;
    expect(present.runsOut.status).toBe('unknown');
    expect(leftOn(present, today)).toBeUndefined();
  });

  test('lasts by those who are still here, and is none where nobody is', () => {
    const gone = { how: 'given away', on: '2026-03-05' } as const;
    const [first] = demo.animals;
    if (!first) throw new Error('the demonstration has no animal');
    const eaten = batch('a', '2026-03-01', { animalIds: [first.id, 'other'] });
    const other = { ...first, id: 'other', name: 'Other' };
    const lasts = (animals: readonly (typeof first)[]) =>
      presentOf(house({ animals, batches: [eaten] }), mix, under(today))?.runsOut;
    expect(lasts([first, other])).toMatchObject({ gramsADay: 12 });
    expect(lasts([first, { ...other, gone }])).toMatchObject({ gramsADay: 6 });
    expect(
      lasts([
        { ...first, gone },
        { ...other, gone },
      ]),
    ).toBeUndefined();
  });
});

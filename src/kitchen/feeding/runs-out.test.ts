import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber } from '../days.ts';
import { mixPartOf, type PresentBatch, runsOut } from './runs-out.ts';

const batch: PresentBatch = {
  name: 'batch 3',
  gramsLeft: 105,
  weighedOn: '2026-02-21',
  animals: [{ name: 'Pip', dailyGrams: 10 }],
  mixPart: 0.5,
};

describe('a batch runs out', () => {
  test('on the first day for which it is not enough', () => {
    expect(runsOut(batch)).toEqual({
      status: 'known',
      day: '2026-03-14',
      gramsADay: 5,
      sentence: 'Batch 3 runs out on 14 March.',
    });
    expect(runsOut({ ...batch, gramsLeft: 104 })).toMatchObject({ day: '2026-03-13' });
    expect(runsOut({ ...batch, gramsLeft: 0 })).toMatchObject({ day: '2026-02-21' });
  });

  test('on no day that is guessed', () => {
    const { gramsLeft: _, ...unweighed } = batch;
    expect(runsOut({ ...unweighed, animals: [...batch.animals, { name: 'Tuck' }] })).toEqual({
      status: 'unknown',
      missing: [
        'Weigh what is left of batch 3 and enter the weight.',
        'Enter how much Tuck is fed in a day.',
      ],
      sentence:
        'Nobody can say yet when batch 3 runs out. Weigh what is left of batch 3 and enter the weight. Enter how much Tuck is fed in a day.',
    });
    expect(runsOut({ ...batch, animals: [] })).toMatchObject({
      status: 'unknown',
      missing: ['Say which animals eat batch 3.'],
    });
  });

  test('so that every day before is fed in full and that day is not', () => {
    const grams = fc.integer({ min: 1, max: 400 }).map((n) => n / 10);
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 5000 }),
        fc.array(grams, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 1, max: 20 }),
        (gramsLeft, eaten, twentieths) => {
          const animals = eaten.map((dailyGrams, i) => ({ name: `Animal ${i}`, dailyGrams }));
          const answer = runsOut({ ...batch, gramsLeft, animals, mixPart: twentieths / 20 });
          if (answer.status === 'unknown') throw new Error('all is known');
          const days = dayNumber(answer.day) - dayNumber(batch.weighedOn);
          // In whole units of 1/200 g nothing is rounded.
          const aDay = twentieths * eaten.reduce((sum, g) => sum + Math.round(10 * g), 0);
          expect(days * aDay).toBeLessThanOrEqual(200 * gramsLeft);
          expect((days + 1) * aDay).toBeGreaterThan(200 * gramsLeft);
        },
      ),
    );
  });

  test.each<[string, Partial<PresentBatch>]>([
    ['mixPart: 0 is not above 0', { mixPart: 0 }],
    ['mixPart: 50 is not above 0', { mixPart: 50 }],
    ['gramsLeft: -1 is no weight', { gramsLeft: -1 }],
    ['dailyGrams of Pip: 0 is no weight', { animals: [{ name: 'Pip', dailyGrams: 0 }] }],
    ['day: "14 March" is no day', { weighedOn: '14 March' }],
  ])('%s', (message, wrong) => {
    expect(() => runsOut({ ...batch, ...wrong })).toThrow(message);
  });

  test('its part of the ration is what the foods beside it leave', () => {
    const beside = (...shares: number[]) =>
      ({ beside: shares.map((share_of_ration) => ({ share_of_ration })) }) as unknown as Parameters<
        typeof mixPartOf
      >[0];
    expect(mixPartOf(beside())).toBe(1);
    expect(mixPartOf(beside(50, 10))).toBeCloseTo(0.4, 12);
  });
});

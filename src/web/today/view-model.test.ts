/** The first page: the one sentence's place, and what needs hands. */

import { describe, expect, test } from 'vitest';
import { demo, batch as finished, house, mix, today, under } from '../../../test/kitchen/calendar-house.ts';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import type { Trial } from '../../care/model.ts';
import type { Household } from '../../household/model.ts';
import { calendarOf } from '../../household/reckon/calendar/batch-calendar.ts';
import { careDue } from '../../household/reckon/care/due.ts';
import { weightsOf } from '../../household/reckon/care/weight-of.ts';
import { inventedIn, isNew } from '../../household/reckon/new-household.ts';
import type { FreezeStep, Lot } from '../../kitchen/model.ts';
import { nextOf } from './next-of.ts';
import { openBatches } from './open-batches.ts';
import { errandsOf, nearUseByErrand } from './view-model.ts';

const now = new Date('2026-03-10T10:00:00').toISOString();
const view = (h: Household) => calendarOf(h, mix, under(today));
const next = (h: Household) => nextOf(h, view(h), today);
const errands = (h: Household, on = today) => errandsOf(h, careDue(h, { ...under(on), weightsOf }), on, now);

const step = (kind: FreezeStep['kind'], from: string, to: string, doneOn?: string): FreezeStep => ({
  kind,
  from,
  to,
  ...(doneOn !== undefined && { doneOn }),
});
const lot = (food: string, about: Partial<Lot> = {}): Lot =>
  lotOf({ id: `lot-${food}`, food, grams: 500, boughtOn: '2026-03-01', ...about });
const batch = finished('b', '2026-03-01', {
  pours: [
    {
      food: 'millet',
      lots: [{ lot: 'lot-millet', grams: 90 }],
      target: 90,
      grams: 90,
      at: '2026-03-01T09:00:00',
    },
  ],
});
const { finishedAt: _, ...running } = batch;

describe('the next thing', () => {
  test('has the place where it is done', () => {
    expect(next(house())).toEqual({
      sentence: 'Buy and freeze 18 foods today.',
      link: 'Go to the shopping list',
      to: ['shopping'],
    });
    const lots = mix.problem.foods.map((f) => lot(f.id));
    expect(next(house({ lots }))).toMatchObject({ to: ['cupboard', 'cold'] });
    const ready = lots.map((l) => ({ ...l, form: 'dried' as const }));
    expect(next(house({ lots: ready }))).toMatchObject({ to: ['weigh'] });
    expect(next(house({ lots: ready, batches: [running] }))).toMatchObject({ to: ['mix', 'change'] });
    const kitchen = [{ id: 'kitchen' as const, stepDays: { 'change-over': 0 } }];
    expect(next(house({ lots: ready, batches: [running], kitchen }))).toMatchObject({ to: ['weigh', 'b'] });
  });

  test('is to say what an animal is fed, where nobody has', () => {
    const animals = demo.animals.map(({ dailyGrams: _, ...a }) => a);
    expect(next(house({ animals, batches: [batch] }))).toEqual({
      sentence: 'Nobody can say yet when batch 1 runs out. Enter how much Bramble is fed in a day.',
      link: 'Go to Bramble',
      to: ['animals', 'demo-animal'],
    });
    expect(next(house({ animals: [], batches: [batch] }))).toMatchObject({ to: ['mix'] });
  });
});

describe('for today', () => {
  test('nothing in a new household, which says what is made up', () => {
    expect(errands(house())).toEqual([]);
    expect(isNew(house())).toBe(true);
    expect(isNew(house({ lots: [lot('millet')] }))).toBe(false);
    expect(inventedIn(house())).toEqual(['Bramble', 'Invented pellet']);
  });

  test('a batch in the bowl, but none that was given up', () => {
    const [errand] = openBatches(house({ batches: [running] }));
    expect(errand).toMatchObject({
      words: 'First mix is being weighed: 90 g of 300 g lie in the bowl.',
      to: ['weigh', 'b'],
    });
    const given = { ...running, givenUp: { note: 'spilt', on: today } };
    expect(openBatches(house({ batches: [given] }))).toEqual([]);
    expect(errands(house({ batches: [running] }))).toEqual([]);
  });

  test('a barred lot in a batch that is fed, until that is eaten', () => {
    const lots = [lot('millet', { barred: { why: 'infested', on: '2026-03-09' } })];
    expect(errands(house({ lots, batches: [batch] }))[0]).toMatchObject({
      words:
        'millet is not to be used any more (insects in it) and went into First mix of 1 March. Do not feed it before you have looked into it.',
      to: ['cupboard', 'lot-millet'],
      warns: true,
    });
    const eaten = { ...batch, left: { grams: 0, on: today } };
    expect(errands(house({ lots, batches: [eaten] }))).toEqual([]);
  });

  test('the cold: to be ticked off, begun today, and without days', () => {
    const lots = [
      lot('rolled-oats', { cold: [step('freeze', '2026-03-05', '2026-03-09')] }),
      lot('millet', { cold: [step('freeze', '2026-03-10', '2026-03-14')] }),
      lot('maize', {
        cold: [
          step('freeze', '2026-03-05', '2026-03-10', '2026-03-10'),
          step('thaw', '2026-03-10', '2026-03-14'),
        ],
      }),
      lot('linseed'),
      lot('brown-rice', { cold: [step('freeze', '2026-03-12', '2026-03-16')] }),
    ];
    expect(errands(house({ lots })).map((e) => e.words)).toEqual([
      'rolled-oats has been frozen or thawed long enough: tick off the step.',
      'millet goes into the freezer today.',
      'maize comes out of the freezer today.',
      'linseed waits for freezing and has no days yet.',
    ]);
  });

  test('a lot past its best before, while there is some of it', () => {
    const past = lot('millet', { form: 'dried', bestBefore: '2026-03-09' });
    expect(errands(house({ lots: [past] }))).toMatchObject([{ to: ['cupboard', 'lot-millet'], warns: true }]);
    expect(errands(house({ lots: [{ ...past, bestBefore: today }] }))).toEqual([]);
    expect(
      errands(
        house({ lots: [{ ...past, grams: 90 }], batches: [{ ...batch, left: { grams: 0, on: today } }] }),
      ),
    ).toEqual([]);
  });

  test('a look at what dries, when it is due and later today', () => {
    const run = (startedAt: string) => ({
      id: 'r',
      lot: 'lot-carrot',
      device: 'oven' as const,
      celsius: 60,
      startedAt: new Date(startedAt).toISOString(),
      trays: 1,
      gramsBefore: 400,
      checks: [],
    });
    const at = (start: string) =>
      errands(house({ lots: [lot('carrot', { form: 'fresh' })], dryingRuns: [run(start)] })).map(
        (e) => e.words,
      );
    expect(at('2026-03-10T07:30:00')).toEqual(['Turn and check what dries: carrot. It was due at 09:30.']);
    expect(at('2026-03-09T20:00:00')).toEqual([
      'Turn and check what dries: carrot. It was due at 22:00 on 9 March.',
    ]);
    expect(at('2026-03-10T09:30:00')).toEqual(['Turn and check what dries at 11:30: carrot.']);
  });

  test('a batch near its use-by, or past it', () => {
    expect(nearUseByErrand('batch 3', 'b', '2026-03-25', today)).toBeUndefined();
    expect(nearUseByErrand('batch 3', 'b', '2026-03-24', today)!.words).toBe(
      'Batch 3 is to be used by 24 March (an estimate).',
    );
    expect(nearUseByErrand('batch 3', 'b', '2026-03-09', today)!.words).toMatch(
      /^Batch 3 was to be used by 9 March/,
    );
  });

  test('the change of food, as many days as the calendar gives it', () => {
    const change = (on: string, days?: number) => {
      const h = house({
        batches: [batch],
        ...(days !== undefined && {
          kitchen: [{ id: 'kitchen' as const, stepDays: { 'change-over': days } }],
        }),
      });
      return errands(h, on).find((e) => e.key === 'change b')?.words;
    };
    expect(change('2026-03-01')).toMatch(/^Change over to batch 1 slowly.*: day 1 of 14 days\./);
    expect(change('2026-03-10')).toMatch(/day 10 of 14 days/);
    expect(change('2026-03-15')).toBeUndefined();
    expect(change('2026-03-10', 10)).toMatch(/day 10 of 10 days/);
    expect(change('2026-03-10', 0)).toBeUndefined();
  });
});

describe('a food that upset an animal in a trial', () => {
  const upset: Trial = {
    id: 'trial',
    animalId: batch.animalIds[0] ?? '',
    food: 'millet',
    name: 'Millet',
    days: [],
    offerings: [{ on: '2026-03-09', seen: 'upset' }],
    endedOn: '2026-03-09',
  };
  const about = (trial: Trial, on?: string) =>
    errands(house({ batches: [batch], trials: [trial] }), on).filter((e) => e.key.startsWith('upset'));

  test('is told of for some days: look how the animal is', () => {
    const told = (on?: string) => about(upset, on).filter((e) => e.key === 'upset trial');
    expect(told().map((e) => [e.rank, e.to])).toEqual([['danger', ['animals', upset.animalId, 'trials']]]);
    expect(told('2026-03-11')).toHaveLength(1);
    expect(told('2026-03-12')).toEqual([]);
  });
  test('is no matter where it ate it, or the batch holds none of it', () => {
    expect(about({ ...upset, offerings: [{ on: '2026-03-09', seen: 'eaten' }] })).toEqual([]);
    expect(about({ ...upset, food: 'sr28:12220', name: 'Linseed' })).toHaveLength(1);
  });
});

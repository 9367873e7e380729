/** What is due of animals and batches: of all of them, and of nothing that nobody does. */
import { describe, expect, test } from 'vitest';
import { batch, demo, house, lot, mix, today, under } from '../../../../test/kitchen/calendar-house.ts';
import { type Feeding, feedingId, type Trial, type Weighing } from '../../../care/model.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Animal, Household, Mix } from '../../model.ts';
import { careDue } from './due.ts';
import { weightsOf } from './weight-of.ts';

const [bramble] = demo.animals as [Animal];
const clover: Animal = { ...bramble, id: 'clover', name: 'Clover' };
const due = (about: Partial<Household>, on = today) => careDue(house(about), { ...under(on), weightsOf });
const first = (about: Partial<Household>, on = today) => due(about, on).animals[0]!;
const ago = (days: number) => plusDays(today, -days);
const fed = (on: string, more: Partial<Feeding> = {}): Feeding => ({
  id: feedingId(bramble.id, on),
  animalId: bramble.id,
  on,
  at: `${on}T18:00:00Z`,
  mix: { batchId: 'b', grams: 6 },
  beside: [],
  ...more,
});
const weighing = (on: string, grams = 140, animalId = bramble.id): Weighing => ({
  id: `w-${animalId}-${on}`,
  animalId,
  at: `${on}T10:00:00Z`,
  grams,
});
const batches = [batch('b', ago(20))];

describe('feeding', () => {
  test('is offered, not due, until the keeper has ticked one off in the last days', () => {
    expect(first({ batches }).feed).toBe('offer');
    expect(first({ batches, feedings: [fed(ago(7))] }).feed).toBe('due');
    expect(first({ batches, feedings: [fed(ago(8))] }).feed).toBe('offer');
    expect(first({ batches, feedings: [fed(today)] }).feed).toBe('done');
    const { at: _, ...noted } = fed(ago(1), { left: { on: today } });
    expect(first({ batches, feedings: [noted] }).feed).toBe('offer');
  });

  test('is nothing to tick where nobody has said how much, and where nothing is fed', () => {
    const { dailyGrams: _, ...silent } = bramble;
    expect(first({ batches, animals: [silent] })).toMatchObject({ feed: 'no', meal: { mix: {} } });
    expect(first({}).meal).toBeUndefined();
    expect(first({}).feed).toBe('no');
  });
});

test('the last weighing is in doubt where it lies far off, until it is said to be right or another follows', () => {
  const steady = Array.from({ length: 20 }, (_, i) => weighing(ago(21 - i)));
  const slip = weighing(today, 1400);
  expect(first({ weighings: steady }).inDoubt).toBeUndefined();
  expect(first({ weighings: [...steady, slip] })).toMatchObject({ weighed: slip, inDoubt: true });
  expect(first({ weighings: [...steady, { ...slip, sure: true }] }).inDoubt).toBeUndefined();
  const old = weighing(ago(1), 1400);
  expect(first({ weighings: [...steady.slice(0, -1), old, weighing(today)] }).inDoubt).toBeUndefined();
});

describe('left-overs of last night', () => {
  const night = fed(ago(1));
  const before = fed(ago(9), { left: { on: ago(8), bowl: { grams: 1 } } });

  test('are asked for where the keeper notes some, and the night was ticked off', () => {
    expect(first({ feedings: [night] }).left).toBe('no');
    expect(first({ feedings: [night, before] }).left).toBe('due');
    expect(first({ feedings: [before] }).left).toBe('no');
    const long = fed(ago(16), { left: { on: ago(15) } });
    expect(first({ feedings: [night, long] }).left).toBe('no');
    expect(first({ feedings: [{ ...night, left: { on: today } }] }).left).toBe('done');
  });
});

describe('a trial', () => {
  const trial = (about: Partial<Trial>): Trial => ({
    id: 't',
    animalId: bramble.id,
    food: 'millet',
    name: 'Millet',
    days: [ago(3), today, plusDays(today, 3)],
    offerings: [],
    ...about,
  });
  const days = (about: Partial<Trial>, on = today) =>
    first({ trials: [trial(about)] }, on).trials.map((t) => t.day);

  test('is due on its days, one offer after the other, and told some days where it was missed', () => {
    expect(days({ days: [today] })).toEqual([today]);
    expect(days({ days: [today], offerings: [{ on: today, seen: 'eaten' }] })).toEqual([]);
    expect(days({ offerings: [{ on: ago(3), seen: 'eaten' }] })).toEqual([today]);
    expect(days({})).toEqual([ago(3)]);
    expect(days({ days: [ago(7)] })).toEqual([ago(7)]);
    expect(days({ days: [ago(8)] })).toEqual([]);
    expect(days({ days: [plusDays(today, 1)] })).toEqual([]);
  });

  test('is over once it was ended, and at once after an upset', () => {
    expect(days({ endedOn: ago(1) })).toEqual([]);
    expect(days({ offerings: [{ on: ago(3), seen: 'upset' }] })).toEqual([]);
  });

  test('makes weighing due more often', () => {
    const weighings = [weighing(ago(4))];
    expect(first({ weighings }).weigh.is).toBe('no');
    expect(first({ weighings, trials: [trial({})] }).weigh).toMatchObject({ is: 'due', why: 'trial' });
  });
});

describe('all animals and batches', () => {
  const other: Mix = { ...mix, id: 'other', name: 'Other mix', animalIds: ['clover'] };
  const animals = [bramble, clover];
  const ofOther = (on: string, more = {}) =>
    batch(`c-${on}`, on, { mixId: 'other', name: 'Other mix', animalIds: ['clover'], ...more });

  test('every batch that is fed, whichever mix is at hand; none of an animal that is gone', () => {
    const all = { animals, mixes: [mix, other], batches: [...batches, ofOther(ago(2))] };
    const answer = due(all);
    expect(answer.fed.map((f) => [f.present.batch.id, f.animals.map((a) => a.name)])).toEqual([
      [`c-${ago(2)}`, ['Clover']],
      ['b', ['Bramble']],
    ]);
    expect(answer.changing.map((c) => [c.fed.present.batch.id, c.day])).toEqual([[`c-${ago(2)}`, 3]]);
    expect(answer.animals.map((a) => a.meal?.mix?.batch.id)).toEqual(['b', `c-${ago(2)}`]);
    expect(answer.animals.map((a) => a.weigh.why)).toEqual(['weekly', 'change']);
    const gone = { ...clover, gone: { how: 'died', on: ago(1) } as const };
    const left = due({ ...all, animals: [bramble, gone] });
    expect(left.animals.map((a) => a.animal.name)).toEqual(['Bramble']);
    expect(left.fed.map((f) => f.present.batch.id)).toEqual(['b']);
  });

  test('an older batch counts beside the newest only while it lasts', () => {
    const of = (on: string) => ofOther(on);
    const kept = (older: string) =>
      due({ animals, mixes: [mix, other], batches: [of(older), of(ago(1))] }).fed.length;
    expect(kept(ago(30))).toBe(2);
    expect(kept(ago(60))).toBe(1);
  });

  test('what runs out within a week, and what has; not what did long ago', () => {
    // 300 g at 6 g a day last 50 days.
    const out = (made: string) => due({ batches: [batch('b', made)] }).runningOut.map((r) => r.day);
    expect(out(ago(42))).toEqual([]);
    expect(out(ago(43))).toEqual([plusDays(today, 7)]);
    expect(out(ago(60))).toEqual([ago(10)]);
    expect(out(ago(81))).toEqual([]);
  });

  test('a barred pack in any of them, told once', () => {
    const pours = [
      {
        food: 'millet',
        lots: [{ lot: 'lot-millet', grams: 90 }],
        target: 90,
        grams: 90,
        at: `${ago(9)}T09:00:00`,
      },
    ];
    const lots = [lot('millet', { barred: { why: 'recalled', on: ago(1) } })];
    const all = due({
      animals,
      mixes: [mix, other],
      lots,
      batches: [batch('b', ago(20), { pours }), ofOther(ago(2), { pours })],
    });
    expect(all.barred.map((b) => [b.lot.id, b.batches.map((x) => x.id)])).toEqual([
      ['lot-millet', ['b', `c-${ago(2)}`]],
    ]);
  });
});

describe('what may do harm', () => {
  const pours = [
    { food: 'millet', lots: [], target: 90, grams: 90, at: `${ago(20)}T09:00:00` },
    { food: 'linseed', lots: [], target: 9, grams: 9, at: `${ago(20)}T09:10:00` },
  ];
  const fedNow = [batch('b', ago(20), { pours })];

  test('a food in the batch that upset this animal, or another', () => {
    const trial: Trial = {
      id: 't',
      animalId: bramble.id,
      food: 'linseed',
      name: 'Linseed',
      days: [ago(9)],
      offerings: [{ on: ago(9), seen: 'upset' }],
      endedOn: ago(9),
    };
    const own = due({ batches: fedNow, trials: [trial] });
    expect(own.upset.map((u) => [u.food.food, u.food.animal.id, u.food.own])).toEqual([
      ['linseed', bramble.id, true],
    ]);
    expect(own.animals[0]?.feed).toBe('stop');
    const other = due({
      animals: [bramble, clover],
      batches: fedNow,
      trials: [{ ...trial, animalId: 'clover' }],
    });
    expect(other.upset.map((u) => [u.food.animal.id, u.food.own])).toEqual([['clover', false]]);
    expect(due({ batches: fedNow }).upset).toEqual([]);
  });

  test('a pack of pellets that is not used any more, and that an animal here was fed from', () => {
    const [pellet] = mix.problem.beside;
    const pack = lot(pellet?.id ?? '', { id: 'bag', barred: { why: 'recalled', on: ago(1) } });
    const feedings = [fed(ago(3), { beside: [{ food: pellet?.id ?? '', lot: 'bag', grams: 6 }] })];
    const told = due({ batches: fedNow, lots: [pack], feedings }).barredPacks;
    expect(told.map((t) => [t.pack.lot.id, t.animals.map((a) => a.name)])).toEqual([['bag', ['Bramble']]]);
    const cleared = { ...pack, left: { grams: 0, on: today } };
    expect(due({ batches: fedNow, lots: [cleared], feedings }).barredPacks).toEqual([]);
  });

  test('a batch that may hold a barred pack', () => {
    const lots = [lot('millet', { boughtOn: ago(30), barred: { why: 'recalled', on: ago(1) } })];
    const told = due({ batches: fedNow, lots });
    expect(told.maybeBarred.map((f) => f.present.batch.id)).toEqual(['b']);
    expect(told.barred).toEqual([]);
  });
});

test('pellets that run out within a week', () => {
  const [pellet] = mix.problem.beside;
  const out = (grams: number) =>
    due({ batches, lots: [lot(pellet?.id ?? '', { grams, boughtOn: today })] }).packsRunningOut;
  // 6 g of it are fed a day.
  expect(out(42)).toEqual([{ name: pellet?.name, day: plusDays(today, 7) }]);
  expect(out(48)).toEqual([]);
  expect(due({ batches }).packsRunningOut).toEqual([]);
});

test('ten years of records of five animals are gone through once', () => {
  const animals = ['a', 'b', 'c', 'd', 'e'].map((id) => ({ ...bramble, id, name: id }));
  const days = Array.from({ length: 3650 }, (_, i) => ago(3650 - i));
  const feedings = animals.flatMap(({ id }) =>
    days.map((on) => fed(on, { id: feedingId(id, on), animalId: id, left: { on, bowl: { grams: 1 } } })),
  );
  const all = house({
    animals,
    batches,
    feedings,
    weighings: days.slice(-700).map((on) => weighing(on, 140, 'a')),
  });
  let asked = 0;
  const once = { ...under(today), weightsOf };
  const counted: typeof once = {
    ...once,
    dayAt: (moment) => {
      asked += 1;
      return once.dayAt(moment);
    },
  };
  const first = careDue(all, counted);
  expect(asked).toBeGreaterThan(700);
  asked = 0;
  // Another object of the household, as after every change; its lists are the same: no weighing is gone through again.
  expect(careDue({ ...all }, counted)).toEqual(first);
  expect(asked).toBeLessThan(100);
});

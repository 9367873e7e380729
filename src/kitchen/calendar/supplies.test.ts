import { expect, test } from 'vitest';
import { lotOf } from '../../../test/kitchen/cupboards.ts';
import { dayIn, utcDay } from '../../../test/kitchen/zones.ts';
import type { DryingRun, FreezeStep, Lot } from '../model.ts';
import { moved } from './move-step.ts';
import { planKitchen } from './plan-kitchen.ts';
import { type NeededFood, suppliesOf } from './supplies.ts';

const food = (id: string, needsTreatment = true, dryAtHome = false): NeededFood => ({
  id,
  name: id,
  needsTreatment,
  dryAtHome,
});
const lot = (id: string, of: string, about: Partial<Lot> = {}): Lot =>
  lotOf({ id, food: of, grams: 500, boughtOn: '2026-02-01', ...about });
const rounds = (...doneOn: (string | undefined)[]): FreezeStep[] =>
  [
    ['freeze', '2026-02-01', '2026-02-04'],
    ['thaw', '2026-02-04', '2026-02-07'],
    ['freeze', '2026-02-07', '2026-02-10'],
    ['thaw', '2026-02-10', '2026-02-13'],
  ].map(([kind, from, to], i) => ({
    kind: kind as 'freeze' | 'thaw',
    from: from!,
    to: to!,
    ...(doneOn[i] !== undefined && { doneOn: doneOn[i] }),
  }));
const today = '2026-02-05';

test('foods without a lot are bought, each its way', () => {
  const foods = [food('oats'), food('carrot', false, true), food('grubs', false), food('millet')];
  expect(suppliesOf(foods, [], [], today, utcDay)).toEqual([
    {
      id: 'dry-goods',
      route: 'freeze',
      goods: [
        { food: 'oats', name: 'oats' },
        { food: 'millet', name: 'millet' },
      ],
    },
    { id: 'fresh-goods', route: 'dry', goods: [{ food: 'carrot', name: 'carrot' }] },
    { id: 'other-goods', route: 'ready', goods: [{ food: 'grubs', name: 'grubs' }] },
  ]);
});

test('lots go on from where they stand; those that stand alike go together', () => {
  const lots = [
    lot('L1', 'oats', { cold: rounds('2026-02-05') }),
    lot('L2', 'millet', { cold: rounds('2026-02-05') }),
    lot('L3', 'spelt', { cold: rounds() }),
  ];
  const supplies = suppliesOf([food('oats'), food('millet'), food('spelt')], lots, [], today, utcDay);
  expect(supplies.map((s) => [s.id, s.goods.map((g) => g.lot), s.progress])).toEqual([
    [
      'dry-goods-2026-02-01',
      ['L1', 'L2'],
      [{ from: '2026-02-01', to: '2026-02-05' }, { from: '2026-02-04' }],
    ],
    ['dry-goods-2026-02-01-spelt', ['L3'], [{ from: '2026-02-01' }]],
  ]);
  expect(supplies[0]!.rounds).toEqual([
    { kind: 'freeze', days: 3 },
    { kind: 'thaw', days: 3, on: '2026-02-04' },
    { kind: 'freeze', days: 3, on: '2026-02-07' },
    { kind: 'thaw', days: 3, on: '2026-02-10' },
  ]);
});

test('a step planned for another day has not begun', () => {
  const [supply] = suppliesOf(
    [food('oats')],
    [lot('L1', 'oats', { cold: rounds() })],
    [],
    '2026-01-31',
    utcDay,
  );
  expect(supply).not.toHaveProperty('progress');
  const [onTheDay] = suppliesOf(
    [food('oats')],
    [lot('L1', 'oats', { cold: rounds() })],
    [],
    '2026-02-01',
    utcDay,
  );
  expect(onTheDay).toMatchObject({ progress: [{ from: '2026-02-01' }] });
});

test('barred lots are bought anew; ready ones are not frozen again; overruled ones are not held up', () => {
  const lots = [
    lot('L1', 'oats', { barred: { why: 'weevils', on: '2026-02-03' } }),
    lot('L2', 'carrot', { form: 'dried' }),
    lot('L3', 'spelt', { overruled: { note: 'from the freezer of the mill', on: '2026-02-03' } }),
    lot('L4', 'rye'),
  ];
  const supplies = suppliesOf(
    [food('oats'), food('carrot'), food('spelt'), food('rye')],
    lots,
    [],
    today,
    utcDay,
  );
  expect(supplies.map((s) => [s.route, s.boughtOn, s.goods.map((g) => g.food)])).toEqual([
    ['freeze', undefined, ['oats']],
    ['ready', '2026-02-01', ['carrot', 'spelt']],
    ['freeze', '2026-02-01', ['rye']],
  ]);
});

test('where the grams are known, what is ready goes first, and what is missing is bought', () => {
  const lots = [
    lot('L1', 'oats', { grams: 100, cold: rounds() }),
    lot('L2', 'oats', { grams: 40, cold: rounds('2026-02-04', '2026-02-07', '2026-02-10', '2026-02-13') }),
    lot('L3', 'oats', { grams: 500 }),
  ];
  const of = (grams: number) =>
    suppliesOf([{ ...food('oats'), grams }], lots, [], today, utcDay).map((s) => s.goods.map((g) => g.lot));
  expect(of(40)).toEqual([['L2']]);
  expect(of(41)).toEqual([['L1'], ['L2']]);
  expect(of(640)).toEqual([['L1'], ['L2'], ['L3']]);
  expect(of(641)).toEqual([[undefined], ['L1'], ['L2'], ['L3']]);
  const fresh = suppliesOf(
    [{ ...food('oats'), grams: 900 }],
    [lot('L4', 'oats', { form: 'fresh' })],
    [],
    today,
    utcDay,
  );
  expect(fresh.map((s) => s.goods[0]!.lot)).toEqual(['L4']);
});

test('days that are set down with a lot stay; weighing waits for what was not ticked off in time', () => {
  const supplies = suppliesOf(
    [food('oats')],
    [lot('L1', 'oats', { cold: rounds('2026-02-04') })],
    [],
    '2026-02-10',
    utcDay,
  );
  const input = { id: 'p', name: 'batch 4', supplies };
  const plan = planKitchen(input, { from: '2026-02-10' });
  expect(plan.steps.map((s) => [s.kind, s.start, s.end, s.state, s.appointed])).toEqual([
    ['buy', '2026-02-01', '2026-02-01', 'done', false],
    ['freeze', '2026-02-01', '2026-02-04', 'done', false],
    ['thaw', '2026-02-04', '2026-02-07', 'begun', false],
    ['freeze', '2026-02-07', '2026-02-10', 'open', true],
    ['thaw', '2026-02-10', '2026-02-13', 'open', true],
    // The thaw is three days late, and so is all that follows it.
    ['weigh', '2026-02-16', '2026-02-17', 'open', false],
    ['change-over', '2026-02-17', '2026-03-03', 'open', false],
  ]);
  // Backwards they stay as well; so they do where a step is moved.
  const late = planKitchen(input, { from: '2026-02-10', until: '2026-06-01' });
  expect(late.steps.find((s) => s.id.startsWith('freeze-2'))!.start).toBe('2026-02-07');
  expect(moved(plan, 'freeze-2:dry-goods-2026-02-01', '2026-02-12')).toEqual({
    ok: false,
    sentence: 'Freeze (2 of 2): oats has its day with its packs: move it there.',
  });
  expect(moved(plan, 'weigh', '2026-02-15')).toMatchObject({
    ok: false,
    firstDay: '2026-02-16',
    sentence: expect.stringMatching(
      /what is in the freezer is not done by then. The first day possible is 16/,
    ),
  });
});

test('drying goes on until the last run has ended', () => {
  const run = (id: string, endedAt?: string): DryingRun => ({
    id,
    lot: 'L1',
    device: 'oven',
    celsius: 60,
    startedAt: '2026-02-04T09:00:00Z',
    trays: 2,
    gramsBefore: 400,
    checks: [],
    ...(endedAt !== undefined && { endedAt }),
  });
  const fresh = (runs: DryingRun[]) =>
    suppliesOf(
      [food('carrot', false, true)],
      [lot('L1', 'carrot', { form: 'fresh' })],
      runs,
      today,
      utcDay,
    )[0];
  expect(fresh([])).not.toHaveProperty('progress');
  expect(fresh([run('a', '2026-02-04T16:00:00Z'), run('b')])).toMatchObject({
    route: 'dry',
    progress: [{ from: '2026-02-04' }],
  });
  expect(fresh([run('a', '2026-02-04T16:00:00Z'), run('b', '2026-02-05T16:00:00Z')])).toMatchObject({
    progress: [{ from: '2026-02-04', to: '2026-02-05' }],
  });
});

test('runs began and ended on the days of the keeper’s own calendar', () => {
  const run: DryingRun = {
    id: 'a',
    lot: 'L1',
    device: 'oven',
    celsius: 90,
    startedAt: '2026-02-04T02:00:00Z',
    trays: 2,
    gramsBefore: 400,
    checks: [],
    endedAt: '2026-02-04T22:00:00Z',
  };
  const lots = [lot('L1', 'carrot', { form: 'fresh' })];
  const progress = (zone: string) =>
    suppliesOf([food('carrot', false, true)], lots, [run], today, dayIn(zone))[0]?.progress;
  // The evening of the 3rd to the afternoon of the 4th; the noon of the 4th to the morning of the 5th.
  expect(progress('America/New_York')).toEqual([{ from: '2026-02-03', to: '2026-02-04' }]);
  expect(progress('Asia/Tokyo')).toEqual([{ from: '2026-02-04', to: '2026-02-05' }]);
});

test('make a plan, whatever state they are in', () => {
  const lots = [
    lot('L1', 'oats', { cold: rounds('2026-02-05', '2026-02-04') }),
    lot('L2', 'millet', { cold: rounds('2026-02-04', '2026-02-07', '2026-02-10', '2026-02-13') }),
  ];
  const supplies = suppliesOf([food('oats'), food('millet'), food('rye')], lots, [], '2026-02-14', utcDay);
  const plan = planKitchen({ id: 'p', name: 'batch 4', supplies }, { from: '2026-02-14' });
  expect(plan.steps.filter((s) => s.state === 'begun').map((s) => s.id)).toEqual([
    'freeze-2:dry-goods-2026-02-01',
  ]);
  expect(() => suppliesOf([], [], [], 'today', utcDay)).toThrow('today: "today" is no day');
});

test('a fresh lot counts for what it comes to once dried; for enough where that is not known', () => {
  const carrot = { ...food('carrot', false, true), grams: 40 };
  const lots = [lot('f', 'carrot', { form: 'fresh', grams: 200 })];
  const routes = (need: NeededFood) =>
    suppliesOf([need], lots, [], today, utcDay).map((s) => [s.route, s.boughtOn !== undefined]);
  expect(routes(carrot)).toEqual([['dry', true]]);
  // 200 g come to 24 g of the 40: some has to be bought.
  expect(routes({ ...carrot, perFresh: 0.12 })).toEqual([
    ['dry', false],
    ['dry', true],
  ]);
  expect(routes({ ...carrot, perFresh: 0.2 })).toEqual([['dry', true]]);
});

test('a food that is itself fresh is dried first, never frozen and thawed as dry goods', () => {
  const broccoli: NeededFood = { ...food('broccoli', true, true), fresh: true };
  const routes = (...lots: Lot[]) =>
    suppliesOf([broccoli], lots, [], today, utcDay).map((s) => [s.route, s.goods[0]?.lot, s.rounds]);
  expect(routes()).toEqual([['dry', undefined, undefined]]);
  // Also where its pack was written down as bought dry, or was given days in the freezer.
  expect(routes(lot('L1', 'broccoli'))).toEqual([['dry', 'L1', undefined]]);
  expect(routes(lot('L1', 'broccoli', { cold: rounds() }))).toEqual([['dry', 'L1', undefined]]);
  expect(routes(lot('L1', 'broccoli', { form: 'dried' }))).toEqual([['ready', 'L1', undefined]]);
});

test('what tells supplies of one day apart names no lot', () => {
  const lots = ['L1', 'L2', 'L3'].map((id, i) =>
    lot(id, 'oats', { cold: rounds(...(i > 0 ? ['2026-02-05'] : [])).slice(0, 4 - i) }),
  );
  expect(suppliesOf([food('oats')], lots, [], today, utcDay).map((s) => s.id)).toEqual([
    'dry-goods-2026-02-01',
    'dry-goods-2026-02-01-oats',
    'dry-goods-2026-02-01-oats-2',
  ]);
});

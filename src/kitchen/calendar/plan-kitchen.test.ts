import { describe, expect, test } from 'vitest';
import { dry, fresh, kitchen } from '../../../test/kitchen/kitchen-input.ts';
import { CHANGE_DAYS } from '../feeding/change-days.ts';
import type { Frame, KitchenInput, KitchenPlan, PlannedStep, Supply } from './kitchen-plan.ts';
import { moved } from './move-step.ts';
import { planKitchen } from './plan-kitchen.ts';
import { SHORTEST_DAYS, STEP_DAYS } from './step-days.ts';
import { stepTitle } from './step-words.ts';

const at = (plan: KitchenPlan, id: string): PlannedStep => plan.steps.find((s) => s.id === id)!;
const spans = (plan: KitchenPlan) => plan.steps.map((s) => `${s.id} ${s.start.slice(5)} ${s.end.slice(5)}`);

describe('forwards from a day', () => {
  const plan = planKitchen(kitchen, { from: '2026-02-01' });

  test('each step begins when all that it waits for has ended', () => {
    expect(spans(plan).sort()).toEqual([
      'buy:dry-goods 02-01 02-01',
      'buy:fresh-goods 02-01 02-01',
      'change-over 02-18 03-04',
      'dry:fresh-goods 02-01 02-02',
      'freeze-1:dry-goods 02-01 02-05',
      'freeze-2:dry-goods 02-09 02-13',
      'thaw-1:dry-goods 02-05 02-09',
      'thaw-2:dry-goods 02-13 02-17',
      'weigh 02-17 02-18',
    ]);
    expect(plan.end).toBe('2026-03-04');
    expect(plan).not.toHaveProperty('deadline');
  });

  test('the freezer sets the pace, and drying has room', () => {
    expect(plan.criticalPath).toEqual([
      'buy:dry-goods',
      'freeze-1:dry-goods',
      'thaw-1:dry-goods',
      'freeze-2:dry-goods',
      'thaw-2:dry-goods',
      'weigh',
      'change-over',
    ]);
    expect(plan.criticalDays).toBe(31);
    expect(at(plan, 'dry:fresh-goods')).toMatchObject({ slack: 15, critical: false, latest: '2026-02-16' });
    expect(at(plan, 'freeze-1:dry-goods')).toMatchObject({ slack: 0, critical: true });
  });

  test('is judged by the day on which the present batch runs out', () => {
    const until = (day: string) =>
      planKitchen(
        {
          ...kitchen,
          present: {
            name: 'batch 3',
            runsOut: { status: 'known', day, gramsADay: 5, sentence: '' },
          },
        },
        { from: '2026-02-01' },
      );
    expect(until('2026-03-14')).toMatchObject({ deadline: '2026-03-14', fits: true, spare: 10 });
    expect(until('2026-03-03')).toMatchObject({
      fits: false,
      spare: -1,
      shortest: { end: '2026-02-21', fits: true },
    });
    expect(until('2026-02-20')).toMatchObject({ fits: false, shortest: { fits: false } });
  });
});

describe('backwards from a day', () => {
  test('everything is as late as can be', () => {
    const plan = planKitchen(kitchen, { until: '2026-03-14' });
    expect(at(plan, 'freeze-1:dry-goods').start).toBe('2026-02-11');
    expect(at(plan, 'dry:fresh-goods').start).toBe('2026-02-26');
    expect(plan).toMatchObject({ start: '2026-02-11', end: '2026-03-14', fits: true, spare: 0 });
  });

  test('with a first day, it tells how many days are to spare', () => {
    expect(planKitchen(kitchen, { from: '2026-02-01', until: '2026-03-14' })).toMatchObject({
      start: '2026-02-11',
      spare: 10,
      fits: true,
    });
  });

  test('too late: everything as early as can be, and the slack is below 0', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-21', until: '2026-03-14' });
    expect(plan).toMatchObject({ start: '2026-02-21', end: '2026-03-24', fits: false, spare: -10 });
    expect(at(plan, 'weigh')).toMatchObject({ slack: -10, critical: true });
    expect(plan.shortest).toEqual({ end: '2026-03-13', fits: true });
    const later = planKitchen(kitchen, { from: '2026-02-23', until: '2026-03-14' });
    expect(later.shortest).toEqual({ end: '2026-03-15', fits: false });
  });

  test('the shortest change of food is that of a plan for the change itself', () => {
    expect(SHORTEST_DAYS['change-over']).toBe(CHANGE_DAYS.least);
    expect(CHANGE_DAYS.least).toBe(7);
  });
});

describe('what is done', () => {
  const half: KitchenInput = {
    ...kitchen,
    supplies: [
      {
        ...dry,
        boughtOn: '2026-02-01',
        progress: [{ from: '2026-02-01', to: '2026-02-06' }, { from: '2026-02-06' }],
      },
      fresh,
    ],
  };

  test('stays where it was; what goes on ends today at the earliest', () => {
    const plan = planKitchen(half, { from: '2026-02-12' });
    expect(at(plan, 'freeze-1:dry-goods')).toMatchObject({
      state: 'done',
      start: '2026-02-01',
      end: '2026-02-06',
      critical: false,
    });
    expect(at(plan, 'thaw-1:dry-goods')).toMatchObject({
      state: 'begun',
      start: '2026-02-06',
      end: '2026-02-12',
    });
    expect(at(plan, 'freeze-2:dry-goods').start).toBe('2026-02-12');
    expect(plan.criticalPath[0]).toBe('thaw-1:dry-goods');
  });

  test('does not move, and holds up what comes after it', () => {
    const plan = planKitchen(half, { from: '2026-02-08' });
    expect(moved(plan, 'freeze-1:dry-goods', '2026-02-03')).toEqual({
      ok: false,
      sentence: 'Freeze (1 of 2): oats, millet is done and does not move; move what comes after it.',
    });
    expect(moved(plan, 'freeze-2:dry-goods', '2026-02-09')).toEqual({
      ok: false,
      firstDay: '2026-02-10',
      sentence:
        'Freeze (2 of 2): oats, millet cannot begin on 9 February: thaw (1 of 2): oats, millet lasts until 10 February. The first day possible is 10 February, or give that step fewer days.',
    });
  });

  test('once weighing has begun, nothing waits for goods that were left out', () => {
    const plan = planKitchen(
      { ...half, weighed: { from: '2026-02-10', to: '2026-02-10' }, changed: { from: '2026-02-11' } },
      { from: '2026-02-12' },
    );
    expect(plan.steps.map((s) => [s.id, s.state])).toEqual([
      ['buy:dry-goods', 'done'],
      ['freeze-1:dry-goods', 'done'],
      ['weigh', 'done'],
      ['change-over', 'begun'],
    ]);
    expect(plan.end).toBe('2026-02-25');
  });

  test('all of it', () => {
    const plan = planKitchen(
      {
        id: 'p',
        name: 'batch 4',
        supplies: [],
        changeOver: false,
        weighed: { from: '2026-02-10', to: '2026-02-11' },
      },
      { until: '2026-03-01' },
    );
    expect(plan).toMatchObject({ end: '2026-02-11', criticalPath: [], criticalDays: 0, fits: true });
  });
});

describe('what cannot be planned', () => {
  const one = (supply: Partial<Supply>): KitchenInput => ({ ...kitchen, supplies: [{ ...dry, ...supply }] });
  test.each<[string, KitchenInput, Frame?]>([
    ['days.freeze: 3.5 is no whole number of days from 0 to 366', { ...kitchen, days: { freeze: 3.5 } }],
    ['days.change-over: -1 is no whole number', { ...kitchen, days: { 'change-over': -1 } }],
    ['"dry-goods".rounds.0.days: 400 is no whole number', one({ rounds: [{ kind: 'freeze', days: 400 }] })],
    ['one of them has no goods', one({ goods: [] })],
    ['boughtOn."dry-goods": a step after buying has begun', one({ progress: [{ from: '2026-02-01' }] })],
    [
      'progress."dry-goods": a step has begun before the one before it ended',
      one({ boughtOn: '2026-02-01', progress: [{ from: '2026-02-01' }, { from: '2026-02-05' }] }),
    ],
    [
      'progress."dry-goods": it ends on 2026-01-01, before it begins on 2026-02-01',
      one({ boughtOn: '2026-02-01', progress: [{ from: '2026-02-01', to: '2026-01-01' }] }),
    ],
    [
      'progress."dry-goods": 1 steps are said to have begun, but there are 0 after buying',
      one({ route: 'ready', boughtOn: '2026-02-01', progress: [{ from: '2026-02-01' }] }),
    ],
    ['changed: the change to the new batch has begun', { ...kitchen, changed: { from: '2026-02-01' } }],
    ['from: "tomorrow" is no day', kitchen, { from: 'tomorrow' }],
    ['until: "2026-2-1" is no day', kitchen, { until: '2026-2-1' }],
    ['two of them have the same id', { ...kitchen, supplies: [dry, dry] }],
  ])('%s', (message, input, frame = { from: '2026-02-01' }) => {
    expect(() => planKitchen(input, frame)).toThrow(message);
  });
});

test('a title names three foods and counts the rest', () => {
  const names = ['oats', 'millet', 'linseed', 'spelt', 'rye'];
  const goods = names.map((name) => ({ food: name, name }));
  const plan = planKitchen({ ...kitchen, supplies: [{ ...dry, goods }] }, { from: '2026-02-01' });
  expect(stepTitle(at(plan, 'thaw-2:dry-goods'))).toBe('thaw (2 of 2): oats, millet, linseed and 2 more');
  expect(at(plan, 'weigh').goods).toEqual(goods);
  expect(STEP_DAYS.freeze * 2 + STEP_DAYS.thaw * 2).toBe(16);
});

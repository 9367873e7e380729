import { describe, expect, test } from 'vitest';
import type { Batch, Kitchen, Lot } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household, Mix } from '../../model.ts';
import { calendarOf } from './batch-calendar.ts';
import { foodsNeeded } from './foods-needed.ts';
import { withFrame } from './plan-frame.ts';

const today = '2026-03-10';

const demo = demoHousehold();

const mix: Mix = demo.mixes[0]!;

const house = (about: Partial<Household> = {}): Household => ({ ...demo, ...about });

const kitchen = (about: Partial<Kitchen>): Kitchen[] => [{ id: 'kitchen', ...about }];

const lot = (food: string, about: Partial<Lot> = {}): Lot => ({
  id: `lot-${food}`,
  food,
  name: food,
  grams: 500,
  form: 'dry',
  boughtOn: '2026-03-08',
  frozen: false,
  cold: [],
  ...about,
});

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

describe('the plan', () => {
  test('takes the foods with a share, each its way', () => {
    const shares = { ...mix.shares, millet: 0 };
    const driedAtHome = [{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 5 }];
    const foods = foodsNeeded(house({ kitchen: kitchen({ driedAtHome }) }), { ...mix, shares }, new Map());
    expect(foods).toHaveLength(mix.problem.foods.length - 1);
    expect(foods.find((f) => f.id === 'rolled-oats')).toMatchObject({
      needsCold: true,
      dryAtHome: false,
      grams: 15,
    });
    expect(foods.find((f) => f.id === 'carrot-dried')).toMatchObject({ dryAtHome: true });
    expect(foods.find((f) => f.id === 'dried-mealworm')).toMatchObject({ needsCold: false });
  });

  test('goes forwards from today, or from a day that has not passed', () => {
    const from = (day: string) =>
      calendarOf(house({ kitchen: kitchen({ next: { mixId: mix.id, from: day, pins: [] } }) }), mix, today);
    expect(calendarOf(house(), mix, today)).toMatchObject({ mode: 'today', plan: { start: today } });
    expect(from('2026-03-20')).toMatchObject({
      mode: 'from',
      plan: { start: '2026-03-20' },
      fromPassed: false,
    });
    expect(from('2026-03-01')).toMatchObject({ plan: { start: today }, fromPassed: true });
  });

  test('goes backwards from the day on which the present batch runs out, whichever that is', () => {
    const next = withFrame({ mixId: mix.id, pins: [], from: today }, 'runs-out', today);
    expect(next).toEqual({ mixId: mix.id, pins: [], untilRunsOut: true });
    const at = (batches: readonly Batch[]) =>
      calendarOf(house({ batches, kitchen: kitchen({ next }) }), mix, today);
    expect(at([batch('a', '2026-03-01')]).plan).toMatchObject({ deadline: '2026-04-20', end: '2026-04-20' });
    expect(at([batch('a', '2026-03-05')]).plan.deadline).toBe('2026-04-24');
    // Nothing is fed: there is no such day, so it goes forwards.
    expect(at([])).toMatchObject({ mode: 'today' });
  });

  test('of a batch being weighed is of that batch', () => {
    const { finishedAt: _, ...running } = batch('b', '2026-03-09');
    const view = calendarOf(house({ batches: [batch('a', '2026-03-01'), running] }), mix, today);
    expect(view.plan.input.name).toBe('batch 2');
    expect(view.plan.steps.map((s) => [s.id, s.state])).toEqual([
      ['weigh', 'begun'],
      ['change-over', 'open'],
    ]);
  });

  test('leaves out the change of food where it takes no days', () => {
    const view = calendarOf(house({ kitchen: kitchen({ stepDays: { 'change-over': 0 } }) }), mix, today);
    expect(view.plan.steps.at(-1)!.id).toBe('weigh');
  });
});

describe('fresh food', () => {
  const carrot = {
    ref: 'fresh',
    name: 'Carrot',
    source: 's',
    composition: { WATER: 88 },
    sd: {},
    refuse: 10,
  };
  const table = new Map([['fresh', carrot]]);
  const dried = kitchen({ driedAtHome: [{ food: 'carrot-dried', fresh: 'fresh', moisture: 10 }] });
  const carrots = (grams: number) => lot('carrot-dried', { form: 'fresh', grams });
  const steps = (h: Household) =>
    calendarOf(h, mix, today, table)
      .plan.steps.filter((s) => s.goods.length === 1 && s.goods[0]!.food === 'carrot-dried')
      .map((s) => [s.kind, s.state]);

  test('counts for what it comes to: 15 g dried take about 125 g as bought', () => {
    expect(steps(house({ kitchen: dried, lots: [carrots(130)] }))).toEqual([
      ['buy', 'done'],
      ['dry', 'open'],
    ]);
    expect(steps(house({ kitchen: dried, lots: [carrots(110)] }))).toEqual([
      ['buy', 'open'],
      ['buy', 'done'],
      ['dry', 'open'],
      ['dry', 'open'],
    ]);
  });

  test('on the trays is on its way, not to be bought again', () => {
    const run = {
      id: 'r',
      lot: 'lot-carrot-dried',
      device: 'oven' as const,
      celsius: 60,
      startedAt: `${today}T06:00:00.000Z`,
      trays: 1,
      gramsBefore: 120,
      gramsTaken: 130,
      checks: [],
    };
    expect(steps(house({ kitchen: dried, lots: [carrots(130)], dryingRuns: [run] }))).toEqual([
      ['buy', 'done'],
      ['dry', 'begun'],
    ]);
  });
});

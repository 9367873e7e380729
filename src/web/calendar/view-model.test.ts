/** From a household to a calendar: what counts as the present batch, days that stand with lots, and moves. */
import { describe, expect, test } from 'vitest';
import { demoHousehold } from '../../household/demo.ts';
import type { Household, Mix } from '../../household/model.ts';
import { planKitchen } from '../../kitchen/calendar/plan-kitchen.ts';
import type { Batch, FreezeStep, Kitchen, Lot } from '../../kitchen/model.ts';
import {
  byDay,
  calendarOf,
  dayWithWeekday,
  foodsNeeded,
  leftOn,
  moveStep,
  overdue,
  presentOf,
  readyFoods,
  rowsOf,
  spanOf,
  withFrame,
  withoutColdDays,
} from './view-model.ts';

const today = '2026-03-10';
const demo = demoHousehold();
const mix: Mix = demo.mixes[0]!;
const house = (about: Partial<Household> = {}): Household => ({ ...demo, ...about });
const kitchen = (about: Partial<Kitchen>): Kitchen[] => [{ id: 'kitchen', ...about }];

const rounds = (days: readonly string[], done = 0): FreezeStep[] =>
  (['freeze', 'thaw', 'freeze', 'thaw'] as const).map((kind, i) => ({
    kind,
    from: days[i]!,
    to: days[i + 1]!,
    ...(i < done && { doneOn: days[i + 1]! }),
  }));
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

describe('the plan', () => {
  test('takes the foods with a share, each its way', () => {
    const shares = { ...mix.shares, millet: 0 };
    const driedAtHome = [{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 5 }];
    const foods = foodsNeeded(house({ kitchen: kitchen({ driedAtHome }) }), { ...mix, shares }, new Map());
    expect(foods).toHaveLength(mix.problem.foods.length - 1);
    expect(foods.find((f) => f.id === 'rolled-oats')).toMatchObject({
      needsTreatment: true,
      dryAtHome: false,
      grams: 15,
    });
    expect(foods.find((f) => f.id === 'carrot-dried')).toMatchObject({ dryAtHome: true });
    expect(foods.find((f) => f.id === 'dried-mealworm')).toMatchObject({ needsTreatment: false });
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

describe('a step on another day', () => {
  const at = (h: Household) => calendarOf(h, mix, today);
  const move = (h: Household, id: string, day: string) => moveStep(h, mix, at(h), id, day, today);

  test('is kept with the plan and comes out the same when it is read again', () => {
    const answer = move(house(), 'thaw-1:dry-goods', '2026-03-17');
    if (!answer.ok) throw new Error(answer.sentence);
    expect(answer.next!.pins).toEqual([{ step: 'thaw-1:dry-goods', day: '2026-03-17' }]);
    expect(answer.lots).toEqual([]);
    expect(answer.sentence).toMatch(
      /now begins on 17 March\. With it: freeze 2 to 21 March, thaw 2 to 25 March, weigh out to 29 March and change over to 30 March\./,
    );
    const again = at(house({ kitchen: kitchen({ next: answer.next! }) }));
    expect(again.plan.steps).toEqual(answer.after.plan.steps);
    expect(again.dropped).toEqual([]);
  });

  test('that is moved twice in a row is one move', () => {
    const first = move(house(), 'weigh', '2026-04-01');
    if (!first.ok) throw new Error(first.sentence);
    const second = move(house({ kitchen: kitchen({ next: first.next! }) }), 'weigh', '2026-03-30');
    expect(second.ok && second.next!.pins).toEqual([{ step: 'weigh', day: '2026-03-30' }]);
    // What the first move pushed comes back with the second.
    expect(second.ok && second.after.plan.end).toBe('2026-04-14');
  });

  test('that cannot be says the first day on which it can', () => {
    expect(move(house(), 'weigh', '2026-03-20')).toMatchObject({ ok: false, firstDay: '2026-03-26' });
  });

  test('is dropped and said where it is gone or no longer fits, and served where it is done', () => {
    const pins = [
      { step: 'freeze-1:dry-goods-2025-01-01', day: '2026-03-12' },
      { step: 'weigh', day: '2026-03-11' },
      { step: 'change-over', day: '2026-04-01' },
    ];
    const view = at(house({ kitchen: kitchen({ next: { mixId: mix.id, pins } }) }));
    expect(view.next.pins).toEqual([pins[2]]);
    expect(view.dropped).toEqual([
      expect.stringMatching(/you put on 12 March is no longer in the plan/),
      expect.stringMatching(/Weigh out cannot begin on 11 March/),
    ]);
  });
});

describe('lots with days in the freezer', () => {
  const days = ['2026-03-12', '2026-03-16', '2026-03-20', '2026-03-24', '2026-03-28'];
  const oats = lot('rolled-oats', { grams: 900, cold: rounds(days) });
  const millet = lot('millet', {
    cold: rounds(['2026-03-16', '2026-03-19', '2026-03-24', '2026-03-27', '2026-03-30']),
  });
  const id = 'dry-goods-2026-03-08';
  const shares = { 'rolled-oats': 50, millet: 50 };
  const two: Mix = { ...mix, shares };
  const full = house({ lots: [oats, millet], kitchen: kitchen({ freezer: { grams: 1000, celsius: -18 } }) });
  const move = (h: Household, step: string, day: string) =>
    moveStep(h, two, calendarOf(h, two, today), step, day, today);

  test('show on those days, and are moved with the lots', () => {
    const view = calendarOf(full, two, today);
    expect(view.plan.steps.filter((s) => s.supply === id && s.kind !== 'buy').map((s) => s.start)).toEqual(
      days.slice(0, 4),
    );
    const answer = move(full, `thaw-2:${id}`, '2026-03-26');
    if (!answer.ok) throw new Error(answer.sentence);
    expect(answer.next).toBeUndefined();
    expect(answer.lots.map((l) => [l.id, l.grams, l.cold[3]])).toEqual([
      [oats.id, 900, { kind: 'thaw', from: '2026-03-26', to: '2026-03-30' }],
    ]);
  });

  test('are not put into a freezer that is full, and a day with room is named', () => {
    const answer = move(full, `freeze-1:${id}`, '2026-03-13');
    expect(answer).toMatchObject({ ok: false, room: true, firstDay: '2026-03-19' });
    expect(!answer.ok && answer.sentence).toMatch(
      /on 16 March 1.4 kg would lie in the freezer .* room for 1 kg/,
    );
    expect(move(full, `freeze-1:${id}`, '2026-03-19').ok).toBe(true);
    // Of a freezer that nobody described nothing is said.
    expect(move({ ...full, kitchen: [] }, `freeze-1:${id}`, '2026-03-13').ok).toBe(true);
  });

  test('do not go before today, the day they were bought, or the step before', () => {
    expect(move(full, `freeze-1:${id}`, '2026-03-09')).toMatchObject({ ok: false, firstDay: today });
    expect(move(full, `thaw-1:${id}`, '2026-03-14')).toMatchObject({
      ok: false,
      firstDay: '2026-03-16',
      sentence: expect.stringMatching(/freeze 1 before it lasts until 16 March/),
    });
  });

  test('without days get those of the plan once one of them is moved', () => {
    const bare = house({ lots: [lot('rolled-oats')] });
    const view = calendarOf(bare, two, today);
    expect(withoutColdDays(bare, view.plan)).toEqual(['rolled-oats']);
    const answer = move(bare, `freeze-2:${id}`, '2026-03-19');
    expect(answer.ok && answer.lots[0]!.cold.map((s) => [s.from, s.to])).toEqual([
      ['2026-03-10', '2026-03-14'],
      ['2026-03-14', '2026-03-18'],
      ['2026-03-19', '2026-03-23'],
      ['2026-03-23', '2026-03-27'],
    ]);
  });

  test('over and not ticked off are named', () => {
    const late = house({
      lots: [
        lot('rolled-oats', {
          cold: rounds(['2026-03-01', '2026-03-05', '2026-03-09', '2026-03-13', '2026-03-17']),
        }),
      ],
    });
    const view = calendarOf(late, two, today);
    expect(overdue(view.plan, today).map((s) => s.id)).toEqual([`freeze-1:${id}`]);
    // Bought millet sets the pace; the oats, five days late, come after 22 March.
    expect(view.plan.steps.find((s) => s.id === 'weigh')!.start).toBe('2026-03-26');
  });
});

describe('what is shown', () => {
  const supplies = [
    { id: 'old', route: 'ready' as const, boughtOn: '2026-01-01', goods: [{ food: 'a', name: 'Oats' }] },
    { id: 'new', route: 'freeze' as const, goods: ['b', 'c', 'd'].map((food) => ({ food, name: food })) },
  ];
  const plan = planKitchen({ id: 'p', name: 'batch 4', supplies }, { from: today });

  test('rows for what is to be done, names for what is ready', () => {
    expect(rowsOf(plan).map((r) => [r.title, r.bars.length])).toEqual([
      ['b and 2 more', 5],
      ['Weigh out', 1],
      ['Change over', 1],
    ]);
    expect(readyFoods(plan)).toEqual(['Oats']);
    expect(byDay(plan).map((d) => d.day)).toEqual([
      '2026-03-10',
      '2026-03-14',
      '2026-03-18',
      '2026-03-22',
      '2026-03-26',
      '2026-03-27',
    ]);
  });

  test('a span from today to the end; a far deadline does not press all else together', () => {
    const days = (until: string) => {
      const [a, b] = spanOf(
        planKitchen(
          {
            id: 'p',
            name: 'batch 4',
            supplies,
            present: { name: 'b', runsOut: { status: 'known', day: until, gramsADay: 1, sentence: '' } },
          },
          { from: today },
        ),
        today,
      );
      return b - a - 1;
    };
    expect(days('2026-04-20')).toBe(41);
    expect(days('2026-12-01')).toBe(31);
  });

  test('days with their weekday', () => {
    expect(dayWithWeekday('2026-03-14', today)).toBe('Saturday, 14 March');
    expect(dayWithWeekday('1969-12-31', '1969-01-01')).toBe('Wednesday, 31 December');
  });
});

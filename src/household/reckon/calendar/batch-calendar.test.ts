import { describe, expect, test } from 'vitest';
import { batch, house, kitchen, lot, mix, today, under } from '../../../../test/kitchen/calendar-house.ts';
import { planSentences } from '../../../kitchen/calendar/sentences.ts';
import type { Batch } from '../../../kitchen/model.ts';
import type { Household } from '../../model.ts';
import { calendarOf } from './batch-calendar.ts';
import { foodsNeeded } from './foods-needed.ts';
import { withFrame } from './plan-frame.ts';

describe('the plan', () => {
  test('takes the foods with a share, each its way', () => {
    const shares = { ...mix.shares, millet: 0 };
    const driedAtHome = [{ food: 'carrot-dried', fresh: 'sr28:11124', moisture: 5 }];
    const foods = foodsNeeded(house({ kitchen: kitchen({ driedAtHome }) }), { ...mix, shares }, under(today));
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
      calendarOf(
        house({ kitchen: kitchen({ next: { mixId: mix.id, from: day, pins: [] } }) }),
        mix,
        under(today),
      );
    expect(calendarOf(house(), mix, under(today))).toMatchObject({ mode: 'today', plan: { start: today } });
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
      calendarOf(house({ batches, kitchen: kitchen({ next }) }), mix, under(today));
    expect(at([batch('a', '2026-03-01')]).plan).toMatchObject({ deadline: '2026-04-20', end: '2026-04-20' });
    expect(at([batch('a', '2026-03-05')]).plan.deadline).toBe('2026-04-24');
    // Nothing is fed: there is no such day, so it goes forwards.
    expect(at([])).toMatchObject({ mode: 'today' });
  });

  test('of a batch being weighed is of that batch', () => {
    const { finishedAt: _, ...running } = batch('b', '2026-03-09');
    const view = calendarOf(house({ batches: [batch('a', '2026-03-01'), running] }), mix, under(today));
    expect(view.plan.input.name).toBe('batch 2');
    expect(view.plan.steps.map((s) => [s.id, s.state])).toEqual([
      ['weigh', 'begun'],
      ['change-over', 'open'],
    ]);
  });

  test('leaves out the change of food where it takes no days', () => {
    const view = calendarOf(
      house({ kitchen: kitchen({ stepDays: { 'change-over': 0 } }) }),
      mix,
      under(today),
    );
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
    calendarOf(h, mix, under(today, { table }))
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

  test('in the mix itself is dried first; what is dried, or of unknown water, is not taken for fresh', () => {
    const foods = [
      { id: 'broccoli', name: 'Broccoli', ref: 'sr28:11090', group: 'vegetable' },
      { id: 'grubs', name: 'Live grubs', composition: { WATER: 62 }, group: 'animal' },
      { id: 'apple', name: 'Apple, dried', ref: 'sr28:09011', group: 'fruit' },
      { id: 'mine', name: 'From a label without moisture', composition: { PROCNT: 12 }, group: 'seed' },
    ];
    const wet = (water: number) => ({ ...carrot, composition: { WATER: water } });
    const known = new Map([
      ['sr28:11090', wet(89.3)],
      ['sr28:09011', wet(31.8)],
    ]);
    const own = {
      ...mix,
      problem: { ...mix.problem, foods },
      shares: { broccoli: 25, grubs: 25, apple: 25, mine: 25 },
    };
    const { plan } = calendarOf(house({ mixes: [own] }), own, under(today, { table: known }));
    const kindsOf = (food: string) =>
      plan.steps
        .filter((s) => s.supply !== undefined && s.goods.some((g) => g.food === food))
        .map((s) => s.kind);
    const frozen = ['buy', 'freeze', 'thaw', 'freeze', 'thaw'];
    expect(Object.fromEntries(foods.map(({ id }) => [id, kindsOf(id)]))).toEqual({
      broccoli: ['buy', 'dry'],
      grubs: ['buy', 'dry'],
      apple: frozen,
      mine: frozen,
    });
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

describe('with a batch that is not to be fed', () => {
  const barred = { why: 'recalled', on: '2026-03-09' };
  const from = (lots: readonly { lot: string; grams: number }[]) =>
    batch('a', '2026-03-01', {
      pours: [{ food: 'millet', lots, target: 300, grams: 300, at: '2026-03-01T09:00:00' }],
    });
  const millet = lot('millet', { boughtOn: '2026-02-01' });

  test('plans as if that food were not there, and says so', () => {
    const batches = [from([{ lot: millet.id, grams: 300 }])];
    const before = calendarOf(house({ lots: [millet], batches }), mix, under(today));
    expect(before.present?.name).toBe('batch 1');
    expect(before.stopped).toEqual([]);
    const after = calendarOf(house({ lots: [{ ...millet, barred }], batches }), mix, under(today));
    expect(after.present).toBeUndefined();
    expect(after.plan.deadline).toBeUndefined();
    expect(after.stopped.map((s) => s.name)).toEqual(['batch 1']);
    expect(planSentences(after.plan).slice(0, 2)).toEqual([
      'Batch 1 is not fed any more, since a pack in it is not used any more. It does not count as food in hand.',
      'On the days without the mix, feed the complete pellet alone (common practice, no source), or make a small batch of what is ready.',
    ]);
  });

  test('where it is not certain, counts it and says that it may be so', () => {
    const after = calendarOf(
      house({ lots: [{ ...millet, barred }], batches: [from([])] }),
      mix,
      under(today),
    );
    expect(after.present?.name).toBe('batch 1');
    expect(planSentences(after.plan)[0]).toBe(
      'Batch 1 may hold a pack that is not used any more. It still counts as food in hand; look at its record.',
    );
  });
});

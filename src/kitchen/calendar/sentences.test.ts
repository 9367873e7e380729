import { describe, expect, test } from 'vitest';
import { runsOut } from '../feeding/runs-out.ts';
import type { KitchenInput } from './kitchen-plan.ts';
import { moved } from './move-step.ts';
import { planKitchen } from './plan-kitchen.ts';
import { lastDay, nextThing, planSentences } from './sentences.ts';

const present = {
  name: 'batch 3',
  gramsLeft: 105,
  weighedOn: '2026-02-21',
  animals: [{ name: 'Pip', dailyGrams: 10 }],
  mixPart: 0.5,
};
const kitchen: KitchenInput = {
  id: 'plan-4',
  name: 'batch 4',
  supplies: [
    { id: 'dry-goods', route: 'freeze', boughtOn: '2026-02-15', goods: [{ food: 'oats', name: 'oats' }] },
    { id: 'fresh-goods', route: 'dry', goods: [{ food: 'carrot', name: 'carrot' }] },
  ],
  // 21 days from the freezer to the bowl.
  days: { freeze: 3, thaw: 3, weigh: 1, 'change-over': 8 },
  present: { name: 'batch 3', runsOut: runsOut(present) },
};
const until = '2026-03-14';

describe('the next thing', () => {
  const plan = planKitchen(kitchen, { until });

  test('is when food runs out and what has to begin by when', () => {
    expect(nextThing(plan, '2026-02-18')).toBe('Batch 3 runs out on 14 March; freeze oats by 21 February.');
    expect(nextThing(plan, '2026-02-21')).toBe('Batch 3 runs out on 14 March; freeze oats today.');
  });

  test('is the same when planned forwards', () => {
    const forwards = planKitchen(kitchen, { from: '2026-02-18' });
    expect(nextThing(forwards, '2026-02-18')).toBe(
      'Batch 3 runs out on 14 March; freeze oats by 21 February.',
    );
    const open = forwards.steps.filter((s) => s.state === 'open');
    expect(open.map((s) => lastDay(forwards, s))).toEqual(
      open.map((s) => plan.steps.find((p) => p.id === s.id)!.latest),
    );
  });

  test('is said to be late when it is, and by how many days', () => {
    expect(nextThing(plan, '2026-02-24')).toBe(
      'Batch 3 runs out on 14 March; freeze oats now: it was due by 21 February, so batch 4 comes 3 days late.',
    );
    expect(nextThing(plan, '2026-03-15')).toMatch(/^Batch 3 ran out on 14 March; /);
  });

  test('joins buying with what is done on the same day', () => {
    const supplies = kitchen.supplies.map(({ boughtOn: _, ...s }) => s);
    expect(nextThing(planKitchen({ ...kitchen, supplies }, { until }), '2026-02-18')).toBe(
      'Batch 3 runs out on 14 March; buy and freeze oats by 21 February.',
    );
  });

  test('is to weigh what is left where nobody knows when it runs out', () => {
    const { gramsLeft: _, ...unweighed } = present;
    const input = { ...kitchen, present: { name: 'batch 3', runsOut: runsOut(unweighed) } };
    expect(nextThing(planKitchen(input, { from: '2026-02-18' }), '2026-02-18')).toBe(
      'Nobody can say yet when batch 3 runs out. Weigh what is left of batch 3 and enter the weight.',
    );
  });

  test('goes on when nothing more has to begin, and ends', () => {
    const weighed = { from: '2026-03-05', to: '2026-03-06' };
    const going = { ...kitchen, weighed, changed: { from: '2026-03-06' } };
    expect(nextThing(planKitchen(going, { from: '2026-03-07' }), '2026-03-07')).toBe(
      'Batch 3 runs out on 14 March; change over goes on until 14 March.',
    );
    const { present: _, ...first } = { ...kitchen, weighed, changeOver: false };
    expect(nextThing(planKitchen(first, { from: '2026-03-07' }), '2026-03-07')).toBe('Batch 4 is ready.');
  });

  test('without a batch that runs out, is the first step', () => {
    const { present: _, ...first } = kitchen;
    expect(nextThing(planKitchen(first, { from: '2026-12-30' }), '2026-12-30')).toBe('Freeze oats today.');
    expect(nextThing(planKitchen(first, { until: '2027-01-30' }), '2026-12-30')).toBe(
      'Freeze oats by 9 January 2027.',
    );
    expect(() => nextThing(planKitchen(first, { until: '2027-01-30' }), 'now')).toThrow(
      'today: "now" is no day',
    );
  });
});

describe('the plan in sentences', () => {
  test('that fits', () => {
    expect(planSentences(planKitchen(kitchen, { from: '2026-02-18', until }))).toEqual([
      'Batch 3 runs out on 14 March.',
      'It takes 21 days. This sets the pace: freeze (3), thaw (3), freeze (3), thaw (3), weigh out (1), change over (8).',
      'First of all: freeze oats by 21 February.',
      'It fits, with 3 days to spare.',
    ]);
    expect(planSentences(planKitchen(kitchen, { from: '2026-02-21', until })).at(-1)).toBe(
      'It just fits: there is no day to spare.',
    );
  });

  test('backwards alone says by when, not whether there is time', () => {
    expect(planSentences(planKitchen(kitchen, { until })).slice(2)).toEqual([
      'First of all: freeze oats by 21 February.',
      'Then the animals are used to batch 4 by 14 March.',
    ]);
  });

  test('that is too late, with a way out', () => {
    const { days: _, ...usual } = kitchen;
    expect(planSentences(planKitchen(usual, { from: '2026-02-18', until: '2026-03-15' })).slice(3)).toEqual([
      'It does not fit: the animals are used to batch 4 on 21 March, 6 days after 15 March.',
      'With the shortest times that keepers use (common practice, no source) it would be done on 10 March, and fit: give the steps fewer days.',
    ]);
    expect(planSentences(planKitchen(usual, { from: '2026-02-28', until: '2026-03-15' })).slice(3)).toEqual([
      'It does not fit: the animals are used to batch 4 on 31 March, 16 days after 15 March.',
      'Even with the shortest times that keepers use (common practice, no source) it is done on 20 March.',
      'On the days without batch 3, feed the complete pellet alone (common practice, no source), or make a small batch of what is ready.',
    ]);
  });

  test('whose steps were moved too late, though there is time', () => {
    const answer = moved(planKitchen(kitchen, { from: '2026-02-18', until }), 'weigh', '2026-03-08');
    expect(answer.ok && planSentences(answer.plan).slice(3)).toEqual([
      'It does not fit: the animals are used to batch 4 on 17 March, 3 days after 14 March.',
      'Move steps to earlier days: there would be 3 days to spare.',
    ]);
  });

  test('of a first batch', () => {
    const { present: _, ...first } = { ...kitchen, changeOver: false };
    expect(planSentences(planKitchen(first, { from: '2026-02-18' })).at(-1)).toBe(
      'On 3 March batch 4 is weighed out.',
    );
    const weighed = { from: '2026-03-05', to: '2026-03-06' };
    expect(planSentences(planKitchen({ ...first, weighed }, { from: '2026-03-07' }))).toEqual([
      'All steps to batch 4 are done.',
      'On 6 March batch 4 is weighed out.',
    ]);
  });
});

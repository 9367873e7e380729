import { describe, expect, test } from 'vitest';
import { house, kitchen, lot, mix, rounds, today, under } from '../../../../test/kitchen/calendar-house.ts';
import type { Household, Mix } from '../../model.ts';
import { calendarOf } from './batch-calendar.ts';
import { moveStep } from './move-step.ts';
import { lotsWithoutDays, overdueFreezeSteps } from './plan-notices.ts';

describe('a step on another day', () => {
  const at = (h: Household) => calendarOf(h, mix, under(today));
  const move = (h: Household, id: string, day: string) => moveStep(h, mix, at(h), id, day);

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
    moveStep(h, two, calendarOf(h, two, under(today)), step, day);

  test('show on those days, and are moved with the lots', () => {
    const view = calendarOf(full, two, under(today));
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
      /on 16 March 1.4 kg would lie in the freezer, .*room for 1 kg/,
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
    const view = calendarOf(bare, two, under(today));
    expect(lotsWithoutDays(bare, view.plan)).toEqual(['rolled-oats']);
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
    const view = calendarOf(late, two, under(today));
    expect(overdueFreezeSteps(view.plan, today).map((s) => s.id)).toEqual([`freeze-1:${id}`]);
    // Bought millet sets the pace; the oats, five days late, come after 22 March.
    expect(view.plan.steps.find((s) => s.id === 'weigh')!.start).toBe('2026-03-26');
  });
});

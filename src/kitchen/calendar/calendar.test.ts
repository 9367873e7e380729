import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber, dayOf, plusDays } from '../days.ts';
import { CHANGE_DAYS } from '../feeding/change-over.ts';
import {
  type Frame,
  type KitchenInput,
  type KitchenPlan,
  moved,
  type PlannedStep,
  planKitchen,
  SHORTEST_DAYS,
  STEP_DAYS,
  type Supply,
  stepTitle,
} from './calendar.ts';

const dry: Supply = {
  id: 'dry-goods',
  route: 'cold',
  goods: [
    { food: 'oats', name: 'oats' },
    { food: 'millet', name: 'millet' },
  ],
};
const fresh: Supply = { id: 'fresh-goods', route: 'dry', goods: [{ food: 'carrot', name: 'carrot' }] };
const kitchen: KitchenInput = { id: 'plan-4', name: 'batch 4', supplies: [dry, fresh] };

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

  test('the cold sets the pace, and drying has room', () => {
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
        'Freeze (2 of 2): oats, millet cannot begin on 9 February: thaw (1 of 2): oats, millet lasts until 10 February; the first day possible is 10 February, or give that step fewer days.',
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

describe('moving a step', () => {
  test('moves what waits for it; the rest stays', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01' });
    const answer = moved(plan, 'thaw-2:dry-goods', '2026-02-15');
    expect(answer).toMatchObject({
      ok: true,
      changed: [
        { id: 'thaw-2:dry-goods', from: '2026-02-13', to: '2026-02-15' },
        { id: 'weigh', from: '2026-02-17', to: '2026-02-19' },
        { id: 'change-over', from: '2026-02-18', to: '2026-02-20' },
      ],
    });
  });

  test('moves what comes before only where it must', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01', until: '2026-03-14' });
    const answer = moved(plan, 'weigh', '2026-02-20');
    expect(answer.ok && answer.changed.map((c) => `${c.id} ${c.to.slice(5)}`)).toEqual([
      'buy:dry-goods 02-04',
      'buy:fresh-goods 02-19',
      'freeze-1:dry-goods 02-04',
      'dry:fresh-goods 02-19',
      'thaw-1:dry-goods 02-08',
      'freeze-2:dry-goods 02-12',
      'thaw-2:dry-goods 02-16',
      'weigh 02-20',
    ]);
  });

  test('to a day that cannot be, says why and from which day it can', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01' });
    expect(moved(plan, 'weigh', '2026-02-10')).toEqual({
      ok: false,
      firstDay: '2026-02-17',
      sentence:
        'Weigh out cannot begin on 10 February: thaw (1 of 2): oats, millet would have to begin on 29 January, before 1 February; the first day possible is 17 February, or give the steps between fewer days.',
    });
    expect(moved(plan, 'buy:dry-goods', '2026-01-31')).toMatchObject({
      ok: false,
      sentence:
        'Buy: oats, millet cannot begin on 31 January: that is before 1 February, the first day of the plan; the first day possible is 1 February.',
    });
    expect(() => moved(plan, 'wash', '2026-02-10')).toThrow('"wash" is none of the plan');
    expect(() => moved(plan, 'weigh', '2026-02-30')).toThrow('"2026-02-30" is no day');
  });

  test('beyond the deadline, the plan no longer fits, though it could', () => {
    const plan = planKitchen(kitchen, { from: '2026-02-01', until: '2026-03-14' });
    const answer = moved(plan, 'weigh', '2026-03-01');
    expect(answer.ok && answer.plan).toMatchObject({ fits: false, spare: 10, end: '2026-03-16' });
  });
});

describe('laws of every plan', () => {
  const first = dayNumber('2026-02-01');
  const progress = (most: number) =>
    fc.array(fc.nat(6), { maxLength: most }).map((lengths) => {
      let day = first - 30;
      return lengths.map((n, i) => {
        const from = day;
        day += n;
        return i < lengths.length - 1 ? { from: dayOf(from), to: dayOf(day) } : { from: dayOf(from) };
      });
    });
  const route = fc.constantFrom<Supply['route']>('cold', 'dry', 'ready');
  const supply = (i: number) =>
    route.chain((r) =>
      fc
        .record({
          bought: fc.boolean(),
          progress: progress({ cold: 4, dry: 1, ready: 0 }[r]),
          rounds: fc.boolean(),
        })
        .map(({ bought, progress: p, rounds }): Supply => {
          const own = r === 'cold' && rounds && p.length < 2;
          return {
            id: `supply-${i}`,
            route: r,
            goods: [{ food: `food-${i}`, name: `Food ${i}` }],
            ...((bought || p.length > 0) && { boughtOn: dayOf(first - 30) }),
            ...(p.length > 0 && { progress: p }),
            ...(own && { cold: [{ kind: 'freeze' as const, days: 9 }] }),
          };
        }),
    );
  const input = fc
    .record({
      supplies: fc.nat(3).chain((n) => fc.tuple(...Array.from({ length: n }, (_, i) => supply(i)))),
      days: fc.record({
        buy: fc.nat(2),
        freeze: fc.nat(6),
        thaw: fc.nat(6),
        dry: fc.nat(3),
        weigh: fc.nat(2),
        'change-over': fc.nat(21),
      }),
      changeOver: fc.boolean(),
    })
    .map((r): KitchenInput => ({ id: 'plan', name: 'batch 4', ...r }));
  const frame = fc
    .tuple(fc.constantFrom('from', 'until', 'both'), fc.integer({ min: -10, max: 80 }))
    .map(([kind, n]): Frame => {
      const [from, until] = [dayOf(first), dayOf(first + n)];
      return kind === 'from' ? { from } : kind === 'until' ? { until } : { from, until };
    });

  /** Nothing that is not done begins before what it waits for ends, nor before the first day. */
  function lawful(plan: KitchenPlan): void {
    for (const s of plan.steps) {
      expect(s.days).toBe(dayNumber(s.end) - dayNumber(s.start));
      if (s.state !== 'open') continue;
      for (const id of s.after) expect(at(plan, id).end <= s.start).toBe(true);
      if (plan.frame.from !== undefined) expect(s.start >= plan.frame.from).toBe(true);
      expect(s.earliest <= s.start).toBe(true);
    }
    expect(plan.end).toBe(
      plan.steps
        .map((s) => s.end)
        .sort()
        .at(-1),
    );
    expect(plan.fits).toBe(plan.deadline === undefined ? undefined : plan.end <= plan.deadline);
  }

  test('the order holds, and what is done stays where it was', () => {
    fc.assert(
      fc.property(input, frame, (i, f) => {
        const plan = planKitchen(i, f);
        lawful(plan);
        for (const { id, progress: done = [] } of i.supplies) {
          const own = plan.steps.filter((s) => s.supply === id && s.kind !== 'buy');
          done.forEach((p, n) => {
            expect(own[n]).toMatchObject({ start: p.from, state: p.to === undefined ? 'begun' : 'done' });
            if (p.to !== undefined) expect(own[n]!.end).toBe(p.to);
          });
        }
      }),
    );
  });

  test('forwards and backwards agree', () => {
    fc.assert(
      fc.property(input, (i) => {
        const forwards = planKitchen(i, { from: dayOf(first) });
        const backwards = planKitchen(i, { from: dayOf(first), until: forwards.end });
        expect(backwards).toMatchObject({ end: forwards.end, fits: true, spare: 0 });
        for (const id of forwards.criticalPath) {
          expect(at(backwards, id)).toMatchObject({
            slack: 0,
            start: at(forwards, id).start,
            critical: true,
          });
        }
        for (const s of forwards.steps) {
          expect(at(backwards, s.id).earliest).toBe(s.earliest);
          expect(at(backwards, s.id).latest).toBe(s.latest);
          expect(s.slack).toBeGreaterThanOrEqual(0);
        }
      }),
    );
  });

  test('backwards alone leaves no slack on the critical path of what has not begun', () => {
    fc.assert(
      fc.property(input, (i) => {
        const untouched = { ...i, supplies: i.supplies.map(({ progress: _p, boughtOn: _b, ...s }) => s) };
        const until = dayOf(first + 100);
        const plan = planKitchen(untouched, { until });
        expect(plan.end).toBe(until);
        expect(plan.criticalDays).toBe(dayNumber(until) - dayNumber(plan.start));
        for (const id of plan.criticalPath) expect(at(plan, id).slack).toBe(0);
        expect(planKitchen(untouched, { from: plan.start }).end).toBe(until);
      }),
    );
  });

  test('moving keeps the order, leaves all else where it is, and moving twice is as good as once', () => {
    let impossible = 0;
    let possible = 0;
    fc.assert(
      fc.property(input, frame, fc.nat(20), fc.integer({ min: -20, max: 20 }), (i, f, n, by) => {
        const plan = planKitchen(i, f);
        const open = plan.steps.filter((s) => s.state === 'open');
        const step = open[n % open.length]!;
        const day = plusDays(step.start, by);
        const answer = moved(plan, step.id, day);
        if (!answer.ok) {
          impossible++;
          expect(answer.firstDay! > day).toBe(true);
          // The way out is one.
          expect(moved(plan, step.id, answer.firstDay!).ok).toBe(true);
          expect(moved(plan, step.id, plusDays(answer.firstDay!, -1)).ok).toBe(false);
          return;
        }
        possible++;
        lawful(answer.plan);
        expect(at(answer.plan, step.id).start).toBe(day);
        const touched = new Set(answer.changed.map((c) => c.id));
        for (const s of answer.plan.steps) {
          const before = at(plan, s.id);
          expect(s.start !== before.start).toBe(touched.has(s.id));
          if (s.state !== 'open') expect(s.start).toBe(before.start);
        }
        expect(moved(answer.plan, step.id, day)).toMatchObject({ ok: true, changed: [] });
      }),
      { numRuns: 300 },
    );
    expect(Math.min(impossible, possible)).toBeGreaterThan(20);
  });
});

describe('what cannot be planned', () => {
  const one = (supply: Partial<Supply>): KitchenInput => ({ ...kitchen, supplies: [{ ...dry, ...supply }] });
  test.each<[string, KitchenInput, Frame?]>([
    ['days.freeze: 3.5 is no whole number of days from 0 to 366', { ...kitchen, days: { freeze: 3.5 } }],
    ['days.change-over: -1 is no whole number', { ...kitchen, days: { 'change-over': -1 } }],
    ['cold.0.days of "dry-goods": 400 is no whole number', one({ cold: [{ kind: 'freeze', days: 400 }] })],
    ['one of them has no goods', one({ goods: [] })],
    ['boughtOn of "dry-goods": a step after buying has begun', one({ progress: [{ from: '2026-02-01' }] })],
    [
      'progress of "dry-goods": a step has begun before the one before it ended',
      one({ boughtOn: '2026-02-01', progress: [{ from: '2026-02-01' }, { from: '2026-02-05' }] }),
    ],
    [
      'progress of "dry-goods": it ends on 2026-01-01, before it begins on 2026-02-01',
      one({ boughtOn: '2026-02-01', progress: [{ from: '2026-02-01', to: '2026-01-01' }] }),
    ],
    [
      'progress of "dry-goods": 1 steps are said to have begun, but there are 0 after buying',
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

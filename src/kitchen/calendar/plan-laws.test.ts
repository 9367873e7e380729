import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dayNumber, dayOf, plusDays } from '../days.ts';
import type { Frame, KitchenInput, KitchenPlan, PlannedStep, Supply } from './kitchen-plan.ts';
import { moved } from './move-step.ts';
import { planKitchen } from './plan-kitchen.ts';

const at = (plan: KitchenPlan, id: string): PlannedStep => plan.steps.find((s) => s.id === id)!;
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
  const route = fc.constantFrom<Supply['route']>('freeze', 'dry', 'ready');
  const supply = (i: number) =>
    route.chain((r) =>
      fc
        .record({
          bought: fc.boolean(),
          progress: progress({ freeze: 4, dry: 1, ready: 0 }[r]),
          rounds: fc.boolean(),
        })
        .map(({ bought, progress: p, rounds }): Supply => {
          const own = r === 'freeze' && rounds && p.length < 2;
          return {
            id: `supply-${i}`,
            route: r,
            goods: [{ food: `food-${i}`, name: `Food ${i}` }],
            ...((bought || p.length > 0) && { boughtOn: dayOf(first - 30) }),
            ...(p.length > 0 && { progress: p }),
            ...(own && { rounds: [{ kind: 'freeze' as const, days: 9 }] }),
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

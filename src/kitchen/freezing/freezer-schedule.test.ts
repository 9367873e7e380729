import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lotOf as dryLot } from '../../../test/kitchen/cupboards.ts';
import { dayNumber, daysBetween, plusDays } from '../days.ts';
import type { Lot } from '../model.ts';
import { tickedStep } from './freeze-treatment.ts';
import { type Freezer, type FreezerSchedule, planFreezer, type ScheduleOptions } from './freezer-schedule.ts';

const lotOf = (id: string, grams: number, boughtOn = '2026-03-01') =>
  dryLot({ id, food: id, grams, boughtOn });
const freezer: Freezer = { grams: 3000, celsius: -18 };
const rest = { notBefore: '2026-03-10', groupOf: () => 'seed' } as const satisfies ScheduleOptions;
const stepsOf = (plan: FreezerSchedule, id: string) => plan.lots.find(({ lot }) => lot === id)!.steps;

/** g in the freezer on each day from `today`. */
function loads(plan: FreezerSchedule, lots: readonly Lot[], today: string): Map<number, number> {
  const load = new Map<number, number>();
  for (const { lot, steps } of plan.lots)
    for (const step of steps)
      if (step.kind === 'freeze' && step.doneOn === undefined)
        for (let day = Math.max(dayNumber(step.from), dayNumber(today)); day < dayNumber(step.to); day++)
          load.set(day, (load.get(day) ?? 0) + lots.find(({ id }) => id === lot)!.grams);
  return load;
}

function lawful(plan: FreezerSchedule, lots: readonly Lot[], room: number, today: string, rounds: number) {
  for (const grams of loads(plan, lots, today).values()) expect(grams).toBeLessThanOrEqual(room);
  for (const { lot, steps, readyOn } of plan.lots) {
    expect(steps.length).toBeGreaterThanOrEqual(2 * rounds);
    expect(steps.map(({ kind }) => kind)).toEqual(steps.map((_, i) => (i % 2 === 0 ? 'freeze' : 'thaw')));
    steps.forEach((step, i) => {
      if (i > 0) expect(daysBetween(steps[i - 1]!.to, step.from)).toBeGreaterThanOrEqual(0);
      expect(step.from >= lots.find(({ id }) => id === lot)!.boughtOn).toBe(true);
    });
    expect(readyOn).toBe(steps.at(-1)!.to);
  }
}

describe('a plan', () => {
  it('freezes and thaws twice, four days each, by common practice', () => {
    const plan = planFreezer([lotOf('oats', 1000)], freezer, rest);
    expect(stepsOf(plan, 'oats')).toEqual([
      { kind: 'freeze', from: '2026-03-10', to: '2026-03-14' },
      { kind: 'thaw', from: '2026-03-14', to: '2026-03-18' },
      { kind: 'freeze', from: '2026-03-18', to: '2026-03-22' },
      { kind: 'thaw', from: '2026-03-22', to: '2026-03-26' },
    ]);
    expect(plan.lots[0]!.readyOn).toBe('2026-03-26');
    expect(plan.lots[0]!.advice!.sentence).toContain('common practice');
  });

  it.each([
    ['2026-03-26', '2026-03-29', '2026-04-01', '2026-04-04', '2026-04-07'],
    ['2026-10-22', '2026-10-25', '2026-10-28', '2026-10-31', '2026-11-03'],
    ['2026-10-25', '2026-10-28', '2026-10-31', '2026-11-03', '2026-11-06'],
    ['2028-02-27', '2028-03-01', '2028-03-04', '2028-03-07', '2028-03-10'],
  ])('from %s no day is lost or gained where clocks change or a leap day falls', (notBefore, ...ends) => {
    const plan = planFreezer([lotOf('oats', 500)], freezer, {
      ...rest,
      notBefore,
      freezeDays: 3,
      thawDays: 3,
    });
    expect(stepsOf(plan, 'oats').map(({ to }) => to)).toEqual(ends);
  });

  it('lets what does not fit wait, the oldest first', () => {
    const lots = [lotOf('new', 2000, '2026-03-05'), lotOf('old', 2000, '2026-03-02')];
    const plan = planFreezer(lots, freezer, rest);
    expect(plan.lots.map(({ lot }) => lot)).toEqual(['old', 'new']);
    expect(stepsOf(plan, 'old')[0]!.from).toBe('2026-03-10');
    expect(stepsOf(plan, 'new').map(({ from }) => from)).toEqual([
      '2026-03-14',
      '2026-03-18',
      '2026-03-22',
      '2026-03-26',
    ]);
  });

  it('puts what is wanted first before what is older, and says when it comes too late', () => {
    const lots = [lotOf('new', 2000, '2026-03-05'), lotOf('old', 2000, '2026-03-02')];
    const plan = planFreezer(lots, freezer, { ...rest, neededOn: { new: '2026-03-20' } });
    expect(plan.lots.map(({ lot }) => lot)).toEqual(['new', 'old']);
    expect(plan.lots[0]!.late).toBe(
      'new is wanted on 20 March 2026, but is done with freezing on 26 March 2026 at the soonest.',
    );
    expect(plan.lots[1]!.late).toBeUndefined();
  });

  it('freezes a sack longer than a packet', () => {
    const plan = planFreezer([lotOf('sack', 25_000)], { grams: 30_000, celsius: -18 }, rest);
    const [first] = stepsOf(plan, 'sack');
    expect(daysBetween(first!.from, first!.to)).toBe(5);
    expect(plan.lots[0]!.advice!.sentence).toContain('core of this bag');
  });

  it('leaves out what needs no cold, is barred or is too big, and says why', () => {
    const lots: Lot[] = [
      { ...lotOf('carrot', 200), form: 'dried' },
      { ...lotOf('millet', 200), barred: { why: 'moths', on: '2026-03-09' } },
      lotOf('wheat', 7000),
    ];
    const plan = planFreezer(lots, freezer, rest);
    expect(plan.lots).toEqual([]);
    expect(plan.notNeeded.map(({ lot }) => lot).sort()).toEqual(['carrot', 'millet']);
    expect(plan.tooBig).toEqual([
      {
        lot: 'wheat',
        why: 'wheat takes 7000 g, and the freezer has room for 3000 g.',
        wayOut: 'Split it into 3 packs, or make more room.',
      },
    ]);
  });

  it('reckons litres by the loosest packing of the good', () => {
    const lots = [lotOf('herb', 800), lotOf('oats', 800)];
    const groupOf = (lot: Lot) => (lot.id === 'herb' ? 'herb' : 'seed') as 'herb' | 'seed';
    const litres = (room: number) => planFreezer(lots, { litres: room, celsius: -18 }, { ...rest, groupOf });
    // 800 g of leaf at 80 g per litre are 10 litres, of grain at 650 g per litre 1.2.
    expect(litres(10).tooBig).toEqual([]);
    expect(litres(9.9).tooBig.map(({ lot }) => lot)).toEqual(['herb']);
    expect(stepsOf(litres(11), 'oats')[0]!.from > stepsOf(litres(11.5), 'oats')[0]!.from).toBe(true);
  });

  it.each([
    [{ celsius: -18 }, {}, 'either in litres or in grams'],
    [{ celsius: -18, litres: 5, grams: 5 }, {}, 'either in litres or in grams'],
    [{ celsius: -18, grams: 0 }, {}, 'grams, is 0'],
    [{ celsius: -4, grams: 3000 }, {}, 'set the freezer to -18 °C'],
    [{ celsius: -18, grams: 3000 }, { rounds: 0 }, '"rounds" is 0'],
    [{ celsius: -18, grams: 3000 }, { thawDays: 2.5 }, '"thawDays" is 2.5'],
    [{ celsius: -18, grams: 3000 }, { notBefore: '2026-02-29' }, '2026-02-29'],
    [{ celsius: -18, litres: 30 }, { groupOf: () => undefined }, 'Give its food a group'],
  ] as [Freezer, Partial<ScheduleOptions>, string][])('%o with %o is refused', (box, options, words) => {
    expect(() => planFreezer([lotOf('oats', 500)], box, { ...rest, ...options })).toThrow(words);
  });
});

describe('planning anew', () => {
  it('keeps what is ticked off and what lies in the freezer, and moves the rest', () => {
    const lots = [lotOf('a', 2000, '2026-03-01'), lotOf('b', 2000, '2026-03-02')];
    const first = planFreezer(lots, freezer, rest);
    const now = lots.map((lot) => ({ ...lot, cold: stepsOf(first, lot.id) }));
    // "a" came out two days late, so "b" could not go in on the 14th.
    const late = [tickedStep(now[0]!, 0, '2026-03-16'), now[1]!];
    const again = planFreezer(late, freezer, { ...rest, notBefore: '2026-03-14' });
    expect(stepsOf(again, 'a')[0]).toEqual(late[0]!.cold[0]);
    const begun = planFreezer(now, freezer, {
      ...rest,
      notBefore: '2026-03-12',
      neededOn: { b: '2026-03-13' },
    });
    expect(stepsOf(begun, 'a')[0]).toEqual(now[0]!.cold[0]);
    expect(stepsOf(begun, 'b')[0]!.from).toBe('2026-03-14');
  });

  it('fewer rounds than before: a freeze begun still takes up room, and its thaw is planned', () => {
    const [cold, other] = [stepsOf(planFreezer([lotOf('a', 2000)], freezer, rest), 'a'), lotOf('b', 2000)];
    const a = { ...lotOf('a', 2000), cold: cold.map((s, i) => (i < 2 ? { ...s, doneOn: s.to } : s)) };
    const plan = planFreezer([a, other], freezer, { ...rest, rounds: 1, notBefore: '2026-03-19' });
    expect(stepsOf(plan, 'a')).toEqual(a.cold);
    expect(stepsOf(plan, 'b')[0]!.from).toBe('2026-03-22');
  });

  it('of two freezes that cannot both have begun, the one that was to begin later is planned anew', () => {
    const freeze = (from: string, to: string) => [{ kind: 'freeze', from, to } as const];
    const lots = [
      { ...lotOf('a', 2000), cold: freeze('2026-03-12', '2026-03-18') },
      { ...lotOf('b', 2000), cold: freeze('2026-03-11', '2026-03-17') },
    ];
    const plan = planFreezer(lots, freezer, { ...rest, notBefore: '2026-03-14' });
    expect(stepsOf(plan, 'b')[0]).toEqual(lots[1]!.cold[0]);
    expect(stepsOf(plan, 'a')[0]).toEqual({ kind: 'freeze', from: '2026-03-17', to: '2026-03-21' });
  });

  it('a lot through the cold stays as it is', () => {
    const cold = stepsOf(planFreezer([lotOf('a', 100)], freezer, rest), 'a').map((s) => ({
      ...s,
      doneOn: s.to,
    }));
    const plan = planFreezer([{ ...lotOf('a', 100), cold }], freezer, { ...rest, notBefore: '2026-06-01' });
    expect(plan.lots).toEqual([{ lot: 'a', steps: cold, readyOn: '2026-03-26' }]);
  });
});

describe('laws', () => {
  const someLots = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 3000 }), fc.integer({ min: -5, max: 8 })), { maxLength: 6 })
    .map((all) => all.map(([grams, day], i) => lotOf(`lot-${i}`, grams, plusDays('2026-03-24', day))));
  const rule = fc.record({
    freezeDays: fc.integer({ min: 3, max: 6 }),
    thawDays: fc.integer({ min: 1, max: 6 }),
    rounds: fc.integer({ min: 1, max: 3 }),
  });

  it('the freezer is never over-full; steps alternate, last their days, and none is ready before its rounds', () => {
    fc.assert(
      fc.property(someLots, rule, (lots, rules) => {
        const notBefore = '2026-03-26';
        const plan = planFreezer(lots, freezer, { ...rest, ...rules, notBefore });
        expect(plan.lots.length).toBe(lots.length);
        lawful(plan, lots, 3000, notBefore, rules.rounds);
        for (const { steps, readyOn, advice } of plan.lots) {
          for (const step of steps)
            expect(daysBetween(step.from, step.to)).toBe(
              step.kind === 'freeze' ? Math.max(rules.freezeDays, advice!.days) : rules.thawDays,
            );
          expect(steps[0]!.from >= notBefore).toBe(true);
          expect(daysBetween(notBefore, readyOn)).toBeGreaterThanOrEqual(
            rules.rounds * (rules.freezeDays + rules.thawDays),
          );
        }
      }),
      { numRuns: 60 },
    );
  });

  it('day by day, ticking off whenever the keeper likes and planning anew, the laws still hold', () => {
    const diary = fc.array(fc.array(fc.nat(5), { maxLength: 3 }), { minLength: 5, maxLength: 25 });
    fc.assert(
      fc.property(someLots, rule, diary, (bought, rules, days) => {
        let lots = bought;
        days.forEach((ticks, i) => {
          const today = plusDays('2026-03-26', i);
          for (const n of ticks) {
            const lot = lots[n];
            const open = lot?.cold.findIndex((step) => step.doneOn === undefined) ?? -1;
            if (!lot || open < 0 || lot.cold[open]!.to > today) continue;
            lots = lots.map((each) => (each === lot ? tickedStep(lot, open, today) : each));
          }
          const plan = planFreezer(lots, freezer, { ...rest, ...rules, notBefore: today });
          lawful(plan, lots, 3000, today, rules.rounds);
          for (const { lot, steps } of plan.lots) {
            const done = lots.find(({ id }) => id === lot)!.cold.filter((step) => step.doneOn !== undefined);
            expect(steps.slice(0, done.length)).toEqual(done);
            for (const step of steps)
              expect(daysBetween(step.from, step.to)).toBeGreaterThanOrEqual(
                step.kind === 'freeze' ? rules.freezeDays : rules.thawDays,
              );
          }
          lots = lots.map((lot) => ({ ...lot, cold: stepsOf(plan, lot.id) }));
        });
      }),
      { numRuns: 15 },
    );
  });

  it('no other plan has the most urgent lot ready sooner (all plans of small cases tried)', () => {
    const small = fc.record({
      urgent: fc.integer({ min: 1, max: 3 }),
      other: fc.integer({ min: 1, max: 3 }),
      // In the freezer now: kg, and until which day of the plan.
      inside: fc.integer({ min: 1, max: 3 }),
      until: fc.integer({ min: 1, max: 6 }),
    });
    const freeze = 4;
    const thaw = 1;
    fc.assert(
      fc.property(small, ({ urgent, other, inside, until }) => {
        const today = '2026-03-27';
        const held: Lot = {
          ...lotOf('inside', inside * 1000),
          cold: [{ kind: 'freeze', from: plusDays(today, -2), to: plusDays(today, until) }],
        };
        const lots = [lotOf('urgent', urgent * 1000), lotOf('other', other * 1000), held];
        const plan = planFreezer(lots, freezer, {
          ...rest,
          notBefore: today,
          thawDays: thaw,
          neededOn: { urgent: '2026-04-01' },
        });
        const fits = (starts: readonly (readonly [start: number, kg: number])[]) => {
          for (let day = 0; day < 30; day++) {
            const kg = starts.reduce((sum, [s, w]) => sum + (day >= s && day < s + freeze ? w : 0), 0);
            if (kg + (day < until ? inside : 0) > 3) return false;
          }
          return true;
        };
        let best = Number.POSITIVE_INFINITY;
        for (let a = 0; a < 10; a++)
          for (let b = a + freeze + thaw; b < 18; b++) {
            const own = [
              [a, urgent],
              [b, urgent],
            ] as const;
            if (b + freeze + thaw >= best || !fits(own)) continue;
            // The other lot must find its days too, some time.
            let placed = false;
            for (let c = 0; c < 30 && !placed; c++)
              for (let d = c + freeze + thaw; d < 40 && !placed; d++)
                placed = fits([...own, [c, other], [d, other]]);
            if (placed) best = b + freeze + thaw;
          }
        const urgentReady = plan.lots.find(({ lot }) => lot === 'urgent')!.readyOn;
        expect(daysBetween(today, urgentReady)).toBe(best);
      }),
      { numRuns: 60 },
    );
  });
});

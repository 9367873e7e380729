import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { daysBetween, plusDays } from '../days.ts';
import type { FreezeStep, Lot } from '../model.ts';
import {
  mayBeWeighed,
  movedStep,
  needsTreatment,
  overrule,
  readyOn,
  tickedStep,
  treatmentDone,
} from './freeze-treatment.ts';

const oats: Lot = {
  id: 'oats',
  food: 'oats',
  name: 'Oats',
  grams: 1000,
  form: 'dry',
  boughtOn: '2026-03-20',
  frozen: false,
  cold: [
    { kind: 'freeze', from: '2026-03-22', to: '2026-03-26' },
    { kind: 'thaw', from: '2026-03-26', to: '2026-03-30' },
    { kind: 'freeze', from: '2026-04-02', to: '2026-04-06' },
    { kind: 'thaw', from: '2026-04-06', to: '2026-04-10' },
  ],
};

describe('what needs the cold', () => {
  it.each([
    ['dry', 'seed', true],
    ['dry', 'legume', true],
    ['dry', 'herb', true],
    ['dry', 'nut', true],
    ['dry', undefined, true],
    ['dry', 'animal', false],
    ['dried', 'vegetable', false],
    ['fresh', 'vegetable', false],
  ] as const)('%s, %s: %s', (form, group, needs) => {
    const need = needsTreatment({ form }, group);
    expect(need.needs).toBe(needs);
    expect(need.why).toMatch(/\.$/);
  });
});

describe('ticking off', () => {
  it('in time changes nothing else', () => {
    const lot = tickedStep(oats, 0, '2026-03-26');
    expect(lot.cold[0]).toEqual({ ...oats.cold[0], doneOn: '2026-03-26' });
    expect(lot.cold.slice(1)).toEqual(oats.cold.slice(1));
  });

  it('late moves the thaw, but not the second freeze while its wait for room takes it up', () => {
    const lot = tickedStep(oats, 0, '2026-03-28');
    expect(lot.cold[0]).toMatchObject({ from: '2026-03-22', to: '2026-03-28', doneOn: '2026-03-28' });
    expect(lot.cold[1]).toMatchObject({ from: '2026-03-28', to: '2026-04-01' });
    expect(lot.cold.slice(2)).toEqual(oats.cold.slice(2));
  });

  it('late enough moves everything after it', () => {
    const lot = tickedStep(oats, 0, '2026-03-31');
    expect(lot.cold.map(({ from, to }) => [from, to])).toEqual([
      ['2026-03-22', '2026-03-31'],
      ['2026-03-31', '2026-04-04'],
      ['2026-04-04', '2026-04-08'],
      ['2026-04-08', '2026-04-12'],
    ]);
    expect(readyOn(lot)).toBe('2026-04-12');
  });

  it.each([
    [0, '2026-03-25', /3 of 4 days on 25 March 2026. Tick it off on 26 March 2026 or later, or go ahead/],
    [0, '2026-03-01', /0 of 4 days/],
    [1, '2026-03-30', /before step 1 \(freeze\). Tick off step 1 first, or go ahead/],
    [4, '2026-03-30', /no step 5 .* it has 4/],
    [-1, '2026-03-30', /no step 0/],
    [0, '2026-02-30', /2026-02-30/],
  ])('step %d on %s is refused', (index, day, words) => {
    expect(() => tickedStep(oats, index, day)).toThrow(RangeError);
    expect(() => tickedStep(oats, index, day)).toThrow(words);
  });

  it('is not done twice', () => {
    const lot = tickedStep(oats, 0, '2026-03-26');
    expect(() => tickedStep(lot, 0, '2026-03-27')).toThrow('was ticked off on 26 March 2026');
    expect(() => movedStep(lot, 0, '2026-03-27')).toThrow('was ticked off on 26 March 2026');
  });
});

describe('moving', () => {
  it('takes those after it along and leaves those before it', () => {
    const lot = movedStep(oats, 2, '2026-04-05');
    expect(lot.cold.slice(0, 2)).toEqual(oats.cold.slice(0, 2));
    expect(lot.cold[2]).toMatchObject({ from: '2026-04-05', to: '2026-04-09' });
    expect(lot.cold[3]).toMatchObject({ from: '2026-04-09', to: '2026-04-13' });
  });

  it('goes no earlier than the step before ends', () => {
    expect(movedStep(oats, 2, '2026-03-30').cold[2]!.from).toBe('2026-03-30');
    expect(() => movedStep(oats, 2, '2026-03-29')).toThrow('step 2 (thaw) ends on 30 March 2026');
  });
});

describe('weighing out', () => {
  const done: Lot = { ...oats, cold: oats.cold.map((step) => ({ ...step, doneOn: step.to })) };

  it('waits for the last step to be ticked off, however late the day', () => {
    const answer = mayBeWeighed(oats, '2027-01-01', 'seed');
    expect(answer).toMatchObject({
      ok: false,
      why: 'Oats is not done with freezing: 4 steps are not ticked off.',
    });
    expect(answer).toHaveProperty('wayOut', expect.stringContaining('ready on 10 April 2026. Or go ahead'));
    expect(mayBeWeighed(done, '2026-04-09', 'seed').ok).toBe(false);
    expect(mayBeWeighed(done, '2026-04-10', 'seed')).toEqual({ ok: true });
    expect(treatmentDone({ cold: [] }, '2026-04-10')).toBe(false);
  });

  it('a dry lot that was never planned waits too; one that needs no cold does not', () => {
    const bare = { ...oats, cold: [] };
    expect(mayBeWeighed(bare, '2026-05-01')).toMatchObject({
      ok: false,
      wayOut: expect.stringMatching(/Plan its freezing/),
    });
    expect(mayBeWeighed(bare, '2026-05-01', 'animal')).toEqual({ ok: true });
    expect(mayBeWeighed({ ...bare, form: 'dried' }, '2026-05-01')).toEqual({ ok: true });
  });

  it('an overruling is on record and counts from its day on', () => {
    const lot = overrule(oats, ' Frozen at the shop ', '2026-03-25');
    expect(lot.overruled).toEqual({ note: 'Frozen at the shop', on: '2026-03-25' });
    expect(mayBeWeighed(lot, '2026-03-24').ok).toBe(false);
    expect(mayBeWeighed(lot, '2026-03-25')).toEqual({
      ok: true,
      warning: 'Its freezing is not done; you went ahead on 25 March 2026: Frozen at the shop',
    });
    expect(() => overrule(oats, '  ', '2026-03-25')).toThrow('write a note');
  });

  it('a barred lot is never weighed out, overruled or not', () => {
    const barred = overrule({ ...done, barred: { why: 'moths', on: '2026-04-11' } }, 'x', '2026-03-01');
    expect(mayBeWeighed(barred, '2026-05-01')).toMatchObject({
      ok: false,
      why: expect.stringMatching(/not used any more since 11 April 2026: moths/),
    });
  });

  it('past best before is only a warning', () => {
    const lot = { ...done, bestBefore: '2026-04-12' };
    expect(mayBeWeighed(lot, '2026-04-12')).toEqual({ ok: true });
    expect(mayBeWeighed(lot, '2026-04-13')).toMatchObject({
      ok: true,
      warning: expect.stringMatching(/Best before 12 April 2026/),
    });
  });
});

describe('laws of ticking and moving', () => {
  const steps = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 0, max: 5 })), {
      minLength: 2,
      maxLength: 6,
    })
    .map((parts) => {
      let day = '2026-03-25';
      return parts.map(([days, wait], i): FreezeStep => {
        const from = plusDays(day, wait);
        day = plusDays(from, days);
        return { kind: i % 2 === 0 ? 'freeze' : 'thaw', from, to: day };
      });
    });
  const acts = fc.array(
    fc.record({ tick: fc.boolean(), index: fc.nat(5), days: fc.integer({ min: -3, max: 9 }) }),
    {
      maxLength: 12,
    },
  );

  it('in any order of days: no step shortens, none overlaps, none moves earlier by itself, kinds alternate', () => {
    fc.assert(
      fc.property(steps, acts, (cold, all) => {
        let lot: Pick<Lot, 'cold' | 'name'> = { name: 'Lot', cold };
        for (const { tick, index, days } of all) {
          const before = lot;
          const step = lot.cold[index];
          const day = plusDays(step?.to ?? '2026-04-01', days);
          try {
            lot = tick ? tickedStep(lot, index, day) : movedStep(lot, index, day);
          } catch (error) {
            expect(error).toBeInstanceOf(RangeError);
            continue;
          }
          lot.cold.forEach((now, i) => {
            const was = before.cold[i]!;
            expect(now.kind).toBe(was.kind);
            if (i < index) expect(now).toBe(was);
            if (i > index) expect(daysBetween(was.from, now.from)).toBeGreaterThanOrEqual(0);
            expect(daysBetween(now.from, now.to)).toBeGreaterThanOrEqual(
              daysBetween(cold[i]!.from, cold[i]!.to),
            );
            if (i > 0) expect(daysBetween(lot.cold[i - 1]!.to, now.from)).toBeGreaterThanOrEqual(0);
            if (now.doneOn) expect(now.doneOn).toBe(now.to);
          });
        }
      }),
    );
  });
});

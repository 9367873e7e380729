import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { batchOf, cupboards, lotOf, pourOf } from '../../../test/kitchen/cupboards.ts';
import { demoHousehold } from '../../household/demo.ts';
import type { Household } from '../../household/model.ts';
import { keptOf } from '../../household/reckon/contents.ts';
import { changedByPlan, coldDates } from '../../household/reckon/freezer-days.ts';
import { inFreezer } from '../../household/reckon/freezer-load.ts';
import { cupboardFoods } from '../../household/reckon/lot-foods.ts';
import { lotName } from '../../household/reckon/lot-name.ts';
import { lotState } from '../../household/reckon/lot-state.ts';
import { lotsByFood } from '../../household/reckon/lots-by-food.ts';
import { dueInCold, lotsForCold, tickedNext } from '../../household/reckon/lots-to-freeze.ts';
import { cupboardChanges, withCupboard } from '../../household/reckon/on-hand.ts';
import { barAdvice, barWords } from '../../kitchen/cupboard/barred.ts';
import { leftOver } from '../../kitchen/cupboard/cupboard.ts';
import { plusDays } from '../../kitchen/days.ts';
import { tickedStep } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Lot } from '../../kitchen/model.ts';

const DAY = '2026-03-10';
const FREEZER = { grams: 1000, celsius: -18 };

function houseWith(...lots: Lot[]): Household {
  return { ...demoHousehold(), lots };
}
const OATS = lotOf({ id: 'a', food: 'rolled-oats', name: 'Rolled oats', grams: 500 });

describe('lotState', () => {
  const state = (lot: Partial<Lot>, day = DAY) =>
    lotState({ lot: { ...OATS, ...lot }, used: 0, grams: 500, over: 0 }, day, 'seed');
  const cold = [
    { kind: 'freeze', from: '2026-03-10', to: '2026-03-14' },
    { kind: 'thaw', from: '2026-03-14', to: '2026-03-18' },
  ] as const;

  it('follows a lot through the cold', () => {
    expect(state({}).words).toBe('waits for the cold: no dates yet');
    expect(state({ cold }, '2026-03-09')).toEqual({
      kind: 'waits',
      words: 'waits for the freezer: goes in on 10 March',
    });
    expect(state({ cold })).toEqual({
      kind: 'cold',
      words: 'in the freezer until 14 March, ready on 18 March',
    });
    expect(state({ cold }, '2026-03-14').kind).toBe('due');
    const half = tickedStep({ ...OATS, cold }, 0, '2026-03-14');
    expect(state(half, '2026-03-14').words).toBe('thawing until 18 March, then ready');
    expect(state(tickedStep(half, 1, '2026-03-18'), '2026-03-18')).toEqual({ kind: 'ready', words: 'ready' });
  });
  it('says what bars it before anything else, and what was overruled', () => {
    expect(state({ cold, barred: { why: 'infested: moths', on: DAY } })).toEqual({
      kind: 'barred',
      words: 'barred, infested: moths',
    });
    expect(state({ overruled: { note: 'heated by the mill', on: DAY } })).toEqual({
      kind: 'ready',
      words: 'ready, the cold overruled',
    });
    expect(state({ form: 'fresh' }).kind).toBe('fresh');
  });
  it('tells of a best before that is past, waiting or ready', () => {
    const bestBefore = '2026-03-09';
    expect(state({ form: 'dried', bestBefore })).toEqual({
      kind: 'past',
      words: 'ready; past its best before, 9 March',
    });
    expect(state({ bestBefore }).words).toMatch(/^waits for the cold.*past its best before, 9 March$/);
    expect(state({ form: 'dried', bestBefore: DAY }).kind).toBe('ready');
  });
});

describe('lotsByFood', () => {
  it('shows every lot once, and as ready what its state says may be weighed', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        const house = {
          ...demoHousehold(),
          lots: all.lots,
          dryingRuns: all.runs,
          batches: all.batches,
        };
        const foods = lotsByFood(house, DAY);
        expect(
          foods
            .flatMap((f) => f.lots)
            .map((l) => l.lot.id)
            .sort(),
        ).toEqual(all.lots.map((l) => l.id).sort());
        for (const food of foods) {
          const usable = food.lots.filter((l) => l.state.kind === 'ready' || l.state.kind === 'past');
          expect(food.ready).toBeCloseTo(
            usable.reduce((sum, l) => sum + l.grams, 0),
            6,
          );
          // What may be used stands before what may not.
          expect(food.lots.slice(0, usable.length)).toEqual(usable);
          expect(food.lots.filter((l) => l.first).length).toBeLessThanOrEqual(1);
        }
      }),
    );
  });
  it('puts what is older first', () => {
    const dried = { ...OATS, form: 'dried' } as const;
    const house = houseWith(
      { ...dried, id: 'old', boughtOn: '2026-01-01' },
      { ...dried, id: 'soon', boughtOn: '2026-02-01', bestBefore: '2026-04-01' },
    );
    const [oats] = lotsByFood(house, DAY);
    expect(oats!.name).toBe('Rolled oats');
    expect(oats!.lots.map((l) => [l.lot.id, l.first])).toEqual([
      ['old', true],
      ['soon', false],
    ]);
  });
});

describe('the cold of a household', () => {
  it('ticks off what has lasted long enough, and nothing else', () => {
    const step = (kind: 'freeze' | 'thaw', from: string, to: string) => ({ kind, from, to });
    const cold = [step('freeze', '2026-03-01', '2026-03-05'), step('thaw', '2026-03-05', '2026-03-09')];
    const house = houseWith(
      { ...OATS, id: 'due', cold },
      { ...OATS, id: 'later', cold: [step('freeze', '2026-03-03', '2026-03-07')] },
      { ...OATS, id: 'none' },
      { ...OATS, id: 'barred', cold, barred: { why: 'moths', on: '2026-03-02' } },
    );
    expect(dueInCold(house, '2026-03-04')).toEqual([]);
    const due = dueInCold(house, '2026-03-06');
    expect(due.map((l) => l.id)).toEqual(['due']);
    const [first, second] = tickedNext(due[0]!, '2026-03-06').cold;
    expect(first!.doneOn).toBe('2026-03-06');
    expect([second!.from, second!.to, second!.doneOn]).toEqual(['2026-03-06', '2026-03-10', undefined]);
  });

  it('is planned for what needs it, and planning twice changes nothing', () => {
    const house = houseWith(OATS, { ...OATS, id: 'b', form: 'dried' });
    const first = coldDates(house, FREEZER, DAY);
    if (!('plan' in first)) throw new Error(first.fault);
    const changed = changedByPlan(house, first.plan);
    expect(changed.map((l) => [l.id, l.cold.length, l.grams])).toEqual([['a', 4, 500]]);
    const again = houseWith(...changed);
    const second = coldDates(again, FREEZER, DAY);
    if (!('plan' in second)) throw new Error(second.fault);
    expect(changedByPlan(again, second.plan)).toEqual([]);
  });
  it('reckons with what is left of a lot, and keeps its weight', () => {
    const batch = batchOf({
      id: 'x',
      pours: [pourOf({ food: 'rolled-oats', lots: [{ lot: 'a', grams: 400 }] })],
    });
    const house = { ...houseWith(OATS), batches: [batch] };
    expect(lotsForCold(house, DAY).map((l) => l.grams)).toEqual([100]);
    const dates = coldDates(house, { grams: 150, celsius: -18 }, DAY);
    if (!('plan' in dates)) throw new Error(dates.fault);
    expect(dates.plan.tooBig).toEqual([]);
    expect(changedByPlan(house, dates.plan)[0]!.grams).toBe(500);
  });
  it('never puts more into the freezer than it holds, on any day of the plan', () => {
    const lots = [400, 600, 700, 300].map((grams, i) => ({ ...OATS, id: `l${i}`, grams }));
    const dates = coldDates(houseWith(...lots), FREEZER, DAY);
    if (!('plan' in dates)) throw new Error(dates.fault);
    const house = houseWith(...changedByPlan(houseWith(...lots), dates.plan));
    let most = 0;
    // Every step is ticked off on its last day, as a keeper who keeps to the plan does.
    let now = house;
    for (let n = 0; n < 60; n++) {
      const day = plusDays(DAY, n);
      now = {
        ...now,
        lots: now.lots.map((lot) => {
          const next = lot.cold.findIndex((s) => s.doneOn === undefined);
          return next >= 0 && lot.cold[next]!.to === day ? tickedStep(lot, next, day) : lot;
        }),
      };
      const load = inFreezer(now, day);
      expect(load).toBeLessThanOrEqual(FREEZER.grams);
      most = Math.max(most, load);
    }
    expect(most).toBe(1000);
    expect(lotsForCold(now, plusDays(DAY, 60))).toEqual([]);
  });
  it('leaves out what is barred or overruled, and says when the freezer is too warm', () => {
    expect(lotsForCold(houseWith({ ...OATS, barred: { why: 'recalled', on: DAY } }), DAY)).toEqual([]);
    expect(lotsForCold(houseWith({ ...OATS, overruled: { note: 'x', on: DAY } }), DAY)).toEqual([]);
    const dates = coldDates(houseWith(OATS), { grams: 1000, celsius: -5 }, DAY);
    expect('fault' in dates && dates.fault).toMatch(/too warm/);
  });
});

describe('the cupboard in a mix', () => {
  it('takes over what may be weighed out, and leaves foods without a lot', () => {
    const house = houseWith({ ...OATS, form: 'dried', grams: 300 }, { ...OATS, id: 'b', grams: 200 });
    const mix = house.mixes[0]!;
    const changes = cupboardChanges(house, mix, DAY);
    expect(changes).toEqual([{ food: 'rolled-oats', name: 'Rolled oats', to: 300 }]);
    const next = withCupboard(mix, changes);
    expect(next.problem.foods.filter((f) => f.on_hand_grams !== undefined).map((f) => f.id)).toEqual([
      'rolled-oats',
    ]);
    expect(cupboardChanges(house, next, DAY)).toEqual([]);
    // Barred: none of it is on hand any more.
    const barred = houseWith({ ...OATS, form: 'dried', barred: { why: 'recalled', on: DAY } });
    expect(cupboardChanges(barred, next, DAY)).toMatchObject([{ from: 300, to: 0 }]);
  });
  it('sums to what is left and ready, whatever was kept', () => {
    fc.assert(
      fc.property(cupboards, (all) => {
        const house = { ...demoHousehold(), lots: all.lots, dryingRuns: all.runs, batches: all.batches };
        const mix = {
          ...house.mixes[0]!,
          problem: { ...house.mixes[0]!.problem, foods: [{ id: 'oats' }] },
        };
        const [change] = cupboardChanges(house, mix, DAY);
        const open = leftOver(keptOf(house)).filter(
          // None of these lots was through the cold, so only what was dried at home is ready.
          ({ lot }) => lot.food === 'oats' && lot.form === 'dried' && !lot.barred,
        );
        if (all.lots.some((l) => l.food === 'oats'))
          expect(change!.to).toBeCloseTo(
            open.reduce((sum, l) => sum + l.grams, 0),
            6,
          );
        else expect(change).toBeUndefined();
      }),
    );
  });
});

describe('names and reasons', () => {
  it('tells lots of one food apart', () => {
    expect(lotName('Oats', DAY, [])).toBe('Oats');
    expect(lotName('Oats', DAY, ['Oats'])).toBe('Oats, 10 March 2026');
    expect(lotName('Oats', DAY, ['Oats', 'Oats, 10 March 2026'])).toBe('Oats, 10 March 2026 (2)');
  });
  it('knows the group of a food though the first place that names it does not', () => {
    const house = houseWith();
    expect(cupboardFoods(house).find((f) => f.id === 'rolled-oats')?.group).toBe('seed');
    expect(cupboardFoods(house).some((f) => f.id === 'demo-pellet')).toBe(false);
  });
  it('keeps the reason and the note, and advises by the reason', () => {
    expect(barWords('infested', ' moths ')).toBe('infested: moths');
    expect(barWords('recalled', '')).toBe('recalled');
    expect(barAdvice('spoiled: green')?.words).toMatch(/Throw all of it away/);
    expect(barAdvice('smells odd')).toBeUndefined();
  });
});

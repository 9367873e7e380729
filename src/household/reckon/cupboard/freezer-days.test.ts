import { describe, expect, it } from 'vitest';
import { batchOf, lotOf, pourOf } from '../../../../test/kitchen/cupboards.ts';
import { plusDays } from '../../../kitchen/days.ts';
import { tickedStep } from '../../../kitchen/freezing/freeze-treatment.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household } from '../../model.ts';
import { changedByPlan, freezerDays } from './freezer-days.ts';
import { gramsInFreezer } from './freezer-load.ts';
import { lotsToFreeze } from './lots-to-freeze.ts';

const DAY = '2026-03-10';

const FREEZER = { grams: 1000, celsius: -18 };

function houseWith(...lots: Lot[]): Household {
  return { ...demoHousehold(), lots };
}

const OATS = lotOf({ id: 'a', food: 'rolled-oats', name: 'Rolled oats', grams: 500 });

describe('the freeze treatment of a household', () => {
  it('is planned for what needs it, and planning twice changes nothing', () => {
    const house = houseWith(OATS, { ...OATS, id: 'b', form: 'dried' });
    const first = freezerDays(house, FREEZER, DAY);
    if (!('plan' in first)) throw new Error(first.fault);
    const changed = changedByPlan(house, first.plan);
    expect(changed.map((l) => [l.id, l.cold.length, l.grams])).toEqual([['a', 4, 500]]);
    const again = houseWith(...changed);
    const second = freezerDays(again, FREEZER, DAY);
    if (!('plan' in second)) throw new Error(second.fault);
    expect(changedByPlan(again, second.plan)).toEqual([]);
  });
  it('reckons with what is left of a lot, and keeps its weight', () => {
    const batch = batchOf({
      id: 'x',
      pours: [pourOf({ food: 'rolled-oats', lots: [{ lot: 'a', grams: 400 }] })],
    });
    const house = { ...houseWith(OATS), batches: [batch] };
    expect(lotsToFreeze(house, DAY).map((l) => l.grams)).toEqual([100]);
    const dates = freezerDays(house, { grams: 150, celsius: -18 }, DAY);
    if (!('plan' in dates)) throw new Error(dates.fault);
    expect(dates.plan.tooBig).toEqual([]);
    expect(changedByPlan(house, dates.plan)[0]!.grams).toBe(500);
  });
  it('never puts more into the freezer than it holds, on any day of the plan', () => {
    const lots = [400, 600, 700, 300].map((grams, i) => ({ ...OATS, id: `l${i}`, grams }));
    const dates = freezerDays(houseWith(...lots), FREEZER, DAY);
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
      const load = gramsInFreezer(now, day);
      expect(load).toBeLessThanOrEqual(FREEZER.grams);
      most = Math.max(most, load);
    }
    expect(most).toBe(1000);
    expect(lotsToFreeze(now, plusDays(DAY, 60))).toEqual([]);
  });
  it('leaves out what is barred or overruled, and says when the freezer is too warm', () => {
    expect(lotsToFreeze(houseWith({ ...OATS, barred: { why: 'recalled', on: DAY } }), DAY)).toEqual([]);
    expect(lotsToFreeze(houseWith({ ...OATS, overruled: { note: 'x', on: DAY } }), DAY)).toEqual([]);
    const dates = freezerDays(houseWith(OATS), { grams: 1000, celsius: -5 }, DAY);
    expect('fault' in dates && dates.fault).toMatch(/too warm/);
  });
});

import { describe, expect, it } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import type { FreezeStep, Lot } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household } from '../../model.ts';
import { firstOverfullDay, gramsInFreezer } from './freezer-load.ts';

const step = (kind: 'freeze' | 'thaw', from: number, to: number): FreezeStep => ({
  kind,
  from: `2026-03-${String(from).padStart(2, '0')}`,
  to: `2026-03-${String(to).padStart(2, '0')}`,
});
const OATS = lotOf({ id: 'oats', food: 'rolled-oats', grams: 600 });
const MILLET = lotOf({ id: 'millet', food: 'millet', grams: 500 });
const house = (...lots: Lot[]): Household => ({
  ...demoHousehold(),
  lots,
  kitchen: [{ id: 'kitchen', freezer: { grams: 1000, celsius: -18 } }],
});

describe('what lies in the freezer', () => {
  it('counts a freeze from its first day until it is ticked off', () => {
    const cold = [step('freeze', 4, 8), step('thaw', 8, 12)];
    const at = (day: string, lot: Lot = { ...OATS, cold }) => gramsInFreezer(house(lot), day);
    expect([at('2026-03-03'), at('2026-03-04'), at('2026-03-09')]).toEqual([0, 600, 600]);
    const ticked = {
      ...OATS,
      cold: [{ ...step('freeze', 4, 9), doneOn: '2026-03-09' }, step('thaw', 9, 13)],
    };
    expect(at('2026-03-09', ticked)).toBe(0);
  });
});

describe('room for a lot on other days', () => {
  const oats = { ...OATS, cold: [step('freeze', 4, 8), step('thaw', 8, 12), step('freeze', 12, 16)] };
  const millet = { ...MILLET, cold: [step('freeze', 16, 20)] };
  const moved = (from: number) => ({ ...MILLET, cold: [step('freeze', from, from + 4)] });

  it('is looked for on the days that are new', () => {
    const full = house(oats, millet);
    expect(firstOverfullDay(full, [moved(8)], '2026-03-04')).toBeUndefined();
    expect(firstOverfullDay(full, [moved(10)], '2026-03-04')).toEqual({
      day: '2026-03-12',
      grams: 1100,
      room: 1000,
    });
    expect(firstOverfullDay({ ...full, kitchen: [] }, [moved(10)], '2026-03-04')).toBeUndefined();
  });

  it('reckons that what is over comes out today, and what follows it later', () => {
    // On the 10th the freeze is two days late: the thaw ends on the 14th, and the oats go in again from then.
    const full = house(oats, millet);
    expect(firstOverfullDay(full, [moved(10)], '2026-03-10')).toBeUndefined();
    expect(firstOverfullDay(full, [moved(11)], '2026-03-10')).toMatchObject({ day: '2026-03-14' });
  });
});

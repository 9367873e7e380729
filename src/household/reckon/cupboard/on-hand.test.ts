import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cupboards, lotOf } from '../../../../test/kitchen/cupboards.ts';
import { leftOver } from '../../../kitchen/cupboard/cupboard.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household } from '../../model.ts';
import { contentsOf } from './contents.ts';
import { cupboardChanges, withCupboard } from './on-hand.ts';

const DAY = '2026-03-10';

function houseWith(...lots: Lot[]): Household {
  return { ...demoHousehold(), lots };
}

const OATS = lotOf({ id: 'a', food: 'rolled-oats', name: 'Rolled oats', grams: 500 });

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
        const open = leftOver(contentsOf(house)).filter(
          // None of these lots was through the freeze treatment, so only what was dried at home is ready.
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

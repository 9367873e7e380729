import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cupboards, lotOf } from '../../../../test/kitchen/cupboards.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household } from '../../model.ts';
import { lotsByFood } from './lots-by-food.ts';

const DAY = '2026-03-10';

function houseWith(...lots: Lot[]): Household {
  return { ...demoHousehold(), lots };
}

const OATS = lotOf({ id: 'a', food: 'rolled-oats', name: 'Rolled oats', grams: 500 });

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

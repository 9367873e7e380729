import { describe, expect, it } from 'vitest';
import { carrot, house, run, table } from '../../../../test/kitchen/carrot-run.ts';
import { demoHousehold } from '../../demo.ts';
import type { OwnFood } from '../../model.ts';
import { outcomeOf } from './drying-outcome.ts';
import { ownAtMoisture, withMoisture } from './measured-moisture.ts';

describe('at the measured moisture', () => {
  it('one food of the mix counts, the others stay', () => {
    const mix = demoHousehold().mixes[0]!;
    const done = outcomeOf(house(), { ...run, gramsAfter: 62 }, carrot, { scaleStep: 1 });
    if (!done.ok) throw new Error(done.fault);
    const next = withMoisture(mix, 'carrot-dried', done.value.moisture, table);
    expect(next.problem.foods.find((f) => f.id === 'carrot-dried')!.composition!.WATER).toBe(
      done.value.moisture,
    );
    expect(next.problem.foods.filter((f) => f.id !== 'carrot-dried')).toEqual(
      mix.problem.foods.filter((f) => f.id !== 'carrot-dried'),
    );
  });

  it('an own food says that it was measured, once', () => {
    const own: OwnFood = {
      id: 'mine',
      name: 'Leaf',
      kind: 'mix',
      composition: { WATER: 10, PROCNT: 18 },
      sd: { WATER: 1, PROCNT: 2 },
      source: 'my label',
      invented: false,
    };
    const once = ownAtMoisture(own, 5, '2026-03-14');
    expect(once.composition.PROCNT).toBeCloseTo(19, 9);
    expect(once.sd).toEqual({ PROCNT: expect.closeTo((2 * 95) / 90, 9) });
    const twice = ownAtMoisture(once, 8, '2026-03-20');
    expect(twice.source).toBe('my label; at 8 % water as dried on 20 March 2026');
    expect(twice.composition.PROCNT).toBeCloseTo(18.4, 9);
  });
});

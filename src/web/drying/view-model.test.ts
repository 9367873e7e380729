import { describe, expect, it } from 'vitest';
import { carrot, house, run, table } from '../../../test/kitchen/carrot-run.ts';
import { demoHousehold } from '../../household/demo.ts';
import { outcomeOf } from '../../household/reckon/drying/drying-outcome.ts';
import { clockOf } from '../shared/words/clock.ts';
import { checkLine } from './checks-due.ts';
import { foodLines, sayWater, trayArea } from './view-model.ts';

const at = (time: string) => Date.parse(`2026-03-14T${time}:00.000Z`);

describe('the next check', () => {
  it('is told with the time left, and turns due on the second', () => {
    const words = checkLine(run, at('08:48'))!.words;
    expect(words).toBe(`Look and turn at ${clockOf('2026-03-14T10:00:00Z', at('08:48'))}, in 1 h 12 min`);
    expect(checkLine(run, at('10:00') - 1)!.due).toBe(false);
    expect(checkLine(run, at('10:00'))!.due).toBe(true);
    expect(checkLine({ ...run, gramsAfter: 60 }, at('10:00'))).toBeUndefined();
  });
});

describe('what the food counts with', () => {
  const mix = demoHousehold().mixes[0]!;
  it('stands as the mix has it, at the measured moisture, and dried from fresh', () => {
    const done = outcomeOf(house(), { ...run, gramsAfter: 62 }, carrot, { scaleStep: 1 });
    if (!done.ok) throw new Error(done.fault);
    const food = mix.problem.foods.find((f) => f.id === 'carrot-dried')!;
    const lines = foodLines(food, done.value, table);
    const protein = lines.find((l) => l.tag === 'PROCNT')!;
    const had = table.get('sr28:11683')!.composition;
    expect(protein.mix).toBe(had.PROCNT);
    expect(protein.damp).toBeCloseTo((had.PROCNT! * (100 - done.value.moisture)) / (100 - had.WATER!), 9);
    expect(protein.fresh).toBeCloseTo(
      (carrot.composition.PROCNT! * (100 - done.value.moisture)) / (100 - carrot.composition.WATER!),
      6,
    );
  });
});

it('reckons a tray in dm2', () => {
  expect(trayArea(40, 30)).toBe(12);
});

it('says water with its interval where there is doubt', () => {
  expect(sayWater({ moisture: 8.44, low: 6.06, high: 10.7 })).toBe('8.4 % (6.1 to 10.7 %)');
  expect(sayWater({ moisture: 8, low: 8, high: 8 })).toBe('8 %');
});

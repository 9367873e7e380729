import { expect, it } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import type { Lot } from '../../../kitchen/model.ts';
import { demoHousehold } from '../../demo.ts';
import type { Household } from '../../model.ts';
import { lotsToTick, tickedNext } from './lots-to-freeze.ts';

const houseWith = (...lots: Lot[]): Household => ({ ...demoHousehold(), lots });
const OATS = lotOf({ id: 'a', food: 'rolled-oats', name: 'Rolled oats', grams: 500 });

it('ticks off what has lasted long enough, and nothing else', () => {
  const step = (kind: 'freeze' | 'thaw', from: string, to: string) => ({ kind, from, to });
  const cold = [step('freeze', '2026-03-01', '2026-03-05'), step('thaw', '2026-03-05', '2026-03-09')];
  const house = houseWith(
    { ...OATS, id: 'due', cold },
    { ...OATS, id: 'later', cold: [step('freeze', '2026-03-03', '2026-03-07')] },
    { ...OATS, id: 'none' },
    { ...OATS, id: 'barred', cold, barred: { why: 'moths', on: '2026-03-02' } },
  );
  expect(lotsToTick(house, '2026-03-04')).toEqual([]);
  const due = lotsToTick(house, '2026-03-06');
  expect(due.map((l) => l.id)).toEqual(['due']);
  const [first, second] = tickedNext(due[0]!, '2026-03-06').cold;
  expect(first!.doneOn).toBe('2026-03-06');
  expect([second!.from, second!.to, second!.doneOn]).toEqual(['2026-03-06', '2026-03-10', undefined]);
});

/** The lots that a pour is booked to. */
import { expect, test } from 'vitest';
import type { Lot } from '../../kitchen/model.ts';
import { pourLots } from './pour-lots.ts';

const lot = (id: string, grams: number, more: Partial<Lot> = {}): Lot => ({
  id,
  food: 'nettle',
  name: 'Nettle leaf',
  grams,
  form: 'dried',
  boughtOn: '2026-03-01',
  frozen: false,
  cold: [],
  ...more,
});
const kept = (...lots: Lot[]) => ({ lots, runs: [], batches: [] });
const day = '2026-03-14';

test('a pour is booked to the lots there are, the rest to none', () => {
  const lots = kept(lot('a', 10, { bestBefore: '2026-04-01' }), lot('b', 20, { bestBefore: '2026-05-01' }));
  expect(pourLots(lots, 'nettle', 15, day)).toEqual([
    { lot: 'a', grams: 10 },
    { lot: 'b', grams: 5 },
  ]);
  expect(pourLots(lots, 'nettle', 40, day).reduce((sum, l) => sum + l.grams, 0)).toBe(30);
});

test('a barred lot is not booked, and neither is what was left out or taken back', () => {
  const barred = kept(lot('a', 10, { barred: { why: 'moths', on: '2026-03-10' } }));
  expect(pourLots(barred, 'nettle', 5, day)).toEqual([]);
  expect(pourLots(kept(lot('a', 10)), 'nettle', 0, day)).toEqual([]);
  expect(pourLots(kept(lot('a', 10)), 'nettle', -3, day)).toEqual([]);
});

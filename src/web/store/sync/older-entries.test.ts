import { expect, it } from 'vitest';
import { batchOf, pourOf } from '../../../../test/kitchen/cupboards.ts';
import { survivingStorage } from '../../shared/device-storage.ts';
import type { Keeper } from './keeper.ts';
import { takeOverOlderEntries } from './older-entries.ts';

it('hands over what an older page left, one or several, and leaves what it cannot read', () => {
  const storage = survivingStorage(() => {
    throw new Error('kept as long as the page');
  });
  const [first, second] = [pourOf({ food: 'oats', grams: 5 }), pourOf({ food: 'millet', grams: 6 })];
  const base = batchOf({ id: 'b' });
  const once = { ...base, pours: [first] };
  const twice = { ...base, pours: [first, second] };
  const other = batchOf({ id: 'other' });
  storage.setItem(
    'pouchful.batch.b',
    JSON.stringify([
      { base, next: once },
      { base: once, next: twice },
    ]),
  );
  storage.setItem(
    'pouchful.batch.other',
    JSON.stringify({ base: other, next: { ...other, pours: [first] } }),
  );
  storage.setItem('pouchful.batch.odd', '{"next": {"id": 5}}');
  storage.setItem('pouchful.batch.torn', '[{"ba');
  const written: unknown[] = [];
  const write: Keeper['write'] = (kind, id, body, options) =>
    void written.push([kind, id, body, options.base]);
  takeOverOlderEntries({ write }, storage);
  expect(written).toEqual([
    ['batches', 'b', once, base],
    ['batches', 'b', twice, once],
    ['batches', 'other', { ...other, pours: [first] }, other],
  ]);
  expect(storage.keys('pouchful.batch.').sort()).toEqual(['pouchful.batch.odd', 'pouchful.batch.torn']);
});

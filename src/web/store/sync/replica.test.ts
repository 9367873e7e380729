import { expect, it } from 'vitest';
import { lotOf } from '../../../../test/kitchen/cupboards.ts';
import { Replica } from './replica.ts';

const record = (version: number, seq: number, grams: number, place = 1) => ({
  kind: 'lots' as const,
  id: `l${place}`,
  version,
  seq,
  place,
  body: lotOf({ id: `l${place}`, grams }),
});

it('is not taken back by what was fetched before a newer version came in', () => {
  const replica = new Replica('e');
  replica.take(record(2, 5, 20));
  replica.take(record(1, 4, 10));
  expect(replica.get('lots', 'l1')).toMatchObject({ version: 2, body: { grams: 20 } });
});

it('lists records in the order in which they were first kept, whenever they changed', () => {
  const replica = new Replica('e');
  replica.take(record(1, 7, 1, 7));
  replica.take(record(3, 9, 1, 2));
  expect(replica.list('lots').map((r) => r.id)).toEqual(['l2', 'l7']);
});

it('keeps the very object of what did not change', () => {
  const replica = new Replica('e');
  replica.take(record(1, 1, 10));
  const { body } = replica.get('lots', 'l1')!;
  replica.take(record(2, 2, 10));
  expect(replica.get('lots', 'l1')).toMatchObject({ version: 2 });
  expect(replica.get('lots', 'l1')?.body).toBe(body);
});

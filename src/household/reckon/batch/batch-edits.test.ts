import { describe, expect, test } from 'vitest';
import { batch, pour } from '../../../../test/kitchen/first-mix-batch.ts';
import type { Batch } from '../../../kitchen/model.ts';
import {
  begunAgain,
  usedUp,
  withAnyAmount,
  withMoreStock,
  withNoMore,
  withoutLast,
  withPour,
} from './batch-edits.ts';
import { batchesOf } from './batches.ts';

describe('batches', () => {
  test('those being weighed and the finished, newest first, of this mix alone', () => {
    const at = (id: string, startedAt: string, more: Partial<Batch> = {}) => ({
      ...batch,
      id,
      startedAt,
      ...more,
    });
    const end = { finishedAt: '2026-03-20T10:00:00.000Z' };
    const found = batchesOf('m', [
      at('old', '2026-03-01T10:00:00.000Z'),
      at('new', '2026-03-02T10:00:00.000Z'),
      at('done', '2026-03-03T10:00:00.000Z', end),
      at('other', '2026-03-04T10:00:00.000Z', { mixId: 'n' }),
    ]);
    expect(found.running.map((b) => b.id)).toEqual(['new', 'old']);
    expect(found.finished.map((b) => b.id)).toEqual(['done']);
  });

  test('an entry taken back leaves the batch as it was', () => {
    expect(withoutLast(withPour(batch, pour('oats', 150)))).toEqual(batch);
  });

  test('begun again, nothing of the old bowl is left but the plan', () => {
    const closed: Batch = {
      ...withPour(batch, pour('oats', 500)),
      accepted: { note: 'no', on: '2026-03-14' },
      finishedAt: '2026-03-14T11:00:00.000Z',
    };
    expect(begunAgain(closed, 'c', '2026-03-15T10:00:00.000Z')).toEqual({
      ...batch,
      id: 'c',
      startedAt: '2026-03-15T10:00:00.000Z',
    });
  });

  test('more than the lots held is counted from what they held or from what is poured, whichever is more', () => {
    const stocked = { ...withPour(batch, pour('oats', 160)), stock: { oats: 150, maize: 90 } };
    expect(withMoreStock(stocked, { oats: 10, maize: 5, dill: 7 }).stock).toEqual({ oats: 170, maize: 95 });
    expect(withMoreStock(batch, { oats: 10 })).toEqual(batch);
  });
});

describe('what there is no more of', () => {
  const begun = withPour({ ...batch, stock: { oats: 100 } }, pour('oats', 20));

  test('is not asked for again, until it is taken back with its entry or there is more after all', () => {
    const out = withNoMore(begun, 'oats');
    expect([usedUp(begun), usedUp(out)]).toEqual([[], ['oats']]);
    expect(out.stock).toEqual({ oats: 20 });
    expect(withoutLast(out)).toEqual({ ...batch, pours: [] });
    expect(withAnyAmount(out, 'oats').stock).toBeUndefined();
    expect(usedUp(withMoreStock(out, { oats: 5 }))).toEqual([]);
  });

  test('a batch begun again counts its lots without what was poured away', () => {
    expect(begunAgain(begun, 'new', '2026-03-15T10:00:00.000Z').stock).toEqual({ oats: 80 });
    const givenUp = {
      ...begun,
      givenUp: { note: 'spilt', on: '2026-03-15' },
      finishedAt: '2026-03-15T10:00:00.000Z',
    };
    expect(begunAgain(givenUp, 'new', '2026-03-15T10:00:00.000Z')).not.toHaveProperty('givenUp');
  });
});

import { describe, expect, it } from 'vitest';
import { batchOf, lotOf } from '../../../../test/kitchen/cupboards.ts';
import type { Batch, Pour } from '../../../kitchen/model.ts';
import { addedPours, requestFor } from './request.ts';

const pour = (grams: number, minute = 0): Pour => ({
  food: 'millet',
  lots: [],
  target: 15,
  grams,
  at: new Date(Date.UTC(2026, 2, 20, 10, minute)).toISOString(),
});
const base = batchOf({
  id: 'a/b',
  order: ['millet'],
  pours: [pour(15)],
  stock: { millet: 100 },
  startedAt: '2026-03-20T09:59:00Z',
});
const poured: Batch = { ...base, pours: [...base.pours, pour(12, 1)] };

describe('what is added at the scale', () => {
  it('is the pours beyond those that were there', () => {
    expect(addedPours(base, poured)).toEqual({ pours: [pour(12, 1)] });
    const spooned = { ...poured, pours: [...poured.pours, pour(-2, 2)] };
    expect(addedPours(base, spooned)).toEqual({ pours: [pour(12, 1), pour(-2, 2)] });
  });

  it('has the stock where that changed with it', () => {
    expect(addedPours(base, { ...poured, stock: { millet: 27 } })).toEqual({
      pours: [pour(12, 1)],
      stock: { millet: 27 },
    });
  });

  it.each<[string, Batch]>([
    ['a pour taken back', { ...base, pours: [] }],
    ['another pour in the place of one', { ...base, pours: [pour(16), pour(12, 1)] }],
    ['the end', { ...poured, finishedAt: '2026-03-20T11:00:00Z' }],
    ['another step of the scale', { ...base, problem: { ...base.problem, scale_step_grams: 0.5 } }],
    ['stock alone', { ...base, stock: { millet: 15 } }],
    ['no stock any more', { ...poured, stock: undefined }],
    ['nothing', base],
  ])('is not: %s', (_, next) => {
    expect(addedPours(base, next)).toBeUndefined();
  });
});

describe('a change is one request', () => {
  const headers = { 'idempotency-key': 'w1', 'pouchful-device': 'Robin%E2%80%99s%20phone' };
  const json = { ...headers, 'content-type': 'application/json' };
  const standing = (version: number, body: Batch | null) => ({ epoch: 'e', version, body });
  const asked = (change: Omit<Parameters<typeof requestFor>[0], 'writeId'>) =>
    requestFor({ ...change, writeId: 'w1' }, 'Robin’s phone');

  it('of the pour alone, with the whole batch where there is none to pour into', () => {
    const { otherwise, ...pours } = asked({
      kind: 'batches',
      id: 'a/b',
      base: standing(3, base),
      body: poured,
    });
    expect(pours).toEqual({
      method: 'POST',
      path: '/api/batches/a%2Fb/pours',
      headers: { ...json, 'if-match': '"3"' },
      body: JSON.stringify({ pours: [pour(12, 1)] }),
    });
    expect(otherwise).toEqual({
      method: 'PUT',
      headers: { ...json, 'if-match': '"3"' },
      body: JSON.stringify(poured),
    });
  });

  it('of the whole record for anything else', () => {
    const ended = { ...base, finishedAt: '2026-03-20T11:00:00Z' };
    expect(asked({ kind: 'batches', id: 'a/b', base: standing(3, base), body: ended })).toEqual({
      method: 'PUT',
      path: '/api/batches/a%2Fb',
      headers: { ...json, 'if-match': '"3"' },
      body: JSON.stringify(ended),
    });
  });

  it('says of a new record that none may be there, and deletes what it saw', () => {
    const lot = lotOf({ id: 'l' });
    expect(asked({ kind: 'lots', id: 'l', base: standing(0, null), body: lot })).toEqual({
      method: 'PUT',
      path: '/api/lots/l',
      headers: { ...json, 'if-none-match': '*' },
      body: JSON.stringify(lot),
    });
    const there = { epoch: 'e', version: 7, body: lot };
    expect(asked({ kind: 'lots', id: 'l', base: there, body: null })).toEqual({
      method: 'DELETE',
      path: '/api/lots/l',
      headers: { ...headers, 'if-match': '"7"' },
    });
  });
});

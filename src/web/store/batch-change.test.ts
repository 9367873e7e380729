import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { batchOf } from '../../../test/kitchen/cupboards.ts';
import { batchTag } from '../../kitchen/batch/batch-tag.ts';
import type { Batch, Pour } from '../../kitchen/model.ts';
import { ApiError } from './api.ts';
import { addedPours, sendChange } from './batch-change.ts';

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
  const asked: { method: string; path: string; ifMatch: string | null; body: unknown }[] = [];
  let answers: (() => Response)[];
  beforeEach(() => {
    asked.length = 0;
    answers = [];
    vi.stubGlobal('fetch', async (path: string, init: RequestInit) => {
      asked.push({
        method: init.method ?? 'GET',
        path,
        ifMatch: new Headers(init.headers).get('if-match'),
        body: JSON.parse(init.body as string),
      });
      const answer = answers.shift();
      if (!answer) throw new TypeError('no network');
      return answer();
    });
  });
  afterEach(() => vi.unstubAllGlobals());
  const seen = batchTag(base);
  const refused = (status: number, more = {}) =>
    Response.json({ field: '', message: 'no', ...more }, { status });

  it('of the pour alone, answered with the batch as it stands', async () => {
    const later = { ...poured, pours: [...poured.pours, pour(3, 5)] };
    answers = [() => Response.json({ added: true, batch: later })];
    expect(await sendChange({ base, next: poured })).toEqual({ batch: later, overtaken: false });
    expect(asked).toEqual([
      {
        method: 'POST',
        path: '/api/batches/a%2Fb/pours',
        ifMatch: null,
        body: { pours: [pour(12, 1)], seen },
      },
    ]);
  });

  it('of the whole batch for anything else', async () => {
    const ended = { ...base, finishedAt: '2026-03-20T11:00:00Z' };
    answers = [() => new Response(null, { status: 204 })];
    expect(await sendChange({ base, next: ended })).toEqual({ batch: ended, overtaken: false });
    expect(asked).toEqual([{ method: 'PUT', path: '/api/batches/a%2Fb', ifMatch: `"${seen}"`, body: ended }]);
  });

  it('not made where another device went on', async () => {
    const there = { ...base, pours: [pour(7)] };
    answers = [() => Response.json({ added: false, batch: there }), () => refused(412, { batch: there })];
    expect(await sendChange({ base, next: poured })).toEqual({ batch: there, overtaken: true });
    const back = { ...base, pours: [] };
    expect(await sendChange({ base, next: back })).toEqual({ batch: there, overtaken: true });
    expect(asked.map((a) => a.method)).toEqual(['POST', 'PUT']);
  });

  it('and a second one where the batch was deleted meanwhile: what is in the bowl is kept', async () => {
    answers = [() => refused(404), () => new Response(null, { status: 204 })];
    expect(await sendChange({ base, next: poured })).toEqual({ batch: poured, overtaken: false });
    expect(asked[1]).toEqual({ method: 'PUT', path: '/api/batches/a%2Fb', ifMatch: null, body: poured });
  });

  it('that may be sent again where it failed', async () => {
    await expect(sendChange({ base, next: poured })).rejects.toThrow('does not answer');
    answers = [() => refused(500)];
    await expect(sendChange({ base, next: poured })).rejects.toThrow(ApiError);
    answers = [() => Response.json({ added: true, batch: poured })];
    expect(await sendChange({ base, next: poured })).toEqual({ batch: poured, overtaken: false });
    expect(new Set(asked.map((a) => JSON.stringify(a))).size).toBe(1);
  });
});

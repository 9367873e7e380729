/** Weighing over HTTP: pours go onto a batch, once each, and two devices on one batch never write over one another. */
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { precondition, put as putIn, remove } from '../../test/household/put.ts';
import { demoHousehold } from '../household/demo.ts';
import type { Written } from '../household/records.ts';
import { type FileStore, openStore } from '../household/store.ts';
import type { Batch, Lot, Pour } from '../kitchen/model.ts';
import { createApp } from './app.ts';

const [mix] = demoHousehold().mixes;
if (!mix) throw new Error('the demo household has no mix');
const empty: Batch = {
  id: 'b',
  name: 'Batch',
  problem: mix.problem,
  shares: mix.shares,
  order: ['millet', 'rolled-oats'],
  grams: 300,
  pours: [],
  animalIds: [],
  stock: { millet: 100 },
  startedAt: '2026-03-20T09:59:00Z',
};
const lot: Lot = {
  id: 'millet-1',
  food: 'millet',
  name: 'Millet',
  grams: 500,
  form: 'dry',
  boughtOn: '2026-03-01',
  frozen: false,
  cold: [],
};
const pour = (grams: number, minute = 0): Pour => ({
  food: 'millet',
  lots: [{ lot: 'millet-1', grams }],
  target: 15,
  grams,
  at: new Date(Date.UTC(2026, 2, 20, 10, minute)).toISOString(),
});
const first = pour(15);
const second = pour(12.5, 1);
const ended: Batch = { ...empty, pours: [first], finishedAt: '2026-03-20T11:00:00Z' };

const folder = folderForEachTest();
let store: FileStore;
let app: ReturnType<typeof createApp>;
beforeEach(async () => {
  store = openStore(join(folder(), 'household.sqlite'));
  await putIn(store, 'mixes', { ...mix, animalIds: [] });
  await putIn(store, 'lots', lot);
  await putIn(store, 'batches', empty);
  app = createApp({ store, webDir: folder(), referenceFile: '' });
});
afterEach(async () => {
  await store.close();
});

const json = { 'content-type': 'application/json' };
const post = (body: object, id = 'b', headers = {}) =>
  app.request(`/api/batches/${id}/pours`, {
    method: 'POST',
    headers: { ...json, ...headers },
    body: JSON.stringify(body),
  });
/** @param version that the sender saw; what stands there unless given */
const put = async (body: Batch, version?: number) => {
  const path = `/api/batches/${body.id}`;
  const seen = version === undefined ? await precondition(store, path) : { 'if-match': `"${version}"` };
  return app.request(path, { method: 'PUT', headers: { ...json, ...seen }, body: JSON.stringify(body) });
};
const standing = async (answer: Response) => ((await answer.json()) as Written).record.body;
const onDisk = async () => (await store.household()).batches[0];

describe('pours', () => {
  it('go onto the batch in their order, and the batch comes back as it stands', async () => {
    const answer = await post({ pours: [first] });
    expect(answer.status).toBe(200);
    const after = { ...empty, pours: [first] };
    expect(await standing(answer)).toEqual(after);
    expect(await onDisk()).toEqual(after);
    // Some of it spooned out again, and no more of the food: both are one entry.
    const spooned = pour(-3, 2);
    const both = await post({ pours: [second, spooned], stock: { millet: 24.5 } });
    const then = { ...empty, pours: [first, second, spooned], stock: { millet: 24.5 } };
    expect(await standing(both)).toEqual(then);
    expect(await onDisk()).toEqual(then);
  });

  it('are not added twice when the request is sent again', async () => {
    await post({ pours: [first] });
    const again = await post({ pours: [first] });
    expect(again.status).toBe(200);
    expect(await standing(again)).toEqual({ ...empty, pours: [first] });
    // Not even after another device went on, or finished the batch.
    await post({ pours: [second] });
    expect(await standing(await post({ pours: [first] }))).toEqual({ ...empty, pours: [first, second] });
    await put({ ...ended, pours: [first, second] });
    expect((await post({ pours: [first] })).status).toBe(200);
    expect((await onDisk())?.pours).toEqual([first, second]);
  });

  it('that were taken back since do not come back with the request that is sent again', async () => {
    const once = { 'idempotency-key': 'once' };
    await post({ pours: [first] }, 'b', once);
    await put(empty);
    expect(await standing(await post({ pours: [first] }, 'b', once))).toEqual(empty);
    expect(await standing(await post({ pours: [first] }))).toEqual({ ...empty, pours: [first] });
  });

  it('of the same weight of the same food at another time are other pours', async () => {
    await post({ pours: [first] });
    await post({ pours: [pour(15, 9)] });
    expect((await onDisk())?.pours).toEqual([first, pour(15, 9)]);
  });

  it('of one request that are there in part are filled up', async () => {
    await post({ pours: [first] });
    const answer = await post({ pours: [first, second, second] });
    expect(await standing(answer)).toEqual({ ...empty, pours: [first, second] });
  });

  it('of two phones at once are all added, each once', async () => {
    const entries = Array.from({ length: 40 }, (_, i) => pour(1 + i, i));
    await Promise.all(entries.flatMap((entry) => [post({ pours: [entry] }), post({ pours: [entry] })]));
    const kept = (await onDisk())?.pours ?? [];
    expect(kept.map((p) => p.grams).sort((a, b) => a - b)).toEqual(entries.map((p) => p.grams));
  });

  it('are refused for a batch that is not there', async () => {
    const answer = await post({ pours: [first] }, 'other');
    expect(answer.status).toBe(404);
    expect(await answer.json()).toEqual({
      field: '/id',
      message: expect.stringContaining('no batch has the id "other"'),
    });
  });

  it('are refused for a finished batch', async () => {
    await put(ended);
    const answer = await post({ pours: [second] });
    expect(answer.status).toBe(409);
    expect(await answer.json()).toEqual({ field: '', message: expect.stringContaining('is finished') });
    expect(await onDisk()).toEqual(ended);
  });

  it.each([
    ['no pours', { pours: [] }, '/pours', 'at least 1 long'],
    ['nothing', {}, '/pours', 'is missing'],
    ['a text for grams', { pours: [{ ...first, grams: '15' }] }, '/pours/0/grams', 'is "15": write a number'],
    ['no time', { pours: [first, { ...first, at: 'now' }] }, '/pours/1/at', 'is "now"'],
    ['a target below 0', { pours: [{ ...first, target: -1 }] }, '/pours/0/target', 'at least 0'],
    ['an unknown field', { pours: [{ ...first, scoop: 1 }] }, '/pours/0/scoop', 'no such field'],
    ['what it was seen as', { pours: [first], seen: 'x' }, '/seen', 'no such field'],
    ['less than no stock', { pours: [first], stock: { millet: -1 } }, '/stock/millet', 'at least 0'],
  ])('name the field that is wrong: %s', async (_, body, field, words) => {
    const answer = await post(body);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toEqual({ field, message: expect.stringContaining(words) });
    expect(await onDisk()).toEqual(empty);
  });

  it('are no more than a batch can hold', async () => {
    const full = Array.from({ length: 1000 }, (_, i) => pour(0.1, i));
    await post({ pours: full });
    const answer = await post({ pours: [pour(1, 2000)] });
    expect(answer.status).toBe(409);
    expect(await answer.json()).toMatchObject({ field: '/pours' });
    expect((await onDisk())?.pours).toHaveLength(1000);
  });
});

describe('the rest of a batch', () => {
  it('is written upon the version that its sender saw, and harmlessly written again', async () => {
    const finished = { ...empty, finishedAt: '2026-03-20T11:00:00Z', madeBy: 'Robin' };
    expect((await put(finished, 1)).status).toBe(200);
    expect(await onDisk()).toEqual(finished);
    expect((await put(finished, 1)).status).toBe(200);
    expect(await onDisk()).toEqual(finished);
  });

  it('is refused where another device went on, with the batch as it stands', async () => {
    await post({ pours: [first] });
    const answer = await put({ ...empty, finishedAt: '2026-03-20T11:00:00Z' }, 1);
    expect(answer.status).toBe(409);
    expect(await answer.json()).toMatchObject({
      field: '',
      stands: { version: 2, body: { ...empty, pours: [first] } },
    });
    expect(await onDisk()).toEqual({ ...empty, pours: [first] });
  });

  it('is refused where the version is none, naming the header', async () => {
    const answer = await app.request('/api/batches/b', {
      method: 'PUT',
      headers: { ...json, 'if-match': 'W/"x"' },
      body: JSON.stringify(empty),
    });
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ field: '/if-match' });
  });

  it('is not made anew by a sender who saw it before it was deleted', async () => {
    await remove(store, 'batches', 'b');
    const answer = await put(empty, 1);
    expect(answer.status).toBe(409);
    expect(await answer.json()).toMatchObject({ stands: { version: 2, body: null } });
    // Whoever saw that it was deleted may bring it back.
    expect((await put(empty, 2)).status).toBe(200);
  });

  it('stays as it was fed once it is finished', async () => {
    await put(ended);
    expect((await put({ ...ended, pours: [] })).status).toBe(409);
    await expect(remove(store, 'batches', 'b')).rejects.toMatchObject({ kind: 'finished' });
    expect((await put({ ...ended, left: { grams: 40, on: '2026-03-25' } })).status).toBe(200);
  });
});

/** Weighing over HTTP: pours go onto a batch, once each, and two devices on one batch never write over one another. */
import { join } from 'node:path';
import type { OpenAPIHono } from '@hono/zod-openapi';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { demoHousehold } from '../household/demo.ts';
import type { PourAnswer } from '../household/model.ts';
import { openStore, type Store } from '../household/store.ts';
import { batchTag } from '../kitchen/batch/batch-tag.ts';
import type { Batch, Pour } from '../kitchen/model.ts';
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
let store: Store;
let app: OpenAPIHono;
beforeEach(async () => {
  store = openStore(join(folder(), 'household.sqlite'));
  await store.putKitchen('batches', empty);
  app = createApp({ store, webDir: folder(), referenceFile: '' });
});
afterEach(async () => {
  await store.close();
});

const send = (method: string, path: string, body: unknown, seen?: Batch) =>
  app.request(path, {
    method,
    headers: { 'content-type': 'application/json', ...(seen && { 'if-match': `"${batchTag(seen)}"` }) },
    body: JSON.stringify(body),
  });
const post = (body: object, seen?: Batch, id = 'b') =>
  send('POST', `/api/batches/${id}/pours`, { ...body, ...(seen && { seen: batchTag(seen) }) });
const put = (body: Batch, seen?: Batch) => send('PUT', `/api/batches/${body.id}`, body, seen);
const onDisk = async () => (await store.household()).batches[0];

describe('pours', () => {
  it('go onto the batch in their order, and the batch comes back as it stands', async () => {
    const answer = await post({ pours: [first] }, empty);
    expect(answer.status).toBe(200);
    const after = { ...empty, pours: [first] };
    expect(await answer.json()).toEqual({ added: true, batch: after });
    expect(await onDisk()).toEqual(after);
    // Some of it spooned out again, and no more of the food: both are one entry.
    const spooned = pour(-3, 2);
    const both = await post({ pours: [second, spooned], stock: { millet: 24.5 } }, after);
    const then = { ...empty, pours: [first, second, spooned], stock: { millet: 24.5 } };
    expect(await both.json()).toEqual({ added: true, batch: then });
    expect(await onDisk()).toEqual(then);
  });

  it('are not added twice when the request is sent again', async () => {
    await post({ pours: [first] }, empty);
    const again = await post({ pours: [first] }, empty);
    expect(again.status).toBe(200);
    expect(await again.json()).toEqual({ added: true, batch: { ...empty, pours: [first] } });
    // Not even after another device went on, or finished the batch.
    await post({ pours: [second] });
    const late = await post({ pours: [first] }, empty);
    expect(await late.json()).toEqual({ added: true, batch: { ...empty, pours: [first, second] } });
    await put({ ...ended, pours: [first, second] });
    expect(await (await post({ pours: [first] }, empty)).json()).toMatchObject({ added: true });
    expect((await onDisk())?.pours).toEqual([first, second]);
    // The same weight of the same food at another time is another pour.
    await put({ ...empty, pours: [first] });
    await post({ pours: [pour(15, 9)] });
    expect((await onDisk())?.pours).toEqual([first, pour(15, 9)]);
  });

  it('of one request that are there in part are filled up', async () => {
    await post({ pours: [first] }, empty);
    const answer = await post({ pours: [first, second, second] });
    expect(await answer.json()).toEqual({ added: true, batch: { ...empty, pours: [first, second] } });
  });

  it('are not added where another device went on; the batch comes back as it stands', async () => {
    await post({ pours: [first] }, empty);
    const after = { ...empty, pours: [first] };
    const answer = await post({ pours: [second] }, empty);
    expect(answer.status).toBe(200);
    expect(await answer.json()).toEqual({ added: false, batch: after });
    expect(await onDisk()).toEqual(after);
    await put(ended);
    expect(await (await post({ pours: [second] }, after)).json()).toEqual({ added: false, batch: ended });
    expect(await onDisk()).toEqual(ended);
  });

  it('of two devices at once are taken from one alone', async () => {
    const answers = await Promise.all([post({ pours: [first] }, empty), post({ pours: [second] }, empty)]);
    const said = (await Promise.all(answers.map((a) => a.json()))) as PourAnswer[];
    expect(said.map((a) => a.added).sort()).toEqual([false, true]);
    expect(said[0]?.batch).toEqual(said[1]?.batch);
    expect((await onDisk())?.pours).toHaveLength(1);
  });

  it('are refused for a batch that is not there', async () => {
    const answer = await post({ pours: [first] }, empty, 'other');
    expect(answer.status).toBe(404);
    expect(await answer.json()).toEqual({
      field: '/id',
      message: expect.stringContaining('no batch has the id "other"'),
    });
  });

  it.each([undefined, ended])('are refused for a finished batch', async (seen) => {
    await put(ended);
    const answer = await post({ pours: [second] }, seen);
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
    ['an empty tag', { pours: [first], seen: '' }, '/seen', 'at least one letter'],
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
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ field: '/pours' });
    expect((await onDisk())?.pours).toHaveLength(1000);
  });
});

describe('the rest of a batch', () => {
  it('is written where it stands as its sender saw it, and harmlessly written again', async () => {
    const finished = { ...empty, finishedAt: '2026-03-20T11:00:00Z', madeBy: 'Robin' };
    expect((await put(finished, empty)).status).toBe(204);
    expect(await onDisk()).toEqual(finished);
    expect((await put(finished, empty)).status).toBe(204);
    expect(await onDisk()).toEqual(finished);
  });

  it('is refused where another device went on, with the batch as it stands', async () => {
    await post({ pours: [first] }, empty);
    const answer = await put({ ...empty, finishedAt: '2026-03-20T11:00:00Z' }, empty);
    expect(answer.status).toBe(412);
    expect(await answer.json()).toMatchObject({ field: '', batch: { ...empty, pours: [first] } });
    expect(await onDisk()).toEqual({ ...empty, pours: [first] });
  });

  it('is refused where the tag is none, naming the header', async () => {
    const answer = await app.request('/api/batches/b', {
      method: 'PUT',
      headers: { 'content-type': 'application/json', 'if-match': 'W/"x"' },
      body: JSON.stringify(empty),
    });
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ field: '/if-match' });
  });

  it('is not made anew by a sender who saw it before it was deleted', async () => {
    await store.deleteKitchen('batches', 'b');
    expect((await put(empty, empty)).status).toBe(404);
    expect((await put(empty)).status).toBe(204);
  });
});

it('is described', async () => {
  const answer = await app.request('/api/openapi.json');
  const { paths } = (await answer.json()) as {
    paths: Record<string, Record<string, { responses: object; parameters: { name: string }[] }>>;
  };
  const described = paths['/api/batches/{id}/pours']?.post;
  expect(Object.keys(described?.responses ?? {})).toEqual(['200', '400', '404', '409']);
  expect(described?.parameters.map((p) => p.name)).toEqual(['id']);
  expect(paths['/api/batches/{id}']?.put?.parameters.map((p) => p.name)).toEqual(['id', 'if-match']);
  expect(paths['/api/lots/{id}']?.put?.parameters.map((p) => p.name)).toEqual(['id']);
});

/** Pours sent to a server that is killed: what was answered is on disk, and a pour sent again is there once. */
import { request } from 'node:http';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Household, PourAnswer, PourEntry } from '../../src/household/model.ts';
import { batchTag } from '../../src/kitchen/batch/batch-tag.ts';
import type { Batch, Pour } from '../../src/kitchen/model.ts';
import { MortalServer } from './killed.ts';

/** When the server dies, ms after the request was sent. */
const DEATHS = [0, 1, 2, 4, 8, 12, 20, 40];
const server = new MortalServer();
const headers = { 'content-type': 'application/json' };
/** The batch as it was last acknowledged. */
let acknowledged: Batch;

beforeAll(async () => {
  await server.start();
  const [mix] = (await household()).mixes;
  if (!mix) throw new Error('the first household has no mix');
  const { problem, shares } = mix;
  acknowledged = {
    id: 'poured',
    name: 'Poured',
    problem,
    shares,
    order: problem.foods.map((f) => f.id),
    grams: 300,
    pours: [],
    animalIds: [],
    startedAt: '2026-03-14T10:00:00Z',
  };
  const body = JSON.stringify(acknowledged);
  expect((await fetch(`${server.url}/api/batches/poured`, { method: 'PUT', headers, body })).ok).toBe(true);
});
afterAll(() => server.end());

async function household(): Promise<Household> {
  return (await fetch(`${server.url}/api/household`)).json() as Promise<Household>;
}
const onDisk = async () => (await household()).batches.find((b) => b.id === 'poured')?.pours;

/** Sends a request to the last byte and lets the server die, whatever it got done by then. */
async function cutShort(path: string, body: string, ms: number): Promise<void> {
  await new Promise<void>((sent) => {
    const asked = request(`${server.url}${path}`, { method: 'POST', headers }, (answer) => answer.resume());
    asked.on('error', () => {});
    asked.end(body, () => sent());
  });
  await new Promise((done) => setTimeout(done, ms));
  await server.killAndStart();
}

test.each(DEATHS)('the server dies %i ms after a pour was sent, and after its answer', async (ms) => {
  const pour: Pour = {
    food: acknowledged.order[0] ?? '',
    lots: [],
    target: 15,
    grams: 15,
    at: new Date(Date.UTC(2026, 2, 14, 10, acknowledged.pours.length)).toISOString(),
  };
  const entry: PourEntry = { pours: [pour], seen: batchTag(acknowledged) };
  const [path, body] = ['/api/batches/poured/pours', JSON.stringify(entry)];
  const after = [...acknowledged.pours, pour];
  await cutShort(path, body, ms);
  expect([acknowledged.pours, after]).toContainEqual(await onDisk());
  const answer = await fetch(`${server.url}${path}`, { method: 'POST', headers, body });
  const said = (await answer.json()) as PourAnswer;
  expect([said.added, said.batch.pours]).toEqual([true, after]);
  acknowledged = said.batch;
  await server.killAndStart();
  expect(await onDisk()).toEqual(after);
});

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openStore } from '../household/store.ts';
import { createApp } from './app.ts';

let folder: string;
let store: ReturnType<typeof openStore>;
let app: ReturnType<typeof createApp>;

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'pouchful-'));
  store = openStore(join(folder, 'household.sqlite'));
  app = createApp({ store, webDir: folder, referenceFile: 'none' });
});
afterAll(async () => {
  await store.close();
  rmSync(folder, { recursive: true, force: true });
});

async function refused(language?: string) {
  const headers = {
    'content-type': 'application/json',
    'if-none-match': '*',
    host: 'localhost',
    ...(language !== undefined && { 'accept-language': language }),
  };
  const answer = await app.request('/api/animals/x', { method: 'PUT', headers, body: '{}' });
  return (await answer.json()) as { field: string; message: string };
}

it.each([
  [undefined, 'is missing'],
  ['', 'is missing'],
  ['de', 'fehlt'],
  ['de-CH,de;q=0.9,en;q=0.8', 'fehlt'],
  ['en;q=0.5, nl', 'ontbreekt'],
  ['fr, de;q=0', 'is missing'],
  ['fr, nl;q=0.3, de;q=0.2', 'ontbreekt'],
  ['*', 'is missing'],
  [';;q=,,x'.repeat(100), 'is missing'],
])('asked in %s it answers so', async (language, words) => {
  expect(await refused(language)).toMatchObject({ field: '/id', message: expect.stringContaining(words) });
});

it('answers many at once, each in theirs', async () => {
  const asked = ['de', 'nl', 'en', 'de', 'nl', 'en'];
  const said = await Promise.all(asked.map(refused));
  expect(said.map((s) => s.message.split(' ')[1])).toEqual([
    'fehlt:',
    'ontbreekt:',
    'is',
    'fehlt:',
    'ontbreekt:',
    'is',
  ]);
});

/** Taking out and bringing in over HTTP. */

import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EMPTY } from '../../test/household/empty-household.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { tenYears } from '../../test/household/ten-years.ts';
import { demoHousehold } from '../household/demo.ts';
import { FORMAT_VERSION, MOST_FILE_BYTES } from '../household/exchange/format.ts';
import { householdFile } from '../household/exchange/household-file.ts';
import type { ImportCheck, PartCheck } from '../household/exchange/wire.ts';
import { KINDS, type Kind } from '../household/model.ts';
import { type FileStore, openStore } from '../household/store.ts';
import { createApp } from './app.ts';

const folder = folderForEachTest();
const demo = demoHousehold();
let store: FileStore;
let app: ReturnType<typeof createApp>;

beforeEach(async () => {
  store = openStore(join(folder(), 'household.sqlite'));
  await store.putAll(demo);
  app = createApp({ store, webDir: folder(), referenceFile: join(folder(), 'reference.bin') });
});
afterEach(async () => {
  await store.close();
});

const post = (
  path: string,
  body: string,
  headers: Record<string, string> = { 'content-type': 'application/json' },
) => app.request(path, { method: 'POST', body, headers });
const exported = async () => (await app.request('/api/export')).text();
const emptied = '{"format":"pouchful-household","version":1,"records":[]}';

async function bringIn(text: string, mode: string): Promise<Response> {
  const check = (await (await post(`/api/import/check?mode=${mode}`, text)).json()) as ImportCheck;
  return post(`/api/import?mode=${mode}&token=${check.token}`, text);
}

describe('taking out and bringing in over HTTP', () => {
  it('gives the same bytes after a wipe', async () => {
    const text = await exported();
    expect(text).toContain('"Bramble"');
    expect((await bringIn(emptied, 'replace')).status).toBe(200);
    expect((await store.household()).animals).toEqual([]);
    expect((await bringIn(text, 'replace')).status).toBe(200);
    expect(await exported()).toBe(text);
  });

  it('says what would change and writes nothing until it is told to', async () => {
    const text = (await exported()).replace('"name":"Bramble"', '"name":"Clover"');
    const answer = await post('/api/import/check?mode=update', text);
    expect(answer.status).toBe(200);
    const check = (await answer.json()) as ImportCheck;
    expect(check.counts).toEqual({ new: 0, different: 1, gone: 0, kept: 0, same: 2 });
    expect(check.changes[0]).toMatchObject({
      kind: 'animals',
      name: 'Clover',
      fields: [{ field: '/name', before: '"Bramble"', after: '"Clover"' }],
    });
    expect((await store.household()).animals[0]?.name).toBe('Bramble');
    expect((await post(`/api/import?mode=update&token=${check.token}`, text)).status).toBe(200);
    expect((await store.household()).animals[0]?.name).toBe('Clover');
  });

  it('writes nothing where file, way or household are others than were shown', async () => {
    const text = await exported();
    const { token } = (await (await post('/api/import/check?mode=update', text)).json()) as ImportCheck;
    expect((await post(`/api/import?mode=update&token=${token}`, emptied)).status).toBe(409);
    expect((await post(`/api/import?mode=replace&token=${token}`, text)).status).toBe(409);
    expect((await post(`/api/import?mode=update&token=${'0'.repeat(64)}`, text)).status).toBe(409);
    expect((await post('/api/import?mode=update', text)).status).toBe(400);
    await store.putAll({ ...EMPTY, foods: [{ ...demo.foods[0]!, id: 'later' }] });
    expect((await post(`/api/import?mode=update&token=${token}`, text)).status).toBe(409);
  });

  it('refuses a wrong file by field and keeps everything', async () => {
    const text = await exported();
    for (const wrong of [
      '',
      'no JSON',
      '[]',
      text.slice(0, -30),
      text.replace(`"version":${FORMAT_VERSION}`, '"version":9'),
      text.replace('"kind":"animals"', '"kind":"pets"'),
      text.replace('"hamster-adult-crude"', '"nobody"'),
    ]) {
      const answer = await post('/api/import/check?mode=replace', wrong);
      expect(answer.status).toBe(400);
      expect(await answer.json()).toMatchObject({ message: expect.stringMatching(/\w/) });
    }
    expect(await exported()).toBe(text);
  });

  it('takes files larger than other bodies, up to a limit', async () => {
    const padded = `${emptied}${' '.repeat(2_000_000)}`;
    expect((await post('/api/import/check?mode=add', padded, { 'content-type': 'text/plain' })).status).toBe(
      200,
    );
    const huge = await post('/api/import/check?mode=add', ' '.repeat(MOST_FILE_BYTES + 1), {
      'content-type': 'text/plain',
    });
    expect(huge.status).toBe(413);
    expect((await post('/api/pours', padded)).status).toBe(413);
  });

  it('takes in a household of ten years, and answers briefly', async () => {
    const all = tenYears();
    const records = KINDS.flatMap((kind: Kind) => all[kind].map((body) => ({ kind, id: body.id, body })));
    const text = [...householdFile(records)].join('');
    expect((await bringIn(emptied, 'replace')).status).toBe(200);
    const answer = await post('/api/import/check?mode=replace', text);
    expect((await answer.clone().text()).length).toBeLessThan(200_000);
    expect((await bringIn(text, 'replace')).status).toBe(200);
    expect(await exported()).toBe(text);
  });

  it('gives tables as CSV', async () => {
    const answer = await app.request('/api/export/animals.csv?decimal=comma&mark=0');
    expect(answer.headers.get('content-disposition')).toContain('pouchful-animals.csv');
    const [head, row] = (await answer.text()).split('\r\n');
    expect(head).toMatch(/^id;name;species;life stage;target;grams a day;refuses;born on;/);
    expect(row).toMatch(/^demo-animal;Bramble;golden hamster;adult;hamster-adult-crude;12;;/);
    expect((await app.request('/api/export/secrets.csv')).status).toBe(400);
  });

  it('sends a mix and takes it in beside what is here', async () => {
    const text = await (await app.request('/api/export/mix/demo-mix')).text();
    expect((await app.request('/api/export/mix/none')).status).toBe(404);
    const check = (await (await post('/api/import/part/check', text)).json()) as PartCheck;
    expect(check.same).toEqual(['Invented pellet']);
    expect(check.coming.map((c) => c.kind)).toEqual(['mixes']);
    expect((await post(`/api/import/part?token=${check.token}`, text)).status).toBe(200);
    const { mixes } = await store.household();
    expect(mixes.map((m) => m.name)).toEqual(['First mix', 'First mix']);
    expect(mixes[1]?.animalIds).toEqual([]);
    expect((await post(`/api/import/part?token=${check.token}`, text)).status).toBe(409);
  });
});

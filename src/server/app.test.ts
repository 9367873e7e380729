/** The HTTP interface over a real store. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { precondition, put as putIn } from '../../test/household/put.ts';
import { demoHousehold } from '../household/demo.ts';
import { withChanges, withRuleLeftOut } from '../household/reckon/mix/own-limits.ts';
import type { RecordsPage } from '../household/records.ts';
import { type FileStore, openStore } from '../household/store.ts';
import { confirmedProfile, withConfirmations } from '../targets/confirm.ts';
import { PROFILES, profile } from '../targets/profiles.ts';
import { onlyThisMachine } from './access/access.ts';
import { createApp } from './app.ts';

const demo = demoHousehold();
const mix = demo.mixes[0]!;
const pellet = demo.foods[0]!;
const folder = folderForEachTest();
let store: FileStore;
let app: ReturnType<typeof createApp>;

beforeEach(async () => {
  mkdirSync(join(folder(), 'web', 'assets'), { recursive: true });
  writeFileSync(join(folder(), 'web', 'index.html'), '<title>Pouchful</title>');
  writeFileSync(join(folder(), 'web', 'assets', 'a-1.js'), 'export {}');
  writeFileSync(join(folder(), 'reference.bin'), 'x'.repeat(5000));
  writeFileSync(join(folder(), 'secret.txt'), 'secret');
  store = openStore(join(folder(), 'household.sqlite'));
  await store.putAll(demo);
  app = createApp({ store, webDir: join(folder(), 'web'), referenceFile: join(folder(), 'reference.bin') });
});
afterEach(async () => {
  await store.close();
});

const put = async (path: string, body: unknown) =>
  app.request(path, {
    method: 'PUT',
    headers: { 'content-type': 'application/json', ...(await precondition(store, path)) },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  });
const remove = async (path: string) =>
  app.request(path, { method: 'DELETE', headers: await precondition(store, path) });

describe('the household', () => {
  it('is given as records', async () => {
    const answer = await app.request('/api/records');
    expect(answer.status).toBe(200);
    const page = (await answer.json()) as RecordsPage;
    expect(page.records.map((r) => [r.kind, r.id, r.version])).toEqual([
      ['foods', 'demo-pellet', 1],
      ['animals', 'demo-animal', 1],
      ['mixes', 'demo-mix', 1],
    ]);
    expect(page.records.map((r) => r.body)).toEqual([pellet, demo.animals[0], mix]);
    expect(page).toMatchObject({ seq: 3, more: false });
  });

  it('keeps what was confirmed of a target that comes with the program', async () => {
    const nrc = profile('hamster-nrc')!;
    const confirmed = confirmedProfile(nrc, { against: 'the printed edition', on: '2026-03-14' });
    expect((await put('/api/profiles/hamster-nrc', confirmed)).status).toBe(200);
    const [kept] = (await store.household()).profiles;
    expect(withConfirmations(nrc, kept)).toEqual(confirmed);
    const undated = {
      ...confirmed,
      bounds: [{ ...confirmed.bounds[0]!, confirmed: { against: 'x', on: '31' } }],
    };
    expect((await put('/api/profiles/hamster-nrc', undated)).status).toBe(400);
  });

  it('keeps with a mix and its versions the limits that the keeper made their own', async () => {
    const changed = withChanges(mix, [{ pointer: '/rules/1/max', from: 7, to: 7.5 }], '2026-03-14');
    const loosened = withRuleLeftOut(changed, 0, '2026-03-15');
    expect((await put('/api/mixes/demo-mix', loosened)).status).toBe(200);
    const version = {
      id: 'v',
      mixId: 'demo-mix',
      name: 'Fatter',
      problem: loosened.problem,
      shares: {},
      keptAt: '2026-03-15T08:00:00.000Z',
    };
    expect((await put('/api/versions/v', version)).status).toBe(200);
    const { mixes, versions } = await store.household();
    expect(mixes[0]?.problem.own_limits).toEqual(loosened.problem.own_limits);
    expect(versions[0]?.problem.own_limits).toHaveLength(2);
  });

  it('opens with the targets that old households name', async () => {
    for (const profileId of ['hamster-adult', 'hamster-adult-crude', 'hamster-nrc', 'mouse-nrc'])
      expect((await put('/api/mixes/demo-mix', { ...mix, profileId })).status, profileId).toBe(200);
  });

  it('takes each kind of thing and gives it back', async () => {
    const profile = {
      id: 'mine',
      name: 'Mine',
      species: 'golden hamster',
      lifeStage: 'adult',
      fibre: 'FIBTG' as const,
      about: '',
      bounds: [{ ratio: ['CA', 'P'] as const, min: 1, basis: 'as fed' as const, source: 'mine' }],
    };
    const food = { ...pellet, id: 'own', kind: 'mix' as const, group: 'seed' as const };
    const animal = {
      id: 'a',
      name: 'A',
      species: 'gerbil',
      lifeStage: 'growing' as const,
      profileId: 'mine',
      refuses: ['millet', 'own'],
      dailyGrams: 8.5,
      invented: false,
    };
    const second = {
      ...mix,
      id: 'm2',
      animalIds: ['a', 'demo-animal'],
      profileId: 'mine',
      shares: { millet: 97.5 },
    };
    const version = {
      id: 'v',
      mixId: 'm2',
      name: 'as it was',
      problem: mix.problem,
      shares: { millet: 97.5 },
      keptAt: '2026-11-25T08:30:00.000Z',
    };
    expect((await put('/api/foods/own', food)).status).toBe(200);
    expect((await put('/api/profiles/mine', profile)).status).toBe(200);
    expect((await put('/api/animals/a', animal)).status).toBe(200);
    expect((await put('/api/mixes/m2', second)).status).toBe(200);
    expect((await put('/api/versions/v', version)).status).toBe(200);
    expect(await store.household()).toEqual({
      foods: [pellet, food],
      profiles: [profile],
      animals: [...demo.animals, animal],
      mixes: [mix, second],
      versions: [version],
      lots: [],
      offers: [],
      dryingRuns: [],
      batches: [],
      kitchen: [],
      weighings: [],
      feedings: [],
      trials: [],
      notes: [],
      photos: [],
      keeper: [],
    });
    for (const path of ['versions/v', 'mixes/m2', 'animals/a', 'profiles/mine', 'foods/own']) {
      expect((await remove(`/api/${path}`)).status).toBe(200);
    }
    expect(await store.household()).toEqual(demo);
  });
});

describe('refusals name the field, the value and the way out', () => {
  it.each([
    [
      'a wrong amount',
      { ...pellet, composition: { PROCNT: -1 } },
      '/composition/PROCNT',
      'is -1: it must be at least 0',
    ],
    [
      'too much in 100 g',
      { ...pellet, composition: { FAT: 450 } },
      '/composition/FAT',
      'is 450: 100 g of food holds 100 g at most',
    ],
    [
      'a text for a number',
      { ...pellet, composition: { FAT: '4' } },
      '/composition/FAT',
      'is "4": write a number',
    ],
    ['no such tagname', { ...pellet, composition: { PROTEIN: 4 } }, '/composition/PROTEIN', 'spelling'],
    ['a missing name', { ...pellet, name: undefined }, '/name', 'is missing: write a string'],
    ['an empty name', { ...pellet, name: ' ' }, '/name', 'at least one letter'],
    ['a wrong choice', { ...pellet, kind: 'hay' }, '/kind', 'is "hay": use one of "mix", "pellet"'],
    ['an unknown field', { ...pellet, colour: 'red' }, '/colour', 'no such field'],
    ['another id', { ...pellet, id: 'else' }, '/id', 'make them the same'],
    ['no object', 'null', '', 'is null: write an object'],
    ['no JSON', '{"id":', '', 'JSON'],
  ])('%s', async (_, body, field, words) => {
    const answer = await put('/api/foods/demo-pellet', body);
    expect(answer.status).toBe(400);
    const said = (await answer.json()) as { field: string; message: string };
    expect(said.field).toBe(field);
    expect(said.message).toContain(words);
    expect(await store.household()).toEqual(demo);
  });

  it('a wrong rule within a mix', async () => {
    const problem = { ...mix.problem, rules: [{ nutrient: 'PROCNT', min: 17, on: 'bowl' }] };
    const answer = await put('/api/mixes/demo-mix', { ...mix, problem });
    expect(await answer.json()).toMatchObject({
      field: '/problem/rules/0/on',
      message: expect.stringContaining('"bowl"'),
    });
  });

  it.each([
    ['a wrong life stage', { lifeStage: 'baby' }, '/lifeStage', 'is "baby": use one of "adult", "growing"'],
    ['no life stage', { lifeStage: undefined }, '/lifeStage', 'is missing'],
    ['no food a day', { dailyGrams: 0 }, '/dailyGrams', 'is 0: it must be above 0'],
    ['refusals that are no list', { refuses: 'millet' }, '/refuses', 'is "millet": write an array'],
    ['an unknown profile', { profileId: 'nowhere' }, '/profileId', '"nowhere"; add it first'],
  ])('of an animal: %s', async (_, wrong, field, words) => {
    const answer = await put('/api/animals/demo-animal', { ...demo.animals[0], ...wrong });
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ field, message: expect.stringContaining(words) });
    expect(await store.household()).toEqual(demo);
  });

  it('of a mix or a version that names what is not there', async () => {
    const stranger = await put('/api/mixes/demo-mix', { ...mix, animalIds: ['demo-animal', 'nobody'] });
    expect(stranger.status).toBe(400);
    expect(await stranger.json()).toEqual({
      field: '/animalIds/1',
      message: 'no animal has the id "nobody"; add it first, or leave it out',
    });
    const { problem, shares } = mix;
    const kept = { id: 'v', mixId: 'none', name: 'V', problem, shares, keptAt: '2026-11-25T08:30:00.000Z' };
    const orphan = await put('/api/versions/v', kept);
    expect(orphan.status).toBe(400);
    expect(await orphan.json()).toMatchObject({ field: '/mixId' });
    const undated = await put('/api/versions/v', { ...kept, mixId: 'demo-mix', keptAt: 'yesterday' });
    expect(undated.status).toBe(400);
    expect(await undated.json()).toMatchObject({ field: '/keptAt' });
    expect((await remove('/api/versions/v')).status).toBe(404);
    expect(await store.household()).toEqual(demo);
  });

  it('409 for a profile that an animal keeps to', async () => {
    await putIn(store, 'profiles', { ...PROFILES[0]!, id: 'mine' });
    await putIn(store, 'animals', { ...demo.animals[0]!, profileId: 'mine' });
    const used = await remove('/api/profiles/mine');
    expect(used.status).toBe(409);
    expect(await used.json()).toMatchObject({ message: expect.stringContaining('the animal “Bramble”') });
  });

  it('a body without its content type', async () => {
    const answer = await app.request('/api/foods/x', { method: 'PUT', body: '{}' });
    expect(answer.status).toBe(415);
    expect(await answer.json()).toHaveProperty('message');
  });

  it('404 for what is not there, 409 for what is in use', async () => {
    expect((await remove('/api/mixes/none')).status).toBe(404);
    const used = await remove('/api/foods/demo-pellet');
    expect(used.status).toBe(409);
    expect(await used.json()).toMatchObject({
      field: '/id',
      message: expect.stringContaining('“First mix”'),
    });
    expect((await app.request('/api/nothing')).status).toBe(404);
  });

  it('413 for a body over 1 MB', async () => {
    const answer = await put('/api/foods/x', { ...pellet, source: 'x'.repeat(1024 * 1024) });
    expect(answer.status).toBe(413);
    expect(await answer.json()).toMatchObject({ message: expect.stringContaining('1 MB') });
  });
});

describe('who may ask', () => {
  const from = (host: string, headers = {}) => app.request('/api/records', { headers: { host, ...headers } });

  it('refuses foreign host names', async () => {
    for (const host of ['localhost', 'localhost:4173', '127.0.0.1:4173', '[::1]:4173'])
      expect((await from(host)).status).toBe(200);
    for (const host of ['evil.example', 'localhost.evil.example:4173', '10.0.0.7'])
      expect((await from(host)).status).toBe(403);
  });

  it('refuses writes from foreign pages', async () => {
    const headers = { host: 'localhost:4173', origin: 'http://evil.example' };
    expect((await app.request('/api/mixes/demo-mix', { method: 'DELETE', headers })).status).toBe(403);
    expect((await store.household()).mixes).toHaveLength(1);
  });

  it('serves the name it was told that it has', async () => {
    const access = onlyThisMachine(store, ['shelter.lan']);
    const wide = createApp({ access, webDir: folder(), referenceFile: '' });
    expect((await wide.request('/api/records', { headers: { host: 'shelter.lan:80' } })).status).toBe(200);
  });
});

describe('files', () => {
  it('serves the reference foods compressed, and 304 when unchanged', async () => {
    const answer = await app.request('/reference.bin', { headers: { 'accept-encoding': 'gzip, br' } });
    expect(answer.headers.get('content-encoding')).toBe('gzip');
    const body = Buffer.from(await answer.arrayBuffer());
    expect(gunzipSync(body).toString()).toBe('x'.repeat(5000));
    const etag = answer.headers.get('etag')!;
    expect((await app.request('/reference.bin', { headers: { 'if-none-match': etag } })).status).toBe(304);
    expect((await (await app.request('/reference.bin')).text()).length).toBe(5000);
  });

  it('serves the reference foods as the build compressed them', async () => {
    writeFileSync(join(folder(), 'reference.bin.br'), 'as brotli');
    writeFileSync(join(folder(), 'reference.bin.gz'), 'as gzip');
    for (const [takes, encoding, body] of [
      ['gzip, br', 'br', 'as brotli'],
      ['gzip', 'gzip', 'as gzip'],
      ['identity', null, 'x'.repeat(5000)],
    ] as const) {
      const answer = await app.request('/reference.bin', { headers: { 'accept-encoding': takes } });
      expect(answer.headers.get('content-encoding')).toBe(encoding);
      expect(await answer.text()).toBe(body);
    }
  });

  it('serves the client for every screen, with its policy', async () => {
    for (const path of ['/', '/mix', '/animals/demo-animal']) {
      const answer = await app.request(path);
      expect(await answer.text()).toContain('<title>Pouchful</title>');
      expect(answer.headers.get('content-security-policy')).toContain("default-src 'self'");
    }
    const asset = await app.request('/assets/a-1.js');
    expect(asset.headers.get('content-type')).toContain('javascript');
    expect(asset.headers.get('cache-control')).toContain('immutable');
    expect((await app.request('/assets/none.js')).status).toBe(404);
  });

  it('serves nothing outside the client', async () => {
    for (const path of [
      '/../secret.txt',
      '/%2e%2e/secret.txt',
      '/..%2fsecret.txt',
      '/assets/..%2f..%2fsecret.txt',
    ]) {
      expect(await (await app.request(path)).text()).not.toContain('secret');
    }
  });

  it('describes itself', async () => {
    const answer = await app.request('/api/openapi.json');
    const doc = (await answer.json()) as { paths: object };
    expect(Object.keys(doc.paths)).toEqual([
      '/api/pair',
      '/api/devices',
      '/api/devices/code',
      '/api/devices/{id}',
      '/api/records',
      '/api/foods/{id}',
      '/api/profiles/{id}',
      '/api/animals/{id}',
      '/api/mixes/{id}',
      '/api/versions/{id}',
      '/api/lots/{id}',
      '/api/offers/{id}',
      '/api/dryingRuns/{id}',
      '/api/batches/{id}',
      '/api/kitchen/{id}',
      '/api/weighings/{id}',
      '/api/feedings/{id}',
      '/api/trials/{id}',
      '/api/notes/{id}',
      '/api/photos/{id}',
      '/api/keeper/{id}',
      '/api/batches/{id}/pours',
      '/api/history',
      '/api/history/{seq}',
      '/api/history/{seq}/take-back',
      '/api/import/check',
      '/api/import',
      '/api/import/part/check',
      '/api/import/part',
      '/api/export',
      '/api/export/{table}',
      '/api/export/mix/{id}',
      '/api/export/food/{id}',
      '/api/backups',
    ]);
  });
});

/** Several households on one server: the token says which, and no route shows or changes another's. */
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { hasPostgres, startPostgres, type TestPostgres } from '../../../test/household/postgres.ts';
import { type Devices, devicesIn } from '../../household/access/devices.ts';
import { demoHousehold } from '../../household/demo.ts';
import { openHosted } from '../../household/hosted.ts';
import { type Household, KINDS, type Kind } from '../../household/model.ts';
import { type Store, storeOver } from '../../household/store/record-store.ts';
import type { Db } from '../../household/store/tables.ts';
import { openStore } from '../../household/store.ts';
import { createApp } from '../app.ts';
import { openAccess } from './access.ts';
import { ownNames } from './own-names.ts';

const folder = folderForEachTest();
let postgres: TestPostgres | undefined;
beforeAll(async () => {
  if (hasPostgres) postgres = await startPostgres();
});
afterAll(() => postgres?.stop());

interface Opened {
  readonly db: Db;
  readonly store: (household: string) => Store;
  close(): Promise<void>;
}

const OPENERS: [string, () => Promise<Opened>][] = [
  [
    'one file',
    async () => {
      const { db, close } = openStore(join(folder(), 'household.sqlite'));
      const stores = new Map<string, Store>();
      const store = (household: string) => {
        const there = stores.get(household) ?? storeOver({ db, household });
        stores.set(household, there);
        return there;
      };
      return { db, store, close };
    },
  ],
];
if (hasPostgres)
  OPENERS.push([
    'PostgreSQL',
    async () => {
      const { db, store, close } = await openHosted((await postgres?.database()) ?? '', { serves: true });
      return { db, store, close };
    },
  ]);

/** Stands in everything that one household holds, and in nothing of the other's. */
const MARK = 'ZIRBELKIEFER';

function marked(): Household {
  const demo = demoHousehold();
  const named = <T extends { name: string }>(all: readonly T[]) =>
    all.map((one) => ({ ...one, name: `${MARK} ${one.name}` }));
  return { ...demo, foods: named(demo.foods), animals: named(demo.animals), mixes: named(demo.mixes) };
}

describe.each(OPENERS)('two households in %s', (_name, open) => {
  let opened: Opened | undefined;
  afterEach(() => opened?.close());

  async function started() {
    opened = await open();
    const { db, store } = opened;
    for (const id of ['theirs', 'ours'])
      await db.insertInto('households').values({ id, name: id, epoch: id, seq: 0 }).execute();
    await store('theirs').putAll(marked());
    await store('ours').putAll(demoHousehold());
    const devices = devicesIn(db, Date.now);
    const access = openAccess({
      served: { scheme: 'http', isOwn: ownNames(false) },
      tokens: true,
      devices,
      storeOf: store,
      origins: () => ['http://localhost'],
    });
    const app = createApp({ access, webDir: folder(), referenceFile: '' });
    const of = async (household: string) => {
      const { device, token } = await devices.add(household, `${household} phone`);
      return { id: device.id, headers: { authorization: `Bearer ${token}` } };
    };
    return { app, access, devices, store, theirs: await of('theirs'), ours: await of('ours') };
  }

  it('neither can be read or changed with the other token, on any route', async () => {
    const { app, devices, store, theirs, ours } = await started();
    const before = await stateOf(store('theirs'), devices);
    const doc = (await (await app.request('/api/openapi.json', { headers: ours.headers })).json()) as {
      paths: Record<string, object>;
    };
    const described = Object.entries(doc.paths).flatMap(([path, methods]) =>
      Object.keys(methods).map((method) => [method.toUpperCase(), path] as const),
    );
    const built = app.routes
      .filter(({ method, path }) => method !== 'ALL' && path.startsWith('/api') && !path.includes('*'))
      .map(({ method, path }) => [method, path.replace(/:(\w+)(?:\{[^}]*\})?/g, '{$1}')] as const);
    const routes = new Map(
      [...described, ...built].map(([method, path]) => [`${method} ${path}`, { method, path }]),
    );
    expect(routes.size).toBeGreaterThan(25);

    const household = await store('theirs').household();
    const ids = (path: string): readonly string[] => {
      const kind = KINDS.find((k) => path.startsWith(`/api/${k}/`)) as Kind | undefined;
      if (kind) return [...household[kind].map(({ id }) => id), 'none'];
      return path.startsWith('/api/devices/') ? [theirs.id] : ['1', '2', '3', 'x'];
    };
    const body = (path: string, id: string): unknown => {
      const kind = KINDS.find((k) => path === `/api/${k}/{id}`);
      const record = kind && household[kind].find((one) => one.id === id);
      // What is written here is of this household: it may have the name that it was given.
      return record ? { ...record, name: 'ours' } : { name: 'ours', pours: [] };
    };
    let asked = 0;
    for (const { method, path } of routes.values())
      for (const id of path.includes('{') ? ids(path) : [''])
        for (const conditions of <Record<string, string>[]>[
          { 'if-match': '"1"' },
          { 'if-match': '"2"' },
          { 'if-none-match': '*' },
        ]) {
          if (path === '/api/events') continue;
          // Putting oneself out would end the walk.
          if (method === 'DELETE' && path.startsWith('/api/devices/') && id === ours.id) continue;
          const sends = ['PUT', 'POST', 'PATCH'].includes(method);
          const answer = await app.request(path.replace(/\{\w+\}/, encodeURIComponent(id)), {
            method,
            headers: { ...ours.headers, ...conditions, ...(sends && { 'content-type': 'application/json' }) },
            ...(sends && { body: JSON.stringify(body(path, id)) }),
          });
          expect(answer.status, `${method} ${path}`).toBeLessThan(500);
          expect(await answer.text(), `${method} ${path}`).not.toContain(MARK);
          asked += 1;
        }
    expect(asked).toBeGreaterThan(100);
    expect(await stateOf(store('theirs'), devices)).toEqual(before);
    expect((await app.request('/api/records', { headers: theirs.headers })).status).toBe(200);
  });

  it('each hears of its own changes alone', async () => {
    const { app, access, store, theirs, ours } = await started();
    const listen = async ({ headers }: { headers: Record<string, string> }) => {
      const { body } = await app.request('/api/events', { headers });
      const reader = body!.getReader();
      return async () => new TextDecoder().decode((await reader.read()).value);
    };
    const [theirEvents, ourEvents] = [await listen(theirs), await listen(ours)];
    expect(await theirEvents()).toContain('"epoch":"theirs"');
    expect(await ourEvents()).toContain('"epoch":"ours"');
    const { seq } = await store('ours').newest();
    const { animals } = demoHousehold();
    const rename = (household: string) =>
      store(household).putAll({
        ...demoHousehold(),
        animals: animals.map((animal) => ({ ...animal, name: 'Another' })),
      });
    await rename('theirs');
    expect(await theirEvents()).toContain('event: change');
    await rename('ours');
    // The first that it hears is its own.
    expect(await ourEvents()).toMatch(new RegExp(`event: change\ndata: .*"seq":${seq + 1},"epoch":"ours"`));
    access.streams.endAll();
  });

  it('a code lets into the household that made it', async () => {
    const { app, devices, theirs, ours } = await started();
    for (const [{ headers }, household] of [
      [theirs, 'theirs'],
      [ours, 'ours'],
    ] as const) {
      const made = await app.request('/api/devices/code', { method: 'POST', headers });
      const { code } = (await made.json()) as { code: string };
      const answer = await app.request('/api/pair', {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify({ code, name: 'New', bearer: true }),
      });
      const { token } = (await answer.json()) as { token: string };
      expect((await devices.byToken(token))?.household).toBe(household);
    }
  });
});

async function stateOf(store: Store, devices: Devices) {
  const { seq, epoch } = await store.newest();
  return { seq, epoch, household: await store.household(), devices: await devices.list('theirs') };
}

/** A server that is open to a network: who comes in, to which routes, and how they are put out. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { MOST_DEVICES } from '../../household/access/devices.ts';
import { demoHousehold } from '../../household/demo.ts';
import { HOME } from '../../household/store/tables.ts';
import { type FileStore, openStore } from '../../household/store.ts';
import { createApp } from '../app.ts';
import { type Access, devicesOf, onlyThisMachine, openAccess } from './access.ts';
import { ownNames } from './own-names.ts';

const HOUR = 60 * 60_000;
const folder = folderForEachTest();
let store: FileStore;
let now: number;
let access: Access;
let app: ReturnType<typeof createApp>;

/** The server as it is after a start. */
function started(scheme: 'http' | 'https' = 'http'): void {
  access = openAccess({
    served: { scheme, isOwn: ownNames(true) },
    tokens: true,
    devices: devicesOf(store, () => now),
    storeOf: () => store,
    origins: () => ['http://192.168.1.5:4173'],
    clock: () => now,
  });
  const webDir = join(folder(), 'web');
  app = createApp({ access, webDir, referenceFile: join(folder(), 'reference.bin') });
}

beforeEach(async () => {
  now = Date.UTC(2026, 2, 20);
  mkdirSync(join(folder(), 'web', 'assets'), { recursive: true });
  writeFileSync(join(folder(), 'web', 'index.html'), '<title>Pouchful</title>');
  writeFileSync(join(folder(), 'web', 'assets', 'a-1.js'), 'export {}');
  writeFileSync(join(folder(), 'reference.bin'), 'x'.repeat(50));
  store = openStore(join(folder(), 'household.sqlite'));
  await store.putAll(demoHousehold());
  started();
});
afterEach(() => store.close());

type Headers = Record<string, string>;

const send = (method: string, path: string, headers: Headers = {}, body?: unknown, from = '192.168.1.20') =>
  app.request(
    path,
    {
      method,
      headers: { ...headers, ...(body !== undefined && { 'content-type': 'application/json' }) },
      ...(body !== undefined && { body: JSON.stringify(body) }),
    },
    { incoming: { socket: { remoteAddress: from, remoteFamily: 'IPv4', remotePort: 5 } } },
  );

const pair = (code: string, more: object = {}, from?: string) =>
  send('POST', '/api/pair', {}, { code, name: 'Kitchen phone', ...more }, from);

/** Pairs a device. @returns its header and id */
async function paired(name = 'Kitchen phone'): Promise<{ id: string; headers: Headers }> {
  const answer = await pair(access.pairing.offer(HOME).code, { name, bearer: true });
  const { id, token } = (await answer.json()) as { id: string; token: string };
  return { id, headers: { authorization: `Bearer ${token}` } };
}

const PUBLIC = ['GET /api/pair', 'POST /api/pair'];
const METHODS = ['GET', 'HEAD', 'POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'];

const takesBody = (method: string) => method !== 'GET' && method !== 'HEAD';

/** Every route of the API, as the app itself has them and as it describes them, with ids filled in. */
async function everyRoute(headers: Headers): Promise<string[]> {
  const answer = await send('GET', '/api/openapi.json', headers);
  const doc = (await answer.json()) as { paths: Record<string, object> };
  const described = Object.entries(doc.paths).flatMap(([path, methods]) =>
    Object.keys(methods).map((method) => `${method.toUpperCase()} ${path.replace(/\{\w+\}/g, '1')}`),
  );
  const built = app.routes
    .filter(({ path }) => path.startsWith('/api') && !path.includes('*'))
    .flatMap((route) => (route.method === 'ALL' ? METHODS.map((method) => ({ ...route, method })) : [route]))
    .filter(({ method, path }) => path !== '/api/pair' || PUBLIC.includes(`${method} ${path}`))
    .map(({ method, path }) => `${method} ${path.replace(/:\w+(?:\{[^}]*\})?/g, '1')}`);
  return [...new Set([...described, ...built])];
}

describe('without a token', () => {
  it('every route but pairing answers 401, and changes nothing', async () => {
    const { headers } = await paired();
    const before = await store.newest();
    const routes = await everyRoute(headers);
    expect(routes.length).toBeGreaterThan(25);
    for (const must of [
      'GET /api/events',
      'GET /api/records',
      'PUT /api/foods/1',
      'DELETE /api/devices/1',
      ...PUBLIC,
    ])
      expect(routes).toContain(must);
    const bad: Headers[] = [
      {},
      { authorization: 'Bearer x' },
      { authorization: headers.authorization?.replace('Bearer', 'Basic') ?? '' },
      { authorization: `${headers.authorization}x` },
      { authorization: '' },
      { cookie: 'pouchful_4173=x' },
      { cookie: `other=${headers.authorization?.slice(7)}` },
      { 'x-forwarded-for': '127.0.0.1', 'x-real-ip': '127.0.0.1' },
    ];
    for (const route of routes.filter((r) => !PUBLIC.includes(r))) {
      const [method = '', path = ''] = route.split(' ');
      for (const lacking of bad)
        for (const from of ['192.168.1.20', '127.0.0.1', '::1', '::ffff:127.0.0.1']) {
          const answer = await send(method, path, lacking, takesBody(method) ? {} : undefined, from);
          expect(answer.status, `${route} from ${from}`).toBe(401);
          expect(answer.headers.get('www-authenticate')).toBe('Bearer');
        }
    }
    expect(await store.newest()).toEqual(before);
  });

  it('nothing is read of a body, be it too large, too deep or no JSON', async () => {
    for (const body of ['x'.repeat(2_000_000), '['.repeat(5000), '{'])
      for (const [method, path] of [
        ['PUT', '/api/foods/1'],
        ['POST', '/api/devices/code'],
      ] as const)
        expect((await app.request(path, { method, body })).status).toBe(401);
    const answer = await app.request('/api/pair', { method: 'POST', body: 'x'.repeat(2_000_000) });
    expect(answer.status).toBe(413);
  });

  it('whatever is under /api answers 401 too, known or not', async () => {
    for (const path of [
      '/api',
      '/api/',
      '/api/none',
      '/api//records',
      '/api/records/',
      '/api/%72ecords',
      '/api/pair/x',
    ])
      for (const method of METHODS) expect((await send(method, path)).status, `${method} ${path}`).toBe(401);
  });

  it('nothing but the page, its files and the reference foods lies outside of /api', () => {
    const outside = app.routes.filter(({ path }) => !path.startsWith('/api')).map(({ path }) => path);
    expect([...new Set(outside)].sort()).toEqual(['/*', '/reference.bin']);
  });

  it('the page, its files and the reference foods are given to all', async () => {
    for (const path of ['/', '/animals/x', '/assets/a-1.js', '/reference.bin'])
      expect((await send('GET', path)).status, path).toBe(200);
  });

  it('anyone may ask whether a token is needed, and learns no more', async () => {
    const told = async (headers: Headers = {}) => (await send('GET', '/api/pair', headers)).json();
    expect(await told()).toEqual({ tokenNeeded: true, paired: false, device: null });
    expect(await told((await paired()).headers)).toEqual({
      tokenNeeded: true,
      paired: true,
      device: 'Kitchen phone',
    });
  });
});

describe('pairing', () => {
  it('gives a page a cookie that no script reads and no other site sends', async () => {
    const answer = await send(
      'POST',
      '/api/pair',
      { host: 'localhost:4173', origin: 'http://localhost:4173' },
      { code: access.pairing.offer(HOME).code, name: '  Kitchen phone ' },
    );
    expect(answer.status).toBe(200);
    expect(await answer.json()).toEqual({ id: expect.any(String), name: 'Kitchen phone' });
    const cookie = answer.headers.get('set-cookie') ?? '';
    expect(cookie).toMatch(/^pouchful_4173=[\w-]{43}; Max-Age=34560000; Path=\/; HttpOnly; SameSite=Strict$/);
    const [sent = ''] = cookie.split(';');
    expect((await send('GET', '/api/records', { cookie: `a=b; ${sent}; c=d` })).status).toBe(200);
    // The server may come up at another port.
    const moved = sent.replace('4173', '4174');
    expect((await send('GET', '/api/records', { cookie: `pouchful_4173=old; ${moved}` })).status).toBe(200);
  });

  it('marks the cookie as secure where it is served by HTTPS', async () => {
    started('https');
    const answer = await pair(access.pairing.offer(HOME).secret);
    expect(answer.headers.get('set-cookie')).toContain('; Secure');
  });

  it('gives an API client who says so a token, and no cookie; it is in no answer after', async () => {
    const answer = await pair(access.pairing.offer(HOME).code, { bearer: true });
    const { token } = (await answer.json()) as { token: string };
    expect(answer.headers.get('set-cookie')).toBeNull();
    const list = await send('GET', '/api/devices', { authorization: `Bearer ${token}` });
    expect(list.status).toBe(200);
    expect(await list.text()).not.toContain(token);
  });

  it('lets one device in by one code', async () => {
    const { code, secret } = access.pairing.offer(HOME);
    expect((await pair(code)).status).toBe(200);
    expect((await pair(code)).status).toBe(403);
    expect((await pair(secret)).status).toBe(403);
    expect(await devicesOf(store, () => now).list(HOME)).toHaveLength(1);
  });

  it('takes the secret of the link that is shown', async () => {
    const { headers } = await paired();
    const offer = (await (await send('POST', '/api/devices/code', headers)).json()) as {
      code: string;
      links: string[];
      goodUntil: string;
    };
    expect(offer.goodUntil).toBe(new Date(now + 10 * 60_000).toISOString());
    expect(offer.links).toHaveLength(1);
    const [, secret = ''] = /^http:\/\/192\.168\.1\.5:4173\/#pair=(.+)$/.exec(offer.links[0] ?? '') ?? [];
    expect((await pair(secret)).status).toBe(200);
    expect((await pair(offer.code)).status).toBe(403);
  });

  it('refuses 10,000 guesses, and says how long to wait', async () => {
    const { code, secret } = access.pairing.offer(HOME);
    const seen = new Map<number, number>();
    for (let i = 0; i < 10_000; i++) {
      now += 50;
      const from = `10.0.${(i >> 4) & 255}.${i & 15}`;
      const answer = await pair(i.toString(31).padStart(8, '2'), {}, i % 2 ? from : '192.168.1.66');
      seen.set(answer.status, (seen.get(answer.status) ?? 0) + 1);
      expect(answer.headers.get('set-cookie')).toBeNull();
      if (answer.status === 429) expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0);
    }
    expect([...seen.keys()].sort()).toEqual([403, 429]);
    expect(await devicesOf(store, () => now).list(HOME)).toEqual([]);
    // The code is worn out; who has the link still comes in, from the stranger's own address too.
    expect((await pair(code, {}, '192.168.1.7')).status).toBe(403);
    expect((await pair(secret, {}, '192.168.1.66')).status).toBe(200);
  });

  it.each([
    [{ name: '' }, '/name'],
    [{ name: '   ' }, '/name'],
    [{ name: 'x'.repeat(41) }, '/name'],
    [{ name: 'a\nb' }, '/name'],
    [{ name: 'a\u202eb' }, '/name'],
    [{ name: 7 }, '/name'],
    [{ code: '' }, '/code'],
    [{ code: 'x'.repeat(65) }, '/code'],
    [{ code: null }, '/code'],
    [{ more: 1 }, '/more'],
  ])('refuses %j, which uses up neither code nor tries', async (wrong, field) => {
    const offer = access.pairing.offer(HOME);
    for (let i = 0; i < 9; i++) {
      const answer = await pair(offer.code, wrong);
      expect(answer.status).toBe(400);
      expect(((await answer.json()) as { field: string }).field).toBe(field);
    }
    expect((await pair(offer.code)).status).toBe(200);
  });

  it('has room for so many devices; the code stays good for when there is room', async () => {
    const devices = devicesOf(store, () => now);
    for (let i = 0; i < MOST_DEVICES; i++) await devices.add(HOME, `Phone ${i}`);
    const offer = access.pairing.offer(HOME);
    expect((await pair(offer.code)).status).toBe(409);
    const [first] = await devices.list(HOME);
    await devices.revoke(HOME, first?.id ?? '');
    expect((await pair(offer.code)).status).toBe(200);
  });

  it('is nothing to do where this machine alone is served, and nobody is asked for a token there', async () => {
    access = onlyThisMachine(store);
    app = createApp({ access, webDir: folder(), referenceFile: '' });
    expect((await pair(access.pairing.offer(HOME).code)).status).toBe(409);
    expect((await send('POST', '/api/devices/code')).status).toBe(409);
    expect((await send('GET', '/api/records')).status).toBe(200);
    expect(await (await send('GET', '/api/pair')).json()).toEqual({
      tokenNeeded: false,
      paired: false,
      device: null,
    });
    expect(await (await send('GET', '/api/devices')).json()).toEqual({
      devices: [],
      open: false,
      secure: false,
    });
  });
});

describe('behind a proxy', () => {
  const tries = async (behindProxy: boolean, chain: (i: number) => string) => {
    const served = { scheme: 'http', isOwn: ownNames(false), behindProxy } as const;
    access = openAccess({
      served,
      tokens: true,
      devices: devicesOf(store, () => now),
      storeOf: () => store,
      origins: () => [],
      clock: () => now,
    });
    app = createApp({ access, webDir: folder(), referenceFile: '' });
    const statuses: number[] = [];
    for (let i = 0; i < 6; i++)
      statuses.push(
        (await send('POST', '/api/pair', { 'x-forwarded-for': chain(i) }, { code: 'nothing', name: 'x' }))
          .status,
      );
    return statuses.at(-1);
  };

  it('wrong codes are counted by the address that the proxy saw, not by what a stranger says before it', async () => {
    expect(await tries(true, (i) => `10.0.0.${i}`)).toBe(403);
    expect(await tries(true, (i) => `10.0.0.${i}, 192.0.2.7`)).toBe(429);
    expect(await tries(false, (i) => `10.0.0.${i}`)).toBe(429);
  });

  it('nobody is let in by a proxy that was not announced, where no token is asked for', async () => {
    app = createApp({ store, webDir: folder(), referenceFile: '' });
    expect((await send('GET', '/api/records')).status).toBe(200);
    for (const header of ['x-forwarded-for', 'forwarded'])
      expect((await send('GET', '/api/records', { [header]: 'for=1.2.3.4' })).status).toBe(403);
  });
});

describe('a paired device', () => {
  it('is in after a restart', async () => {
    const { headers } = await paired();
    await store.close();
    store = openStore(join(folder(), 'household.sqlite'));
    started();
    expect((await send('GET', '/api/records', headers)).status).toBe(200);
  });

  it('stands in the list, with when it was paired and seen', async () => {
    const phone = await paired();
    now += 2 * HOUR;
    const tablet = await paired('Tablet');
    const list = await (await send('GET', '/api/devices', phone.headers)).json();
    expect(list).toEqual({
      devices: [
        {
          id: phone.id,
          name: 'Kitchen phone',
          pairedAt: '2026-03-20T00:00:00.000Z',
          seenAt: '2026-03-20T02:00:00.000Z',
          thisOne: true,
        },
        {
          id: tablet.id,
          name: 'Tablet',
          pairedAt: '2026-03-20T02:00:00.000Z',
          seenAt: '2026-03-20T02:00:00.000Z',
          thisOne: false,
        },
      ],
      open: true,
      secure: false,
    });
  });

  it('is named in the history by its own name, whatever it calls itself', async () => {
    const { id, headers } = await paired();
    await send('PATCH', `/api/devices/${id}`, headers, { name: 'Scale phone' });
    const [mix] = (await store.household()).mixes;
    const answer = await send(
      'PUT',
      `/api/mixes/${mix?.id}`,
      {
        ...headers,
        'if-match': '"1"',
        'pouchful-device': 'Somebody',
      },
      { ...mix, name: 'Another' },
    );
    expect(answer.status).toBe(200);
    expect((await store.history({})).changes[0]).toMatchObject({ device: 'Scale phone', name: 'Another' });
  });

  it('gets its cookie anew while it is used, so that it does not run out', async () => {
    const answer = await pair(access.pairing.offer(HOME).code);
    const [cookie = ''] = (answer.headers.get('set-cookie') ?? '').split(';');
    const used = () => send('GET', '/api/records', { cookie });
    expect((await used()).headers.get('set-cookie')).toBeNull();
    now += HOUR;
    expect((await used()).headers.get('set-cookie')).toContain(`${cookie}; Max-Age=34560000`);
    expect((await used()).headers.get('set-cookie')).toBeNull();
  });

  it('that is put out is out at once, with its open streams; others stay', async () => {
    const phone = await paired();
    const tablet = await paired('Tablet');
    const [stream, other] = [phone, tablet].map(async ({ headers }) => {
      const { body } = await send('GET', '/api/events', headers);
      return body!.getReader();
    });
    const [reader, stays] = [await stream!, await other!];
    const text = async (r: typeof reader) => new TextDecoder().decode((await r.read()).value);
    expect(await text(reader)).toContain('event: hello');
    expect(await text(stays)).toContain('event: hello');
    expect((await send('DELETE', `/api/devices/${phone.id}`, tablet.headers)).status).toBe(204);
    expect((await reader.read()).done).toBe(true);
    for (const route of await everyRoute(tablet.headers)) {
      const [method = '', path = ''] = route.split(' ');
      if (PUBLIC.includes(route)) continue;
      const answer = await send(method, path, phone.headers, takesBody(method) ? {} : undefined);
      expect(answer.status, route).toBe(401);
    }
    const { animals, ...rest } = demoHousehold();
    await store.putAll({ ...rest, animals: animals.map((animal) => ({ ...animal, name: 'Another' })) });
    expect(await text(stays)).toContain('event: change');
    access.streams.endAll();
    expect((await stays.read()).done).toBe(true);
    expect((await send('DELETE', `/api/devices/${phone.id}`, tablet.headers)).status).toBe(404);
  });

  it('gets no stream when it is put out while it asks for one', async () => {
    const { id, headers } = await paired();
    const devices = devicesOf(store, () => now);
    const asked = send('GET', '/api/events', headers);
    await devices.revoke(HOME, id);
    const answer = await asked;
    if (answer.status !== 401) {
      const reader = answer.body!.getReader();
      while (!(await reader.read()).done);
    }
  });

  it('may put itself out', async () => {
    const { id, headers } = await paired();
    expect((await send('DELETE', `/api/devices/${id}`, headers)).status).toBe(204);
    expect((await send('GET', '/api/pair', headers)).status).toBe(200);
    expect((await send('GET', '/api/devices', headers)).status).toBe(401);
  });
});

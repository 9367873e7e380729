/** Whose requests are answered: by host, origin with port, and what browsers say of where a request comes from. */
import { Hono } from 'hono';
import { describe, expect, it } from 'vitest';
import { ownNames } from './access/own-names.ts';
import { guard, securityHeaders } from './guard.ts';
import type { Served } from './served.ts';

const served: Served = { scheme: 'http', isOwn: ownNames(false, ['shelter.lan']) };
const app = new Hono();
app.use(guard(served));
app.all('*', (c) => c.text('in'));

async function status(
  method: string,
  path: string,
  headers: Record<string, string | undefined>,
  to: Hono = app,
): Promise<number> {
  const sent = Object.entries(headers).filter((h): h is [string, string] => h[1] !== undefined);
  return (await to.request(path, { method, headers: sent })).status;
}

const HOST = 'localhost:4173';
const OWN = 'http://localhost:4173';
const FOREIGN = [
  'http://evil.example',
  'http://localhost',
  'http://localhost:9999',
  'https://localhost:4173',
  'http://127.0.0.1:4173',
  'http://localhost:4173.evil.example',
  'null',
  '',
  'localhost:4173',
];
const ELSEWHERE = ['cross-site', 'same-site', 'anything'];
const MODES = [undefined, 'navigate', 'cors', 'no-cors', 'same-origin', 'websocket'];
const READS = ['GET', 'HEAD'];
const WRITES = ['POST', 'PUT', 'PATCH', 'DELETE', 'OPTIONS'];
const API = ['/api/household', '/api/events', '/api/openapi.json', '/api'];
const PAGES = ['/', '/reference.bin', '/assets/a-1.js', '/animals/x'];

describe('a host name', () => {
  it('is this machine, or a name that was given', async () => {
    for (const host of [
      'localhost',
      HOST,
      'LOCALHOST:1',
      '127.0.0.1:4173',
      '[::1]:4173',
      'shelter.lan:80',
      'localhost.',
    ])
      expect(await status('GET', '/api/household', { host }), host).toBe(200);
    for (const host of [
      ...['evil.example', 'localhost.evil.example:4173', '10.0.0.7', '[fe80::1]', '127.0.0.1.evil.example'],
      ...[
        'evil.example:localhost',
        'localhost:4173@evil.example',
        '127.0.0.2',
        '0.0.0.0',
        '[::]',
        'localhost:x',
        '',
      ],
    ])
      for (const path of [...API, ...PAGES]) expect(await status('GET', path, { host }), host).toBe(403);
  });
});

describe('what a page of this server asks', () => {
  it('is answered', async () => {
    for (const path of [...API, ...PAGES])
      for (const site of ['same-origin', undefined])
        for (const mode of MODES) {
          const fetched = { host: HOST, 'sec-fetch-site': site, 'sec-fetch-mode': mode };
          for (const method of READS) expect(await status(method, path, fetched)).toBe(200);
          for (const method of [...READS, ...WRITES])
            expect(await status(method, path, { ...fetched, origin: OWN })).toBe(200);
        }
  });

  it('may leave out the usual port of its scheme, or write it', async () => {
    for (const [host, origin] of [
      ['localhost:80', 'http://localhost'],
      ['localhost', 'http://localhost:80'],
    ])
      expect(await status('PUT', '/api/foods/a', { host, origin })).toBe(200);
    const secure = new Hono();
    secure.use(guard({ ...served, scheme: 'https' }));
    secure.all('*', (c) => c.text('in'));
    const put = (host: string, origin: string) => status('PUT', '/api/foods/a', { host, origin }, secure);
    expect(await put(HOST, 'https://localhost:4173')).toBe(200);
    expect(await put('localhost', 'https://localhost')).toBe(200);
    expect(await put(HOST, OWN)).toBe(403);
  });
});

describe('what a command-line client asks', () => {
  it('is answered: it says nothing of where it is from', async () => {
    for (const method of [...READS, ...WRITES])
      for (const path of [...API, ...PAGES]) expect(await status(method, path, { host: HOST })).toBe(200);
  });
});

describe('what a page from elsewhere asks', () => {
  it('is refused by its origin, whatever else it says, another port of this machine among them', async () => {
    for (const origin of FOREIGN)
      for (const method of [...READS, ...WRITES])
        for (const site of [undefined, 'same-origin', 'none', ...ELSEWHERE])
          for (const path of [...API, ...PAGES])
            expect(
              await status(method, path, {
                host: HOST,
                origin,
                'sec-fetch-site': site,
                'sec-fetch-mode': 'cors',
              }),
              `${method} ${path} from ${origin} (${site})`,
            ).toBe(403);
  });

  it('is refused by what the browser says where it says no origin', async () => {
    for (const site of ELSEWHERE)
      for (const mode of MODES)
        for (const method of [...READS, ...WRITES])
          for (const path of [...API, ...PAGES]) {
            const follows = READS.includes(method) && mode === 'navigate' && PAGES.includes(path);
            expect(
              await status(method, path, { host: HOST, 'sec-fetch-site': site, 'sec-fetch-mode': mode }),
              `${method} ${path} ${site} ${mode}`,
            ).toBe(follows ? 200 : 403);
          }
  });

  it('is no write without an origin, whatever the browser says', async () => {
    for (const site of ['same-origin', 'none'])
      for (const method of WRITES)
        expect(await status(method, '/api/foods/a', { host: HOST, 'sec-fetch-site': site })).toBe(403);
  });
});

it('an address typed by hand is answered', async () => {
  for (const path of [...API, ...PAGES])
    expect(
      await status('GET', path, { host: HOST, 'sec-fetch-site': 'none', 'sec-fetch-mode': 'navigate' }),
    ).toBe(200);
});

it('behind a proxy the name and scheme count by which the proxy was asked, as it says last', async () => {
  const behind = new Hono();
  behind.use(guard({ scheme: 'http', isOwn: ownNames(false, ['shelter.example']), behindProxy: true }));
  behind.all('*', (c) => c.text('in'));
  const asked = {
    host: '127.0.0.1:4173',
    'x-forwarded-host': 'shelter.example',
    'x-forwarded-proto': 'https',
    origin: 'https://shelter.example',
  };
  const put = (headers: Record<string, string | undefined>, to = behind) =>
    status('PUT', '/api/foods/a', { ...asked, ...headers }, to);
  expect(await put({})).toBe(200);
  expect(await put({ host: 'shelter.example', 'x-forwarded-host': undefined })).toBe(200);
  expect(await put({ 'x-forwarded-proto': 'http, https' })).toBe(200);
  expect(await put({ 'x-forwarded-proto': 'https, http' })).toBe(403);
  expect(await put({ 'x-forwarded-proto': undefined })).toBe(403);
  expect(await put({ origin: 'http://shelter.example' })).toBe(403);
  expect(await put({ 'x-forwarded-host': 'evil.example', origin: 'https://evil.example' })).toBe(403);
  expect(await put({ 'x-forwarded-host': 'shelter.example, evil.example' })).toBe(403);
  // Nobody announced a proxy: what these headers say counts for nothing.
  expect(await put({ host: HOST }, app)).toBe(403);
  expect(await put({ host: HOST, origin: OWN }, app)).toBe(200);
});

it('nothing of the household is left in a cache, unless its route says otherwise', async () => {
  const cached = new Hono();
  cached.use(securityHeaders());
  cached.get('/api/own', (c) => c.text('', 200, { 'Cache-Control': 'private, max-age=5' }));
  cached.get('*', (c) => c.text(''));
  const told = async (path: string) => (await cached.request(path)).headers.get('cache-control');
  expect(await told('/api/records')).toBe('no-store');
  expect(await told('/api/own')).toBe('private, max-age=5');
  expect(await told('/reference.bin')).toBeNull();
});

it('a page is kept apart from all others, where browsers do so; they say where they go there alone', async () => {
  const app = new Hono();
  app.use(securityHeaders());
  app.get('*', (c) => c.text(''));
  const told = async (path: string, dest?: string) => {
    const { headers } = await app.request(path, dest ? { headers: { 'Sec-Fetch-Dest': dest } } : {});
    return ['opener', 'embedder', 'resource'].map((of) => headers.get(`cross-origin-${of}-policy`));
  };
  expect(await told('/', 'document')).toEqual(['same-origin', 'require-corp', 'same-origin']);
  expect(await told('/')).toEqual([null, 'require-corp', 'same-origin']);
  // What a page loads says the same wherever it is asked for: it is kept in caches.
  for (const dest of ['worker', 'script', undefined])
    expect(await told('/assets/a-1.js', dest)).toEqual([null, 'require-corp', 'same-origin']);
});

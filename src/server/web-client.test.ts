/** How long browsers may keep what is served, and which build it is. */
import { mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Hono } from 'hono';
import { beforeEach, expect, it } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { buildIdOf } from './build-id.ts';
import { webClient } from './web-client.ts';

const folder = folderForEachTest();
const page = (build: string) => `<meta name="pouchful-build" content="${build}" /><title>Pouchful</title>`;
let app: Hono;

beforeEach(() => {
  mkdirSync(join(folder(), 'assets'));
  writeFileSync(join(folder(), 'index.html'), page('abc'));
  writeFileSync(join(folder(), 'assets', 'a-1.js'), 'export {}');
  writeFileSync(join(folder(), 'third-party-notices.txt'), 'MIT');
  app = new Hono();
  webClient(app, folder());
});

it.each([
  '/',
  '/index.html',
  '/mix',
  '/animals/x',
  '/third-party-notices.txt',
  '/assets/gone-2.js',
  '/gone.txt',
])('%s is asked for anew each time', async (path) => {
  expect((await app.request(path)).headers.get('cache-control')).toBe('no-cache');
});

it('a file with the hash of its content in its name is kept; one of an older build is gone', async () => {
  const asset = await app.request('/assets/a-1.js');
  expect(asset.headers.get('cache-control')).toContain('immutable');
  expect((await app.request('/assets/gone-2.js')).status).toBe(404);
  for (const path of ['/', '/mix'])
    expect(await (await app.request(path)).text()).toContain('<title>Pouchful');
});

it.each([
  ['br, gzip', 'br', '.br'],
  ['gzip', 'gzip', '.gz'],
  ['identity', null, ''],
])('a browser that takes %s gets the file that the build made for it', async (takes, encoding, ending) => {
  for (const end of ['.br', '.gz']) writeFileSync(join(folder(), 'assets', `a-1.js${end}`), `as ${end}`);
  const answer = await app.request('/assets/a-1.js', { headers: { 'Accept-Encoding': takes } });
  expect(answer.headers.get('content-encoding')).toBe(encoding);
  expect(answer.headers.get('content-type')).toContain('javascript');
  expect(answer.headers.get('cache-control')).toContain('immutable');
  expect(await answer.text()).toBe(ending === '' ? 'export {}' : `as ${ending}`);
});

it('the page is sent again only where it is another', async () => {
  const first = await app.request('/', { headers: { 'Accept-Encoding': 'br' } });
  const known = { 'If-None-Match': first.headers.get('etag') ?? '' };
  const again = await app.request('/', { headers: known });
  expect([again.status, await again.text()]).toEqual([304, '']);
  expect(again.headers.get('cache-control')).toBe('no-cache');
  expect((await app.request('/mix', { headers: known })).status).toBe(304);
  writeFileSync(join(folder(), 'index.html'), page('def'));
  const other = await app.request('/', { headers: known });
  expect([other.status, await other.text()]).toEqual([200, page('def')]);
});

it('the build is the one that the page names now', () => {
  const build = buildIdOf(folder());
  expect(build()).toBe('abc');
  writeFileSync(join(folder(), 'index.html'), page('def'));
  utimesSync(join(folder(), 'index.html'), 2_000_000_000, 2_000_000_000);
  expect(build()).toBe('def');
  expect(buildIdOf(join(folder(), 'none'))()).toBe('');
});

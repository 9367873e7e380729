/** Which answers go out compressed, and how. */
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { Hono } from 'hono';
import { expect, it } from 'vitest';
import { compressedJson, encodingFor } from './compressed.ts';

const long = { text: 'hamster '.repeat(500) };
const app = new Hono();
app.use('*', compressedJson());
app.get('/long', (c) => c.json(long, 200, { 'X-Of': 'mine' }));
app.get('/short', (c) => c.json({ text: 'short' }));
app.get('/refused', (c) => c.json(long, 409));
app.get('/text', (c) => c.text(long.text));
app.put('/long', (c) => c.json(long));

const ask = (path: string, accepted?: string, method = 'GET') =>
  app.request(path, { method, ...(accepted && { headers: { 'Accept-Encoding': accepted } }) });

it.each([
  ['gzip, deflate, br, zstd', 'br'],
  ['gzip, deflate', 'gzip'],
  ['br;q=0.5', 'br'],
  ['br;q=0, gzip;q=1.0', 'gzip'],
  ['gzip;q=0', undefined],
  ['brotli', undefined],
  ['', undefined],
  [undefined, undefined],
])('who takes %s gets %s', (accepted, encoding) => {
  expect(encodingFor(accepted)).toBe(encoding);
});

it('a long answer is the same, only smaller', async () => {
  for (const [encoding, plain] of [
    ['br', brotliDecompressSync],
    ['gzip', gunzipSync],
  ] as const)
    for (const [path, status] of [
      ['/long', 200],
      ['/refused', 409],
    ] as const) {
      const answer = await ask(path, encoding);
      expect(answer.status).toBe(status);
      expect(answer.headers.get('content-encoding')).toBe(encoding);
      expect(answer.headers.get('content-type')).toContain('application/json');
      expect(answer.headers.get('vary')).toBe('Accept-Encoding');
      const body = Buffer.from(await answer.arrayBuffer());
      expect(body.length).toBeLessThan(500);
      expect(JSON.parse(plain(body).toString())).toEqual(long);
    }
  expect((await ask('/long', 'br')).headers.get('x-of')).toBe('mine');
});

it.each([
  ['/long', undefined, 'GET'],
  ['/short', 'br', 'GET'],
  ['/text', 'br', 'GET'],
  ['/long', 'br', 'PUT'],
] as const)('%s to who takes %s by %s goes out as it is', async (path, accepted, method) => {
  const answer = await ask(path, accepted, method);
  expect(answer.headers.get('content-encoding')).toBeNull();
  expect((await answer.text()).length).toBeGreaterThan(10);
});

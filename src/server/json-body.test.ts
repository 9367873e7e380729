/** Hostile bodies: refused with words, nothing written, never an error of the server's own. */
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { draws } from '../../test/draws.ts';
import { RECORDS } from '../../test/household/arbitraries.ts';
import { demo } from '../../test/household/demo-version.ts';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import type { Kind } from '../household/model.ts';
import { KINDS } from '../household/model.ts';
import { type FileStore, openStore } from '../household/store.ts';
import { createApp } from './app.ts';

const folder = folderForEachTest();
let store: FileStore;
let app: ReturnType<typeof createApp>;
beforeEach(async () => {
  store = openStore(join(folder(), 'household.sqlite'));
  await store.putAll(demo);
  app = createApp({ store, webDir: join(folder(), 'web'), referenceFile: join(folder(), 'none.bin') });
});
afterEach(() => store.close());

/** @param seen version that the sender saw; as a new record where it saw none */
const send = (path: string, body: string, { method = 'PUT', seen = 0 } = {}) =>
  app.request(path, {
    method,
    headers: {
      'content-type': 'application/json',
      ...(seen > 0 ? { 'if-match': `"${seen}"` } : { 'if-none-match': '*' }),
    },
    body,
  });

const nested = (open: string, close: string, deep: number, inside = '1') =>
  open.repeat(deep) + inside + close.repeat(deep);

it.each([
  ['lists', nested('[', ']', 200_000)],
  ['objects', nested('{"a":', '}', 100_000)],
  ['a field', `{"id":"x","name":${nested('[', ']', 50_000)}}`],
  ['lists that never end', '['.repeat(500_000)],
  ['after a text with brackets', `{"a":"[[{\\"","b":${nested('[', ']', 40)}}`],
])('what is nested deep is refused before it is read: %s', async (_, body) => {
  for (const path of ['/api/foods/x', '/api/mixes/demo-mix', '/api/batches/b', '/api/kitchen/kitchen']) {
    const answer = await send(path, body);
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ message: expect.stringContaining('nested') });
  }
  expect((await send('/api/batches/b/pours', body, { method: 'POST' })).status).toBe(400);
});

it('brackets inside a text nest nothing', async () => {
  const [food] = demo.foods;
  const body = JSON.stringify({ ...food, source: `"${'[{'.repeat(500)}\\` });
  expect((await send('/api/foods/demo-pellet', body, { seen: 1 })).status).toBe(200);
});

it.each(['__proto__', '\\u005f_proto__', 'constructor', 'prototype'])(
  'a key that is more than a key is refused: %s',
  async (key) => {
    const [mix] = demo.mixes;
    const body = JSON.stringify({ ...mix, shares: {} }).replace('"shares":{}', `"shares":{"${key}":5}`);
    const answer = await send('/api/mixes/demo-mix', body, { seen: 1 });
    expect(answer.status).toBe(400);
    expect(await answer.json()).toMatchObject({ field: expect.stringContaining('/shares/') });
    expect(await store.household()).toEqual(demo);
  },
);

/** JSON of odd parts, and text that is none. */
const oddValue = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: 'small' },
    fc.constantFrom(null, true, '', 'x', -1, 1e308, 5e-324, -0, '\ud800', '\u0000', '__proto__', [], {}),
    fc.string({ unit: 'binary' }),
    fc.double(),
    fc.array(tie('value'), { maxLength: 3 }),
    fc.dictionary(
      fc.constantFrom('id', 'name', 'problem', 'shares', 'foods', 'at', '__proto__'),
      tie('value'),
      {
        maxKeys: 4,
      },
    ),
  ),
})).value;
const path = fc.constantFrom(
  ...KINDS.map((kind) => `/api/${kind}/x`),
  '/api/nothing',
  '/api/foods/%E0%A4%A',
  '/api/foods/%00',
  '/api/foods/',
  '/api/batches/x/pours',
);
/** A record as it is accepted, one part of it, however deep, replaced by something odd. */
const wrongPart = fc
  .tuple(
    fc.oneof(...(Object.keys(RECORDS) as Kind[]).map((kind) => RECORDS[kind]('x') as fc.Arbitrary<object>)),
    oddValue,
    fc.infiniteStream(fc.nat()),
  )
  .map(([record, odd, steps]) => {
    const copy = structuredClone(record) as Record<string, unknown>;
    let at = copy;
    for (const step of steps) {
      const keys = Object.keys(at);
      const key = keys[step % keys.length];
      if (key === undefined) break;
      const inner = at[key];
      if (typeof inner !== 'object' || inner === null || step % 3 === 0) {
        at[key] = odd;
        break;
      }
      at = inner as Record<string, unknown>;
    }
    return copy;
  });
const body = fc.oneof(
  fc.string({ unit: 'binary' }),
  oddValue.map((v) => JSON.stringify(v) ?? ''),
  wrongPart.map((v) => JSON.stringify(v)),
  fc.nat(60_000).map((n) => nested('[', ']', n)),
  fc.nat(30_000).map((n) => `{"id":"x","problem":${nested('{"a":[', ']}', n)}}`),
);
const method = fc.constantFrom('PUT', 'PUT', 'PUT', 'POST', 'DELETE', 'PATCH');

it('no request makes the server fail, and none that is refused writes', async () => {
  const log = vi.spyOn(console, 'error').mockImplementation(() => {});
  await fc.assert(
    fc.asyncProperty(path, method, body, fc.nat(3), async (to, how, text, seen) => {
      const before = (await store.newest()).seq;
      const answer = await send(to, text, { method: how, seen });
      expect(answer.status, `${how} ${to} ${text.slice(0, 200)}`).toBeLessThan(500);
      const { seq } = await store.newest();
      if (answer.status >= 400) expect(seq, `${how} ${to} wrote ${text.slice(0, 200)}`).toBe(before);
    }),
    { numRuns: draws(100_000, 1500) },
  );
  expect(log).not.toHaveBeenCalled();
  log.mockRestore();
}, 600_000);

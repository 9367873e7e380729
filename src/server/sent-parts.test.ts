/** A part of the household that did not change is sent as it was sent before; one that did never is. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import SqliteFile from 'better-sqlite3';
import { Hono } from 'hono';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { folderForEachTest } from '../../test/household/folder-for-each-test.ts';
import { put } from '../../test/household/put.ts';
import { tenYears } from '../../test/household/ten-years.ts';
import { Backups } from '../household/backup/backups.ts';
import { type KeptRecord, type RecordsPage, recordInFull, SECTIONS } from '../household/records.ts';
import { type FileStore, openStore } from '../household/store.ts';
import { createApp } from './app.ts';
import { SentParts } from './sent-parts.ts';

const house = tenYears({ size: 0.1 });
const folder = folderForEachTest();
let path: string;
let store: FileStore;
let app: ReturnType<typeof createApp>;
/** How many answers were read from the household. */
let read: number;

beforeEach(async () => {
  path = join(folder(), 'household.sqlite');
  store = openStore(path);
  await store.putAll(house);
  read = 0;
  const { recordsText } = store;
  const counted: FileStore = {
    ...store,
    async recordsText(...asked) {
      const page = await recordsText(...asked);
      if (page.text !== undefined) read += 1;
      return page;
    },
  };
  mkdirSync(join(folder(), 'web'), { recursive: true });
  writeFileSync(join(folder(), 'web', 'index.html'), '');
  app = createApp({ store: counted, webDir: join(folder(), 'web'), referenceFile: path });
});
afterEach(() => store.close());

const PLAIN = { br: brotliDecompressSync, gzip: gunzipSync } as const;

/** @returns the answer, its headers but those that say how it was encoded, and its text */
async function ask(query: string, accepted = 'gzip, deflate, br', language = 'en') {
  const headers = { 'Accept-Encoding': accepted, 'Accept-Language': language };
  const answer = await app.request(`/api/records?brief=1&${query}`, { headers });
  expect(answer.status).toBe(200);
  const encoding = answer.headers.get('content-encoding') as keyof typeof PLAIN | null;
  const sent = Buffer.from(await answer.arrayBuffer());
  const text = (encoding ? PLAIN[encoding](sent) : sent).toString();
  return {
    encoding,
    headers: Object.fromEntries(answer.headers),
    text,
    page: JSON.parse(text) as RecordsPage,
  };
}

/** Opens the household as a page does. */
async function opened(accepted?: string): Promise<KeptRecord[]> {
  const first = (await ask('after=0', accepted)).page;
  const records = [...first.records];
  for (const of of SECTIONS) {
    const between = first.cuts?.[of].filter((cut) => cut > first.seq && cut < first.newest) ?? [];
    const ends = [first.seq, ...between, first.newest];
    for (const [k, upTo] of ends.slice(1).entries()) {
      const { page, text } = await ask(`after=${ends[k]}&upTo=${upTo}&of=${of}`, accepted);
      expect(page.more).toBe(false);
      expect(text.length).toBeLessThan(200_000);
      records.push(...page.records);
    }
  }
  return records.map(recordInFull).sort((a, b) => a.place - b.place);
}
const RANGE = 'after=20&upTo=100&of=rest';
const there = async () => (await store.everything()).sort((a, b) => a.place - b.place);

/** Another program writes to the file. */
function fromOutside(sql: string, value: unknown): void {
  const file = new SqliteFile(path);
  expect(file.prepare(sql).run(value).changes).toBe(1);
  file.close();
}

it('a second device is sent what the first was, as long as nothing changed', async () => {
  expect(await opened()).toEqual(await there());
  const first = read;
  expect(first).toBeGreaterThan(8);
  read = 0;
  expect(await opened()).toEqual(await there());
  // The first part, and pieces too short to be compressed, which are not kept.
  expect(read).toBeLessThanOrEqual(2);
  await put(store, 'weighings', { ...house.weighings[50]!, grams: 77 });
  read = 0;
  expect(await opened()).toEqual(await there());
  // The first part, the piece that it left, and the last of each section, which reach to the newest change.
  expect(read).toBeLessThanOrEqual(5);
});

it('it is the same answer, in every way in which it is asked for', async () => {
  for (const accepted of ['br', 'gzip', 'identity']) {
    const before = await ask(RANGE, accepted);
    const again = await ask(RANGE, accepted);
    expect(again).toEqual(before);
    expect(before.encoding).toBe(accepted === 'identity' ? null : accepted);
    expect(before.headers).toMatchObject({ 'cache-control': 'no-store', vary: 'Accept-Encoding' });
    expect(before.headers['content-type']).toContain('application/json');
    expect(before.page.records.length).toBeGreaterThan(20);
  }
  expect((await ask(RANGE, 'identity')).text).toBe((await ask(RANGE, 'br')).text);
  // Whoever asks for another range, or in full, is not answered with this one.
  expect((await ask('after=20&upTo=80&of=rest')).page.seq).toBe(80);
  expect((await ask('after=20&upTo=100')).page.records.length).toBeGreaterThanOrEqual(
    (await ask(RANGE)).page.records.length,
  );
  const full = await app.request(`/api/records?${RANGE}`, { headers: { 'Accept-Encoding': 'identity' } });
  expect(((await full.json()) as RecordsPage).records[0]).toHaveProperty('id');
});

it('a range tells of itself alone: whatever is written later, it says the same', async () => {
  const before = await ask(RANGE);
  expect(before.page).toMatchObject({ seq: 100, newest: 100, more: false });
  await put(store, 'lots', { ...house.lots[0]!, id: 'another' });
  read = 0;
  expect(await ask(RANGE)).toEqual(before);
  expect(read).toBe(0);
});

it('what was changed, edited by another program, taken back or put back from a backup is not sent as it was', async () => {
  const food = house.foods[4]!;
  /** What the range says that the food is called, where it says anything of it. */
  const said = async () => {
    const { page } = await ask('after=0&upTo=150&of=rest');
    const record = page.records.map(recordInFull).find((r) => r.kind === 'foods' && r.id === food.id);
    return record && (record.body as typeof food).name;
  };
  expect(await said()).toBe(food.name);
  fromOutside("UPDATE records SET body = json_set(body, '$.name', 'Edited') WHERE id = ?", food.id);
  expect(await said()).toBe('Edited');
  const backups = new Backups({
    opened: store.opened,
    clock: () => new Date(),
    tell: () => {},
    onGoneBack: () => store.stirred(),
  });
  const { name } = await backups.saveNow();
  await put(store, 'foods', { ...food, name: 'Changed' });
  expect(await said()).toBeUndefined();
  await store.takeBack((await store.newest()).seq, { device: 'test', at: new Date().toISOString() });
  expect(await said()).toBeUndefined();
  await backups.goBack(name);
  expect(await said()).toBe('Edited');
});

it('why a record cannot be read is said in the language of who asks', async () => {
  await ask(RANGE);
  fromOutside("UPDATE records SET body = '{' WHERE seq = ?", 100);
  const why = async (language: string) =>
    (await ask(RANGE, 'br', language)).page.records.find((r) => r.seq === 100)?.unreadable?.why;
  const english = await why('en');
  expect(english).toBeDefined();
  expect(await why('de')).not.toBe(english);
  expect(await why('en')).toBe(english);
});

it('no more is kept than there is room for, what was asked for last', async () => {
  const parts = new SentParts(3000);
  const small = new Hono();
  const reads = vi.fn();
  small.get('/:part', (c) =>
    parts.answer(c, c.req.param('part'), async (known) => {
      if (known === 'as ever') return { sign: known };
      reads(c.req.param('part'));
      // Of random letters: it does not become much smaller.
      const letters = Array.from({ length: 1500 }, () => Math.random().toString(36).slice(2, 3)).join('');
      return { sign: 'as ever', text: letters };
    }),
  );
  const get = async (part: string) => {
    const answer = await small.request(`/${part}`, { headers: { 'Accept-Encoding': 'br' } });
    return brotliDecompressSync(Buffer.from(await answer.arrayBuffer())).toString();
  };
  const first = await get('a');
  await get('b');
  expect(await get('a')).toBe(first);
  await get('c');
  expect(await get('a')).toBe(first);
  await get('b');
  expect(reads.mock.calls.map(([part]) => part)).toEqual(['a', 'b', 'c', 'b']);
});

/** Faults of an open file: told in words, and no write after damage. */
import { copyFileSync, existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { demo } from '../../../test/household/demo-version.ts';
import { EMPTY } from '../../../test/household/empty-household.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import type { OwnFood } from '../model.ts';
import { openStore } from '../store.ts';
import { forKysely } from './for-kysely.ts';
import { type OpenedFile, openFile } from './open-file.ts';

const folder = folderForEachTest();
let path: string;
let opened: OpenedFile;
beforeEach(() => {
  path = join(folder(), 'household.sqlite');
  opened = openFile(path);
  opened.file.exec('CREATE TABLE note (id INTEGER PRIMARY KEY, text TEXT)');
});
afterEach(() => opened.close());

const write = (text: string) => opened.file.prepare('INSERT INTO note (text) VALUES (?)').run(text);

/** What the household says of the error that some work ends with. */
function faultOf(work: () => unknown) {
  try {
    work();
  } catch (error) {
    return opened.fault(error);
  }
  throw new Error('it went well');
}

it('says within two seconds that another program holds the file, and at once the next time', () => {
  const other = new Database(path);
  other.exec('BEGIN IMMEDIATE');
  const since = Date.now();
  expect(faultOf(() => write('a'))).toMatchObject({
    kind: 'busy',
    message: expect.stringContaining('another program holds the file'),
  });
  expect(Date.now() - since).toBeLessThan(2000);
  expect(opened.file.pragma('busy_timeout', { simple: true })).toBe(50);
  expect(faultOf(() => write('b'))?.kind).toBe('busy');
  other.close();
  write('c');
});

it('says that the disk is full, and keeps what was written', () => {
  write('before');
  const pages = opened.file.pragma('page_count', { simple: true }) as number;
  opened.file.pragma(`max_page_count = ${pages}`);
  expect(faultOf(() => write('x'.repeat(100_000)))).toMatchObject({
    kind: 'full',
    message: expect.stringContaining('make room, then try again'),
  });
  opened.file.pragma(`max_page_count = ${pages + 100}`);
  write('x'.repeat(100_000));
  expect(opened.file.prepare('SELECT length(text) FROM note').pluck().all()).toEqual([6, 100_000]);
});

it('says that a file cannot be written', () => {
  opened.file.pragma('query_only = ON');
  expect(faultOf(() => write('a'))?.kind).toBe('read-only');
  opened.file.pragma('query_only = OFF');
});

it('writes nothing more to a file that was found damaged, not even at closing', () => {
  opened.close();
  opened = openFile(path);
  write('in the log');
  const bytes = readFileSync(path);
  bytes.fill(0xff, 4096);
  writeFileSync(path, bytes);
  const log = readFileSync(`${path}-wal`);
  const damaged = () => opened.file.prepare('SELECT * FROM records, changes, writes, devices').all();
  expect(faultOf(damaged)).toMatchObject({ kind: 'damaged', message: expect.stringContaining('is damaged') });
  expect(faultOf(() => write('a'))?.kind).toBe('damaged');
  opened.close();
  expect(readFileSync(path)).toEqual(bytes);
  expect(readFileSync(`${path}-wal`)).toEqual(log);
  expect(existsSync(`${path}.closing`)).toBe(false);
  // Nor is it taken for a copy that was put there.
  expect(() => openFile(path)).toThrow('is damaged');
});

it('leaves other errors alone', () => {
  expect(faultOf(() => opened.file.exec('SELECT nothing FROM nowhere'))).toBeUndefined();
  expect(opened.fault(new Error('something else'))).toBeUndefined();
  expect(opened.fault(Object.assign(new Error(), { code: 'ENOSPC' }))?.kind).toBe('full');
});

it('tells of a full disk through the store, which writes all of it or nothing', async () => {
  opened.close();
  const store = openStore(path);
  const { file } = store.opened;
  const foods = Array.from({ length: 100 }, (_, i) => {
    const food: OwnFood = { ...(demo.foods[0] as OwnFood), id: `food-${i}`, source: 'x'.repeat(400) };
    return food;
  });
  file.pragma(`max_page_count = ${file.pragma('page_count', { simple: true })}`);
  await expect(store.putAll({ ...EMPTY, foods })).rejects.toMatchObject({ kind: 'full' });
  expect((await store.household()).foods).toEqual([]);
  file.pragma('max_page_count = 10000');
  await store.putAll({ ...EMPTY, foods });
  expect((await store.household()).foods).toHaveLength(100);
  await store.close();
});

it('tells what SQLite said first, where it took the transaction back by itself', async () => {
  const db = new Kysely({ dialect: new SqliteDialect({ database: forKysely(opened.file) }) });
  const failed = db.transaction().execute(async () => {
    // As SQLite does on a disk that is really full.
    opened.file.exec('ROLLBACK');
    throw new Error('disk full');
  });
  await expect(failed).rejects.toThrow('disk full');
  await db.transaction().execute(async () => write('after'));
  expect(opened.file.prepare('SELECT text FROM note').pluck().all()).toEqual(['after']);
});

it('writes nothing to a file that was moved away or replaced while it is open', async () => {
  opened.close();
  const store = openStore(path);
  const put = (id: string) =>
    store.write(
      { kind: 'foods', id, body: { ...(demo.foods[0] as OwnFood), id }, basedOn: 0 },
      { device: 'test', at: '2026-11-28T00:00:00.000Z' },
    );
  await put('a');
  renameSync(path, `${path}.away`);
  await expect(put('b')).rejects.toMatchObject({ kind: 'read-only' });
  copyFileSync(`${path}.away`, path);
  await expect(put('b')).rejects.toThrow('was moved, deleted or replaced');
  renameSync(`${path}.away`, path);
  await put('b');
  await store.close();
  opened = openFile(path);
  expect(opened.file.prepare('SELECT id FROM records ORDER BY place').pluck().all()).toEqual(['a', 'b']);
});

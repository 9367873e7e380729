/** Faults of an open file: told in words, and no write after damage. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
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
});

it('leaves other errors alone', () => {
  expect(faultOf(() => opened.file.exec('SELECT nothing FROM nowhere'))).toBeUndefined();
  expect(opened.fault(new Error('something else'))).toBeUndefined();
});

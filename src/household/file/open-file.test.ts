/** What is opened, what is refused, and that a refused file is left as it was. */
import {
  copyFileSync,
  existsSync,
  linkSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { stateOf } from '../../../test/household/file-states.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { migrate, SCHEMA_VERSION } from '../migrations.ts';
import { openFile } from './open-file.ts';
import { OpeningError, type OpeningReason } from './opening-error.ts';

const folder = folderForEachTest();
let path: string;
beforeEach(() => {
  path = join(folder(), 'household.sqlite');
});

/** Tries to open a file that must be refused. */
function refused(reason: OpeningReason, words: string): void {
  const before = stateOf(folder());
  let error: unknown;
  try {
    openFile(path).close();
  } catch (e) {
    error = e;
  }
  expect(error).toBeInstanceOf(OpeningError);
  expect((error as OpeningError).message).toContain(words);
  expect((error as OpeningError).reason).toBe(reason);
  expect(stateOf(folder())).toEqual(before);
}

/** A file as Pouchful made it before its files were marked. */
function oldFile(step: number, at = path): Database.Database {
  const db = new Database(at);
  db.pragma('journal_mode = WAL');
  migrate(db, step);
  return db;
}

/** Copies the file with its log, as a crash would leave both. */
function crashed(): void {
  const opened = openFile(path);
  opened.file.exec('CREATE TABLE IF NOT EXISTS crumb (id TEXT)');
  opened.file.exec('DROP TABLE crumb');
  for (const end of ['', '-wal', '-session']) copyFileSync(path + end, `${path}.kept${end}`);
  opened.close();
  for (const end of ['', '-wal', '-session']) renameSync(`${path}.kept${end}`, path + end);
}

describe('a file that is no household', () => {
  it('is empty', () => {
    writeFileSync(path, '');
    refused('empty', 'is empty');
  });

  it('has no tables, since it was copied without its log', () => {
    const running = join(folder(), 'running.sqlite');
    const db = oldFile(5, running);
    copyFileSync(running, path);
    db.close();
    rmSync(running);
    refused('empty', 'copied alone while Pouchful ran');
  });

  it("is another program's", () => {
    const db = new Database(path);
    db.exec('CREATE TABLE songs (title TEXT)');
    db.close();
    refused('foreign', 'belongs to another program');
  });

  it("is another program's that happens to have our version number, or our tables and more", () => {
    const db = new Database(path);
    db.exec('CREATE TABLE foods (id TEXT); PRAGMA user_version = 1');
    db.close();
    refused('foreign', 'belongs to another program');
    rmSync(path);
    const more = oldFile(5);
    more.exec('CREATE TABLE songs (title TEXT)');
    more.close();
    refused('foreign', 'belongs to another program');
  });

  it('bears the mark of another program', () => {
    const db = oldFile(5);
    db.pragma('application_id = 7');
    db.close();
    refused('foreign', 'belongs to another program');
  });

  it('is no database', () => {
    writeFileSync(path, 'just some words, many more than the header of a database would need. '.repeat(20));
    refused('foreign', 'is no household file');
    writeFileSync(path, 'SQLite format 3\0 and then nothing');
    refused('foreign', 'is no household file');
  });

  it('is a folder', () => {
    mkdirSync(path);
    refused('foreign', 'is a folder');
  });

  it('is a link to nothing', () => {
    const disk = join(folder(), 'disk');
    mkdirSync(disk);
    const file = join(disk, 'household.sqlite');
    openFile(file).close();
    symlinkSync(file, path);
    openFile(path).close();
    rmSync(file);
    expect(() => openFile(path)).toThrow('is a link to a file that is not there');
  });

  it('comes from a newer Pouchful', () => {
    openFile(path).close();
    const db = new Database(path);
    db.pragma(`user_version = ${SCHEMA_VERSION + 1}`);
    db.close();
    refused('newer', 'use the newer Pouchful');
  });

  it('is gone, while its log or backups of it are still there', () => {
    crashed();
    rmSync(path);
    refused('gone', 'its log "household.sqlite-wal" is still here');
    rmSync(`${path}-wal`);
    mkdirSync(join(folder(), 'backups'));
    writeFileSync(join(folder(), 'backups', 'household.other.2026-01-01T00-00-00.000Z.auto.sqlite'), '');
    openFile(path).close();
    rmSync(path);
    writeFileSync(join(folder(), 'backups', 'household.2026-01-01T00-00-00.000Z.auto.sqlite'), '');
    refused('gone', 'backups of it lie in');
  });
});

describe('a damaged file', () => {
  it('is not written to', () => {
    openFile(path).close();
    const bytes = readFileSync(path);
    bytes.fill(0xff, 4096, 8192);
    writeFileSync(path, bytes);
    refused('damaged', 'is damaged');
    truncateSync(path, bytes.length - 4096);
    refused('damaged', 'is damaged');
  });

  it('is not written to where it was left with a log', () => {
    crashed();
    const bytes = readFileSync(path);
    bytes.fill(0xff, 4096, 8192);
    writeFileSync(path, bytes);
    // Without the note of the session nothing says that the file changed.
    rmSync(`${path}-session`);
    refused('damaged', 'is damaged');
  });
});

it('is damaged where bytes changed though nobody wrote to it, also where SQLite finds nothing wrong', () => {
  const opened = openFile(path);
  opened.file.exec("INSERT INTO devices VALUES ('home', 'd1', 'Phone', 'hash', '', '', NULL)");
  opened.close();
  const bytes = readFileSync(path);
  bytes.write('F', bytes.indexOf('Phone'), 'latin1');
  writeFileSync(path, bytes);
  // As one finds it that was edited: SQLite sees nothing, and a copy put there is welcome.
  openFile(path).close();
  bytes.write('P', bytes.indexOf('Fhone'), 'latin1');
  writeFileSync(path, bytes);
  const note = JSON.parse(readFileSync(`${path}-session`, 'utf8'));
  const { ino, ctimeNs } = statSync(path, { bigint: true });
  note.file.identity = `${ino} ${ctimeNs}`;
  writeFileSync(`${path}-session`, JSON.stringify(note));
  refused('damaged', 'its disk fails');
});

describe('a log beside the file', () => {
  it('is used with the file it was written over', () => {
    const opened = openFile(path);
    opened.file.exec("INSERT INTO devices VALUES ('home', 'd1', 'Phone', 'hash', '', '', NULL)");
    for (const end of ['', '-wal', '-session']) copyFileSync(path + end, `${path}.kept${end}`);
    opened.close();
    for (const end of ['', '-wal', '-session']) renameSync(`${path}.kept${end}`, path + end);
    const again = openFile(path);
    expect(again.file.prepare('SELECT id FROM devices').pluck().all()).toEqual(['d1']);
    again.close();
  });

  it('is refused with a copy put back, whose state it would undo', () => {
    openFile(path).close();
    const copy = join(folder(), 'copy.sqlite');
    copyFileSync(path, copy);
    const opened = openFile(path);
    opened.file.exec("INSERT INTO devices VALUES ('home', 'd1', 'Phone', 'hash', '', '', NULL)");
    opened.close();
    crashed();
    copyFileSync(copy, path);
    refused('stray log', 'move "household.sqlite-wal" away');
    renameSync(`${path}-wal`, join(folder(), 'old-wal'));
    const again = openFile(path);
    expect(again.file.prepare('SELECT id FROM devices').all()).toEqual([]);
    again.close();
  });

  it('is gone after a clean stop: the one file holds everything', () => {
    const opened = openFile(path);
    opened.file.exec("INSERT INTO devices VALUES ('home', 'd1', 'Phone', 'hash', '', '', NULL)");
    opened.close();
    expect(readdirSync(folder()).filter((n) => n.endsWith('-wal') || n.endsWith('-shm'))).toEqual([]);
    const alone = join(folder(), 'alone.sqlite');
    copyFileSync(path, alone);
    const db = new Database(alone, { readonly: true });
    expect(db.prepare('SELECT id FROM devices').pluck().all()).toEqual(['d1']);
    db.close();
  });
});

it('has a new epoch where a copy was put in its place, and the same where it lies as it was left', () => {
  const epoch = () => {
    const opened = openFile(path);
    try {
      return opened.file.prepare('SELECT epoch FROM households').pluck().get();
    } finally {
      opened.close();
    }
  };
  const first = epoch();
  expect(epoch()).toBe(first);
  const copy = join(folder(), 'copy.sqlite');
  copyFileSync(path, copy);
  renameSync(copy, path);
  const second = epoch();
  expect(second).not.toBe(first);
  expect(epoch()).toBe(second);
});

describe('one server a file', () => {
  it('refuses the second with the address of the first, also through a link', () => {
    const opened = openFile(path);
    opened.announce('http://localhost:4173');
    expect(() => openFile(path)).toThrow('it is at http://localhost:4173');
    const link = join(folder(), 'link.sqlite');
    symlinkSync(path, link);
    expect(() => openFile(link)).toThrow('it is at http://localhost:4173');
    const reader = new Database(path, { readonly: true });
    expect(reader.pragma('user_version', { simple: true })).toBe(SCHEMA_VERSION);
    reader.close();
    opened.close();
    openFile(link).close();
  });
});

describe('a first run', () => {
  it('makes the file whole, whatever a run that was cut short left behind', () => {
    const half = new Database(`${path}.new`);
    half.exec('CREATE TABLE foods (id TEXT)');
    half.close();
    const opened = openFile(path);
    expect(opened.isNew).toBe(true);
    opened.close();
    expect(existsSync(`${path}.new`)).toBe(false);
    linkSync(path, `${path}.new`);
    const again = openFile(path);
    expect(again.isNew).toBe(false);
    again.close();
    expect(existsSync(`${path}.new`)).toBe(false);
  });
});

describe('an older shape', () => {
  it.each([1, 2, 3, 4, 5])('of step %i is marked and, where it must be brought up, copied first', (step) => {
    oldFile(step).close();
    const opened = openFile(path, { now: new Date('2026-11-28T10:00:00Z') });
    expect(opened.isNew).toBe(false);
    opened.close();
    const again = openFile(path);
    expect(again.file.pragma('application_id', { simple: true })).toBe(0x506f7563);
    expect(again.copyBefore).toBeUndefined();
    again.close();
    if (step === SCHEMA_VERSION) return;
    const copy = `household.2026-11-28T10-00-00.000Z.before-upgrade-${step}-${SCHEMA_VERSION}.sqlite`;
    expect(opened.copyBefore).toBe(join(folder(), 'backups', copy));
    const db = new Database(opened.copyBefore as string, { readonly: true });
    expect(db.pragma('user_version', { simple: true })).toBe(step);
    db.close();
    expect(readdirSync(join(folder(), 'backups'))).toEqual([copy]);
  });

  it('is not touched where no copy of it can be made', () => {
    oldFile(4).close();
    writeFileSync(join(folder(), 'backups'), 'a file where the folder should be');
    expect(() => openFile(path)).toThrow('no sound copy of it could be kept first');
    const db = new Database(path, { readonly: true });
    expect(db.pragma('user_version', { simple: true })).toBe(4);
    expect(db.pragma('application_id', { simple: true })).toBe(0);
    db.close();
  });
});

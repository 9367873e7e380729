/** Where a household lies by default, and how an old one comes there. */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import { stateOf } from '../../../test/household/file-states.ts';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { migrate } from '../migrations.ts';
import { defaultFile, oldFile } from './data-folder.ts';
import { moveOldFile } from './move-old-file.ts';
import { openFile } from './open-file.ts';

const folder = folderForEachTest();

describe('the folder for data', () => {
  const on = (platform: NodeJS.Platform, env = {}, home = '/home/kim') =>
    defaultFile({ platform, env, home });

  it("is the user's own on each system", () => {
    expect(on('linux')).toBe('/home/kim/.local/share/pouchful/household.sqlite');
    expect(on('linux', { XDG_DATA_HOME: '/data' })).toBe('/data/pouchful/household.sqlite');
    expect(on('freebsd', { XDG_DATA_HOME: '' })).toBe('/home/kim/.local/share/pouchful/household.sqlite');
    expect(on('linux', { XDG_DATA_HOME: 'data' })).toBe('/home/kim/.local/share/pouchful/household.sqlite');
    expect(on('darwin', {}, '/Users/kim')).toBe(
      '/Users/kim/Library/Application Support/Pouchful/household.sqlite',
    );
    expect(on('win32', { APPDATA: 'C:\\Users\\kim\\AppData\\Roaming' }, 'C:\\Users\\kim')).toBe(
      'C:\\Users\\kim\\AppData\\Roaming\\Pouchful\\household.sqlite',
    );
    expect(on('win32', {}, 'C:\\Users\\kim')).toBe(
      'C:\\Users\\kim\\AppData\\Roaming\\Pouchful\\household.sqlite',
    );
  });
});

describe("a household in the program's folder", () => {
  let old: string;
  let to: string;
  beforeEach(() => {
    old = oldFile(join(folder(), 'program'));
    to = join(folder(), 'home', 'pouchful', 'household.sqlite');
    mkdirSync(dirname(old), { recursive: true });
  });

  /** One as an earlier Pouchful left it, its newest part in the log. */
  function earlier(): void {
    const db = new Database(old);
    db.pragma('journal_mode = WAL');
    migrate(db, 5);
    db.exec(`INSERT INTO lots VALUES ('l1', '{"id":"l1"}')`);
    const held = new Map(['', '-wal'].map((end) => [end, readFileSync(old + end)]));
    db.close();
    for (const [end, bytes] of held) writeFileSync(old + end, bytes);
  }

  it('is moved, with a copy kept and a note', async () => {
    earlier();
    expect(await moveOldFile(old, to)).toContain(`was moved out of the program's folder to ${to}`);
    const opened = openFile(to);
    expect(opened.isNew).toBe(false);
    expect(opened.file.prepare('SELECT id FROM records').pluck().all()).toEqual(['l1']);
    opened.close();
    expect(existsSync(old)).toBe(false);
    const copy = new Database(`${old}.moved`);
    expect(copy.prepare('SELECT id FROM lots').pluck().all()).toEqual(['l1']);
    copy.close();
    expect(readFileSync(`${old}.moved.txt`, 'utf8')).toContain(to);
    expect(await moveOldFile(old, to)).toBeUndefined();
  });

  it('is left where another is used already, which is told', async () => {
    earlier();
    openFile(to).close();
    const before = stateOf(folder());
    expect(await moveOldFile(old, to)).toContain(`To use it, start with --data ${old}`);
    expect(stateOf(folder())).toEqual(before);
  });

  it('that is none, or in use, is left alone', async () => {
    expect(await moveOldFile(old, to)).toBeUndefined();
    writeFileSync(old, 'no database at all');
    await expect(moveOldFile(old, to)).rejects.toThrow('is no household file');
    expect(readdirSync(folder())).toEqual(['program']);
  });

  it('that another server has open stays', async () => {
    const opened = openFile(old);
    opened.announce('http://localhost:4173');
    await expect(moveOldFile(old, to)).rejects.toThrow('it is at http://localhost:4173');
    opened.close();
    expect(existsSync(old)).toBe(true);
    expect(existsSync(to)).toBe(false);
  });
});

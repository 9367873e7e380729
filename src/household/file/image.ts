/** A database as it lies on disk, looked at in memory: nothing is written to it or beside it. */
import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { JOURNAL, WAL } from './side-files.ts';

/** Bytes of the header that say whether writes go through a log; SQLite opens no image in memory that says so. */
const WRITE_VERSION = 18;
const READ_VERSION = 19;
const WITHOUT_LOG = 1;
/** Length of the header. */
const HEADER = 100;

/** Opens a copy in memory of a database's bytes. @throws SqliteError where they are none */
export function openBytes(bytes: Buffer): Database.Database {
  return new Database(withoutLog(bytes));
}

/** The same database, marked as one without a write-ahead log. The bytes given are changed. */
export function withoutLog(bytes: Buffer): Buffer {
  if (bytes.length >= HEADER) {
    bytes[WRITE_VERSION] = WITHOUT_LOG;
    bytes[READ_VERSION] = WITHOUT_LOG;
  }
  return bytes;
}

/** Whether a log with something in it lies beside the file. */
export function hasLog(path: string): boolean {
  return [WAL, JOURNAL].some((end) => existsSync(path + end) && statSync(path + end).size > 0);
}

/**
 * The bytes of a database with what its log holds, read through a copy in a folder for passing files.
 * @throws SqliteError where SQLite cannot read them
 */
export function bytesWithLog(path: string): Buffer {
  if (!hasLog(path)) return readFileSync(path);
  const folder = mkdtempSync(join(tmpdir(), 'pouchful-look-'));
  try {
    const copy = join(folder, 'copy.sqlite');
    for (const end of ['', WAL, JOURNAL]) if (existsSync(path + end)) copyFileSync(path + end, copy + end);
    const db = new Database(copy);
    try {
      return db.serialize();
    } finally {
      db.close();
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

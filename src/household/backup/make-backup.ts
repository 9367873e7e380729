/** Makes one backup while the household is in use, by SQLite's online backup. It counts once it was checked. */
import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { moveWhole, syncWhole } from '../file/side-files.ts';
import { readBackupName } from './backup-name.ts';
import { checkCopy } from './check-copy.ts';
import { type Contents, contentsOf, sameContents } from './contents.ts';

/** Pages copied at a time; between two times other requests are answered. 200 pages take about 1 ms. */
const PAGES_A_STEP = 200;
const HALF = '.half';

/**
 * @param path the household's file, open elsewhere in this process
 * @param to where the backup is to lie
 * @returns what it holds
 * @throws Error when it cannot be made or is not whole; then there is none
 */
export async function makeBackup(path: string, to: string): Promise<Contents> {
  mkdirSync(dirname(to), { recursive: true });
  clearHalves(to);
  const half = to + HALF;
  try {
    const source = await copyMoment(path, half);
    const copy = checkCopy(half);
    if (!sameContents(copy, source)) throw new Error('the copy does not hold what the household holds');
    moveWhole(half, to);
    return copy;
  } catch (error) {
    clearHalves(to);
    throw error;
  }
}

/** Copies the file as it stands at one moment, however much is written meanwhile. @returns what it held */
async function copyMoment(path: string, to: string): Promise<Contents> {
  const source = new Database(path, { readonly: true });
  try {
    // A transaction that only reads stays at its moment.
    source.exec('BEGIN');
    const contents = contentsOf(source);
    await source.backup(to, { progress: () => PAGES_A_STEP });
    makeSingle(to);
    return contents;
  } finally {
    source.close();
  }
}

/** A backup is one file without a log beside it, on disk before it counts. */
function makeSingle(path: string): void {
  const copy = new Database(path);
  try {
    copy.pragma('journal_mode = DELETE');
  } finally {
    copy.close();
  }
  syncWhole(path);
}

/** What a backup that was cut short left behind. */
function clearHalves(to: string): void {
  const stem = readBackupName(basename(to))?.stem ?? basename(to);
  for (const name of readdirSync(dirname(to))) {
    const half = name.startsWith(`${stem}.`) && /\.half(-wal|-shm|-journal)?$/.test(name);
    if (half) rmSync(join(dirname(to), name), { force: true });
  }
}

/** Ways on from a file that is not to be opened. None of them writes to it: it is set aside under another name. */
import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { backupsOf, type KeptBackup } from '../backup/backups.ts';
import { checkCopy } from '../backup/check-copy.ts';
import { makeNewFile } from './new-file.ts';
import { type Salvaged, salvage } from './salvage/salvage.ts';
import {
  asidePath,
  backupFolder,
  JOURNAL,
  moveWhole,
  SHM,
  sessionPath,
  syncWhole,
  WAL,
} from './side-files.ts';

/** What a step away from a file came to. */
export interface Rescued {
  /** Where what lay there was put; undefined where nothing did. */
  readonly aside: string | undefined;
}

interface PutBack extends Rescued {
  /** How many devices must be paired anew. */
  readonly devices: number;
}

/** Where a file is made before it takes the household's name. */
const comingPath = (path: string) => `${path}.coming`;

/** The backups that are whole, newest first. */
export function goodBackups(path: string): KeptBackup[] {
  return backupsOf(path).filter(({ name }) => {
    try {
      checkCopy(join(backupFolder(path), name));
      return true;
    } catch {
      return false;
    }
  });
}

/**
 * Puts a backup in the place of the file.
 * @param at ISO 8601 time, UTC, for the name under which the file is set aside
 * @throws Error when there is no such backup or it is not whole; then nothing was changed
 */
export function putBack(path: string, name: string, at: string): PutBack {
  if (!backupsOf(path).some((b) => b.name === name)) throw new Error(`there is no backup "${name}"`);
  return putInPlace(path, join(backupFolder(path), name), at);
}

/**
 * Puts a copy of any whole household in the place of the file, which is set aside. Devices that were paired must be paired
 * anew: which of them were put out since the copy was made is told by the file that lay there alone.
 * @throws Error when the household to be put there is not whole; then nothing was changed
 */
export function putInPlace(path: string, from: string, at: string): PutBack {
  checkCopy(from);
  const coming = comingPath(path);
  copyFileSync(from, coming);
  const devices = putOutAll(coming, at);
  syncWhole(coming);
  return { devices, ...swap(path, coming, at) };
}

/**
 * Puts what can be read of the file in its place.
 * @returns what was saved; undefined where nothing could be read, and then nothing was changed
 */
export function putSalvaged(path: string, at: string): (Rescued & Salvaged) | undefined {
  const coming = comingPath(path);
  const saved = salvage(path, coming);
  if (!saved) {
    rmSync(coming, { force: true });
    return undefined;
  }
  syncWhole(coming);
  return { ...saved, ...swap(path, coming, at) };
}

/** Uses the file without the log beside it, which was written over another one. */
export function putLogAside(path: string, at: string): Rescued {
  return { aside: setAside(path, [WAL, SHM, JOURNAL], 'log', at) };
}

/** Begins anew where a household is gone; what is left of it is set aside, backups stay. */
export function beginAnew(path: string, at: string): Rescued {
  const aside = setAside(path, ['', WAL, SHM, JOURNAL], 'gone', at);
  makeNewFile(path);
  return { aside };
}

/** @returns how many devices were in */
function putOutAll(path: string, at: string): number {
  const db = new Database(path);
  try {
    // Backups of older shapes have none.
    if (!db.prepare("SELECT 1 FROM sqlite_master WHERE name = 'devices'").get()) return 0;
    return db.prepare('UPDATE devices SET revoked_at = ? WHERE revoked_at IS NULL').run(at).changes;
  } finally {
    db.close();
  }
}

function swap(path: string, coming: string, at: string): Rescued {
  const aside = setAside(path, [WAL, SHM, JOURNAL, ''], 'before', at);
  moveWhole(coming, path);
  return { aside };
}

/** @param ends of the file's name and its companions', each keeping its end under the new name */
function setAside(path: string, ends: readonly string[], what: string, at: string): string | undefined {
  const aside = asidePath(path, what, at);
  const there = ends.filter((end) => existsSync(path + end));
  for (const end of there) renameSync(path + end, aside + end);
  // It names a file that is no longer here.
  rmSync(sessionPath(path), { force: true });
  return there.length > 0 ? aside : undefined;
}

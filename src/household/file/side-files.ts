/** The household's file and what lies beside it: how our files are marked, and the names of their companions. */
import { closeSync, fsyncSync, linkSync, openSync, renameSync, rmSync, statSync, writeSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';

/** `application_id` of our files, the letters "Pouc" in ASCII: SQLite keeps it in the header, at byte 68. */
export const APPLICATION_ID = 0x506f7563;

/** What SQLite keeps beside a database: writes not yet in the file, their index, and the older kind of journal. */
export const WAL = '-wal';
export const SHM = '-shm';
export const JOURNAL = '-journal';

export const lockPath = (path: string) => `${path}-lock`;
export const sessionPath = (path: string) => `${path}-session`;
/** Where a new household is made, until it is whole. */
export const newPath = (path: string) => `${path}.new`;
/** Where a damaged file waits for the moment in which it is closed. */
export const closingPath = (path: string) => `${path}.closing`;

/** Where backups of a household lie. */
export const backupFolder = (path: string) => join(dirname(path), 'backups');

/** "household" of "/data/household.sqlite": what the names of its backups begin with. */
export const stemOf = (path: string) => basename(path, extname(path));

/** A name beside the file for what is set aside. @param at ISO 8601 time, UTC */
export function asidePath(path: string, what: string, at: string): string {
  return `${path}.${what}-${at.replaceAll(':', '-').replace(/\.\d+Z$/, 'Z')}`;
}

/** Writes a file so that after a crash it is there whole or not at all. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  const half = `${path}.half`;
  try {
    const fd = openSync(half, 'w');
    try {
      const bytes = typeof content === 'string' ? Buffer.from(content) : content;
      for (let at = 0; at < bytes.length; ) at += writeSync(fd, bytes, at);
      fsyncSync(fd);
    } finally {
      closeSync(fd);
    }
  } catch (error) {
    rmSync(half, { force: true });
    throw error;
  }
  moveWhole(half, path);
}

/** Has a file that was written by others on disk before it returns. */
export function syncWhole(path: string): void {
  const fd = openSync(path, 'r+');
  try {
    fsyncSync(fd);
  } finally {
    closeSync(fd);
  }
}

/** Gives a file that is whole the household's name; takes no other file's name. @throws Error EEXIST where there is one */
export function giveName(whole: string, path: string): void {
  try {
    linkSync(whole, path);
    rmSync(whole);
    syncFolder(dirname(path));
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    // A file system without links: the lock keeps other servers away.
    moveWhole(whole, path);
  }
}

/** Renames a file, and has the folder on disk before it returns. */
export function moveWhole(from: string, to: string): void {
  renameSync(from, to);
  syncFolder(dirname(to));
}

export function syncFolder(folder: string): void {
  // Windows opens no folder as a file; its renames are kept by the file system itself.
  if (process.platform === 'win32') return;
  const fd = openSync(folder, 'r');
  try {
    fsyncSync(fd);
  } finally {
    closeSync(fd);
  }
}

/** Number by which the file system knows a file; undefined where there is none. */
export function inodeOf(path: string): string | undefined {
  return statSync(path, { bigint: true, throwIfNoEntry: false })?.ino.toString();
}

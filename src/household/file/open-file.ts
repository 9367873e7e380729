/**
 * Opens the household's file. It is looked at first, without writing; it is one server's alone; it is brought to the
 * newest shape; and it is closed so that the one file holds everything.
 */
import { randomUUID } from 'node:crypto';
import { accessSync, constants, existsSync, mkdirSync, realpathSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import type { StoreError } from '../store-error.ts';
import { checkpoint, watchLog } from './checkpoints.ts';
import { FileFaults } from './file-fault.ts';
import { takeFile } from './lock.ts';
import { firstSight, lookThrough, unreachable } from './look.ts';
import { makeNewFile } from './new-file.ts';
import { OpeningError } from './opening-error.ts';
import { isAsLeft, OwnSession } from './session.ts';
import { closingPath, newPath } from './side-files.ts';
import { upgrade } from './upgrade.ts';

export interface OpenOptions {
  /** The moment of opening, which names the copy made before an upgrade. */
  readonly now?: Date;
}

export interface OpenedFile {
  readonly file: Database.Database;
  /** The file, links followed. */
  readonly path: string;
  /** Whether this opening made it. */
  readonly isNew: boolean;
  /** Where a copy from before an upgrade lies, if this opening made one. */
  readonly copyBefore: string | undefined;
  /** An error as what the household says of it, where the file is at fault; undefined where it is not. */
  fault(error: unknown): StoreError | undefined;
  /** Leaves a note beside the file where its server is found, for a second one that is refused. */
  announce(address: string): void;
  /** Brings everything into the one file and gives it back. */
  close(): void;
}

/**
 * Opens a household's file; makes it where there is none and no trace of one.
 * @throws OpeningError when it is not to be opened; nothing was written to it then
 */
export function openFile(given: string, { now = new Date() }: OpenOptions = {}): OpenedFile {
  const path = realPath(given);
  comeBackFromClosing(path);
  // A file that is not marked as ours is looked through before a lock is laid beside it.
  const sight = firstSight(path);
  if (sight === 'unmarked') lookThrough(path);
  if (sight === 'none') makeFolder(path);
  mayWrite(path, sight !== 'none');
  const giveBack = takeFile(path);
  try {
    return openTaken(path, now, giveBack);
  } catch (error) {
    giveBack();
    throw error;
  }
}

/**
 * Looks through a file that no server has open; one that a server has open was looked through by it.
 * @throws OpeningError when it is not to be opened
 */
export function lookThroughUnused(given: string): void {
  const path = realPath(given);
  firstSight(path);
  let giveBack: () => void;
  try {
    giveBack = takeFile(path);
  } catch (error) {
    if (error instanceof OpeningError && error.reason === 'in-use') return;
    throw error;
  }
  try {
    lookThrough(path);
  } finally {
    giveBack();
  }
}

function openTaken(path: string, now: Date, giveBack: () => void): OpenedFile {
  const isNew = firstSight(path) === 'none';
  if (isNew) makeNewFile(path);
  // A process that ended while it gave a new file its name left the other one, too.
  else rmSync(newPath(path), { force: true });
  const step = lookThrough(path);
  const asLeft = isAsLeft(path);
  const session = new OwnSession(path);
  const file = new Database(path, { fileMustExist: true });
  try {
    const faults = new FileFaults(file);
    file.pragma('journal_mode = WAL');
    // Nothing goes from the log into the file but by the checkpoints that the session is told of.
    file.pragma('wal_autocheckpoint = 0');
    file.pragma('synchronous = FULL');
    file.pragma('foreign_keys = ON');
    // What is deleted leaves no trace that a rescue of a damaged file would take for a record.
    file.pragma('secure_delete = ON');
    const copyBefore = upgrade(file, step, now.toISOString());
    // Numbers that open pages have seen may mean nothing in a file that was put here.
    if (!asLeft && !isNew) file.prepare('UPDATE households SET epoch = ?').run(randomUUID());
    checkpoint(file, session);
    const stopWatching = watchLog(file, session, faults);
    let closed = false;
    return {
      file,
      path,
      isNew,
      copyBefore,
      fault: (error) => faults.of(error),
      announce: (address) => session.announce(address),
      close() {
        if (closed) return;
        closed = true;
        stopWatching();
        faults.end();
        try {
          if (faults.damaged) closeUntouched(file);
          else {
            session.moving();
            file.close();
          }
        } finally {
          session.end(!faults.damaged);
          giveBack();
        }
      },
    };
  } catch (error) {
    file.close();
    session.end(false);
    throw error instanceof OpeningError ? error : openingFault(path, error);
  }
}

/**
 * Closes a damaged file without the checkpoint that SQLite makes at closing: it makes none in a file that no longer
 * has its name.
 */
function closeUntouched(file: Database.Database): void {
  const path = file.name;
  try {
    renameSync(path, closingPath(path));
  } catch {
    // Windows renames no file that is open: it stays open until the process ends.
    return;
  }
  try {
    file.close();
  } finally {
    renameSync(closingPath(path), path);
  }
}

/** A process that ended while it closed a damaged file left it under the other name. */
function comeBackFromClosing(path: string): void {
  if (!existsSync(path) && existsSync(closingPath(path))) renameSync(closingPath(path), path);
}

/** The path with links followed, also of a file that is not there yet. */
function realPath(path: string): string {
  try {
    return realpathSync(path);
  } catch {
    try {
      return join(realpathSync(dirname(path)), basename(path));
    } catch {
      return path;
    }
  }
}

function makeFolder(path: string): void {
  try {
    mkdirSync(dirname(path), { recursive: true });
  } catch (error) {
    throw unreachable(path, error as NodeJS.ErrnoException);
  }
}

/** Beside the file SQLite needs its log: file and folder must be writable. */
function mayWrite(path: string, exists: boolean): void {
  try {
    accessSync(dirname(path), constants.W_OK);
    if (exists) accessSync(path, constants.R_OK | constants.W_OK);
  } catch (error) {
    throw unreachable(path, error as NodeJS.ErrnoException);
  }
}

/** What SQLite itself found when it opened the file. */
function openingFault(path: string, error: unknown): unknown {
  const code = (error as { code?: string }).code ?? '';
  if (/^E[A-Z]+$/.test(code) && code !== 'ENOSPC') return unreachable(path, error as NodeJS.ErrnoException);
  if (code.startsWith('SQLITE_BUSY')) {
    return new OpeningError('in-use', path, `another program holds ${path}; close it there and start again`);
  }
  if (code.startsWith('SQLITE_FULL') || code === 'ENOSPC') {
    return new OpeningError('disk', path, `the disk with ${path} is full; make room, then start again`);
  }
  if (/^SQLITE_(READONLY|CANTOPEN|IOERR|PERM)/.test(code))
    return unreachable(path, error as NodeJS.ErrnoException);
  return error;
}

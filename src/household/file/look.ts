/** Looks at a file before it is opened: is it a household, whole, and one that we know? Only reads. */
import {
  closeSync,
  existsSync,
  lstatSync,
  openSync,
  readdirSync,
  readFileSync,
  readSync,
  type Stats,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname } from 'node:path';
import type Database from 'better-sqlite3';
import SqliteFile from 'better-sqlite3';
import { readBackupName } from '../backup/backup-name.ts';
import { SCHEMA_VERSION } from '../migrations.ts';
import { bytesWithLog, hasLog, openBytes } from './image.ts';
import { lostInLog } from './log-check.ts';
import { OpeningError } from './opening-error.ts';
import { isRotten, logBeside } from './session.ts';
import { hasTables, sameTables, tablesAtStep, tablesOf } from './shape.ts';
import { APPLICATION_ID, backupFolder, stemOf, WAL } from './side-files.ts';

/** First bytes of every SQLite database, by SQLite's file format. */
const MAGIC = 'SQLite format 3\0';
/** Where the header has the application's id, four bytes, the highest first. */
const APPLICATION_ID_AT = 68;
const HEADER = 100;
/** The steps at which files had no application id yet. */
const UNMARKED_STEPS = 5;

/** No Pouchful will have more steps: a larger number is damage. */
const MOST_STEPS = 1000;

const ELSEWHERE = 'move it away, or name another file with --data';

/** What a file is by its first bytes alone. */
export type FirstSight = 'none' | 'ours' | 'unmarked';

/**
 * What lies there, by its name and first bytes.
 * @throws OpeningError where it cannot be a household
 */
export function firstSight(path: string): FirstSight {
  const stats = statsOf(path);
  if (!stats) {
    if (lstatSync(path, { throwIfNoEntry: false })) {
      throw new OpeningError(
        'gone',
        path,
        `${path} is a link to a file that is not there; is its disk connected? Or ${ELSEWHERE}`,
      );
    }
    refuseTraces(path);
    return 'none';
  }
  if (stats.isDirectory()) {
    throw new OpeningError('foreign', path, `${path} is a folder; name a file in it with --data`);
  }
  if (stats.size === 0) {
    throw new OpeningError(
      'empty',
      path,
      `${path} is empty, so it is no household; a copy of yours may have been cut short. Put a backup in its place, or ${ELSEWHERE}`,
    );
  }
  const header = headerOf(path);
  if (header.length < HEADER || header.toString('latin1', 0, MAGIC.length) !== MAGIC) {
    throw new OpeningError('foreign', path, `${path} is no household file; ${ELSEWHERE}`);
  }
  const id = header.readUInt32BE(APPLICATION_ID_AT);
  if (id === APPLICATION_ID) return 'ours';
  if (id === 0) return 'unmarked';
  throw new OpeningError('foreign', path, `${path} belongs to another program; ${ELSEWHERE}`);
}

/**
 * Looks through a whole file, its log included.
 * @returns the step its shape is of
 * @throws OpeningError where it is not to be opened
 */
export function lookThrough(path: string): number {
  if (isRotten(path))
    throw damaged(path, ['bytes of it changed though nothing was written to it: its disk fails']);
  const log = logBeside(path);
  // A failing disk changes a file, too.
  if (log === 'other file') lookThroughBytes(path, () => readFileSync(path));
  if (log !== 'fits') throw strayLogError(path, log);
  const lost = lostInLog(path);
  if (lost > 0)
    throw damaged(path, [`its log is broken in the middle; ${lost} or more changes stand behind that place`]);
  return lookThroughBytes(path, () => bytesWithLog(path));
}

function lookThroughBytes(path: string, read: () => Buffer): number {
  let db: Database.Database | undefined;
  try {
    db = openBytes(read());
    return stepOf(db, path);
  } catch (error) {
    if (isOfTheFile(error)) throw damaged(path, [error.message]);
    throw error instanceof OpeningError ? error : notLookedThrough(path, error);
  } finally {
    db?.close();
  }
}

/** Whether SQLite finds fault with the file itself, and not with the room or memory that it has for looking. */
function isOfTheFile(error: unknown): error is Error {
  return error instanceof SqliteFile.SqliteError && !/^SQLITE_(FULL|IOERR|NOMEM)/.test(error.code);
}

function notLookedThrough(path: string, error: unknown): unknown {
  const code = (error as { code?: unknown }).code;
  if (typeof code !== 'string') return error;
  const why = `${path} could not be looked through (${code})`;
  return new OpeningError('disk', path, `${why}; is there room in ${tmpdir()}? Then start again`);
}

/**
 * The step that an open database is of.
 * @throws OpeningError where it is damaged, foreign, empty or newer
 */
export function stepOf(db: Database.Database, path: string): number {
  const ours = db.pragma('application_id', { simple: true }) === APPLICATION_ID;
  const step = db.pragma('user_version', { simple: true }) as number;
  const tables = tablesOf(db);
  if (tables.size === 0 && (step === 0 || !ours)) {
    throw new OpeningError(
      'empty',
      path,
      `${path} has no tables. It was probably copied alone while Pouchful ran: then the newest part lies in the ` +
        `file "${basename(path)}${WAL}" beside the original. Copy both, or use a backup, or ${ELSEWHERE}`,
    );
  }
  const known = step >= 1 && step <= SCHEMA_VERSION;
  if (!ours && !(known && step <= UNMARKED_STEPS && sameTables(tables, tablesAtStep(step)))) {
    throw new OpeningError('foreign', path, `${path} belongs to another program; ${ELSEWHERE}`);
  }
  if (step > SCHEMA_VERSION && step <= MOST_STEPS) {
    throw new OpeningError(
      'newer',
      path,
      `the household file ${path} has version ${step}, this Pouchful knows versions up to ${SCHEMA_VERSION}; use the newer Pouchful`,
    );
  }
  const findings = (db.pragma('integrity_check(20)') as { integrity_check: string }[]).map(
    (row) => row.integrity_check,
  );
  if (findings.length !== 1 || findings[0] !== 'ok') throw damaged(path, findings);
  if (!known || !hasTables(tables, tablesAtStep(step))) {
    throw damaged(path, [`tables of version ${step} are missing in it`]);
  }
  return step;
}

function damaged(path: string, findings: readonly string[]): OpeningError {
  const what = findings[0] ?? 'unreadable';
  return new OpeningError(
    'damaged',
    path,
    `${path} is damaged (${what}). Nothing was written to it; go back to a backup, or save what can be read`,
    findings,
  );
}

function strayLogError(path: string, found: 'other file' | 'put back'): OpeningError {
  const log = `${basename(path)}${WAL}`;
  return new OpeningError(
    found === 'put back' ? 'put back' : 'stray log',
    path,
    `${path} was replaced while the log of the file before it ("${log}") still lay beside it; the log would undo the copy. ` +
      `To use the file as it is now, move "${log}" away and start again`,
  );
}

/** A household that was here is not silently begun anew. */
function refuseTraces(path: string): void {
  if (hasLog(path)) {
    throw new OpeningError(
      'gone',
      path,
      `${path} is gone, but its log "${basename(path)}${WAL}" is still here. Put the file back, or move the log away`,
    );
  }
  const folder = backupFolder(path);
  if (existsSync(folder) && readdirSync(folder).some((n) => readBackupName(n)?.stem === stemOf(path))) {
    throw new OpeningError(
      'gone',
      path,
      `${path} is gone, but backups of it lie in ${folder}. Go back to one, or move them away to begin anew`,
    );
  }
}

function statsOf(path: string): Stats | undefined {
  try {
    return statSync(path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw unreachable(path, error as NodeJS.ErrnoException);
  }
}

function headerOf(path: string): Buffer {
  try {
    const fd = openSync(path, 'r');
    try {
      const header = Buffer.alloc(HEADER);
      return header.subarray(0, readSync(fd, header, 0, HEADER, 0));
    } finally {
      closeSync(fd);
    }
  } catch (error) {
    throw unreachable(path, error as NodeJS.ErrnoException);
  }
}

/** A file or folder that the system does not let us use. */
export function unreachable(path: string, error: NodeJS.ErrnoException): OpeningError {
  const why =
    error.code === 'EACCES' || error.code === 'EPERM' || error.code === 'EROFS'
      ? 'may not be read and written by you'
      : `cannot be reached (${error.code ?? error.message})`;
  return new OpeningError(
    'disk',
    path,
    `${path} ${why}; change the rights of the file and of ${dirname(path)}, or name another file with --data`,
  );
}

/** Brings what the log holds into the file, now and then, and says so in the session. */
import { existsSync, statSync } from 'node:fs';
import type Database from 'better-sqlite3';
import type { OwnSession } from './session.ts';
import { WAL } from './side-files.ts';

/** A log of this size, in bytes, is brought into the file: SQLite's own default, 1000 pages of 4096. */
const LARGE = 1000 * 4096;
/** How often its size is looked at, in ms. */
const EVERY = 1000;

/**
 * Watches the log of an open file. SQLite's own checkpoints are off, since the session must be told of each.
 * @param may whether the file may be written to
 * @returns ends it
 */
export function watchLog(file: Database.Database, session: OwnSession, may: () => boolean): () => void {
  file.pragma('wal_autocheckpoint = 0');
  const log = file.name + WAL;
  const timer = setInterval(() => {
    if (!file.open || file.inTransaction || !may()) return;
    if (!existsSync(log) || statSync(log).size < LARGE) return;
    checkpoint(file, session);
  }, EVERY);
  timer.unref();
  return () => clearInterval(timer);
}

/** Brings the log into the file as far as readers let it, waiting for none, and empties it if all is brought in. */
export function checkpoint(file: Database.Database, session: OwnSession): void {
  const patience = file.pragma('busy_timeout', { simple: true }) as number;
  session.moving();
  try {
    file.pragma('busy_timeout = 0');
    file.pragma('wal_checkpoint(TRUNCATE)');
  } finally {
    file.pragma(`busy_timeout = ${patience}`);
    session.settled();
  }
}

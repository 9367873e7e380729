/** Brings what the log holds into the file, now and then, and says so in the session. */
import { existsSync, statSync } from 'node:fs';
import type Database from 'better-sqlite3';
import type { FileFaults } from './file-fault.ts';
import type { OwnSession } from './session.ts';
import { WAL } from './side-files.ts';

/** A log of this size, in bytes, is brought into the file: SQLite's own default, 1000 pages of 4096. */
const LARGE = 1000 * 4096;
/** How often its size is looked at, in ms. */
const EVERY = 1000;

/**
 * Watches the log of an open file whose own checkpoints are off. One that fails (a full disk, say) is tried again later:
 * what was written stays in the log.
 * @param faults is told of what fails; after damage nothing more is brought in
 * @returns ends it
 */
export function watchLog(file: Database.Database, session: OwnSession, faults: FileFaults): () => void {
  const log = file.name + WAL;
  const timer = setInterval(() => {
    if (!file.open || file.inTransaction || faults.damaged) return;
    if (!existsSync(log) || statSync(log).size < LARGE) return;
    try {
      checkpoint(file, session);
    } catch (error) {
      faults.of(error);
    }
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

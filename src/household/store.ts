/** A household on disk: one SQLite file. */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { Kysely, SqliteDialect } from 'kysely';
import { migrate } from './migrations.ts';
import { type Store, storeOver } from './store/record-store.ts';
import { HOME, type Tables } from './store/tables.ts';

export type { Store } from './store/record-store.ts';
export { Overtaken, StoreError } from './store-error.ts';

/** A household's store with the file under it. */
export interface FileStore extends Store {
  /** Whether this opening made the file, so that nothing was ever kept here. */
  readonly isNew: boolean;
  readonly db: Kysely<Tables>;
  close(): Promise<void>;
}

/**
 * Opens the household file, makes it when it is not there, and brings it to the newest shape.
 * The caller owns the store and closes it.
 * @throws Error when the file is no household file or comes from a newer Pouchful
 */
export function openStore(path: string): FileStore {
  const { file, isNew } = openFile(path);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: file }) });
  return { ...storeOver({ db, household: HOME }), isNew, db, close: () => db.destroy() };
}

function openFile(path: string): { file: Database.Database; isNew: boolean } {
  mkdirSync(dirname(path), { recursive: true });
  const file = new Database(path);
  try {
    file.pragma('journal_mode = WAL');
    file.pragma('synchronous = FULL');
    file.pragma('foreign_keys = ON');
    file.pragma('busy_timeout = 5000');
    return { file, isNew: migrate(file) === 0 };
  } catch (error) {
    file.close();
    if ((error as { code?: string }).code !== 'SQLITE_NOTADB') throw error;
    throw new Error(`${path} is no household file; move it away or name another file with --data`);
  }
}

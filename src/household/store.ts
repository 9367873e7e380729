/** A household on disk: one SQLite file. */
import { Kysely, SqliteDialect } from 'kysely';
import { forKysely } from './file/for-kysely.ts';
import { type OpenedFile, openFile } from './file/open-file.ts';
import { type Store, type StoreOptions, storeOver } from './store/record-store.ts';
import { HOME, type Tables } from './store/tables.ts';
import { turns } from './store/turns.ts';

export type { PageText } from './store/pages.ts';
export type { Store, StoreOptions } from './store/record-store.ts';
export { Overtaken, StoreError } from './store-error.ts';

/** A household's store with the file under it. */
export interface FileStore extends Store {
  /** Whether this opening made the file, so that nothing was ever kept here. */
  readonly isNew: boolean;
  readonly opened: OpenedFile;
  readonly db: Kysely<Tables>;
  close(): Promise<void>;
}

/**
 * Opens the household file, makes it when it is not there, and brings it to the newest shape.
 * The caller owns the store and closes it.
 * @throws OpeningError when it is not to be opened
 */
export function openStore(path: string, options?: StoreOptions): FileStore {
  const opened = openFile(path);
  const db = new Kysely<Tables>({ dialect: new SqliteDialect({ database: forKysely(opened.file) }) });
  // Another one where another connection wrote to the file since, and at no write of this one.
  const version = opened.file.prepare<[], number>('PRAGMA data_version').pluck();
  const outside = () => version.get() as number;
  return {
    ...storeOver({
      ...{ db, household: HOME, outside, inTurn: turns(), options },
      fault: (error) => opened.fault(error) ?? error,
    }),
    isNew: opened.isNew,
    opened,
    db,
    close: async () => {
      opened.close();
      await db.destroy();
    },
  };
}

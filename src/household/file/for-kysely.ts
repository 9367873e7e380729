/** A database as Kysely is given it. */
import type Database from 'better-sqlite3';
import type { SqliteDatabase, SqliteStatement } from 'kysely';
import { words } from '../../words/words.ts';
import { StoreError } from '../store-error.ts';
import { inodeOf } from './side-files.ts';

/** Statements that are kept ready: to prepare one costs more than most take. The store has fewer. */
const MOST_READY = 500;

const NOTHING: SqliteStatement = {
  reader: false,
  all: () => [],
  run: () => ({ changes: 0, lastInsertRowid: 0 }),
  iterate: () => [][Symbol.iterator](),
};

/**
 * Before each transaction it is looked whether the file still lies where it was opened: writes to one that was moved,
 * deleted or replaced would be acknowledged and then be nowhere.
 * Where SQLite cannot go on (a full disk, a failing one) it takes the transaction back by itself. Kysely asks for that
 * once more; the error of this second time would hide the first.
 */
export function forKysely(file: Database.Database): SqliteDatabase {
  const inode = inodeOf(file.name);
  const ready = new Map<string, SqliteStatement>();
  function prepared(sql: string): SqliteStatement {
    const known = ready.get(sql);
    if (known) return known;
    const statement = file.prepare(sql) as SqliteStatement;
    if (ready.size >= MOST_READY) ready.clear();
    ready.set(sql, statement);
    return statement;
  }
  return {
    close: () => file.close(),
    prepare(sql) {
      const word = sql.trim().toLowerCase();
      if (word === 'rollback' && !file.inTransaction) return NOTHING;
      if (word === 'begin' && inodeOf(file.name) !== inode) throw gone(file.name);
      return prepared(sql);
    },
  };
}

function gone(path: string): StoreError {
  return new StoreError('read-only', '', words().household.file.gone(path));
}

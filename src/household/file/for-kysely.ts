/** A database as Kysely is given it. */
import type Database from 'better-sqlite3';
import type { SqliteDatabase, SqliteStatement } from 'kysely';

const NOTHING: SqliteStatement = {
  reader: false,
  all: () => [],
  run: () => ({ changes: 0, lastInsertRowid: 0 }),
  iterate: () => [][Symbol.iterator](),
};

/**
 * Where SQLite cannot go on (a full disk, a failing one) it takes the transaction back by itself. Kysely asks for that
 * once more; the error of this second time would hide the first.
 */
export function forKysely(file: Database.Database): SqliteDatabase {
  return {
    close: () => file.close(),
    prepare: (sql) =>
      isRollback(sql) && !file.inTransaction ? NOTHING : (file.prepare(sql) as SqliteStatement),
  };
}

const isRollback = (sql: string) => sql.trim().toLowerCase() === 'rollback';

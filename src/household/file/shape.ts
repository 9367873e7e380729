/** Whether a database has our tables. */
import Database from 'better-sqlite3';
import { migrate } from '../migrations.ts';

/** Names of the tables, each with its columns, in the order of the alphabet. */
export function tablesOf(db: Database.Database): Map<string, readonly string[]> {
  const rows = db
    .prepare(
      `SELECT t.name AS name, c.name AS field FROM sqlite_schema t, pragma_table_info(t.name) c
       WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY t.name, c.cid`,
    )
    .all() as { name: string; field: string }[];
  const tables = new Map<string, string[]>();
  for (const { name, field } of rows) tables.set(name, [...(tables.get(name) ?? []), field]);
  return tables;
}

/** The tables that a file of this step has. */
export function tablesAtStep(step: number): Map<string, readonly string[]> {
  const db = new Database(':memory:');
  try {
    migrate(db, step);
    return tablesOf(db);
  } finally {
    db.close();
  }
}

/** Whether both have the same tables with the same columns. */
export function sameTables(
  a: ReadonlyMap<string, readonly string[]>,
  b: ReadonlyMap<string, readonly string[]>,
): boolean {
  return JSON.stringify([...a]) === JSON.stringify([...b]);
}

/** Whether all tables asked for are there, with the same columns. */
export function hasTables(
  tables: ReadonlyMap<string, readonly string[]>,
  asked: ReadonlyMap<string, readonly string[]>,
): boolean {
  return [...asked].every(([name, fields]) => tables.get(name)?.join() === fields.join());
}

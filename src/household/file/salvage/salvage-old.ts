/** Saves what SQLite can still read of a damaged household of an older shape, row by row, and brings it up. */
import { rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { migrate, SCHEMA_VERSION } from '../../migrations.ts';
import { bytesWithLog, openBytes } from '../image.ts';
import { tablesAtStep } from '../shape.ts';
import { APPLICATION_ID } from '../side-files.ts';

type Row = readonly unknown[];

/** @returns whether a new file with at least one row was written */
export function salvageOld(from: string, to: string): boolean {
  let source: Database.Database;
  try {
    source = openBytes(bytesWithLog(from));
  } catch {
    return false;
  }
  rmSync(to, { force: true });
  const copy = new Database(to);
  try {
    const step = source.pragma('user_version', { simple: true }) as number;
    if (step < 1 || step >= SCHEMA_VERSION) return false;
    migrate(copy, step);
    copy.pragma('foreign_keys = OFF');
    let rows = 0;
    copy.exec('BEGIN');
    for (const [table, fields] of tablesAtStep(step)) {
      const marks = fields.map(() => '?').join(', ');
      const add = copy.prepare(`INSERT OR IGNORE INTO ${table} VALUES (${marks})`);
      // What does not fit its column (text that is no JSON) is left out.
      for (const row of readable(source, table, fields)) rows += attempt(() => add.run(...row).changes) ?? 0;
    }
    copy.exec('COMMIT');
    // Rows that name what was lost would stop the steps to come.
    for (const { table, rowid } of copy.pragma('foreign_key_check') as {
      table: string;
      rowid: number | null;
    }[])
      if (rowid !== null) copy.prepare(`DELETE FROM ${table} WHERE rowid = ?`).run(rowid);
    migrate(copy);
    copy.pragma(`application_id = ${APPLICATION_ID}`);
    return rows > 0;
  } catch {
    return false;
  } finally {
    copy.close();
    source.close();
  }
}

/** Rows of a table that can be read: from its beginning and from its end, each as far as SQLite comes. */
function readable(db: Database.Database, table: string, fields: readonly string[]): Row[] {
  const found = new Map<unknown, Row>();
  const key = hasRowid(db, table) ? 'rowid' : fields.slice(0, 2).join(" || ' ' || ");
  for (const order of ['ASC', 'DESC']) {
    attempt(() => {
      const by = key === 'rowid' ? `ORDER BY rowid ${order}` : '';
      const rows = db.prepare(`SELECT ${key}, ${fields.join(', ')} FROM ${table} ${by}`).raw();
      for (const [id, ...row] of rows.iterate() as IterableIterator<unknown[]>) found.set(id, row);
    });
  }
  return [...found].sort(([a], [b]) => Number(a) - Number(b)).map(([, row]) => row);
}

function hasRowid(db: Database.Database, table: string): boolean {
  return attempt(() => db.prepare(`SELECT rowid FROM ${table} LIMIT 1`).get() !== null) ?? false;
}

function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

/** Saves what can be read of a damaged household: every row of every page that is whole, into a new file. */
import { randomUUID } from 'node:crypto';
import { existsSync, readFileSync, rmSync, statSync } from 'node:fs';
import Database from 'better-sqlite3';
import { migrate } from '../../migrations.ts';
import { HOME } from '../../store/tables.ts';
import { APPLICATION_ID, WAL } from '../side-files.ts';
import { type Row, rowsOn } from './cells.ts';
import { TABLES, type TableName, tableOf } from './kept-rows.ts';
import { type Pages, pagesOf } from './pages.ts';
import { salvageOld } from './salvage-old.ts';

export interface Salvaged {
  /** Records that are there, deleted ones left out, by kind. */
  readonly records: Readonly<Record<string, number>>;
  /** Lines of the history. */
  readonly changes: number;
  /** Records that the history names and of which nothing could be read: "kind id". */
  readonly lost: readonly string[];
}

/** Every row that can be read, by its table. */
export function readableRows(pages: Pages): Map<TableName, Row[]> {
  const found = new Map<TableName, Row[]>();
  for (let number = 1; number <= pages.count; number++) {
    for (const row of rowsOn(pages, number)) {
      const table = tableOf(row.values);
      if (!table) continue;
      const rows = found.get(table) ?? [];
      rows.push(row);
      found.set(table, rows);
    }
  }
  return found;
}

/** A file of another program can be of any size; none of ours is larger, in bytes. */
const LARGEST = 1e9;

/** Whether records of a household can be read in a file, whatever its header says. */
export function holdsRecords(path: string): boolean {
  const stats = statSync(path, { throwIfNoEntry: false });
  if (!stats?.isFile() || stats.size > LARGEST) return false;
  return readableRows(pagesAt(path)).has('records');
}

/** The pages of a file and of the log beside it. */
export function pagesAt(path: string): Pages {
  return pagesOf(readFileSync(path), existsSync(path + WAL) ? readFileSync(path + WAL) : undefined);
}

/**
 * Writes what can be read of a damaged file into a new one.
 * @param to path of the new file; one that lies there is replaced
 * @returns undefined where nothing could be read, and then there is no new file
 */
export function salvage(from: string, to: string): Salvaged | undefined {
  const found = readableRows(pagesAt(from));
  const records = newest(found.get('records') ?? [], ([, kind, id]) => `${kind} ${id}`, 4);
  if (records.length === 0) return salvageOld(from, to) ? countsOf(to) : undefined;
  const changes = newest(found.get('changes') ?? [], ([, seq]) => `${seq}`, 1);
  const writes = newest(found.get('writes') ?? [], ([, id]) => `${id}`, undefined);
  const devices = newest(found.get('devices') ?? [], ([, id]) => `${id}`, undefined);
  const numbers = [...records.map(([, , , , n]) => n), ...changes.map(([, n]) => n)];
  const seq = numbers.reduce<number>((most, n) => Math.max(most, n as number), 0);
  rmSync(to, { force: true });
  const db = new Database(to);
  try {
    migrate(db);
    db.pragma(`application_id = ${APPLICATION_ID}`);
    db.transaction(() => {
      // Numbers that pages have seen mean nothing in the new file.
      db.prepare('UPDATE households SET epoch = ?, seq = ? WHERE id = ?').run(randomUUID(), seq, HOME);
      for (const [table, rows] of Object.entries({ records, changes, writes, devices })) {
        const fields = Object.keys(TABLES[table as TableName]);
        const add = db.prepare(`INSERT OR IGNORE INTO ${table} VALUES (${fields.map(() => '?').join(', ')})`);
        for (const [, ...values] of rows) add.run(HOME, ...values);
      }
    })();
    db.exec('VACUUM');
  } finally {
    db.close();
  }
  const there = new Set(records.map(([, kind, id]) => `${kind} ${id}`));
  const named = new Set(changes.map(([, , kind, id]) => `${kind} ${id}`));
  const count: Record<string, number> = {};
  for (const [, kind, , , , , body] of records)
    if (body !== null) count[String(kind)] = (count[String(kind)] ?? 0) + 1;
  return { records: count, changes: changes.length, lost: [...named].filter((n) => !there.has(n)) };
}

/** What a new file holds that was saved from an older shape, which had no history. */
function countsOf(path: string): Salvaged {
  const db = new Database(path, { readonly: true });
  try {
    const rows = db.prepare('SELECT kind, count(*) FROM records GROUP BY kind').raw().all() as [
      string,
      number,
    ][];
    return { records: Object.fromEntries(rows), changes: 0, lost: [] };
  } finally {
    db.close();
  }
}

/**
 * One row for each key: the one whose number in a column is the highest, else the last.
 * @param by place of the column
 */
function newest(
  rows: readonly Row[],
  keyOf: (values: Row['values']) => string,
  by: number | undefined,
): Row['values'][] {
  const kept = new Map<string, Row['values']>();
  for (const { values } of rows) {
    const there = kept.get(keyOf(values));
    const older = there && by !== undefined && (there[by] as number) > (values[by] as number);
    if (!older) kept.set(keyOf(values), values);
  }
  return [...kept.values()];
}

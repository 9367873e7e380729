/** Puts the content of a backup in the place of the household's, in one transaction. */
import { copyFileSync, rmSync } from 'node:fs';
import type Database from 'better-sqlite3';
import SqliteFile from 'better-sqlite3';
import { tablesOf } from '../file/shape.ts';
import { JOURNAL, SHM, WAL } from '../file/side-files.ts';
import { migrate } from '../migrations.ts';

/** Who may come in is as it is now: a device that was sent away does not come back with an old state. */
const STAYS = ['devices'];

/**
 * All open pages find out by the household's new `epoch`. The file itself, its log and its lock stay as they are, so a
 * process that ends halfway leaves the household as it was.
 * @param from path of a checked backup, of this shape or an older one
 * @param epoch a new random id
 */
export async function copyBack(file: Database.Database, from: string, epoch: string): Promise<void> {
  const copy = `${file.name}.going-back`;
  clear(copy);
  try {
    copyFileSync(from, copy);
    bringUp(copy);
    await resting(file);
    file.prepare('ATTACH ? AS past').run(copy);
    try {
      // Devices stay while the household's row goes and comes: nothing may go along with it.
      file.pragma('foreign_keys = OFF');
      file.transaction(() => replaceAll(file, epoch)).immediate();
    } finally {
      file.pragma('foreign_keys = ON');
      file.exec('DETACH past');
    }
  } finally {
    clear(copy);
  }
}

function replaceAll(file: Database.Database, epoch: string): void {
  const tables = [...tablesOf(file)].filter(([name]) => !STAYS.includes(name));
  for (const [name] of tables) file.exec(`DELETE FROM main."${name}"`);
  for (const [name, fields] of tables) {
    const list = fields.map((f) => `"${f}"`).join(', ');
    const rowid = hasRowid(file, name) ? 'rowid, ' : '';
    file.exec(
      `INSERT INTO main."${name}" (${rowid}${list}) SELECT ${rowid}${list} FROM past."${name}" ORDER BY ${rowid ? 'rowid' : 1}`,
    );
  }
  file.prepare('UPDATE main.households SET epoch = ?').run(epoch);
  if ((file.pragma('main.foreign_key_check') as unknown[]).length > 0) {
    throw new Error('rows of the backup name rows that are not there');
  }
}

/** Lists stand in the order of their rows, which therefore keep their numbers. */
function hasRowid(file: Database.Database, table: string): boolean {
  const row = file.prepare('SELECT wr FROM pragma_table_list WHERE schema = ? AND name = ?').pluck();
  return row.get('main', table) === 0;
}

function bringUp(copy: string): void {
  const db = new SqliteFile(copy);
  try {
    migrate(db);
  } finally {
    db.close();
  }
}

/** Waits until no other work has a transaction open on the connection: it must not become a part of that. */
async function resting(file: Database.Database): Promise<void> {
  while (file.inTransaction) await new Promise((done) => setImmediate(done));
}

function clear(copy: string): void {
  for (const end of ['', WAL, SHM, JOURNAL]) rmSync(copy + end, { force: true });
}

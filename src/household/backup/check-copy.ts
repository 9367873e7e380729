/** Opens a copy of a household and looks whether all of it can be read. Writes nothing. */
import { readFileSync } from 'node:fs';
import type Database from 'better-sqlite3';
import { openBytes } from '../file/image.ts';
import { stepOf } from '../file/look.ts';
import { type Contents, contentsOf } from './contents.ts';

/**
 * @returns what it holds
 * @throws Error with what is wrong with it
 */
export function checkCopy(path: string): Contents {
  const db = openBytes(readFileSync(path));
  try {
    stepOf(db, path);
    const contents = contentsOf(db);
    if (contents.tables.has('records')) parseRecords(db, path);
    return contents;
  } finally {
    db.close();
  }
}

function parseRecords(db: Database.Database, path: string): void {
  const bad = db
    .prepare('SELECT count(*) FROM records WHERE body IS NOT NULL AND NOT json_valid(body)')
    .pluck()
    .get() as number;
  if (bad > 0) throw new Error(`${path} has ${bad} ${bad === 1 ? 'record' : 'records'} that cannot be read`);
}

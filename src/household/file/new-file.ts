/** Makes a household's file where there is none. */
import { rmSync } from 'node:fs';
import Database from 'better-sqlite3';
import { migrate } from '../migrations.ts';
import { APPLICATION_ID, giveName, JOURNAL, newPath, SHM, WAL } from './side-files.ts';

/**
 * Makes an empty household of the newest shape. It gets its name when it is whole, so that a half-made one is never
 * taken for a household, and takes no other file's name.
 */
export function makeNewFile(path: string): void {
  const half = newPath(path);
  for (const end of ['', WAL, SHM, JOURNAL]) rmSync(half + end, { force: true });
  const db = new Database(half);
  try {
    db.pragma('synchronous = FULL');
    migrate(db);
    db.pragma(`application_id = ${APPLICATION_ID}`);
    // Lets go of the room that tables of earlier steps had.
    db.exec('VACUUM');
  } finally {
    db.close();
  }
  giveName(half, path);
}

/** Brings a file of an older shape to the newest, after a copy of it was made and checked. */
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import { backupName } from '../backup/backup-name.ts';
import { checkCopy } from '../backup/check-copy.ts';
import { contentsOf, sameContents } from '../backup/contents.ts';
import { migrate, SCHEMA_VERSION } from '../migrations.ts';
import { withoutLog } from './image.ts';
import { OpeningError } from './opening-error.ts';
import { APPLICATION_ID, backupFolder, stemOf, writeWhole } from './side-files.ts';

/**
 * Takes all steps that are missing, in one transaction; a file that has them all is left alone.
 * @param from the step it stands at
 * @param at ISO 8601 time, UTC, for the name of the copy
 * @returns path of the copy; undefined where none was needed
 * @throws OpeningError when the copy cannot be made or is not whole; the file is as it was
 */
export function upgrade(file: Database.Database, from: number, at: string): string | undefined {
  const marked = file.pragma('application_id', { simple: true }) === APPLICATION_ID;
  if (from === SCHEMA_VERSION && marked) return undefined;
  const copy = from < SCHEMA_VERSION ? copyOrRefuse(file, from, at) : undefined;
  // The mark goes with the shape: a file of the newest shape without it would be taken for another program's.
  file
    .transaction(() => {
      migrate(file);
      file.pragma(`application_id = ${APPLICATION_ID}`);
    })
    .immediate();
  return copy;
}

function copyOrRefuse(file: Database.Database, from: number, at: string): string {
  try {
    return keepCopy(file, from, at);
  } catch (error) {
    throw new OpeningError(
      'disk',
      file.name,
      `${file.name} is to be brought to a newer shape, but no sound copy of it could be kept first (${(error as Error).message}); ` +
        `nothing was changed. Make room in ${backupFolder(file.name)}, then start again`,
    );
  }
}

/** The whole file with its log, as SQLite reads it in one moment, under a name that says what it is. */
function keepCopy(file: Database.Database, from: number, at: string): string {
  const folder = backupFolder(file.name);
  mkdirSync(folder, { recursive: true });
  const why = `before-upgrade-${from}-${SCHEMA_VERSION}` as const;
  const copy = join(folder, backupName({ stem: stemOf(file.name), at, why }));
  writeWhole(copy, withoutLog(file.serialize()));
  if (!sameContents(checkCopy(copy), contentsOf(file))) {
    throw new Error(`${copy} does not hold what the household holds`);
  }
  return copy;
}

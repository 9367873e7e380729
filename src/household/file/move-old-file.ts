/** Brings a household from the program's folder, where it used to lie, to the user's own folder. */
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { checkCopy } from '../backup/check-copy.ts';
import { takeFile } from './lock.ts';
import { firstSight, lookThrough } from './look.ts';
import { giveName, SHM, syncWhole, WAL } from './side-files.ts';

const MOVED = '.moved';

/**
 * Moves it by a copy that was checked; the old file stays, under another name, with a note beside it.
 * @returns what to tell on the terminal; undefined where nothing lay there
 * @throws OpeningError when the old file is in use or not to be opened; then nothing was changed
 */
export async function moveOldFile(old: string, to: string): Promise<string | undefined> {
  if (!existsSync(old) || old === to) return undefined;
  if (existsSync(to)) {
    return `Another household lies at ${old}; it is not used. To use it, start with --data ${old}`;
  }
  // Looked at first, so that a file that is none is told of and left alone.
  firstSight(old);
  lookThrough(old);
  const giveBack = takeFile(old);
  try {
    mkdirSync(dirname(to), { recursive: true });
    const coming = `${to}.coming`;
    rmSync(coming, { force: true });
    await copyWhole(old, coming);
    checkCopy(coming);
    giveName(coming, to);
    for (const end of ['', WAL, SHM]) if (existsSync(old + end)) renameSync(old + end, old + MOVED + end);
    writeFileSync(
      `${old}${MOVED}.txt`,
      `The household that lay here was moved to\n${to}\nThe file "household.sqlite${MOVED}" is a copy of it as it was then. It is no longer used.\n`,
    );
    return `The household was moved out of the program's folder to ${to}; a copy stays at ${old}${MOVED}`;
  } finally {
    giveBack();
  }
}

async function copyWhole(from: string, to: string): Promise<void> {
  const source = new Database(from, { readonly: true });
  try {
    await source.backup(to);
  } finally {
    source.close();
  }
  const copy = new Database(to);
  try {
    copy.pragma('journal_mode = DELETE');
  } finally {
    copy.close();
  }
  syncWhole(to);
}

/**
 * One server a file. The lock is SQLite's own, on a small file beside the household that stays empty: the operating
 * system frees it when the process ends, however it ends, so no lock is ever left behind.
 */
import Database from 'better-sqlite3';
import { OpeningError } from './opening-error.ts';
import { addressOf } from './session.ts';
import { lockPath } from './side-files.ts';

/**
 * Takes the file for this process.
 * @param path the file, links followed
 * @returns gives it back
 * @throws OpeningError when another server has it
 */
export function takeFile(path: string): () => void {
  const lock = new Database(lockPath(path), { timeout: 0 });
  try {
    lock.pragma('journal_mode = MEMORY');
    lock.exec('BEGIN EXCLUSIVE');
  } catch (error) {
    lock.close();
    if (!(error as { code?: string }).code?.startsWith('SQLITE_BUSY')) throw error;
    const address = addressOf(path);
    throw new OpeningError(
      'in-use',
      path,
      `Pouchful already has ${path} open${address ? `: it is at ${address}` : ''}. Use that one, or stop it first`,
    );
  }
  return () => lock.close();
}

/** Why a household's file is not opened. Nothing was written to it. */

/**
 * - `foreign`: another program's database, or no database at all; also a folder
 * - `empty`: no bytes or no tables
 * - `gone`: no file, but traces of one: a write-ahead log or backups
 * - `newer`: written by a newer Pouchful
 * - `damaged`: ours, and SQLite finds it broken
 * - `stray log`: the write-ahead log beside it was not written over this file
 * - `put back`: the file was put there while the log of the same state, gone on, lay beside it
 * - `in use`: another server has it
 * - `disk`: file or folder cannot be read or written
 */
export type OpeningReason =
  | 'foreign'
  | 'empty'
  | 'gone'
  | 'newer'
  | 'damaged'
  | 'stray log'
  | 'put back'
  | 'in-use'
  | 'disk';

export class OpeningError extends Error {
  readonly reason: OpeningReason;
  /** The file, links followed. */
  readonly path: string;
  /** What SQLite found, line by line, where the file is damaged. */
  readonly findings: readonly string[];
  constructor(reason: OpeningReason, path: string, message: string, findings: readonly string[] = []) {
    super(message);
    this.name = 'OpeningError';
    this.reason = reason;
    this.path = path;
    this.findings = findings;
  }
}

/** What goes wrong with the file while it is open, in words, and what follows for later writes. */
import type Database from 'better-sqlite3';
import { words } from '../../words/words.ts';
import { StoreError } from '../store-error.ts';

/** How long a write waits for another program at first, and while one is known to hold the file, in ms. */
const PATIENCE = 1000;
const PATIENCE_WHILE_HELD = 50;
/** How long another program that was met is taken to hold the file still, in ms. */
const HELD_FOR = 5000;

type FaultKind = Extract<StoreError['kind'], 'busy' | 'full' | 'read-only' | 'damaged'>;

/** The faults of one open file. */
export class FileFaults {
  readonly #file: Database.Database;
  #damaged = false;
  #patient: NodeJS.Timeout | undefined;

  constructor(file: Database.Database) {
    this.#file = file;
    file.pragma(`busy_timeout = ${PATIENCE}`);
  }

  /** Whether damage was met since the file was opened. */
  get damaged(): boolean {
    return this.#damaged;
  }

  /**
   * An error of SQLite as what the household says of it; undefined where the file is not at fault.
   * Once damage was met, nothing more is written to the file.
   */
  of(error: unknown): StoreError | undefined {
    const kind = kindOf(error);
    if (kind === undefined) return undefined;
    if (kind === 'damaged') this.#stopWriting();
    if (kind === 'busy') this.#waitLess();
    const told = this.#damaged ? 'damaged' : kind;
    return new StoreError(told, '', words().household.file[told](this.#file.name), { cause: error });
  }

  end(): void {
    clearTimeout(this.#patient);
  }

  #stopWriting(): void {
    if (this.#damaged) return;
    this.#damaged = true;
    this.#file.pragma('query_only = ON');
  }

  /** One wait holds up every other request: while the file is held, the next ones are told at once. */
  #waitLess(): void {
    clearTimeout(this.#patient);
    this.#file.pragma(`busy_timeout = ${PATIENCE_WHILE_HELD}`);
    this.#patient = setTimeout(() => {
      if (this.#file.open) this.#file.pragma(`busy_timeout = ${PATIENCE}`);
    }, HELD_FOR);
    this.#patient.unref();
  }
}

function kindOf(error: unknown): FaultKind | undefined {
  const code = (error as { code?: unknown } | null)?.code;
  if (typeof code !== 'string') return undefined;
  // Of the system itself, where a copy is made beside the file.
  if (code === 'ENOSPC' || code === 'EDQUOT') return 'full';
  if (['EROFS', 'EACCES', 'EPERM', 'EIO'].includes(code)) return 'read-only';
  // Extended codes begin with the name of their group: SQLITE_IOERR_WRITE, SQLITE_CORRUPT_INDEX.
  const is = (group: string) => code === group || code.startsWith(`${group}_`);
  if (is('SQLITE_BUSY') || is('SQLITE_LOCKED') || is('SQLITE_PROTOCOL')) return 'busy';
  if (is('SQLITE_FULL')) return 'full';
  if (is('SQLITE_CORRUPT') || is('SQLITE_NOTADB')) return 'damaged';
  if (is('SQLITE_READONLY') || is('SQLITE_CANTOPEN') || is('SQLITE_IOERR') || is('SQLITE_PERM'))
    return 'read-only';
  return undefined;
}

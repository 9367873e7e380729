/** The backups of an open household: made by themselves and on a press, kept in rotation, and gone back to. */
import { randomUUID } from 'node:crypto';
import { existsSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { words } from '../../words/words.ts';
import type { OpenedFile } from '../file/open-file.ts';
import { OpeningError } from '../file/opening-error.ts';
import { backupFolder, stemOf } from '../file/side-files.ts';
import { StoreError } from '../store-error.ts';
import { backupName, type NamedBackup, readBackupName, type Why } from './backup-name.ts';
import { checkCopy } from './check-copy.ts';
import { type Contents, lastChange } from './contents.ts';
import { copyBack } from './go-back.ts';
import { makeBackup } from './make-backup.ts';
import { outlived } from './rotation.ts';

/** A backup that lies there. */
export interface KeptBackup extends NamedBackup {
  readonly name: string;
  /** Bytes. */
  readonly size: number;
}

/** The last time that a backup could not be made. */
export interface BackupFault {
  /** ISO 8601 time, UTC. */
  readonly at: string;
  readonly message: string;
}

export interface BackupsOptions {
  readonly opened: Pick<OpenedFile, 'file' | 'path' | 'fault'>;
  readonly clock: () => Date;
  /** Told of what goes wrong while nobody asks: a line for the terminal. */
  readonly tell: (line: string) => void;
  /** Called when an older state was put back. */
  readonly onGoneBack: () => void | Promise<void>;
  /** What a backup that is made by itself waits for: to look whether it is whole holds up who asks for anything meanwhile. */
  readonly quiet?: () => Promise<void>;
}

/** One is made by itself when the last is this old, in ms, and something changed since. */
const OLD = 3_600_000;

/** The backups of a household's file that lie beside it, newest first. */
export function backupsOf(path: string): KeptBackup[] {
  const folder = backupFolder(path);
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .flatMap((name) => {
      const read = readBackupName(name);
      return read?.stem === stemOf(path) ? [{ ...read, name, size: statSync(join(folder, name)).size }] : [];
    })
    .sort((a, b) => (a.at < b.at ? 1 : -1));
}

export class Backups {
  readonly #options: BackupsOptions;
  /** One thing at a time: a backup is not made while an older state is put back. */
  #busy: Promise<unknown> = Promise.resolve();
  /** What is made by itself waits for quiet before it is its turn: who presses does not wait along. */
  #waiting: Promise<void> = Promise.resolve();
  #fault: BackupFault | undefined;
  /** State of the household that the newest backup has; undefined until one was looked at. */
  #saved: string | undefined;

  constructor(options: BackupsOptions) {
    this.#options = options;
  }

  get folder(): string {
    return backupFolder(this.#options.opened.path);
  }

  /** Newest first. */
  list(): KeptBackup[] {
    return backupsOf(this.#options.opened.path);
  }

  /** Why the last backup that was due was not made; undefined when it was. */
  get fault(): BackupFault | undefined {
    return this.#fault;
  }

  /** Where a backup lies. @throws StoreError when there is none of that name */
  pathOf(name: string): string {
    if (this.list().some((b) => b.name === name)) return join(this.folder, name);
    throw new StoreError('missing', '/name', words().household.backup.none(name));
  }

  /** Makes one now. @throws StoreError when it cannot be made */
  saveNow(why: Why = 'pressed'): Promise<KeptBackup> {
    return this.#inTurn(() => this.#make(why));
  }

  /** Makes one where the last is old and something changed since; what goes wrong is told and kept. */
  saveWhereDue(): Promise<void> {
    this.#waiting = this.#saveWhereDue();
    return this.#waiting;
  }

  async #saveWhereDue(): Promise<void> {
    await this.#options.quiet?.();
    await this.#inTurn(async () => {
      try {
        if (this.#isDue()) await this.#make('auto');
      } catch (error) {
        this.#failed(error);
      }
    });
  }

  /**
   * Puts the state of a backup in the place of the present one, which is kept as a backup first.
   * @returns the backup of what stood there
   * @throws StoreError when there is no such backup, it is not whole, or what stands there cannot be kept first
   */
  goBack(name: string): Promise<KeptBackup> {
    return this.#inTurn(async () => {
      const from = this.pathOf(name);
      try {
        checkCopy(from);
      } catch (error) {
        throw new StoreError('invalid', '/name', words().household.backup.notWhole((error as Error).message));
      }
      const before = await this.#make('before-going-back');
      const { file, fault } = this.#options.opened;
      try {
        await copyBack(file, from, randomUUID());
      } catch (error) {
        throw fault(error) ?? error;
      }
      this.#saved = undefined;
      await this.#options.onGoneBack();
      return before;
    });
  }

  /** Resolves when what was begun has ended. */
  async settled(): Promise<void> {
    await this.#waiting;
    await this.#busy;
  }

  #isDue(): boolean {
    const [newest] = this.list();
    if (!newest) return true;
    const age = this.#options.clock().getTime() - Date.parse(newest.at);
    // A clock that was set back must not stop backups until it has caught up.
    if (age >= 0 && age < OLD) return false;
    return this.#change() !== this.#changeIn(newest);
  }

  /** @throws StoreError when it cannot be made; then it is kept why */
  async #make(why: Why): Promise<KeptBackup> {
    const { opened, clock } = this.#options;
    const named = { stem: stemOf(opened.path), at: clock().toISOString(), why };
    const name = backupName(named);
    try {
      const { change } = await makeBackup(opened.path, join(this.folder, name));
      this.#saved = numberOf(change);
    } catch (error) {
      throw this.#failed(error);
    }
    this.#fault = undefined;
    for (const old of outlived(this.list())) rmSync(join(this.folder, old.name), { force: true });
    return { ...named, name, size: statSync(join(this.folder, name)).size };
  }

  /** Tells why no backup was made. */
  #failed(error: unknown): StoreError {
    const told = error instanceof StoreError ? error : this.#told(error);
    if (told.message !== this.#fault?.message) this.#options.tell(told.message);
    this.#fault = { at: this.#options.clock().toISOString(), message: told.message };
    return told;
  }

  /** Why no backup was made, in words. Where the household itself is damaged, nothing more is written to it. */
  #told(error: unknown): StoreError {
    const { fault } = this.#options.opened;
    const damaged = error instanceof OpeningError && error.reason === 'damaged' && this.#isDamaged();
    const known = fault(damaged ? new Database.SqliteError(error.message, 'SQLITE_CORRUPT') : error);
    if (known?.kind === 'damaged') return known;
    const full = (error as NodeJS.ErrnoException).code === 'ENOSPC' || known?.kind === 'full';
    const t = words().household.backup;
    return new StoreError(
      full ? 'full' : 'read-only',
      '',
      full ? t.full(this.folder) : t.failed(this.folder, (error as Error).message),
    );
  }

  /** Looks whether it is the household that is damaged, and not only a copy of it. */
  #isDamaged(): boolean {
    // Pages that the open connection has in memory would hide what lies on the disk.
    const fresh = new Database(this.#options.opened.path, { readonly: true });
    try {
      return fresh.pragma('integrity_check(1)', { simple: true }) !== 'ok';
    } catch {
      return true;
    } finally {
      fresh.close();
    }
  }

  #change(): string | undefined {
    return numberOf(lastChange(this.#options.opened.file));
  }

  #changeIn(newest: KeptBackup): string | undefined {
    if (this.#saved === undefined) {
      try {
        this.#saved = numberOf(checkCopy(join(this.folder, newest.name)).change);
      } catch {
        // Not whole: a new one is due.
      }
    }
    return this.#saved;
  }

  #inTurn<T>(work: () => Promise<T>): Promise<T> {
    const next = this.#busy.then(work);
    this.#busy = next.catch(() => undefined);
    return next;
  }
}

/** One text for a state of the household. */
function numberOf(change: Contents['change']): string | undefined {
  return change && `${change.epoch} ${change.seq}`;
}

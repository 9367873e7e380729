/** The household's backups, asked of the server. */
import { ask } from './ask.ts';

/** How long a copy of a large household and its check may take, ms. */
const FOR_A_COPY = 120_000;

export interface Backup {
  readonly name: string;
  /** ISO 8601 time, UTC. */
  readonly at: string;
  /** `auto`, `pressed`, `before-going-back` or `before-upgrade-FROM-TO`. */
  readonly why: string;
  /** Bytes. */
  readonly size: number;
}

export interface BackupList {
  /** Where they lie; null where none are made here. */
  readonly folder: string | null;
  /** Newest first. */
  readonly backups: readonly Backup[];
  /** Why the last one was not made. */
  readonly fault?: { readonly at: string; readonly message: string };
  readonly kept: { readonly hours: number; readonly days: number; readonly weeks: number };
}

export const fetchBackups = async () => (await ask('/api/backups')) as BackupList;

/** Makes one now; resolves when it is checked. */
export const saveBackup = async () => (await ask('/api/backups', { method: 'POST' }, FOR_A_COPY)) as Backup;

/** Puts the state of a backup in the place of the present one. @returns the backup of what stood there */
export const goBackTo = async ({ name }: Backup) =>
  (await ask(`${addressOf(name)}/go-back`, { method: 'POST' }, FOR_A_COPY)) as { before: Backup };

/** Where a backup is had as one file. */
export const addressOf = (name: string) => `/api/backups/${encodeURIComponent(name)}`;

/** The household's backups, asked of the server. */
import { ApiError } from './api-error.ts';

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

export const fetchBackups = (): Promise<BackupList> => ask<BackupList>('/api/backups');

/** Makes one now; resolves when it is checked. */
export const saveBackup = (): Promise<Backup> => ask<Backup>('/api/backups', 'POST');

/** Puts the state of a backup in the place of the present one. @returns the backup of what stood there */
export const goBackTo = ({ name }: Backup): Promise<{ before: Backup }> =>
  ask<{ before: Backup }>(`${addressOf(name)}/go-back`, 'POST');

/** Where a backup is had as one file. */
export const addressOf = (name: string) => `/api/backups/${encodeURIComponent(name)}`;

/** @throws ApiError */
async function ask<T>(path: string, method = 'GET'): Promise<T> {
  let response: Response;
  try {
    response = await fetch(path, { method });
  } catch {
    throw new ApiError(0, 'The Pouchful server does not answer. Is it still running?');
  }
  const body = (await response.json().catch(() => ({}))) as T & { message?: string };
  if (response.ok) return body;
  throw new ApiError(response.status, body.message ?? `The server answered ${response.status}.`);
}

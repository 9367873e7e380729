/** What the keeper of a page takes, gives and tells. */

import type { Household, Kept, Kind } from '../../../household/model.ts';
import type { KeptRecord, Written } from '../../../household/records.ts';
import type { DeviceStorage } from '../../shared/device-storage.ts';
import type { Change } from './change.ts';
import type { Page } from './whole-household.ts';

/** What became of a change: the server has it, it waits on this device, or it was refused and taken back. */
export type Outcome =
  | { readonly is: 'made' }
  | { readonly is: 'waiting' }
  | { readonly is: 'refused'; readonly error: Error };

/** A change that was refused when nobody waited for its outcome any more; told until the keeper has read of it. */
export interface Refusal {
  readonly change: Change;
  readonly message: string;
  /** JSON pointer to what was refused of it; absent for the whole. */
  readonly field?: string;
  /** Something else of the same record was kept since. */
  readonly isPast?: true;
}

/** What a page shows of all this. Parts that did not change are the same objects as before. */
export interface KeeperView {
  /** Absent until the server first gave it; a list that has not come yet throws, to who reads it, what to wait for. */
  readonly household: Household | undefined;
  /** Whether all of it is here. */
  readonly isWhole: boolean;
  /** Why it, or a list of it, could not be had, while it is not whole. */
  readonly fault: Error | undefined;
  readonly unreadable: readonly KeptRecord[];
  /** Everything that the server does not have yet. */
  readonly waiting: readonly Change[];
  /** Whether all of it would outlive this page. */
  readonly onDevice: boolean;
  /** Why nothing can be sent at present, in words; undefined while all goes well. */
  readonly trouble: string | undefined;
  readonly refusals: readonly Refusal[];
}

export interface KeeperParts {
  readonly page: Page;
  /** Makes a change on the server. With `leaving`, by a request that outlives the page. */
  send(change: Change, leaving: boolean): Promise<Written>;
  readonly storage: DeviceStorage;
  /** Id of this page among all of this browser. */
  readonly tab: string;
  newId(): string;
  /** ISO 8601 time. */
  now(): string;
}

export interface WriteOptions<K extends Kind> {
  /** The object as the keeper saw it when they began to change it; null where it is new. */
  readonly base: Kept<K> | null;
  /** Shown only once the server has it; a deletion also where the server does not answer. */
  readonly unseen?: boolean;
  /** One of many small changes that follow each other. */
  readonly joins?: boolean;
}

/** What a page shows before the server first answered. */
export const NOTHING: KeeperView = {
  household: undefined,
  isWhole: false,
  fault: undefined,
  unreadable: [],
  waiting: [],
  onDevice: true,
  trouble: undefined,
  refusals: [],
};

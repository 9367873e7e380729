/** What the server says of a file that is to be brought in, and the page shows. */
import type { Kind } from '../model.ts';

/** How a file is brought in. */
export type ImportMode =
  /** The household holds what the file holds, and nothing else. */
  | 'replace'
  /** What is not there is added, what differs becomes as in the file, the rest stays. */
  | 'update'
  /** What is not there is added, everything else stays. */
  | 'add';

export interface FieldChange {
  /** JSON pointer into the record. */
  readonly field: string;
  /** As short JSON; absent where the field is not there. */
  readonly before?: string;
  readonly after?: string;
}

export interface RecordChange {
  readonly kind: Kind;
  readonly id: string;
  readonly name: string;
  /** "kept": it differs and stays as it is here. */
  readonly what: 'new' | 'different' | 'gone' | 'kept';
  readonly fields?: readonly FieldChange[];
  /** How many more fields differ than are listed. */
  readonly moreFields?: number;
  readonly why?: string;
}

/** What bringing in a household file would do. */
export interface ImportCheck {
  /** Given back with the file, so that what is written is what was shown. */
  readonly token: string;
  readonly counts: Readonly<Record<RecordChange['what'] | 'same', number>>;
  /** The first of the changes; `counts` has all. */
  readonly changes: readonly RecordChange[];
  /** How many records of the file are not taken in, since they were not readable where it was made. */
  readonly leftOut: number;
}

/** A choice of the sender's that another keeper takes over only by saying so. */
export interface TheirChoice {
  readonly id: string;
  readonly words: string;
  /** What counts where it is not taken over. */
  readonly instead: string;
}

/** What bringing in a mix or food of another keeper's would do. */
export interface PartCheck {
  readonly token: string;
  readonly coming: readonly { readonly kind: Kind; readonly id: string; readonly name: string }[];
  /** Names of what is here already, just as it came. */
  readonly same: readonly string[];
  readonly choices: readonly TheirChoice[];
  readonly notes: readonly string[];
}

/** The tables as Kysely sees them, and the text that makes them: the same for SQLite and PostgreSQL. */
import type { Kysely, Transaction } from 'kysely';
import type { Kind } from '../model.ts';

interface HouseholdsTable {
  id: string;
  name: string;
  /** Changes when a backup is put back or everything is brought in anew. */
  epoch: string;
  /** Number of the last change. */
  seq: number;
}

export interface RecordsTable {
  household: string;
  kind: Kind;
  id: string;
  version: number;
  seq: number;
  place: number;
  /** JSON; null once it is deleted. */
  body: string | null;
}

/** A record of a household that is known. */
export type RecordRow = Omit<RecordsTable, 'household'>;

interface ChangesTable {
  household: string;
  seq: number;
  kind: Kind;
  id: string;
  /** The version that the change made. */
  version: number;
  /** JSON of what stood there; null where nothing did. */
  before: string | null;
  at: string;
  device: string;
  /** Changes with the same number were made together. */
  together: number;
}

interface WritesTable {
  household: string;
  write_id: string;
  kind: Kind;
  id: string;
  at: string;
}

interface DevicesTable {
  household: string;
  id: string;
  name: string;
  /** SHA-256 of the token, hexadecimal. */
  token_hash: string;
  created_at: string;
  seen_at: string;
  revoked_at: string | null;
}

interface FoundFitTable {
  household: string;
  part: number;
  /** Mark of the program that found it. */
  program: string;
  sums: string;
}

export interface Tables {
  households: HouseholdsTable;
  records: RecordsTable;
  changes: ChangesTable;
  writes: WritesTable;
  devices: DevicesTable;
  found_fit: FoundFitTable;
}

export type Db = Kysely<Tables>;
export type Tx = Transaction<Tables>;

/** Id of the one household of a file. */
export const HOME = 'home';

/** One statement an entry; SQLite and PostgreSQL both take them. */
export const CREATE_TABLES: readonly string[] = [
  `CREATE TABLE households (
    id TEXT PRIMARY KEY,
    name TEXT NOT NULL,
    epoch TEXT NOT NULL,
    seq INTEGER NOT NULL
  )`,
  `CREATE TABLE records (
    household TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
    kind TEXT NOT NULL,
    id TEXT NOT NULL,
    version INTEGER NOT NULL,
    seq INTEGER NOT NULL,
    place INTEGER NOT NULL,
    body TEXT,
    PRIMARY KEY (household, kind, id)
  )`,
  'CREATE UNIQUE INDEX records_by_seq ON records (household, seq)',
  `CREATE TABLE changes (
    household TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
    seq INTEGER NOT NULL,
    kind TEXT NOT NULL,
    id TEXT NOT NULL,
    version INTEGER NOT NULL,
    before TEXT,
    at TEXT NOT NULL,
    device TEXT NOT NULL,
    together INTEGER NOT NULL,
    PRIMARY KEY (household, seq)
  )`,
  'CREATE INDEX changes_by_record ON changes (household, kind, id, seq)',
  'CREATE INDEX changes_together ON changes (household, together)',
  `CREATE TABLE writes (
    household TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
    write_id TEXT NOT NULL,
    kind TEXT NOT NULL,
    id TEXT NOT NULL,
    at TEXT NOT NULL,
    PRIMARY KEY (household, write_id)
  )`,
  `CREATE TABLE devices (
    household TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
    id TEXT NOT NULL,
    name TEXT NOT NULL,
    token_hash TEXT NOT NULL UNIQUE,
    created_at TEXT NOT NULL,
    seen_at TEXT NOT NULL,
    revoked_at TEXT,
    PRIMARY KEY (household, id)
  )`,
];

/** Indexes that came later: what is deleted now, the changes of one kind, and the records of the sections of `records.ts`. */
export const MORE_INDEXES: readonly string[] = [
  'CREATE INDEX records_deleted ON records (household, seq) WHERE body IS NULL',
  'CREATE INDEX changes_by_kind ON changes (household, kind, seq)',
  'CREATE INDEX records_by_kind ON records (household, kind, seq) WHERE body IS NOT NULL',
  "CREATE INDEX records_rest ON records (household, seq) WHERE kind NOT IN ('feedings', 'weighings')",
];

/** Sums over rows that were found fit to be shown, as `found-fit.ts` has them. */
export const FOUND_FIT: readonly string[] = [
  `CREATE TABLE found_fit (
    household TEXT NOT NULL REFERENCES households (id) ON DELETE CASCADE,
    part INTEGER NOT NULL,
    program TEXT NOT NULL,
    sums TEXT NOT NULL,
    PRIMARY KEY (household, part)
  )`,
];

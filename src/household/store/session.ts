/** Reading and writing of one household inside one transaction. */
import type { Kind } from '../model.ts';
import type { By, KeptRecord } from '../records.ts';
import type { RowReader } from './stored.ts';
import type { RecordsTable, Tx } from './tables.ts';
import type { Tally } from './tally.ts';

/** One transaction of writes to one household. */
export interface Session {
  readonly tx: Tx;
  readonly household: string;
  readonly by: By;
  readonly reader: RowReader;
  /** Number of the first change of this transaction, which all its changes carry. */
  together: number | undefined;
  /** Whether changes may join the line of the history that the same device wrote just before. */
  readonly joins: boolean;
  /**
   * Checks for when everything is written: records written together may name one another. Absent where one is written
   * alone: then each check is made at once.
   */
  readonly atEnd?: (() => Promise<void>)[];
  /** What is known of all records, as they stand this moment. */
  tally(): Promise<Tally>;
  /** What was found out once and holds for the rest of the transaction. */
  readonly known: {
    room?: { readonly of: Map<Kind, number>; bytes: number };
    readonly foods: Map<string, boolean>;
  };
  /**
   * A whole file is brought in, checked as a whole before: what it names may be gone by design, its finished batches are
   * what they are, and nothing goes along that the file does not say.
   */
  readonly anew?: true;
}

/** The row of one record, deleted ones too. */
export async function rowOf(
  { tx, household }: Session,
  kind: Kind,
  id: string,
): Promise<RecordsTable | undefined> {
  return tx
    .selectFrom('records')
    .selectAll()
    .where('household', '=', household)
    .where('kind', '=', kind)
    .where('id', '=', id)
    .executeTakeFirst();
}

/** One record as it stands; version 0 where there never was one. */
export async function recordOf(session: Session, kind: Kind, id: string): Promise<KeptRecord> {
  const row = await rowOf(session, kind, id);
  return row ? session.reader.record(row) : nothing(kind, id);
}

/** A record that never was. */
export function nothing(kind: Kind, id: string): KeptRecord {
  return { kind, id, version: 0, seq: 0, place: 0, body: null };
}

/** Rows of one kind that are there, in their order. */
export async function rowsOf({ tx, household }: Session, kind: Kind): Promise<RecordsTable[]> {
  return tx
    .selectFrom('records')
    .selectAll()
    .where('household', '=', household)
    .where('kind', '=', kind)
    .where('body', 'is not', null)
    .orderBy('place')
    .execute();
}

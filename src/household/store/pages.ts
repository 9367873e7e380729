/** A household in parts, each small enough for one answer. */
import { sql } from 'kysely';
import type { KeptRecord, RecordsPage, Section } from '../records.ts';
import { MOST_RECORD_BYTES } from '../shape/quotas.ts';
import type { RowReader } from './stored.ts';
import type { RecordsTable, Tx } from './tables.ts';

/** An answer stays under 200 kB with one record of the largest size on top. */
const MOST_BYTES = 190_000;
/** What stands around a body in an answer, about. */
const AROUND = 200;
const MOST_RECORDS = 1000;

interface Asked {
  readonly household: string;
  readonly after: number;
  /** Only changes up to this number, and of these only what is there now. */
  readonly upTo?: number | undefined;
  /** Only records of these kinds. */
  readonly of?: Section | undefined;
}

/** What changed after a number, in the order of the changes; after 0 only what is there now. */
export async function readPage(tx: Tx, reader: RowReader, asked: Asked): Promise<RecordsPage> {
  const { rows, ...page } = await rowsOf(tx, asked);
  return { records: rows.map((row) => reader.record(row)).map(short), ...page };
}

/** The same as JSON. What is known to be fit goes out as it is stored: nobody needs it in between. */
export async function readPageText(tx: Tx, reader: RowReader, asked: Asked): Promise<string> {
  const { rows, ...page } = await rowsOf(tx, asked);
  const records = rows.map((row) => textOf(row, reader)).join(',');
  return `{"records":[${records}],${JSON.stringify(page).slice(1)}`;
}

function textOf(row: RecordsTable, reader: RowReader): string {
  if (row.body === null || !reader.isFit(row)) return JSON.stringify(short(reader.record(row)));
  const { kind, id, version, seq, place, body } = row;
  return `{"kind":"${kind}","id":${JSON.stringify(id)},"version":${version},"seq":${seq},"place":${place},"body":${body}}`;
}

async function rowsOf(tx: Tx, { household, after, upTo, of }: Asked) {
  const { seq: newest, epoch } = await tx
    .selectFrom('households')
    .select(['seq', 'epoch'])
    .where('id', '=', household)
    .executeTakeFirstOrThrow();
  let rows = tx
    .selectFrom('records')
    .where('household', '=', household)
    .where('seq', '>', after)
    .orderBy('seq');
  if (upTo !== undefined) rows = rows.where('seq', '<=', upTo);
  // As the index of them says it, or it would not be found.
  if (of === 'rest') rows = rows.where(sql<boolean>`kind NOT IN ('feedings', 'weighings')`);
  else if (of !== undefined) rows = rows.where('kind', '=', of);
  if (after === 0 || upTo !== undefined) rows = rows.where('body', 'is not', null);
  const sizes = await rows
    .select(['seq', sql<number | null>`octet_length(body)`.as('bytes')])
    .limit(MOST_RECORDS + 1)
    .execute();
  let room = MOST_BYTES;
  let last = after;
  let taken = 0;
  for (const { seq, bytes } of sizes) {
    room -= (bytes ?? 0) + AROUND;
    if (taken > 0 && (room < 0 || taken === MOST_RECORDS)) break;
    last = seq;
    taken += 1;
  }
  const more = taken < sizes.length;
  return {
    rows: await rows.selectAll().where('seq', '<=', last).execute(),
    seq: more ? last : Math.min(newest, upTo ?? newest),
    more,
    newest,
    epoch,
  };
}

/** What cannot be read may be of any length: its beginning is enough to tell what it was. */
function short(record: KeptRecord): KeptRecord {
  const { unreadable } = record;
  if (!unreadable || unreadable.raw.length <= MOST_RECORD_BYTES / 6) return record;
  const raw = `${unreadable.raw.slice(0, MOST_RECORD_BYTES / 6)} …`;
  return { ...record, unreadable: { ...unreadable, raw } };
}

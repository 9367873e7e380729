/** A household in parts, each small enough for one answer. */
import { sql } from 'kysely';
import type { KeptRecord, RecordsPage, Section } from '../records.ts';
import { MOST_RECORD_BYTES } from '../shape/quotas.ts';
import type { RowReader } from './stored.ts';
import type { RecordRow, Tx } from './tables.ts';

/** An answer stays under 200 kB with one record of the largest size on top. */
const MOST_BYTES = 190_000;
/** What stands around a body in an answer, at most; and where it is brief, around one that stands as it was made, and others. */
const AROUND = 200;
const BRIEF = { asMade: 50, changed: 80 };
/** Rows read at once: first few, since they may be large, then as many as there is room for. */
const FEW = 200;
const MOST_AT_ONCE = 600;

/** What of a household is asked for. */
export interface Asked {
  readonly after: number;
  /** Only changes up to this number, and of these only what is there now. */
  readonly upTo?: number | undefined;
  /** Only records of these kinds. */
  readonly of?: Section | undefined;
}

/** How it is to be sent. */
export interface Sent {
  /** What follows from the rest of a record is left out, as `SentRecord` says. */
  readonly brief?: boolean;
}

/** What changed after a number, in the order of the changes; after 0 only what is there now. */
export async function readPage(
  tx: Tx,
  household: string,
  reader: RowReader,
  asked: Asked,
): Promise<RecordsPage> {
  const { rows, ...page } = await rowsOf(tx, household, asked, false);
  return { records: rows.map((row) => reader.record(row)).map(short), ...page };
}

/** The same as JSON. What is known to be fit goes out as it is stored: nobody needs it in between. */
export async function readPageText(
  tx: Tx,
  household: string,
  reader: RowReader,
  { brief = false, ...asked }: Asked & Sent,
): Promise<string> {
  const { rows, ...page } = await rowsOf(tx, household, asked, brief);
  const records = rows.map((row) => textOf(row, reader, brief)).join(',');
  return `{"records":[${records}],${JSON.stringify(page).slice(1)}`;
}

function textOf(row: RecordRow, reader: RowReader, brief: boolean): string {
  if (!reader.isFit(row)) {
    const record = reader.record(row);
    if (record.body === null) return JSON.stringify(short(record));
  }
  const { kind, id, version, seq, place, body } = row;
  if (!brief)
    return `{"kind":"${kind}","id":${JSON.stringify(id)},"version":${version},"seq":${seq},"place":${place},"body":${body}}`;
  const changed = version === 1 ? '' : `,"version":${version}`;
  const moved = place === seq ? '' : `,"place":${place}`;
  return `{"kind":"${kind}"${changed},"seq":${seq}${moved},"body":${body}}`;
}

async function rowsOf(tx: Tx, household: string, { after, upTo, of }: Asked, brief: boolean) {
  const { seq: newest, epoch } = await tx
    .selectFrom('households')
    .select(['seq', 'epoch'])
    .where('id', '=', household)
    .executeTakeFirstOrThrow();
  let rows = tx
    .selectFrom('records')
    .select(['kind', 'id', 'version', 'seq', 'place', 'body'])
    .where('household', '=', household)
    .orderBy('seq');
  if (upTo !== undefined) rows = rows.where('seq', '<=', upTo);
  // As the index of them says it, or it would not be found.
  if (of === 'rest') rows = rows.where(sql<boolean>`kind NOT IN ('feedings', 'weighings')`);
  else if (of !== undefined) rows = rows.where('kind', '=', of);
  if (after === 0 || upTo !== undefined) rows = rows.where('body', 'is not', null);
  const taken: RecordRow[] = [];
  let bytes = 0;
  let last = after;
  let more = false;
  for (let limit = FEW; ; ) {
    const slice = await rows.where('seq', '>', last).limit(limit).execute();
    for (const row of slice) {
      bytes += bytesOf(row, brief);
      more = taken.length > 0 && bytes > MOST_BYTES;
      if (more) break;
      taken.push(row);
      last = row.seq;
    }
    if (more || slice.length < limit) break;
    // About as many as there is room for, and one that shows that there are more.
    limit = Math.min(MOST_AT_ONCE, Math.ceil(((MOST_BYTES - bytes) * taken.length) / bytes) + 1);
  }
  return { rows: taken, seq: more ? last : Math.min(newest, upTo ?? newest), more, newest, epoch };
}

/** How much of an answer a record takes, at most. What is deleted has no body that says its id. */
function bytesOf({ version, seq, place, body }: RecordRow, brief: boolean): number {
  if (body === null) return AROUND;
  const around = !brief ? AROUND : version === 1 && place === seq ? BRIEF.asMade : BRIEF.changed;
  return around + Buffer.byteLength(body);
}

/** What cannot be read may be of any length: its beginning is enough to tell what it was. */
function short(record: KeptRecord): KeptRecord {
  const { unreadable } = record;
  if (!unreadable || unreadable.raw.length <= MOST_RECORD_BYTES / 6) return record;
  const raw = `${unreadable.raw.slice(0, MOST_RECORD_BYTES / 6)} …`;
  return { ...record, unreadable: { ...unreadable, raw } };
}

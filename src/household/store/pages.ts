/** A household in parts, each small enough for one answer. */
import type { KeptRecord, RecordsPage } from '../records.ts';
import { MOST_RECORD_BYTES } from '../shape/quotas.ts';
import type { Cutter } from './cuts.ts';
import { signOf } from './page-sign.ts';
import { type Asked, bytesSent, isOf } from './section.ts';
import type { RowReader } from './stored.ts';
import type { RecordRow, Tx } from './tables.ts';

/** An answer stays under 200 kB with one record of the largest size on top. */
export const MOST_BYTES = 190_000;
/** Rows read at once: first few, since they may be large, then as many as there is room for. */
const FEW = 200;
const MOST_AT_ONCE = 600;

/** How it is to be sent. */
export interface Sent {
  /** What follows from the rest of a record is left out, as `SentRecord` says. */
  readonly brief?: boolean;
}

/** A page as JSON. */
export interface PageText {
  /** Absent where it is the one that was known. */
  readonly text?: string;
  /** Another one where the same would be answered otherwise; absent where that cannot be told. */
  readonly sign?: string;
}

/** Of one household, what its parts are read with. */
export interface PageParts {
  readonly household: string;
  readonly reader: RowReader;
  readonly cutter: Cutter;
  /** Gives another number once another program wrote to the household; absent where nobody can tell. */
  readonly outside?: (() => number) | undefined;
}

/** What changed after a number, in the order of the changes; after 0 only what is there now. */
export async function readPage(tx: Tx, parts: PageParts, asked: Asked): Promise<RecordsPage> {
  const { rows, ...page } = await rowsOf(tx, parts, asked, false);
  return { records: rows.map((row) => parts.reader.record(row)).map(short), ...page };
}

/**
 * The same as JSON. What is known to be fit goes out as it is stored: nobody needs it in between.
 * @param known sign of the answer that is known
 */
export async function readPageText(
  tx: Tx,
  parts: PageParts,
  { brief = false, ...asked }: Asked & Sent,
  known?: string,
): Promise<PageText> {
  const { household, reader, outside } = parts;
  const sign = await signOf(tx, household, asked, outside);
  if (sign !== undefined && sign === known) return { sign };
  const { rows, ...page } = await rowsOf(tx, parts, asked, brief);
  const records = rows.map((row) => textOf(row, reader, brief)).join(',');
  const text = `{"records":[${records}],${JSON.stringify(page).slice(1)}`;
  // Why a record cannot be read is said in the language of who asks.
  return sign !== undefined && rows.every((row) => reader.isFit(row)) ? { text, sign } : { text };
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

async function rowsOf(
  tx: Tx,
  { household, cutter }: PageParts,
  { after, upTo = Number.POSITIVE_INFINITY, of }: Asked,
  brief: boolean,
) {
  const { seq: newest, epoch } = await tx
    .selectFrom('households')
    .select(['seq', 'epoch'])
    .where('id', '=', household)
    .executeTakeFirstOrThrow();
  let rows = tx
    .selectFrom('records')
    .select(['kind', 'id', 'version', 'seq', 'place', 'body', bytesSent(brief).as('bytes')])
    .where('household', '=', household)
    .orderBy('seq');
  const isRange = upTo < Number.POSITIVE_INFINITY;
  if (isRange) rows = rows.where('seq', '<=', upTo);
  if (of !== undefined) rows = rows.where(isOf(of));
  if (after === 0 || isRange) rows = rows.where('body', 'is not', null);
  const taken: RecordRow[] = [];
  let bytes = 0;
  let last = after;
  let more = false;
  for (let limit = FEW; ; ) {
    const slice = await rows.where('seq', '>', last).limit(limit).execute();
    for (const row of slice) {
      bytes += row.bytes;
      more = taken.length > 0 && bytes > MOST_BYTES;
      if (more) break;
      taken.push(row);
      last = row.seq;
    }
    if (more || slice.length < limit) break;
    // About as many as there is room for, and one that shows that there are more.
    limit = Math.min(MOST_AT_ONCE, Math.ceil(((MOST_BYTES - bytes) * taken.length) / bytes) + 1);
  }
  const until = Math.min(newest, upTo);
  const page = { rows: taken, seq: more ? last : until, more, newest: until, epoch };
  const isFirst = after === 0 && !isRange && of === undefined;
  return isFirst && more ? { ...page, cuts: await cutter.cutsOf(tx, household, newest, epoch) } : page;
}

/** What cannot be read may be of any length: its beginning is enough to tell what it was. */
function short(record: KeptRecord): KeptRecord {
  const { unreadable } = record;
  if (!unreadable || unreadable.raw.length <= MOST_RECORD_BYTES / 6) return record;
  const raw = `${unreadable.raw.slice(0, MOST_RECORD_BYTES / 6)} …`;
  return { ...record, unreadable: { ...unreadable, raw } };
}

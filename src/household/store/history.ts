/** What was changed, when and from which device; and taking it back. */
import { words } from '../../words/words.ts';
import { mergeRecord, same } from '../merge/merge-record.ts';
import type { Kept, Kind } from '../model.ts';
import type { Change, ChangeDetail, HistoryPage, Written } from '../records.ts';
import { StoreError } from '../store-error.ts';
import { called } from './called.ts';
import { recordOf, type Session } from './session.ts';
import { readBody } from './stored.ts';
import type { Tables, Tx } from './tables.ts';
import { writeRecord } from './write.ts';

/** Lines of one answer. */
const PAGE = 50;
/** Longest reach of the history, days; what is deleted can be brought back as long. */
const KEPT_DAYS = 365;
/** How long a write is known by its id, days. */
const WRITES_KEPT_DAYS = 30;

export interface HistoryQuery {
  readonly kind?: Kind;
  readonly id?: string;
  /** Only changes before this number. */
  readonly before?: number;
  /** Only the deletions of what is deleted now. */
  readonly deleted?: boolean;
}

type Row = Tables['changes'];

/** Changes, newest first. */
export async function readHistory(tx: Tx, household: string, query: HistoryQuery): Promise<HistoryPage> {
  let lines = withAfter(tx).where('c.household', '=', household);
  if (query.deleted) lines = lines.where('c.seq', 'in', deletions(tx, household, query));
  else {
    if (query.kind !== undefined) lines = lines.where('c.kind', '=', query.kind);
    if (query.id !== undefined) lines = lines.where('c.id', '=', query.id);
    if (query.before !== undefined) lines = lines.where('c.seq', '<', query.before);
  }
  const rows = await lines
    .orderBy('c.seq', 'desc')
    .limit(PAGE + 1)
    .execute();
  return { changes: rows.slice(0, PAGE).map((row) => lineFrom(row, afterIn(row))), more: rows.length > PAGE };
}

/** One change with what stood before and after it. @throws StoreError where there is none */
export async function readChange(tx: Tx, household: string, seq: number): Promise<ChangeDetail> {
  const row = await withAfter(tx)
    .where('c.household', '=', household)
    .where('c.seq', '=', seq)
    .executeTakeFirst();
  if (!row) throw noSuchChange(seq);
  const after = afterIn(row);
  return { ...lineFrom(row, after), before: parsed(row.before), after: parsed(after.raw) };
}

/**
 * Undoes a change and all that were made with it, where later changes left the same fields alone.
 * @throws StoreError where there is no such change, or a later one changed the same
 */
export async function takeBack(session: Session, seq: number): Promise<Written[]> {
  const { tx, household } = session;
  const all = withAfter(tx).where('c.household', '=', household);
  const one = await all.where('c.seq', '=', seq).executeTakeFirst();
  if (!one) throw noSuchChange(seq);
  const rows = await all.where('c.together', '=', one.together).orderBy('c.seq').execute();
  const written: Written[] = [];
  for (const row of rows) {
    const before = bodyOf(row, row.before);
    const after = bodyOf(row, afterIn(row).raw);
    const now = await recordOf(session, row.kind, row.id);
    const { merged, conflicts } = mergeRecord(row.kind, after, before, now.body);
    if (conflicts.length > 0)
      throw new StoreError(
        'in-use',
        conflicts[0] ?? '',
        words().household.refusal.changedAgain(called(row.kind, now.body)),
      );
    if (same(merged, now.body)) continue;
    written.push(
      await writeRecord(session, { kind: row.kind, id: row.id, body: merged, basedOn: now.version }),
    );
  }
  return written;
}

/** Lets go of what is older than the history reaches. @param now ISO 8601 time */
export async function forgetOld(tx: Tx, household: string, now: string): Promise<void> {
  const daysAgo = (days: number) => new Date(Date.parse(now) - days * 86_400_000).toISOString();
  await tx
    .deleteFrom('changes')
    .where('household', '=', household)
    .where('at', '<', daysAgo(KEPT_DAYS))
    .execute();
  await tx
    .deleteFrom('writes')
    .where('household', '=', household)
    .where('at', '<', daysAgo(WRITES_KEPT_DAYS))
    .execute();
}

interface After {
  readonly raw: string | null;
  /** Whether nothing was changed since. */
  readonly newest: boolean;
}

/** Changes, each with what it left: what the next one of the same record replaced, or what stands now. */
function withAfter(tx: Tx) {
  return tx
    .selectFrom('changes as c')
    .leftJoin('changes as next', (on) =>
      on.onRef('next.household', '=', 'c.household').on('next.seq', '=', ({ selectFrom }) =>
        selectFrom('changes as later')
          .select(({ fn }) => fn.min('later.seq').as('seq'))
          .whereRef('later.household', '=', 'c.household')
          .whereRef('later.kind', '=', 'c.kind')
          .whereRef('later.id', '=', 'c.id')
          .whereRef('later.seq', '>', 'c.seq'),
      ),
    )
    .leftJoin('records as now', (on) =>
      on
        .onRef('now.household', '=', 'c.household')
        .onRef('now.kind', '=', 'c.kind')
        .onRef('now.id', '=', 'c.id')
        .on('next.seq', 'is', null),
    )
    .selectAll('c')
    .select(['next.seq as nextSeq', 'next.before as replaced', 'now.body as now']);
}

/** Numbers of the changes that deleted what is deleted now, of the newest as many as one answer takes. */
function deletions(tx: Tx, household: string, { kind, id, before }: HistoryQuery) {
  let gone = tx
    .selectFrom('records')
    .select('seq')
    .where('household', '=', household)
    .where('body', 'is', null);
  if (kind !== undefined) gone = gone.where('kind', '=', kind);
  if (id !== undefined) gone = gone.where('id', '=', id);
  if (before !== undefined) gone = gone.where('seq', '<', before);
  return gone.orderBy('seq', 'desc').limit(PAGE + 1);
}

interface WithAfter {
  readonly nextSeq: number | null;
  readonly replaced: string | null;
  readonly now: string | null;
}

const afterIn = ({ nextSeq, replaced, now }: WithAfter): After =>
  nextSeq === null ? { raw: now, newest: true } : { raw: replaced, newest: false };

function lineFrom({ seq, kind, id, version, before, at, device, together }: Row, after: After): Change {
  const what =
    after.raw === null ? 'deleted' : before !== null ? 'changed' : version === 1 ? 'made' : 'brought back';
  const name = nameIn(after.raw) ?? nameIn(before) ?? words().household.kinds[kind];
  return { seq, kind, id, version, what, name, at, device, together, newest: after.newest };
}

/** The name in a stored text; undefined where it has none. */
function nameIn(raw: string | null): string | undefined {
  const body = parsed(raw) as { name?: unknown; seller?: unknown } | null;
  if (typeof body?.name === 'string') return body.name;
  return typeof body?.seller === 'string' ? body.seller : undefined;
}

/** A stored text as JSON; as plain text where it is none. */
function parsed(raw: string | null): unknown {
  if (raw === null) return null;
  try {
    return JSON.parse(raw);
  } catch {
    return raw;
  }
}

/** What stood there, to be put back. @throws StoreError where it cannot be read */
function bodyOf({ kind, id }: Row, raw: string | null): Kept<Kind> | null {
  if (raw === null) return null;
  const read = readBody(kind, id, raw);
  if ('body' in read) return read.body;
  throw new StoreError(
    'invalid',
    '',
    words().household.refusal.unreadableThen(words().household.kinds[kind], read.why),
  );
}

function noSuchChange(seq: number): StoreError {
  return new StoreError('missing', '/seq', words().household.refusal.noChange(seq));
}

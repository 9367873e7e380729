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
  let lines = tx.selectFrom('changes').selectAll('changes').where('changes.household', '=', household);
  if (query.kind !== undefined) lines = lines.where('changes.kind', '=', query.kind);
  if (query.id !== undefined) lines = lines.where('changes.id', '=', query.id);
  if (query.before !== undefined) lines = lines.where('changes.seq', '<', query.before);
  if (query.deleted)
    lines = lines
      .innerJoin('records', (on) =>
        on
          .onRef('records.household', '=', 'changes.household')
          .onRef('records.kind', '=', 'changes.kind')
          .onRef('records.id', '=', 'changes.id')
          .onRef('records.seq', '=', 'changes.seq'),
      )
      .where('records.body', 'is', null);
  const rows = await lines
    .orderBy('changes.seq', 'desc')
    .limit(PAGE + 1)
    .execute();
  const changes: Change[] = [];
  for (const row of rows.slice(0, PAGE)) changes.push(lineFrom(row, await afterOf(tx, row)));
  return { changes, more: rows.length > PAGE };
}

/** One change with what stood before and after it. @throws StoreError where there is none */
export async function readChange(tx: Tx, household: string, seq: number): Promise<ChangeDetail> {
  const row = await tx
    .selectFrom('changes')
    .selectAll()
    .where('household', '=', household)
    .where('seq', '=', seq)
    .executeTakeFirst();
  if (!row) throw noSuchChange(seq);
  const after = await afterOf(tx, row);
  return { ...lineFrom(row, after), before: parsed(row.before), after: parsed(after.raw) };
}

/**
 * Undoes a change and all that were made with it, where later changes left the same fields alone.
 * @throws StoreError where there is no such change, or a later one changed the same
 */
export async function takeBack(session: Session, seq: number): Promise<Written[]> {
  const { tx, household } = session;
  const all = tx.selectFrom('changes').selectAll().where('household', '=', household);
  const one = await all.where('seq', '=', seq).executeTakeFirst();
  if (!one) throw noSuchChange(seq);
  const rows = await all.where('together', '=', one.together).orderBy('seq').execute();
  const written: Written[] = [];
  for (const row of rows) {
    const before = bodyOf(row, row.before);
    const after = bodyOf(row, (await afterOf(tx, row)).raw);
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

/** What a change left: what the next one replaced, or what stands now. */
async function afterOf(tx: Tx, { household, kind, id, seq }: Row): Promise<After> {
  const next = await tx
    .selectFrom('changes')
    .select('before')
    .where('household', '=', household)
    .where('kind', '=', kind)
    .where('id', '=', id)
    .where('seq', '>', seq)
    .orderBy('seq')
    .limit(1)
    .executeTakeFirst();
  if (next) return { raw: next.before, newest: false };
  const now = await tx
    .selectFrom('records')
    .select('body')
    .where('household', '=', household)
    .where('kind', '=', kind)
    .where('id', '=', id)
    .executeTakeFirst();
  return { raw: now?.body ?? null, newest: true };
}

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

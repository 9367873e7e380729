/** One change of one record, inside a transaction: by the version its sender saw, once, with what goes along. */

import type { Batch } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { same } from '../merge/merge-record.ts';
import type { Animal, Kept, Kind, Mix, MixVersion } from '../model.ts';
import type { KeptRecord, Write, Written } from '../records.ts';
import { checkRecord } from '../shape/check-record.ts';
import { finishedBatchChange } from '../shape/finished-batch.ts';
import { Overtaken, StoreError } from '../store-error.ts';
import { refuseInUse, requireReferences } from './references.ts';
import { nothing, rowOf, rowsOf, type Session } from './session.ts';
import type { RecordsTable } from './tables.ts';
import { takeRoom } from './within-quota.ts';

/** Changes of one record by one device that follow each other within this time are one line of the history, ms. */
const ONE_SITTING = 5 * 60_000;

/**
 * Puts or deletes one record.
 * @throws Overtaken where it stands at another version; StoreError where it names what is not there, is still in use, or
 * there is none to delete
 */
export async function writeRecord(session: Session, write: Write): Promise<Written> {
  const { kind, id, body, basedOn, writeId } = write;
  const row = await rowOf(session, kind, id);
  const now = row ? session.reader.record(row) : nothing(kind, id);
  if (writeId !== undefined && (await wasMade(session, write))) return { record: now, along: [] };
  if (basedOn !== now.version) {
    // The same again, whoever asked for it: there is nothing to lose.
    if (body !== null && same(body, now.body)) return { record: now, along: [] };
    throw new Overtaken(now);
  }
  if (body === null && row?.body == null)
    throw new StoreError(
      'missing',
      '/id',
      words().household.refusal.notThere(words().household.kinds[kind], id),
    );
  const finished =
    !session.anew &&
    kind === 'batches' &&
    now.body &&
    finishedBatchChange(now.body as Batch, body as Batch | null);
  if (finished) throw new StoreError('finished', finished.field, finished.message);
  if (body !== null) await refuseUnfit(session, kind, body, now);
  else if (!session.anew) await refuseInUse(session, kind, id);
  const record = same(body, now.body) && body !== null ? now : await keep(session, kind, id, body, row);
  if (writeId !== undefined) await remember(session, write);
  return { record, along: body === null && !session.anew ? await deleteAlong(session, kind, id) : [] };
}

/** Refuses a record that could not be shown, names what is not there, or is one too many. */
async function refuseUnfit(session: Session, kind: Kind, body: Kept<Kind>, now: KeptRecord): Promise<void> {
  const fault = checkRecord(kind, body);
  if (fault) throw new StoreError('invalid', fault.field, fault.message);
  if (session.anew) return;
  const referred = () => requireReferences(session, kind, body, now.body);
  if (session.atEnd) session.atEnd.push(referred);
  else await referred();
  if (now.body === null) await takeRoom(session, kind, Buffer.byteLength(JSON.stringify(body)));
}

/** Writes the row and the line of the history. */
async function keep(
  session: Session,
  kind: Kind,
  id: string,
  body: Kept<Kind> | null,
  row: RecordsTable | undefined,
): Promise<KeptRecord> {
  const { tx, household, by } = session;
  const seq = await nextSeq(session);
  session.together ??= seq;
  const next: RecordsTable = {
    household,
    kind,
    id,
    version: (row?.version ?? 0) + 1,
    seq,
    // What comes back after it was deleted stands where it stood.
    place: row?.place ?? seq,
    body: body && JSON.stringify(body),
  };
  await tx
    .insertInto('records')
    .values(next)
    .onConflict((on) => on.columns(['household', 'kind', 'id']).doUpdateSet(next))
    .execute();
  const line = { seq, version: next.version, at: by.at, together: session.together };
  const joined =
    session.joins && row?.body != null && body !== null && (await lineOfSitting(session, kind, id));
  if (joined)
    await tx
      .updateTable('changes')
      .set(line)
      .where('household', '=', household)
      .where('seq', '=', joined.seq)
      .execute();
  else
    await tx
      .insertInto('changes')
      .values({ ...line, household, kind, id, before: row?.body ?? null, device: by.device })
      .execute();
  return { kind, id, version: next.version, seq, place: next.place, body };
}

/** The line of the history that a change of the same sitting is added to, if there is one. */
async function lineOfSitting({ tx, household, by }: Session, kind: Kind, id: string) {
  const last = await tx
    .selectFrom('changes')
    .selectAll()
    .where('household', '=', household)
    .where('kind', '=', kind)
    .where('id', '=', id)
    .orderBy('seq', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (!last || last.before === null || last.device !== by.device) return undefined;
  const since = Date.parse(by.at) - Date.parse(last.at);
  if (!(since >= 0 && since < ONE_SITTING)) return undefined;
  const { n } = await tx
    .selectFrom('changes')
    .select(({ fn }) => fn.countAll<number | string>().as('n'))
    .where('household', '=', household)
    .where('together', '=', last.together)
    .executeTakeFirstOrThrow();
  return Number(n) === 1 ? last : undefined;
}

async function nextSeq({ tx, household }: Session): Promise<number> {
  const { seq } = await tx
    .updateTable('households')
    .set(({ eb }) => ({ seq: eb('seq', '+', 1) }))
    .where('id', '=', household)
    .returning('seq')
    .executeTakeFirstOrThrow();
  return seq;
}

/** Whether this very write was made before. @throws StoreError where its id was used for another record */
async function wasMade({ tx, household }: Session, { kind, id, writeId = '' }: Write): Promise<boolean> {
  const made = await tx
    .selectFrom('writes')
    .select(['kind', 'id'])
    .where('household', '=', household)
    .where('write_id', '=', writeId)
    .executeTakeFirst();
  if (made && (made.kind !== kind || made.id !== id))
    throw new StoreError('invalid', '', words().household.refusal.writeIdUsed(writeId));
  return made !== undefined;
}

async function remember({ tx, household, by }: Session, { kind, id, writeId = '' }: Write): Promise<void> {
  await tx.insertInto('writes').values({ household, write_id: writeId, kind, id, at: by.at }).execute();
}

/** What tells of one animal alone, and goes with it. */
const OF_ONE_ANIMAL = ['weighings', 'feedings', 'trials', 'notes', 'photos'] as const;

/**
 * Changes what hung on a deleted record: mixes made for the animal go on without it, what was written down of it goes with
 * it, and versions go with their mix.
 */
async function deleteAlong(session: Session, kind: Kind, id: string): Promise<KeptRecord[]> {
  if (kind === 'mixes') return deleteWhere(session, 'versions', (body) => (body as MixVersion).mixId === id);
  if (kind !== 'animals') return [];
  const along: KeptRecord[] = [];
  for (const row of await rowsOf(session, 'mixes')) {
    const mix = session.reader.record(row).body as Mix | null;
    const animalIds = mix?.animalIds.filter((animal: Animal['id']) => animal !== id);
    if (mix && animalIds && animalIds.length < mix.animalIds.length)
      along.push(await keep(session, 'mixes', row.id, { ...mix, animalIds }, row));
  }
  for (const of of OF_ONE_ANIMAL)
    along.push(
      ...(await deleteWhere(session, of, (body) =>
        'animalId' in body ? body.animalId === id : body.id === id,
      )),
    );
  return along;
}

async function deleteWhere(
  session: Session,
  kind: Kind,
  goes: (body: Kept<Kind>) => boolean,
): Promise<KeptRecord[]> {
  const gone: KeptRecord[] = [];
  for (const row of await rowsOf(session, kind)) {
    const { body } = session.reader.record(row);
    if (body !== null && goes(body)) gone.push(await keep(session, kind, row.id, null, row));
  }
  return gone;
}

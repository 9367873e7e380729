/** What a household may hold, so that it can always be shown whole. */
import { sql } from 'kysely';
import type { Kind } from '../model.ts';
import { tooFull, tooMany } from '../shape/quotas.ts';
import { StoreError } from '../store-error.ts';
import type { Session } from './session.ts';

/**
 * Counts one more record of a kind.
 * @param bytes that it takes
 * @throws StoreError where it would be one too many, or too large for what is left
 */
export async function takeRoom(session: Session, kind: Kind, bytes: number): Promise<void> {
  session.known.room ??= await roomTaken(session);
  const { room } = session.known;
  const there = room.of.get(kind) ?? 0;
  const fault = tooMany(kind, there) ?? tooFull(room.bytes + bytes);
  if (fault) throw new StoreError('too many', fault.field, fault.message);
  room.of.set(kind, there + 1);
  room.bytes += bytes;
}

async function roomTaken({ tx, household }: Session) {
  const rows = await tx
    .selectFrom('records')
    .select(({ fn }) => [
      'kind',
      fn.countAll<number | string>().as('n'),
      sql<number | string>`sum(octet_length(body))`.as('bytes'),
    ])
    .where('household', '=', household)
    .where('body', 'is not', null)
    .groupBy('kind')
    .execute();
  return {
    of: new Map(rows.map(({ kind, n }) => [kind, Number(n)])),
    bytes: rows.reduce((sum, row) => sum + Number(row.bytes), 0),
  };
}

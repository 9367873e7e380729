/** What a household may hold, so that it can always be shown whole. */
import { sql } from 'kysely';
import type { Kind } from '../model.ts';
import { tooFull, tooMany } from '../shape/quotas.ts';
import { StoreError } from '../store-error.ts';
import type { Session } from './session.ts';

/** @throws StoreError where one more of a kind, or so many bytes more, would be too many */
export async function refuseBeyondQuota(
  { tx, household }: Session,
  kind: Kind,
  bytes: number,
): Promise<void> {
  const { n, held } = await tx
    .selectFrom('records')
    .select([
      sql<number | string>`sum(case when kind = ${kind} then 1 else 0 end)`.as('n'),
      sql<number | string>`sum(octet_length(body))`.as('held'),
    ])
    .where('household', '=', household)
    .where('body', 'is not', null)
    .executeTakeFirstOrThrow();
  const fault = tooMany(kind, Number(n)) ?? tooFull(Number(held) + bytes);
  if (fault) throw new StoreError('too many', fault.field, fault.message);
}

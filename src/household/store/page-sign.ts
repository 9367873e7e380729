/** Tells whether a part that was read before would be read the same now, without reading it. */
import { type Asked, isOf } from './section.ts';
import type { Tx } from './tables.ts';

/**
 * Another one where the same part would be read otherwise; undefined where that cannot be told: of what has no end, or of
 * changes that are still to come.
 *
 * Whatever changes a record gives it a new number, the newest, so that it leaves every part that there was, and none comes
 * into them; where a backup is put back or lists get another order, the epoch is another. So a part is the same while it has as
 * many records, unless another program wrote to the household.
 * @param outside gives another number once another program wrote to the household
 */
export async function signOf(
  tx: Tx,
  household: string,
  { after, upTo, of }: Asked,
  outside: (() => number) | undefined,
): Promise<string | undefined> {
  if (upTo === undefined || !outside) return undefined;
  const { seq, epoch, count } = await tx
    .selectFrom('households')
    .select(['seq', 'epoch'])
    .select(({ selectFrom, fn }) => {
      const part = selectFrom('records')
        .select(fn.countAll<number>().as('count'))
        .where('household', '=', household)
        .where('seq', '>', after)
        .where('seq', '<=', upTo)
        .where('body', 'is not', null);
      return (of === undefined ? part : part.where(isOf(of))).$asScalar().$notNull().as('count');
    })
    .where('id', '=', household)
    .executeTakeFirstOrThrow();
  return seq < upTo ? undefined : [epoch, upTo, count, outside()].join(' ');
}

/** What a household may hold, so that it can always be shown whole. */
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
  session.known.room ??= (await session.tally()).room();
  const { room } = session.known;
  const there = room.of.get(kind) ?? 0;
  const fault = tooMany(kind, there) ?? tooFull(room.bytes + bytes);
  if (fault) throw new StoreError('too many', fault.field, fault.message);
  room.of.set(kind, there + 1);
  room.bytes += bytes;
}

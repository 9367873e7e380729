/** A change that shows before the server has it, and is taken back where the server refuses it. */
import type { QueryClient } from '@tanstack/react-query';
import type { Kept, Kind } from '../../household/model.ts';
import { cachedObject, removeCached, writeCached } from './household-cache.ts';

/** One save under way. */
export interface Saving<K extends Kind> {
  readonly object: Kept<K>;
  /** The object as the cache holds it since; undefined while there is no household. */
  readonly shown: Kept<K> | undefined;
  /** What goes back in its place if it is refused; undefined where the object is new. */
  before: Kept<K> | undefined;
}

/** The key of all saves of one kind. */
export const savingKey = (kind: Kind) => ['save', kind] as const;

/** Shows an object as saved. */
export function beginSaving<K extends Kind>(client: QueryClient, kind: K, object: Kept<K>): Saving<K> {
  const before = cachedObject(client, kind, object.id);
  writeCached(client, kind, object);
  return { object, shown: cachedObject(client, kind, object.id), before };
}

/**
 * Takes back a refused save. Only its own object changes, and only if that is still what the save wrote: a later
 * change stays, and if that one is refused too, the object goes back to how it stood before both.
 */
export function takeBack<K extends Kind>(client: QueryClient, kind: K, refused: Saving<K>): void {
  const { object, shown, before } = refused;
  const later = client
    .getMutationCache()
    .findAll({ mutationKey: savingKey(kind), status: 'pending' })
    .map((mutation) => mutation.state.variables as Saving<K>)
    .find((saving) => saving !== refused && saving.before === shown && saving.object.id === object.id);
  if (later) later.before = before;
  else if (cachedObject(client, kind, object.id) !== shown) return;
  else if (before) writeCached(client, kind, before);
  else removeCached(client, kind, object.id);
}

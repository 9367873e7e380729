/** The household as this page holds it, in the query cache: read and changed without asking the server. */
import type { QueryClient } from '@tanstack/react-query';
import type { Household, Kept, Kind, Mix } from '../../household/model.ts';
import { toldAtOnce } from './query-client.ts';

export const HOUSEHOLD_KEY = ['household'] as const;

/** The household as it stands this moment; undefined before the server first gave it. */
export function cachedHousehold(client: QueryClient): Household | undefined {
  return client.getQueryData<Household>(HOUSEHOLD_KEY);
}

/** One object as it stands this moment; undefined where there is none with that id. */
export function cachedObject<K extends Kind>(client: QueryClient, kind: K, id: string): Kept<K> | undefined {
  const list: readonly Kept<K>[] | undefined = cachedHousehold(client)?.[kind];
  return list?.find((o) => o.id === id);
}

/** Puts an object in the place of the one with its id, or at the end of its list; seen within the press that does it. */
export function writeCached<K extends Kind>(client: QueryClient, kind: K, object: Kept<K>): void {
  toldAtOnce(() =>
    changeCached(client, (house) => {
      const list: readonly Kept<K>[] = house[kind];
      const known = list.some((o) => o.id === object.id);
      return {
        ...house,
        [kind]: known ? list.map((o) => (o.id === object.id ? object : o)) : [...list, object],
      };
    }),
  );
}

/**
 * Removes an object and what the server removes with it. Seen a timer later: the page of the object is still there to
 * hear that the deletion was made, and goes elsewhere.
 */
export function removeCached(client: QueryClient, kind: Kind, id: string): void {
  changeCached(client, (house) => without(house, kind, id));
}

function changeCached(client: QueryClient, change: (house: Household) => Household): void {
  client.setQueryData<Household>(HOUSEHOLD_KEY, (house) => house && change(house));
}

/** The household as the server leaves it after a deletion: what hung on the object is gone too. */
function without(house: Household, kind: Kind, id: string): Household {
  const left: Household = {
    ...house,
    [kind]: (house[kind] as readonly { id: string }[]).filter((o) => o.id !== id),
  };
  if (kind === 'animals') {
    const freed = (mix: Mix): Mix =>
      mix.animalIds.includes(id) ? { ...mix, animalIds: mix.animalIds.filter((a) => a !== id) } : mix;
    return { ...left, mixes: left.mixes.map(freed) };
  }
  if (kind === 'mixes') return { ...left, versions: left.versions.filter((v) => v.mixId !== id) };
  return left;
}

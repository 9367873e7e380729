/** The household as React sees it: one query, and changes that show at once and are taken back when refused. */
import { type QueryClient, useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Household, Mix } from '../../household/model.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { fetchHousehold, type KeptObjects, put, remove } from './api.ts';

const key = ['household'];

export function useHousehold() {
  return useQuery({ queryKey: key, queryFn: fetchHousehold, staleTime: Number.POSITIVE_INFINITY });
}

/** Writes one object into the cached household without asking the server. */
export function useCacheWriter() {
  const client = useQueryClient();
  return <K extends keyof KeptObjects>(kind: K, object: KeptObjects[K]) =>
    client.setQueryData<Household>(
      key,
      (house) => house && { ...house, [kind]: placed(house[kind] as readonly KeptObjects[K][], object) },
    );
}

/** What is saved, and the household as it stood before. */
interface Saving<K extends keyof KeptObjects> {
  readonly object: KeptObjects[K];
  readonly before: Household | undefined;
}

export function useSave<K extends keyof KeptObjects>(kind: K) {
  const client = useQueryClient();
  const write = useCacheWriter();
  const { mutate, mutateAsync, ...state } = useMutation<void, Error, Saving<K>>({
    // One after the other: of two quick changes the later one is what is kept.
    scope: { id: kind },
    mutationFn: ({ object }) => put(kind, object),
    onError: (_error, { before }) => putBack(client, kind, before),
  });
  /** Shown within the press itself: a radio that waits for a moment would spring back first. */
  function begun(object: KeptObjects[K]): Saving<K> {
    const before = client.getQueryData<Household>(key);
    write(kind, object);
    return { object, before };
  }
  return {
    ...state,
    mutate: (object: KeptObjects[K], done?: { onSuccess(): void }) => mutate(begun(object), done),
    mutateAsync: (object: KeptObjects[K]) => mutateAsync(begun(object)),
  };
}

export function useRemove(kind: keyof KeptObjects) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: (id: string) => remove(kind, id),
    onSuccess: (_done, id) =>
      client.setQueryData<Household>(key, (house) => house && without(house, kind, id)),
  });
}

/** The household as the server leaves it after a deletion: what hung on the thing is gone too. */
function without(house: Household, kind: keyof KeptObjects, id: string): Household {
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

/** Takes back a refused change; what else changed meanwhile stays. */
function putBack(client: QueryClient, kind: keyof KeptObjects, before: Household | undefined): void {
  if (!before) return;
  client.setQueryData<Household>(key, (house) => house && { ...house, [kind]: before[kind] });
}

function placed<T extends { id: string }>(list: readonly T[], object: T): T[] {
  return list.some((o) => o.id === object.id)
    ? list.map((o) => (o.id === object.id ? object : o))
    : [...list, object];
}

/** Whether a profile is the keeper's own, so may be changed. */
export function isOwnProfile(profile: TargetProfile): boolean {
  return !PROFILES.some((p) => p.id === profile.id);
}

/** Published profiles first, then the keeper's own. */
export function allProfiles(house: Household): TargetProfile[] {
  return [...PROFILES, ...house.profiles.filter(isOwnProfile)];
}

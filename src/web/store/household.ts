/** The household as React sees it: one query, and changes that show at once and are taken back when refused. */
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import type { Household, Kept, Kind } from '../../household/model.ts';
import { withConfirmations } from '../../targets/confirm.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { PROFILES } from '../../targets/profiles.ts';
import { fetchHousehold, put, remove } from './api.ts';
import { HOUSEHOLD_KEY, removeCached, writeCached } from './household-cache.ts';
import { beginSaving, type Saving, savingKey, takeBack } from './optimistic-save.ts';
import { saveNow } from './waiting-saves.ts';

export function useHousehold() {
  return useQuery({ queryKey: HOUSEHOLD_KEY, queryFn: fetchHousehold, staleTime: Number.POSITIVE_INFINITY });
}

/** Writes one object into the cached household without asking the server. */
export function useCacheWriter() {
  const client = useQueryClient();
  return <K extends Kind>(kind: K, object: Kept<K>) => writeCached(client, kind, object);
}

/** Saves objects of one kind, one after the other. A change shows at once and is taken back where it is refused. */
export function useSave<K extends Kind>(kind: K) {
  const client = useQueryClient();
  const { mutate, mutateAsync, ...state } = useMutation<void, Error, Saving<K>>({
    mutationKey: savingKey(kind),
    // One after the other: of two quick changes the later one is what is kept.
    scope: { id: kind },
    mutationFn: ({ object }) => put(kind, object),
    onError: (_error, saving) => takeBack(client, kind, saving),
  });
  // Shown within the press itself.
  return {
    ...state,
    mutate: (object: Kept<K>, done?: { onSuccess(): void }) =>
      mutate(beginSaving(client, kind, object), done),
    mutateAsync: (object: Kept<K>) => mutateAsync(beginSaving(client, kind, object)),
  };
}

/**
 * Deletes objects of one kind; they go from the page once the server has deleted them. What still waits to be saved goes
 * first: a food that was just taken out of a mix can be deleted.
 */
export function useRemove(kind: Kind) {
  const client = useQueryClient();
  return useMutation({
    mutationFn: async (id: string) => {
      await saveNow();
      await remove(kind, id);
    },
    onSuccess: (_done, id) => removeCached(client, kind, id),
  });
}

/** Whether a profile is the keeper's own, so may be changed. */
export function isOwnProfile(profile: TargetProfile): boolean {
  return !PROFILES.some((p) => p.id === profile.id);
}

/**
 * Published profiles first, then the keeper's own. What is stored under the id of a published one is what the keeper
 * confirmed of it.
 */
export function allProfiles(house: Household): TargetProfile[] {
  const published = PROFILES.map((p) =>
    withConfirmations(
      p,
      house.profiles.find((kept) => kept.id === p.id),
    ),
  );
  return [...published, ...house.profiles.filter(isOwnProfile)];
}

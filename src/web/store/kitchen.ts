/** What the kitchen has and works on: one object, changed a field at a time. */
import { useQueryClient } from '@tanstack/react-query';
import type { Kitchen } from '../../kitchen/model.ts';
import { useSave } from './household.ts';
import { cachedHousehold } from './household-cache.ts';
import { useMixDraft } from './mix-draft.tsx';

const NONE: Kitchen = { id: 'kitchen' };

export function useKitchen() {
  const client = useQueryClient();
  const { house } = useMixDraft();
  const save = useSave('kitchen');
  return {
    kitchen: house.kitchen[0] ?? NONE,
    /** Changes these fields of the kitchen as it stands this moment; undefined takes a field away. */
    change(fields: Partial<Omit<Kitchen, 'id'>>): void {
      const now = cachedHousehold(client)?.kitchen[0] ?? NONE;
      save.mutate({ ...now, ...fields });
    },
    error: save.error,
  };
}

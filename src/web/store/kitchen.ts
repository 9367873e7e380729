/** What the kitchen has and works on: one object, changed a field at a time. */
import type { Kitchen } from '../../kitchen/model.ts';
import { useSave } from './household.ts';
import { useMixDraft } from './mix-draft.tsx';
import { keeper } from './page-keeper.ts';

const NONE: Kitchen = { id: 'kitchen' };

export function useKitchen() {
  const { house } = useMixDraft();
  const save = useSave('kitchen');
  return {
    kitchen: house.kitchen[0] ?? NONE,
    /**
     * Changes these fields of the kitchen; undefined takes a field away.
     * @param opened the kitchen as the keeper saw it when they began; as it stands this moment where absent
     */
    change(fields: Partial<Omit<Kitchen, 'id'>>, opened?: Kitchen): void {
      const now = keeper.shown('kitchen', NONE.id);
      const base = opened === NONE ? undefined : (opened ?? now);
      save.mutate({ ...(base ?? NONE), ...fields }, base);
    },
    error: save.error,
  };
}

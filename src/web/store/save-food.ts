/** Saves a food of the keeper's own and brings its figures into every mix that uses it. */
import type { OwnFood } from '../../household/model.ts';
import { refreshOwnFood, usesOwnFood } from '../../household/reckon/mix/mix-edits.ts';
import { useSave } from './household.ts';
import { useMixDraft } from './mix-draft.tsx';

export interface SaveFood {
  /**
   * Settles once the food and the mixes are kept; rejects with an ApiError, which `error` then holds too.
   * @param base the food as the keeper saw it when they began to change it; undefined where it is new
   */
  save(food: OwnFood, base: OwnFood | undefined): Promise<void>;
  readonly error: Error | null;
  readonly isPending: boolean;
}

export function useSaveFood(): SaveFood {
  const { house, mix, change } = useMixDraft();
  const foods = useSave('foods');
  const mixes = useSave('mixes');

  async function save(food: OwnFood, base: OwnFood | undefined): Promise<void> {
    await foods.mutateAsync(food, base);
    for (const other of house.mixes) {
      if (!usesOwnFood(other, food.id)) continue;
      // The mix at hand may have changes on their way to the server; they and these are saved as one.
      if (other.id === mix?.id) change((m) => refreshOwnFood(m, food));
      else
        await mixes.mutateAsync(
          { ...refreshOwnFood(other, food), updatedAt: new Date().toISOString() },
          other,
        );
    }
  }

  return { save, error: foods.error ?? mixes.error, isPending: foods.isPending || mixes.isPending };
}

/** The fresh food that a food of the mix is dried from, with its figures. */
import { driedAtHome, freshFoodOf } from '../../household/reckon/foods/fresh-food.ts';
import type { FreshFood } from '../../kitchen/drying/yields.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useReferenceFoods } from '../worker/engine.ts';

/** @param food id of the dried food, as mixes name it */
export function useFreshFood(food: string): {
  /** Whether the keeper said which it is. */
  readonly said: boolean;
  /** Absent while it is loaded, and where it is not there any more. */
  readonly fresh?: FreshFood;
  /** Percent trimmed off, as the keeper weighed it. */
  readonly trimLoss?: number;
} {
  const { house } = useMixDraft();
  const how = driedAtHome(house, food);
  const table = useReferenceFoods(how ? [how.fresh] : []);
  const fresh = how && freshFoodOf(how.fresh, house.foods, table);
  return {
    said: how !== undefined,
    ...(fresh && { fresh }),
    ...(how?.trimLoss !== undefined && { trimLoss: how.trimLoss }),
  };
}

/** The usual meal of an animal today, by the batch that is being fed. */
import type { Animal } from '../../../household/model.ts';
import { type DailyMeal, dailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import { useChosenShares } from '../../shared/hooks/useChosenShares.ts';
import { dayAt, today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';

/** Batches among which the present one is: an older one is fed only while the newest are not. */
const NEWEST = 4;

export function useUsualMeal(animal: Animal): DailyMeal | undefined {
  const { house } = useMixDraft();
  const problems = house.batches
    .filter((b) => b.finishedAt !== undefined && b.animalIds.includes(animal.id))
    .sort((a, b) => ((a.finishedAt ?? '') < (b.finishedAt ?? '') ? 1 : -1))
    .slice(0, NEWEST)
    .map((b) => b.problem);
  const { chosenFor } = useChosenShares(problems);
  return dailyMeal(house, animal, { today: today(), dayAt, chosenFor });
}

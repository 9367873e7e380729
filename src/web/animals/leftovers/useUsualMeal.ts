/** The usual meal of an animal today, by the batch that is being fed. */
import type { Animal } from '../../../household/model.ts';
import { type DailyMeal, dailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import { useCircumstances } from '../../shared/hooks/useCircumstances.ts';
import { dayAt, today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';

export function useUsualMeal(animal: Animal): DailyMeal | undefined {
  const { house } = useMixDraft();
  // Until shares that are left open are worked out, the written ones count: the page must not say that nothing was offered.
  const under = useCircumstances() ?? { today: today(), dayAt, chosenFor: () => undefined };
  return dailyMeal(house, animal, under);
}

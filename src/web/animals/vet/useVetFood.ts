/** What an animal is fed, and what that holds: asked of the worker, which has the tables. */
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { Animal } from '../../../household/model.ts';
import type { BatchPapers } from '../../../household/reckon/batch/batch-papers.ts';
import { type DailyMeal, dailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import { mayBeFed } from '../../../household/reckon/care/present-batches.ts';
import { type VetContents, vetContents } from '../../../household/reckon/care/vet-contents.ts';
import { contentsOfBatch } from '../../../household/reckon/cupboard/contents.ts';
import type { Day } from '../../../kitchen/model.ts';
import { useChosenShares } from '../../shared/hooks/useChosenShares.ts';
import { dayAt } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { engine } from '../../worker/engine.ts';
import type { Answer } from '../../worker/formulation.worker.ts';

export interface VetFood {
  readonly working: boolean;
  readonly meal?: DailyMeal;
  readonly contents?: VetContents;
  /** Why what it holds could not be worked out. */
  readonly fault?: string;
}

export function useVetFood(animal: Animal, day: Day): VetFood {
  const { house } = useMixDraft();
  const under = { today: day, dayAt };
  const { chosenFor, working: choosing } = useChosenShares(
    mayBeFed(house, under)
      .filter(({ batch }) => batch.animalIds.includes(animal.id))
      .map(({ batch }) => batch.problem),
  );
  const meal = useMemo(
    () => dailyMeal(house, animal, { today: day, dayAt, chosenFor }),
    [house, animal, day, chosenFor],
  );
  const batch = meal?.mix?.batch;
  const kept = useMemo(() => batch && contentsOfBatch(house, batch), [house, batch]);
  const { data, isPending } = useQuery({
    queryKey: ['papers', batch, kept, house.animals],
    queryFn: async (): Promise<Answer<BatchPapers>> => engine.batchPapers(batch!, kept!, house.animals),
    enabled: batch !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
  });
  return {
    working: choosing || (batch !== undefined && isPending),
    ...(meal && { meal }),
    ...(data?.ok && { contents: vetContents(data.value.record) }),
    ...(data?.ok === false && { fault: data.message }),
  };
}

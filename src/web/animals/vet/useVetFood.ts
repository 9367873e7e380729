/** What an animal is fed, and what that holds: asked of the worker, which has the tables. */
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import type { Animal } from '../../../household/model.ts';
import type { BatchPapers } from '../../../household/reckon/batch/batch-papers.ts';
import { type DailyMeal, dailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import type { Intake } from '../../../household/reckon/care/intake.ts';
import { intakeQuestion } from '../../../household/reckon/care/intake-question.ts';
import { type VetContents, vetContents } from '../../../household/reckon/care/vet-contents.ts';
import { contentsOfBatch } from '../../../household/reckon/cupboard/contents.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { useAnswer } from '../../shared/answer.tsx';
import { asKey } from '../../shared/hooks/as-key.ts';
import { useCircumstances } from '../../shared/hooks/useCircumstances.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { engine } from '../../worker/engine.ts';
import type { Answer } from '../../worker/formulation.worker.ts';

export interface VetFood {
  readonly working: boolean;
  readonly meal?: DailyMeal;
  readonly contents?: VetContents;
  /** Why what it holds could not be worked out. */
  readonly fault?: string;
  /** What it ate of late, by the left-overs noted; absent where none were. */
  readonly intake?: Intake;
}

/** Days over which left-overs are taken together. */
const NIGHTS = 30;

export function useVetFood(animal: Animal, day: Day): VetFood {
  const { house } = useMixDraft();
  const under = useCircumstances();
  const meal = useMemo(() => under && dailyMeal(house, animal, under), [house, animal, under]);
  const batch = meal?.mix?.batch;
  const kept = useMemo(() => batch && contentsOfBatch(house, batch), [house, batch]);
  const { data, isPending } = useQuery({
    queryKey: ['papers', batch && asKey(batch), kept && asKey(kept), asKey(house.animals)],
    queryFn: async (): Promise<Answer<BatchPapers>> => engine.batchPapers(batch!, kept!, house.animals),
    enabled: batch !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const asked = useMemo(() => {
    const question = intakeQuestion(house, animal.id, { from: plusDays(day, 1 - NIGHTS), to: day });
    return question.spans.length > 0 ? question : undefined;
  }, [house, animal.id, day]);
  const eaten = useAnswer('intake', asked, (q) => engine.intake(q));
  return {
    working: !under || (batch !== undefined && isPending) || (asked !== undefined && eaten.working),
    ...(!eaten.working && eaten.value && { intake: eaten.value }),
    ...(meal && { meal }),
    ...(data?.ok && { contents: vetContents(data.value.record) }),
    ...(data?.ok === false && { fault: data.message }),
  };
}

/** The energy of what an animal is fed: of its batch as it was weighed, or of the mix made for it. */
import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { type RationEnergy, rationEnergy } from '../../../care/feeding/ration-energy.ts';
import { isWhole } from '../../../formulation/explain/in-range.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import type { Animal } from '../../../household/model.ts';
import type { DailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import { contentsOfBatch } from '../../../household/reckon/cupboard/contents.ts';
import { mixesOf } from '../../../household/reckon/mix/refusals.ts';
import { asKey } from '../../shared/hooks/as-key.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { engine } from '../../worker/engine.ts';
import type { Answer } from '../../worker/formulation.worker.ts';

interface KnownEnergy {
  /** Undefined where nothing is known of its food, and while it is worked out. */
  readonly energy?: RationEnergy;
  readonly working: boolean;
}

export function useRationEnergy(animal: Animal, meal: DailyMeal | undefined): KnownEnergy {
  const { house } = useMixDraft();
  const batch = meal?.mix?.batch;
  const mix = mixesOf(house.mixes, animal.id).find((m) =>
    isWhole(m.problem.foods.reduce((sum, f) => sum + (f.refused ? 0 : (m.shares[f.id] ?? 0)), 0)),
  );
  const kept = useMemo(() => batch && contentsOfBatch(house, batch), [house, batch]);
  const { data, isPending } = useQuery({
    queryKey: ['ration energy', batch ? asKey(batch) : [mix?.problem, mix?.shares], kept && asKey(kept)],
    queryFn: async (): Promise<Evaluation['nutrients'] | null> => {
      if (batch && kept) {
        const answer = await engine.batchPapers(batch, kept, []);
        return answer.ok ? answer.value.record.evaluation.nutrients : null;
      }
      if (!mix) return null;
      const answer: Answer<Evaluation> = await engine.evaluate(mix.problem, mix.shares);
      return answer.ok ? answer.value.nutrients : null;
    },
    enabled: batch !== undefined || mix !== undefined,
    staleTime: Number.POSITIVE_INFINITY,
  });
  const energy = data ? rationEnergy(data) : undefined;
  return { ...(energy && { energy }), working: (batch ?? mix) !== undefined && isPending };
}

/** What the meals of all animals rest on beside the household: the day, and what is looked up or worked out for their batches. */
import { useMemo } from 'react';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { isUsedUp } from '../../../household/reckon/batch/batches.ts';
import type { Circumstances } from '../../../household/reckon/calendar/circumstances.ts';
import type { Day } from '../../../kitchen/model.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { useReferenceTable } from '../../worker/engine.ts';
import { dayAt, today } from '../today.ts';
import { useEachMinute } from './each-minute.ts';
import { useChosenShares } from './useChosenShares.ts';

/** @returns undefined while it is worked out */
export function useCircumstances(): Circumstances | undefined {
  useEachMinute();
  const { house } = useMixDraft();
  const fed = house.batches.filter((b) => b.finishedAt !== undefined && !b.givenUp && !isUsedUp(b));
  return useCircumstancesFor(
    fed.map((b) => b.problem),
    today(),
  );
}

/** @param problems of the batches that are asked about @returns undefined while it is worked out */
export function useCircumstancesFor(problems: readonly Problem[], day: Day): Circumstances | undefined {
  const { chosenFor, working } = useChosenShares(problems);
  const { foods: table, lookedUp } = useReferenceTable(
    problems.flatMap((p) => p.beside.flatMap((food) => food.ref ?? [])),
  );
  return useMemo(
    () => (working || !lookedUp ? undefined : { today: day, dayAt, table, chosenFor }),
    [day, table, chosenFor, working, lookedUp],
  );
}

/** What the meals of all animals rest on beside the household: the day, and what is looked up or worked out for their batches. */
import { useMemo } from 'react';
import { isUsedUp } from '../../../household/reckon/batch/batches.ts';
import type { Circumstances } from '../../../household/reckon/calendar/circumstances.ts';
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
  const { chosenFor, working } = useChosenShares(fed.map((b) => b.problem));
  const { foods: table, lookedUp } = useReferenceTable(
    fed.flatMap((b) => b.problem.beside.flatMap((food) => food.ref ?? [])),
  );
  const day = today();
  return useMemo(
    () => (working || !lookedUp ? undefined : { today: day, dayAt, table, chosenFor }),
    [day, table, chosenFor, working, lookedUp],
  );
}

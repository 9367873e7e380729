/** The calendar of the mix at hand, worked out anew when the household or the day changes. */
import { useMemo } from 'react';
import type { Mix } from '../../../household/model.ts';
import { batchesFor, isUsedUp } from '../../../household/reckon/batch/batches.ts';
import { type BatchCalendar, calendarOf } from '../../../household/reckon/calendar/batch-calendar.ts';
import { fedMix } from '../../../household/reckon/mix/eaters.ts';
import type { Day } from '../../../kitchen/model.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { allProfiles } from '../../store/profiles.ts';
import { useReferenceTable } from '../../worker/engine.ts';
import { dayAt } from '../today.ts';
import { useChosenShares } from './useChosenShares.ts';

export interface Calendar {
  /** The mix with what its animals bring. */
  readonly mix: Mix;
  readonly view?: BatchCalendar;
  /** Why there is no plan; without plan and fault, it is still worked out. */
  readonly fault?: string;
}

export function useCalendar(kept: Mix, day: Day): Calendar {
  const { house } = useMixDraft();
  const { foods: table, lookedUp } = useReferenceTable([
    ...(house.kitchen[0]?.driedAtHome ?? []).map((d) => d.fresh),
    ...kept.problem.foods.flatMap((f) => f.ref ?? []),
  ]);
  const mix = useMemo(() => fedMix(house, kept, allProfiles(house)), [kept, house]);
  const fed = batchesFor(house, mix).filter((b) => b.finishedAt !== undefined && !isUsedUp(b));
  const { chosenFor, working } = useChosenShares([mix.problem, ...fed.map((b) => b.problem)]);
  return useMemo(() => {
    // Which foods are fresh has to be known first: they would stand in the freezer for a moment.
    if (working || !lookedUp) return { mix };
    try {
      return { mix, view: calendarOf(house, mix, { today: day, dayAt, table, chosenFor }) };
    } catch (error) {
      if (error instanceof RangeError) return { mix, fault: error.message };
      throw error;
    }
  }, [mix, house, day, table, lookedUp, chosenFor, working]);
}

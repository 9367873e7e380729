/** The calendar of the mix at hand, worked out anew when the household or the day changes. */
import { useMemo } from 'react';
import type { Mix } from '../../household/model.ts';
import { type BatchCalendar, calendarOf } from '../../household/reckon/calendar/batch-calendar.ts';
import { eatersOf, withAnimals } from '../../household/reckon/eaters.ts';
import type { Day } from '../../kitchen/model.ts';
import { allProfiles } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useReferenceFoods } from '../worker/engine.ts';

export interface Calendar {
  /** The mix with what its animals bring. */
  readonly mix: Mix;
  readonly view?: BatchCalendar;
  /** Why there is no plan. */
  readonly fault?: string;
}

export function useCalendar(kept: Mix, day: Day): Calendar {
  const { house } = useMixDraft();
  const table = useReferenceFoods((house.kitchen[0]?.driedAtHome ?? []).map((d) => d.fresh));
  return useMemo(() => {
    const { mix } = withAnimals(kept, eatersOf(kept, house.animals, allProfiles(house)));
    try {
      return { mix, view: calendarOf(house, mix, day, table) };
    } catch (error) {
      if (error instanceof RangeError) return { mix, fault: error.message };
      throw error;
    }
  }, [kept, house, day, table]);
}

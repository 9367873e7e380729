/** How long what one animal is fed lasts, by all who eat of it. */
import { dayNumber } from '../../../kitchen/days.ts';
import type { Batch, Day } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { stillFed } from '../batch/present-batch.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { type DailyMeal, dailyMeal } from './daily-meal.ts';
import { isHere } from './here.ts';

export interface Supply {
  readonly batch: Batch;
  /** The first day on which it is not enough, and whole days until then; absent where that is not known. */
  readonly until?: { readonly day: Day; readonly days: number };
  /** g of it a day, all who eat it together; absent where that is not known. */
  readonly gramsADay?: number;
  /** Who eat it, by name. */
  readonly eaters: readonly string[];
  /** g a day of what is fed beside it, all animals of the household together; those alone of which all is known. */
  readonly beside: readonly { readonly food: string; readonly name: string; readonly gramsADay: number }[];
}

/** Of the batch that it is fed; undefined where it is fed none. */
export function supplyOf(
  house: Household,
  animal: Animal,
  under: Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'> & Partial<Pick<Circumstances, 'table'>>,
): Supply | undefined {
  const meal = dailyMeal(house, animal, under);
  const batch = meal?.mix?.batch;
  if (!meal || !batch) return undefined;
  const [present] = stillFed(house, [batch], under);
  const eaters = house.animals.filter((a) => isHere(a) && batch.animalIds.includes(a.id)).map((a) => a.name);
  const runs = present?.runsOut;
  return {
    batch,
    eaters,
    beside: besideOf(house, meal, under),
    ...(runs?.status === 'known' && {
      until: { day: runs.day, days: dayNumber(runs.day) - dayNumber(under.today) },
      gramsADay: runs.gramsADay,
    }),
  };
}

function besideOf(
  house: Household,
  meal: DailyMeal,
  under: Parameters<typeof supplyOf>[2],
): Supply['beside'] {
  const all = house.animals.filter(isHere).flatMap((a) => dailyMeal(house, a, under)?.beside ?? []);
  return meal.beside.flatMap(({ food, name }) => {
    const fed = all.filter((b) => b.food === food);
    const known = fed.flatMap((b) => b.grams ?? []);
    const gramsADay = known.reduce((sum, g) => sum + g, 0);
    return known.length === fed.length && gramsADay > 0 ? [{ food, name, gramsADay }] : [];
  });
}

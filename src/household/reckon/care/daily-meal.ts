/** What one animal is fed on a day: of which batch, and what beside it. */
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import type { Batch } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';
import { presentOf } from '../batch/present-batch.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { mixesOf } from '../mix/refusals.ts';

export interface DailyMeal {
  /** The batch that is being fed, and g of it a day; g are absent where nobody has said what it is fed. */
  readonly mix?: { readonly batch: Batch; readonly name: string; readonly grams?: number };
  /** What is fed beside it, by the batch's problem; g are absent where they are not known. */
  readonly beside: readonly { readonly food: string; readonly name: string; readonly grams?: number }[];
}

/** By the batch that was finished last of all mixes made for it; undefined where none is being fed. */
export function dailyMeal(
  house: Household,
  animal: Animal,
  under: Pick<Circumstances, 'today' | 'dayAt' | 'chosenFor'>,
): DailyMeal | undefined {
  const present = mixesOf(house.mixes, animal.id)
    .flatMap((mix) => presentOf(house, mix, under) ?? [])
    .filter(({ batch }) => batch.animalIds.includes(animal.id))
    .sort((a, b) => ((a.batch.finishedAt ?? '') < (b.batch.finishedAt ?? '') ? 1 : -1))[0];
  if (!present) return undefined;
  const { batch, name } = present;
  const [meal] = feedingOf({
    problem: batch.problem,
    animals: [animal],
    grams: 0,
    from: under.today,
    shares: under.chosenFor(batch.problem),
  }).animals;
  return meal && { mix: { batch, name, grams: meal.mix }, beside: meal.beside };
}

/** Who eats of a food that is fed from the pack, and how much of it a day. */
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import type { Animal, Household } from '../../model.ts';
import { presentOf } from '../batch/present-batch.ts';
import type { Circumstances } from '../calendar/circumstances.ts';
import { mixesOf } from '../mix/refusals.ts';

/** What packs are reckoned under; without `chosenFor`, shares beside the mix count as they are written. */
export type PackCircumstances = Pick<Circumstances, 'today' | 'dayAt'> &
  Partial<Pick<Circumstances, 'chosenFor'>>;

/** One animal that is fed a food beside its mix. */
export interface PelletEater {
  readonly animal: Animal;
  /** g a day as weighed; absent where nobody has said what the animal is fed, or how damp fresh food is. */
  readonly grams?: number;
}

/**
 * All that eat of a food now, those that left the household too, since they ate of it before: by the batch that is being
 * fed to each, else by the mix made for it that was worked on last.
 */
export function pelletEaters(house: Household, food: string, under: PackCircumstances): PelletEater[] {
  return house.animals.flatMap((animal): PelletEater[] => {
    const problem = problemFor(house, animal, under);
    if (!problem?.beside.some((b) => b.id === food)) return [];
    const shares = under.chosenFor?.(problem);
    const [meal] = feedingOf({
      problem,
      animals: [animal],
      grams: 0,
      from: under.today,
      ...(shares && { shares }),
    }).animals;
    const grams = meal?.beside.find((b) => b.food === food)?.grams;
    return [{ animal, ...(grams !== undefined && { grams }) }];
  });
}

function problemFor(house: Household, animal: Animal, under: PackCircumstances) {
  const mixes = mixesOf(house.mixes, animal.id);
  const all = { ...under, chosenFor: under.chosenFor ?? (() => undefined) };
  const [present] = mixes
    .flatMap((mix) => presentOf(house, mix, all) ?? [])
    .filter(({ batch }) => batch.animalIds.includes(animal.id))
    .sort((a, b) => ((a.batch.finishedAt ?? '') < (b.batch.finishedAt ?? '') ? 1 : -1));
  if (present) return present.batch.problem;
  return mixes.toSorted((a, b) => (a.updatedAt < b.updatedAt ? 1 : -1))[0]?.problem;
}

/** The weights of one animal of the household. */
import { speciesKind } from '../../../care/animal/species.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { weightStory } from '../../../care/weight/weight-story.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';
import type { Animal, Household } from '../../model.ts';

export function weightsOf(
  house: Pick<Household, 'weighings' | 'keeper'>,
  animal: Animal,
  { today, dayAt }: { readonly today: Day; dayAt(moment: Moment): Day },
): WeightStory {
  const { lifeStage, sex, born, daylight, usualGrams, conditions = [] } = animal;
  return weightStory({
    weighings: house.weighings.filter((w) => w.animalId === animal.id),
    species: speciesKind(animal.species),
    lifeStage,
    sex,
    born,
    conditions,
    daylight,
    usualGrams,
    south: house.keeper[0]?.south ?? false,
    today,
    dayAt,
  });
}

/** The weights of one animal of the household. */
import { speciesKind } from '../../../care/animal/species.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { weightStory } from '../../../care/weight/weight-story.ts';
import type { DayAt } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Animal, Household } from '../../model.ts';
import { ofAnimal } from './of-animal.ts';

/** @param under.dayAt best the same function each time: the story is then worked out once a day and list of weighings */
export function weightsOf(
  house: Pick<Household, 'weighings' | 'keeper'>,
  animal: Animal,
  { today, dayAt }: { readonly today: Day; readonly dayAt: DayAt },
): WeightStory {
  const weighings = ofAnimal(house.weighings, animal.id);
  const stories = storiesOf(weighings, house.keeper, animal, dayAt);
  const known = stories.get(today);
  if (known) return known;
  const { lifeStage, sex, born, daylight, usualGrams, conditions = [] } = animal;
  const story = weightStory({
    weighings,
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
  stories.set(today, story);
  return story;
}

const storiesOf = remembered(
  (_weighings: Household['weighings'], _keeper: Household['keeper'], _animal: Animal, _dayAt: DayAt) =>
    new Map<Day, WeightStory>(),
);

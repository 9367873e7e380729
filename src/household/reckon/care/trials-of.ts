/** The trials of an animal, food by food, and what they say. */
import { type Judged, judge } from '../../../care/trials/judge.ts';
import type { Animal, Household } from '../../model.ts';
import { alike, isMarked, type NamedFood } from '../foods/alike.ts';

type Kept = Pick<Household, 'trials' | 'foods' | 'mixes' | 'batches' | 'kitchen'>;
type Trial = Household['trials'][number];

/** What the trials of one food say. */
export interface TriedFood {
  /** As the newest trial names it. */
  readonly food: NamedFood;
  readonly name: string;
  readonly judged: Judged;
}

/** The foods that an animal was offered in trials, whatever ids they had then; the one tried last first. */
export function triedFoods(house: Kept, animal: Pick<Animal, 'id'>): TriedFood[] {
  const { marksOf } = alike(house);
  const groups: { trials: Trial[]; marks: ReturnType<typeof marksOf> }[] = [];
  for (const trial of house.trials) {
    if (trial.animalId !== animal.id) continue;
    const there = groups.find(({ marks }) => isMarked(foodOf(trial), marks));
    if (there) there.trials.push(trial);
    else groups.push({ trials: [trial], marks: marksOf(foodOf(trial)) });
  }
  return groups
    .flatMap(({ trials }) => {
      const judged = judge(trials);
      const newest = judged?.trials.at(-1);
      return judged && newest ? [{ food: foodOf(newest), name: newest.name, judged }] : [];
    })
    .sort((a, b) => (lastOf(a) < lastOf(b) ? 1 : -1));
}

/** The food of a trial. A number of the tables is its own id there. */
export function foodOf({ food, name }: Trial): NamedFood {
  return { id: food, name };
}

function lastOf({ judged }: TriedFood): string {
  const { days, offerings, id } = judged.trials.at(-1) ?? judged.by;
  return `${[...days, ...offerings.map((o) => o.on)].sort().at(-1) ?? '9999'} ${id}`;
}

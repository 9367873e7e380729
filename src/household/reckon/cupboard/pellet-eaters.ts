/** Who eats of a food that is fed from the pack, and how much of it a day. */
import { feedingOf } from '../../../kitchen/feeding/feeding.ts';
import type { Day } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import type { Animal, Household } from '../../model.ts';
import { type PresentBatch, presentOf } from '../batch/present-batch.ts';
import type { Circumstances } from '../calendar/circumstances.ts';

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
export function pelletEaters(
  house: Household,
  food: string,
  under: PackCircumstances,
): readonly PelletEater[] {
  return onDay(eatersOn, house, under, eatersByFood).get(food) ?? [];
}

/** The lists on which it rests what is being fed. */
type Fed = Pick<Household, 'animals' | 'mixes' | 'batches' | 'lots' | 'dryingRuns' | 'foods'>;

/** A place for what follows from these lists, day by day. */
export function fedPlace<Answer>() {
  return remembered(
    (
      _animals: Fed['animals'],
      _mixes: Fed['mixes'],
      _batches: Fed['batches'],
      _lots: Fed['lots'],
      _dryingRuns: Fed['dryingRuns'],
      _foods: Fed['foods'],
      _dayAt: object,
      _chosenFor: object,
    ) => new Map<Day, Answer>(),
  );
}

/**
 * What follows from what is being fed on a day, worked out once: several foods, packs and animals of one page ask for it.
 * @param kept a place for it @param work reads no other lists of the household
 */
export function onDay<Answer>(
  kept: ReturnType<typeof fedPlace<Answer>>,
  house: Household,
  under: PackCircumstances,
  work: (house: Household, under: PackCircumstances & Pick<Circumstances, 'chosenFor'>) => Answer,
): Answer {
  const chosenFor = under.chosenFor ?? asWritten;
  const { animals, mixes, batches, lots, dryingRuns, foods } = house;
  const days = kept(animals, mixes, batches, lots, dryingRuns, foods, under.dayAt, chosenFor);
  const known = days.get(under.today);
  if (known !== undefined) return known;
  const answer = work(house, { ...under, chosenFor });
  days.set(under.today, answer);
  return answer;
}

const asWritten: Circumstances['chosenFor'] = () => undefined;

type Eaters = ReadonlyMap<string, readonly PelletEater[]>;

const eatersOn = fedPlace<Eaters>();

function eatersByFood(house: Household, under: PackCircumstances & Pick<Circumstances, 'chosenFor'>): Eaters {
  const eaters = new Map<string, PelletEater[]>();
  const present = new Map(house.mixes.map((mix) => [mix.id, presentOf(house, mix, under)]));
  for (const animal of house.animals) {
    const problem = problemFor(house, animal, present);
    if (!problem) continue;
    const shares = under.chosenFor(problem);
    const [meal] = feedingOf({
      problem,
      animals: [animal],
      grams: 0,
      from: under.today,
      ...(shares && { shares }),
    }).animals;
    for (const { food, grams } of meal?.beside ?? []) {
      const eater = { animal, ...(grams !== undefined && { grams }) };
      const there = eaters.get(food);
      if (there) there.push(eater);
      else eaters.set(food, [eater]);
    }
  }
  return eaters;
}

function problemFor(
  house: Household,
  animal: Animal,
  present: ReadonlyMap<string, PresentBatch | undefined>,
) {
  const mixes = house.mixes.filter((m) => m.animalIds.includes(animal.id));
  const [fed] = mixes
    .flatMap((mix) => present.get(mix.id) ?? [])
    .filter(({ batch }) => batch.animalIds.includes(animal.id))
    .sort((a, b) => ((a.batch.finishedAt ?? '') < (b.batch.finishedAt ?? '') ? 1 : -1));
  if (fed) return fed.batch.problem;
  return mixes.toSorted((a, b) => (a.updatedAt < b.updatedAt ? 1 : -1))[0]?.problem;
}

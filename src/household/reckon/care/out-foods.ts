/**
 * Which foods are out of which mixes: the one home of that rule.
 *
 * Out of the mixes of one animal is what its own list of refusals names, and what its trials say it refuses: either is
 * enough, and the list is the keeper's word, which no trial takes back. Out of every mix is what upset any animal of the
 * household in a trial, in all its forms; where the keeper went ahead for the others, with a reason, it is out of the mixes
 * of that animal alone. Each holds under every id of the food. What an animal refuses binds while it lives here; what upset one
 * stays out after that too, until the keeper goes ahead.
 */
import { remembered } from '../../../kitchen/remembered.ts';
import type { Animal, Household, Mix } from '../../model.ts';
import { alike, isMarked, type Marks, type NamedFood } from '../foods/alike.ts';
import { sameProblems } from '../foods/same-problems.ts';
import { hereAmong } from './here.ts';
import { foodOf, triedFoods } from './trials-of.ts';

type Kept = Pick<Household, 'animals' | 'trials' | 'foods' | 'mixes' | 'batches' | 'kitchen'>;

export interface OutRule extends Marks {
  /** The animal that refuses it, or that it upset. */
  readonly animal: { readonly id: string; readonly name: string };
  /** The keeper's list, or the verdict of a trial. */
  readonly why: 'list' | 'refused' | 'upset';
  /** The food, as the list or the trial names it. */
  readonly food: string;
  readonly name: string;
  /** Id of the trial by which it is out. */
  readonly trial?: string;
  /** The keeper feeds it to other animals all the same. */
  readonly others?: { readonly note: string; readonly on: string };
}

/** Every rule that keeps a food out of some mix, in the order of the animals. */
export function outRules(house: Kept): readonly OutRule[] {
  const { animals, trials, foods, kitchen } = house;
  const { mixes, batches } = sameProblems(house);
  return worked(animals, trials, foods, mixes, batches, kitchen);
}

const worked = remembered(
  (
    animals: Household['animals'],
    trials: Household['trials'],
    foods: Household['foods'],
    mixes: Household['mixes'],
    batches: Household['batches'],
    kitchen: Household['kitchen'],
  ): readonly OutRule[] => {
    const house = { trials, foods, mixes, batches, kitchen };
    const { marksOf, inAllForms, known } = alike(house);
    return animals.flatMap(({ id, name, refuses }) => {
      const animal = { id, name };
      const listed = refuses.map(
        (food): OutRule => ({
          animal,
          why: 'list',
          food,
          name: known({ id: food }).name ?? food,
          ...marksOf({ id: food }),
        }),
      );
      const tried = triedFoods(house, animal).flatMap(({ judged: { is, by } }): OutRule[] => {
        if (is !== 'refused' && is !== 'upset') return [];
        const food = foodOf(by);
        return [
          {
            animal,
            why: is,
            food: food.id,
            name: by.name,
            trial: by.id,
            ...(is === 'upset' && by.others && { others: by.others }),
            ...(is === 'upset' ? inAllForms(food) : marksOf(food)),
          },
        ];
      });
      return [...listed, ...tried];
    });
  },
);

/** What one animal does not eat, or must not: by its list, and by its trials. */
export function refusedBy(house: Kept, animal: Pick<Animal, 'id'>): OutRule[] {
  return outRules(house).filter((r) => r.animal.id === animal.id);
}

/** Those of the rules that bind a mix: of its animals that live here, and upsets that are not let be for the others. */
export function bindingOn(house: Kept, { animalIds }: Pick<Mix, 'animalIds'>): OutRule[] {
  const fed = new Set(hereAmong(house.animals, animalIds).map((a) => a.id));
  return outRules(house).filter((r) => fed.has(r.animal.id) || (r.why === 'upset' && !r.others));
}

/** Those of the rules that a food falls under. */
export function rulesOn<R extends Marks>(rules: readonly R[], food: NamedFood): R[] {
  return rules.filter((r) => isMarked(food, r));
}

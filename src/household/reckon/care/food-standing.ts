/** How each food stands with each animal: liked, refused, upset, known, or never tried; why, and how sure that is. */
import type { Judged } from '../../../care/trials/judge.ts';
import { isRunning } from '../../../care/trials/plan.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Batch } from '../../../kitchen/model.ts';
import { remembered } from '../../../kitchen/remembered.ts';
import { CRUMB } from '../../../kitchen/tolerances.ts';
import type { Animal, Household, Mix } from '../../model.ts';
import { alike, isMarked, type NamedFood, ownMarks } from '../foods/alike.ts';
import { sameProblems } from '../foods/same-problems.ts';
import { hereAmong, isHere } from './here.ts';
import { type OutRule, outRules, refusedBy, rulesOn } from './out-foods.ts';
import { triedFoods } from './trials-of.ts';

type Standing = 'liked' | 'refused' | 'upset' | 'known' | 'untried';

export interface FoodStanding {
  readonly is: Standing;
  /**
   * By what: a verdict of trials, the keeper's list of refusals, a finished batch it was fed, that the keeper says it knows
   * the food, a trial in which it ate some of it; or a trial that has shown nothing yet, or nothing at all.
   */
  readonly by: 'trial' | 'list' | 'batch' | 'said' | 'tried' | 'trying' | 'nothing';
  /** What its trials of the food say, and how sure that is; absent where there are none. */
  readonly judged?: Judged;
}

/** How a food stands with an animal, whatever ids it has. */
export function foodStanding(house: Household, animal: Animal, food: NamedFood): FoodStanding {
  const { trials, foods, batches, kitchen, animals } = house;
  return standings(
    animal,
    trials,
    foods,
    sameProblems(house).mixes,
    batches,
    kitchen,
    animals,
  )(alike(house).known(food));
}

const standings = remembered(
  (
    animal: Animal,
    trials: Household['trials'],
    foods: Household['foods'],
    mixes: Household['mixes'],
    batches: Household['batches'],
    kitchen: Household['kitchen'],
    animals: Household['animals'],
  ): ((food: NamedFood) => FoodStanding) => {
    const house = { trials, foods, mixes, batches, kitchen, animals };
    const { marksOf } = alike(house);
    const marks = (all: readonly NamedFood[]) => new Set(all.flatMap((f) => marksOf(f).marks));
    const tried = triedFoods(house, animal).map((t) => ({ ...t, ...marksOf(t.food) }));
    const out = refusedBy(house, animal);
    const said = marks((animal.knows ?? []).map((id) => ({ id })));
    const fed = marks(fedTo(batches).flatMap((f) => (f.animals.has(animal.id) ? [f.food] : [])));
    return (food) => {
      const own = ownMarks(food);
      const judged = tried.find((t) => isMarked(food, t))?.judged;
      const answer = (is: Standing, by: FoodStanding['by']): FoodStanding => ({
        is,
        by,
        ...(judged && { judged }),
      });
      const because = new Set(rulesOn(out, food).map((r) => r.why));
      if (because.has('upset')) return answer('upset', 'trial');
      if (because.has('refused')) return answer('refused', 'trial');
      if (because.has('list')) return answer('refused', 'list');
      if (judged?.is === 'liked') return answer('liked', 'trial');
      if (own.some((m) => said.has(m))) return answer('known', 'said');
      if (own.some((m) => fed.has(m))) return answer('known', 'batch');
      if (judged && judged.verdict.evidence.eaten > 0) return answer('known', 'tried');
      return answer('untried', judged ? 'trying' : 'nothing');
    };
  },
);

/** Foods of finished batches, each once, with the animals that were fed it. */
const fedTo = remembered(
  (batches: Household['batches']): { readonly food: NamedFood; readonly animals: ReadonlySet<string> }[] => {
    const fed = new Map<string, { food: NamedFood; animals: Set<string> }>();
    for (const batch of batches) {
      if (batch.finishedAt === undefined || batch.givenUp) continue;
      for (const { food, key } of namedIn(batch)) {
        const there = fed.get(key) ?? { food, animals: new Set<string>() };
        for (const animal of batch.animalIds) there.animals.add(animal);
        fed.set(key, there);
      }
    }
    return [...fed.values()];
  },
);

/** What a batch is fed with, by what its foods are called; batches hardly change once they are finished. */
const namedIn = remembered((batch: Batch): { readonly food: NamedFood; readonly key: string }[] =>
  [...pouredIn(batch), ...besideOf(batch)].map(({ id, ref, name }) => {
    const food = { id, ...(ref !== undefined && { ref }), ...(name !== undefined && { name }) };
    return { food, key: JSON.stringify(food) };
  }),
);

/** Foods that lie in a batch. */
function pouredIn({ problem, pours }: Batch): readonly Ingredient[] {
  const grams = new Map<string, number>();
  for (const pour of pours) grams.set(pour.food, (grams.get(pour.food) ?? 0) + pour.grams);
  return problem.foods.filter((f) => (grams.get(f.id) ?? 0) > CRUMB);
}

function besideOf({ problem }: Batch): Batch['problem']['beside'] {
  return problem.beside.filter((b) => b.share_of_ration > 0);
}

/** Foods of a mix that an animal of it was never offered: no trial, no batch, and the keeper did not say that it knows them. */
export interface NeverTried {
  readonly animal: Animal;
  readonly foods: readonly { readonly food: Ingredient; readonly trying: boolean }[];
}

/** By animal that lives here; those that know every food of the mix are left out. @param mix with what its animals bring */
export function neverTried(house: Household, mix: Pick<Mix, 'animalIds' | 'problem'>): NeverTried[] {
  return house.animals
    .filter((a) => mix.animalIds.includes(a.id) && isHere(a))
    .flatMap((animal) => {
      const foods = mix.problem.foods.flatMap((food) => {
        if (food.refused) return [];
        const { is, judged } = foodStanding(house, animal, food);
        // Offered and left, or carried off, it is not known yet, but it was tried.
        if (is !== 'untried' || judged?.trials.some((t) => t.offerings.length > 0)) return [];
        return [{ food, trying: judged?.trials.some(isRunning) ?? false }];
      });
      return foods.length > 0 ? [{ animal, foods }] : [];
    });
}

/** A food of a batch that upset an animal in a trial. */
export interface UpsetFood {
  /** Its id in the batch. */
  readonly food: string;
  readonly name: string;
  readonly animal: OutRule['animal'];
  /** Id of the trial. */
  readonly trial: string;
  /** The batch is fed to that very animal. */
  readonly own: boolean;
}

/**
 * Foods in a batch, in what is still to be poured into it, or fed beside it, that upset an animal of the household. What
 * the keeper gives to others all the same, with a reason, is not among them unless the animal itself is fed the batch.
 * A batch that was weighed stays as it is: this says that it had better not be fed.
 */
export function upsetInBatch(house: Household, batch: Batch): UpsetFood[] {
  const poured = new Set(pouredIn(batch).map((f) => f.id));
  const coming = (id: string) => batch.finishedAt === undefined && (batch.shares[id] ?? 0) > 0;
  const inIt = [...batch.problem.foods.filter((f) => poured.has(f.id) || coming(f.id)), ...besideOf(batch)];
  const upset = outRules(house).filter((r) => r.why === 'upset');
  const fed = new Set(hereAmong(house.animals, batch.animalIds).map((a) => a.id));
  return inIt.flatMap((food) =>
    rulesOn(upset, alike(house).known(food)).flatMap((r): UpsetFood[] => {
      const own = fed.has(r.animal.id);
      if (r.trial === undefined || (!own && r.others)) return [];
      return [{ food: food.id, name: food.name ?? r.name, animal: r.animal, trial: r.trial, own }];
    }),
  );
}

/** Why a trial of a food may not begin now; undefined where it may. */
export type NoTrial =
  | { readonly why: 'running'; readonly trial: Household['trials'][number] }
  | { readonly why: 'upset'; readonly trial: Household['trials'][number] }
  | { readonly why: 'gone' };

/** One new food at a time, none that upset the animal, and none for an animal that is gone. */
export function noTrialOf(house: Household, animal: Animal, food?: NamedFood): NoTrial | undefined {
  if (!isHere(animal)) return { why: 'gone' };
  const running = house.trials.find((t) => t.animalId === animal.id && isRunning(t));
  if (running) return { why: 'running', trial: running };
  if (!food) return undefined;
  const upset = rulesOn(
    refusedBy(house, animal).filter((r) => r.why === 'upset'),
    alike(house).known(food),
  )[0];
  const trial = upset && house.trials.find((t) => t.id === upset.trial);
  return trial && { why: 'upset', trial };
}

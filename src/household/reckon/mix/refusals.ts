/** What an animal refuses, what it may be said to refuse, and the mixes that lose it. */
import type { Animal, Household, Mix } from '../../model.ts';

/** The mixes made for the animal. */
export function mixesOf(mixes: readonly Mix[], animalId: string): Mix[] {
  return mixes.filter((m) => m.animalIds.includes(animalId));
}

interface RefusableFood {
  readonly id: string;
  readonly name: string;
  /** The animal's mixes that name it, and so lose it. */
  readonly mixes: readonly Mix[];
}

/** Foods of the animal's mixes, then the keeper's own foods for a mix: what it may be said to refuse. By name. */
export function refusableFoods(house: Household, animal: Animal): RefusableFood[] {
  const mixes = mixesOf(house.mixes, animal.id);
  const named = [
    ...mixes.flatMap((m) => m.problem.foods.map((f) => [f.id, f.name ?? f.id] as const)),
    ...house.foods.filter((f) => f.kind === 'mix').map((f) => [f.id, f.name] as const),
  ];
  return [...new Map(named)]
    .map(([id, name]) => ({ id, name, mixes: mixesWith(mixes, id) }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en'));
}

/** What the animal refuses, in the order it was said; a food that nothing here names any more keeps its id for a name. */
export function refusedFoods(house: Household, animal: Animal): RefusableFood[] {
  const mixes = mixesOf(house.mixes, animal.id);
  const names = new Map([
    ...house.mixes.flatMap((m) => m.problem.foods.map((f) => [f.id, f.name ?? f.id] as const)),
    ...house.foods.map((f) => [f.id, f.name] as const),
  ]);
  return animal.refuses.map((id) => ({ id, name: names.get(id) ?? id, mixes: mixesWith(mixes, id) }));
}

function mixesWith(mixes: readonly Mix[], foodId: string): Mix[] {
  return mixes.filter((m) => m.problem.foods.some((f) => f.id === foodId));
}

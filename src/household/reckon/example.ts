/** The invented household that a first start shows: which of what is kept is its, and what goes when it goes. */
import type { Household, Mix } from '../model.ts';

/** Ids of the invented things; see `demo.ts`. */
export const EXAMPLE = { food: 'demo-pellet', animal: 'demo-animal', mix: 'demo-mix' } as const;

/** Parts of the example that are kept, to be taken away together and brought back as they were. */
export type ExampleParts = Pick<Household, 'foods' | 'animals' | 'mixes' | 'versions'>;

/** The example as far as it is kept and nothing of the keeper's own needs it; undefined where nothing of it is there. */
export function exampleIn(house: Household): ExampleParts | undefined {
  const mixes = house.mixes.filter((m) => m.id === EXAMPLE.mix);
  const animals = house.animals.filter((a) => a.id === EXAMPLE.animal && a.invented);
  const own = ownMixes(house);
  const used = (id: string) => own.some((m) => m.problem.beside.some((b) => b.id === id));
  const foods = house.foods.filter((f) => f.id === EXAMPLE.food && f.invented && !used(f.id));
  if (mixes.length + animals.length + foods.length === 0) return undefined;
  return { foods, animals, mixes, versions: house.versions.filter((v) => v.mixId === EXAMPLE.mix) };
}

/** The mixes that are the keeper's own. */
export function ownMixes(house: Pick<Household, 'mixes'>): readonly Mix[] {
  return house.mixes.filter((m) => m.id !== EXAMPLE.mix);
}

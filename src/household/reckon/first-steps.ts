/** How far a household has come on its way from nothing to a first mix. */
import type { Animal, Household, Mix } from '../model.ts';
import { EXAMPLE, exampleIn, ownMixes } from './example.ts';
import { isNew } from './new-household.ts';

export interface FirstSteps {
  /** The example alone is kept; or nothing is made yet; or the mix is on its way. */
  readonly stage: 'example' | 'start' | 'begun';
  /** The keeper's own first mix, where there is one. */
  readonly mix: Mix | undefined;
  /** Animals of the keeper's own: those of that mix, or any. */
  readonly animals: readonly Animal[];
  readonly pellet: boolean;
  readonly foods: boolean;
  /** Whether its shares were worked out once. */
  readonly made: boolean;
}

/** @param chosen the mix at hand */
export function firstSteps(house: Household, chosen: Mix | undefined): FirstSteps {
  const own = ownMixes(house);
  const mix = own.find((m) => m.id === chosen?.id) ?? own[0];
  const animals = house.animals.filter((a) => a.id !== EXAMPLE.animal);
  const eaters = animals.filter((a) => mix?.animalIds.includes(a.id));
  const pellet = mix !== undefined && mix.problem.beside.length > 0;
  const foods = mix !== undefined && mix.problem.foods.length > 0;
  const made = mix !== undefined && isMade(mix);
  const begun = own.length + animals.length > 0;
  const done = animals.length > 0 && pellet && made;
  const stage =
    !begun && exampleIn(house) && house.mixes.length > 0
      ? 'example'
      : isNew(house) && !done && own.length < 2
        ? 'start'
        : 'begun';
  return { stage, mix, animals: eaters.length > 0 ? eaters : animals, pellet, foods, made };
}

/** Whether a mix has shares: until it is made to fit for the first time it has none. */
export function isMade(mix: Mix): boolean {
  return Object.values(mix.shares).some((share) => share > 0);
}

/** The animals of a mix, as its formulation takes them. */

import { cautionSpecies } from '../../../care/animal/conditions.ts';
import { type Eater, type ForAnimals, forAnimals } from '../../../formulation/problem/for-animals.ts';
import { rulesFrom } from '../../../formulation/problem/rules-from-profile.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import type { Household, Mix } from '../../model.ts';
import { hereAmong } from '../care/here.ts';

/**
 * The eaters of a mix: those of its animals that live here. An animal with the target profile of the mix brings no rules of its own: the mix has them, and
 * the keeper may have loosened one there. Nor does a single animal: for it alone the mix's target is the keeper's choice.
 */
export function eatersOf(
  mix: Mix,
  animals: Household['animals'],
  profiles: readonly TargetProfile[],
): Eater[] {
  const fed = hereAmong(animals, mix.animalIds);
  return fed.map((animal) => {
    const { id, name, refuses, profileId } = animal;
    const same = fed.length === 1 || profileId === mix.profileId;
    const profile = same ? undefined : profiles.find((p) => p.id === profileId);
    return { id, name, species: cautionSpecies(animal), refuses, rules: profile ? rulesFrom(profile) : [] };
  });
}

/** The species of a mix and of its animals, in one text, as cautions read it; undefined without a mix. */
export function speciesFed(mix: Mix | undefined, animals: Household['animals']): string | undefined {
  return mix && forAnimals(mix.problem, eatersOf(mix, animals, [])).problem.species;
}

/** The one animal of a mix that follows another target than its own, and that target. */
export function otherTarget(
  mix: Mix,
  animals: Household['animals'],
  profiles: readonly TargetProfile[],
): { name: string; profile: TargetProfile } | undefined {
  const fed = hereAmong(animals, mix.animalIds);
  const animal = fed.length === 1 ? fed[0] : undefined;
  const profile = profiles.find((p) => p.id === animal?.profileId);
  return animal && profile && profile.id !== mix.profileId ? { name: animal.name, profile } : undefined;
}

/** The mix with what its animals bring: foods that one refuses are out, every other profile's rules are in. */
export function withAnimals(
  mix: Mix,
  eaters: readonly Eater[],
): { mix: Mix } & Pick<ForAnimals, 'refusedBy'> {
  const { problem, refusedBy } = forAnimals(mix.problem, eaters);
  if (problem === mix.problem) return { mix, refusedBy };
  const out = Object.keys(refusedBy);
  const shares = out.some((id) => mix.shares[id]) ? { ...mix.shares, ...zero(out) } : mix.shares;
  return { mix: { ...mix, problem, shares, held: mix.held.filter((id) => !refusedBy[id]) }, refusedBy };
}

function zero(ids: readonly string[]): Record<string, number> {
  return Object.fromEntries(ids.map((id) => [id, 0]));
}

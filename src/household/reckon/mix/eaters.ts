/** The animals of a mix, as its formulation takes them, and what is out of it because of them. */
import { cautionSpecies } from '../../../care/animal/conditions.ts';
import { type Eater, forAnimals } from '../../../formulation/problem/for-animals.ts';
import type { Beside, Problem } from '../../../formulation/problem/problem.ts';
import { rulesFrom } from '../../../formulation/problem/rules-from-profile.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import type { Household, Mix } from '../../model.ts';
import { hereAmong } from '../care/here.ts';
import { bindingOn, type OutRule, rulesOn } from '../care/out-foods.ts';
import type { NamedFood } from '../foods/alike.ts';

/** What the animals of a household bring to a mix, whatever foods it comes to have; plain data. */
export interface Bringing {
  /** Without what they refuse: that is in `out`. */
  readonly eaters: readonly Eater[];
  readonly out: readonly OutRule[];
}

/** By id of the food, why it is out of the mix: one reason at least. */
export type OutOfMix = Readonly<Record<string, readonly OutRule[]>>;

/**
 * What is brought to a mix by those of its animals that live here, and by what upset any animal. An animal with the target
 * profile of the mix brings no rules of its own: the mix has them, and the keeper may have loosened one there. Nor does a
 * single animal: for it alone the mix's target is the keeper's choice.
 */
export function bringingOf(
  house: Household,
  mix: Pick<Mix, 'animalIds' | 'profileId'>,
  profiles: readonly TargetProfile[],
): Bringing {
  return { eaters: fedBy(mix, house.animals, profiles), out: bindingOn(house, mix) };
}

function fedBy(
  mix: Pick<Mix, 'animalIds' | 'profileId'>,
  animals: Household['animals'],
  profiles: readonly TargetProfile[],
): Eater[] {
  const fed = hereAmong(animals, mix.animalIds);
  return fed.map((animal): Eater => {
    const { id, name, profileId } = animal;
    const same = fed.length === 1 || profileId === mix.profileId;
    const profile = same ? undefined : profiles.find((p) => p.id === profileId);
    return {
      id,
      name,
      species: cautionSpecies(animal),
      refuses: [],
      rules: profile ? rulesFrom(profile) : [],
    };
  });
}

/** The eaters of a mix, each with the ids of those foods of it that are out for this animal. */
export function eatersOf(mix: Mix, { eaters, out }: Bringing): Eater[] {
  return eaters.map((eater) => {
    // What upset one is out for the others too.
    const own = out.filter((r) => r.animal.id === eater.id || r.why === 'upset');
    const refuses = mix.problem.foods.flatMap((f) => (rulesOn(own, f).length > 0 ? [f.id] : []));
    return { ...eater, refuses };
  });
}

/** The species of a mix and of its animals, in one text, as cautions read it; undefined without a mix. */
export function speciesFed(mix: Mix | undefined, animals: Household['animals']): string | undefined {
  return mix && forAnimals(mix.problem, fedBy(mix, animals, [])).problem.species;
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

/** The mix as it may be fed: with what the animals of the household bring to it. */
export function fedMix(house: Household, mix: Mix, profiles: readonly TargetProfile[]): Mix {
  return withAnimals(mix, bringingOf(house, mix, profiles)).mix;
}

/** A problem with what the animals of its mix bring, and what is out of it because of them. */
export interface Brought {
  readonly problem: Problem;
  readonly out: OutOfMix;
}

/**
 * The mix with what its animals bring: foods that are out have no share, every other profile's rules are in, and advice
 * names nothing that is out. What is fed beside the mix and is out has a share of 0 in the ration.
 */
export function withAnimals(mix: Mix, bringing: Bringing): { readonly mix: Mix; readonly out: OutOfMix } {
  const brought = broughtTo(mix.problem, bringing);
  return { mix: withBrought(mix, brought), out: brought.out };
}

/** What {@link withAnimals} makes of a problem, whatever the shares: the problem itself where nothing is brought. */
export function broughtTo(problem: Problem, bringing: Bringing): Brought {
  const out = outOf(problem, bringing.out);
  return { problem: forAnimals(withoutOut(problem, out, bringing.out), bringing.eaters).problem, out };
}

/** The mix that {@link withAnimals} makes. @param brought to the problem of this mix */
export function withBrought(mix: Mix, { problem, out }: Brought): Mix {
  if (problem === mix.problem) return mix;
  const ids = problem.foods.flatMap((f) => (out[f.id] ? [f.id] : []));
  const shares = ids.some((id) => mix.shares[id]) ? { ...mix.shares, ...zero(ids) } : mix.shares;
  return { ...mix, problem, shares, held: mix.held.filter((id) => !out[id]) };
}

function outOf({ foods, beside }: Problem, rules: readonly OutRule[]): OutOfMix {
  return Object.fromEntries(
    [...foods, ...beside].flatMap((food: NamedFood) => {
      const on = rulesOn(rules, food);
      return on.length > 0 ? [[food.id, on]] : [];
    }),
  );
}

function withoutOut(problem: Problem, out: OutOfMix, rules: readonly OutRule[]): Problem {
  if (rules.length === 0) return problem;
  return {
    ...problem,
    foods: problem.foods.map((f) => (out[f.id] && !f.refused ? { ...f, refused: true } : f)),
    beside: problem.beside.map((b) => (out[b.id] ? notFed(b) : b)),
    not_offered: [...new Set(rules.flatMap((r) => r.tables))].sort(),
  };
}

/** In its place among what is fed beside, so that pointers stay valid. */
function notFed(food: Beside): Beside {
  const { grams_a_day: _, share_min: __, share_max: ___, ...rest } = food;
  return { ...rest, share_of_ration: 0 };
}

function zero(ids: readonly string[]): Record<string, number> {
  return Object.fromEntries(ids.map((id) => [id, 0]));
}

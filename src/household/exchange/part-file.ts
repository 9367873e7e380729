/**
 * One mix or one food as a small file for another keeper: with the own foods and the own target that the mix names,
 * without animals, cupboard, prices and what else is of the sender's household. See docs/export.md.
 */
import type { Aim, Beside, Ingredient, Problem } from '../../formulation/problem/problem.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { PROFILES } from '../../targets/profiles.ts';
import type { Household, Mix, OwnFood } from '../model.ts';
import { removeFood } from '../reckon/mix/mix-edits.ts';
import { canonicalJson } from './canonical-json.ts';
import { FORMAT_VERSION, PART_FORMAT } from './format.ts';

/** A mix as it goes to another keeper. */
export type SentMix = Pick<Mix, 'id' | 'name' | 'profileId' | 'problem' | 'shares'>;

export interface Part {
  readonly mix?: SentMix;
  readonly foods: readonly OwnFood[];
  /** The target that the mix names, where it is the sender's own. */
  readonly profile?: TargetProfile;
}

/** What a mix file holds. @throws RangeError where there is no such mix */
export function mixPart(
  { mixes, foods, profiles }: Pick<Household, 'mixes' | 'foods' | 'profiles'>,
  id: string,
): Part {
  const found = mixes.find((m) => m.id === id);
  if (!found) throw new RangeError(`no mix has the id "${id}"; it may have been deleted`);
  const mix = withoutRefused(found);
  const named = new Set([...mix.problem.foods, ...mix.problem.beside].map((f) => f.id));
  const profile = PROFILES.some((p) => p.id === mix.profileId)
    ? undefined
    : profiles.find((p) => p.id === mix.profileId);
  return {
    mix: {
      id: mix.id,
      name: mix.name,
      profileId: mix.profileId,
      problem: sentProblem(mix.problem),
      shares: mix.shares,
    },
    foods: foods.filter((f) => named.has(f.id)).map(sentFood),
    ...(profile && { profile: sentProfile(profile) }),
  };
}

/** What a food file holds. @throws RangeError where there is no such food */
export function foodPart({ foods }: Pick<Household, 'foods'>, id: string): Part {
  const food = foods.find((f) => f.id === id);
  if (!food) throw new RangeError(`no food has the id "${id}"; it may have been deleted`);
  return { foods: [sentFood(food)] };
}

export function partFile(part: Part): string {
  return `${canonicalJson({ format: PART_FORMAT, version: FORMAT_VERSION, ...part })}\n`;
}

/** What one animal refuses is no matter of another keeper's. */
function withoutRefused(mix: Mix): Mix {
  return mix.problem.foods.filter((f) => f.refused).reduce((m, f) => removeFood(m, f.id), mix);
}

function sentFood({ pricePerKg: _price, ...food }: OwnFood): OwnFood {
  return food;
}

/** That the sender compared a figure with its publication is no confirmation by whom it comes to. */
function sentProfile(profile: TargetProfile): TargetProfile {
  return { ...profile, bounds: profile.bounds.map(({ confirmed: _theirs, ...bound }) => bound) };
}

/** Aims that need the cupboard, the animal or prices. */
const AT_HOME: readonly Aim['aim'][] = ['liked', 'cupboard', 'few to buy', 'cheap'];

function sentProblem({
  daily_grams: _grams,
  aims,
  objective,
  foods,
  beside,
  rules,
  ...problem
}: Problem): Problem {
  const kept = aims?.filter((a) => !AT_HOME.includes(a.aim)) ?? [];
  return {
    ...problem,
    objective: objective === 'cheapest' ? 'nearest' : objective,
    ...(kept.length > 0 && { aims: kept }),
    foods: foods.map(sentIngredient),
    beside: beside.map(sentBeside),
    rules: rules.map((r) =>
      'source' in r && r.source
        ? { ...r, source: r.source.replace(/; confirmed by the keeper against .*$/s, '') }
        : r,
    ),
  };
}

function sentIngredient({
  refused: _no,
  liked: _liked,
  on_hand_grams: _held,
  price_per_kg: _price,
  ...food
}: Ingredient): Ingredient {
  return food;
}

function sentBeside({ grams_a_day: _grams, ...beside }: Beside): Beside {
  return beside;
}

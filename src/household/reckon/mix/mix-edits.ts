/** Changes to a mix, each as a function from one version to the next. */
import { lenders } from '../../../foods/evidence.ts';
import { FOOD_GROUPS, type FoodGroup } from '../../../foods/food.ts';
import { printedTexts } from '../../../foods/printed-texts.ts';
import type { ReferenceFood } from '../../../foods/reference.ts';
import type { Beside, GroupRule, Ingredient, Problem, Rule } from '../../../formulation/problem/problem.ts';
import { rulesFrom } from '../../../formulation/problem/rules-from-profile.ts';
import type { Moment } from '../../../kitchen/model.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import { words } from '../../../words/words.ts';
import type { Mix, OwnFood } from '../../model.ts';

export function withProblem(mix: Mix, patch: Partial<Problem>): Mix {
  return { ...mix, problem: { ...mix.problem, ...patch } };
}

export function patchFood(mix: Mix, id: string, patch: Partial<Ingredient>): Mix {
  return withProblem(mix, { foods: mix.problem.foods.map((f) => (f.id === id ? { ...f, ...patch } : f)) });
}

/** Adds a food at share 0; a food already in the mix is left as it stands. */
export function addFood(mix: Mix, food: Ingredient): Mix {
  if (mix.problem.foods.some((f) => f.id === food.id || (f.ref && f.ref === food.ref))) return mix;
  return {
    ...withProblem(mix, { foods: [...mix.problem.foods, food] }),
    shares: { ...mix.shares, [food.id]: 0 },
  };
}

/** Takes a food out of the mix, and with it every rule and wish about it. */
export function removeFood(mix: Mix, id: string): Mix {
  const { [id]: _gone, ...shares } = mix.shares;
  const { foods, rules, aims } = mix.problem;
  const others = aims?.filter((a) => !('food' in a) || a.food !== id);
  return {
    ...withProblem(mix, {
      foods: foods.filter((f) => f.id !== id),
      rules: rules.filter((r) => !('food' in r) || r.food !== id),
      ...(others?.length === aims?.length ? {} : { aims: others?.length ? others : undefined }),
    }),
    shares,
    held: mix.held.filter((h) => h !== id),
  };
}

export function refuse(mix: Mix, id: string, refused: boolean): Mix {
  const next = patchFood(mix, id, { refused: refused || undefined });
  return refused
    ? { ...next, shares: { ...mix.shares, [id]: 0 }, held: mix.held.filter((h) => h !== id) }
    : next;
}

export function hold(mix: Mix, id: string, held: boolean): Mix {
  return { ...mix, held: held ? [...mix.held, id] : mix.held.filter((h) => h !== id) };
}

/** Whether a rule is the one that bounds the water of the mix, so that it keeps; no target profile brings it. */
export function isDryRule(rule: Rule): boolean {
  return 'nutrient' in rule && rule.nutrient === 'WATER' && rule.on === 'mix' && rule.min === undefined;
}

/**
 * Rewrites the nutrient and ratio rules from a profile, limits that the keeper made their own among them; rules about
 * groups, shares and numbers of foods stay, and that the mix is dry enough to keep.
 */
export function withProfile(mix: Mix, profile: TargetProfile): Mix {
  const kept = mix.problem.rules.filter((r) => 'group' in r || 'food' in r || 'count' in r || isDryRule(r));
  return {
    ...withProblem(mix, {
      rules: [...rulesFrom(profile), ...kept],
      own_limits: undefined,
      species: mix.problem.species ?? profile.species,
    }),
    profileId: profile.id,
  };
}

/** Sets the window of a group; with neither bound the rule goes. */
export function withGroupWindow(mix: Mix, group: string, min?: number, max?: number): Mix {
  const isIt = (r: Rule): r is GroupRule => 'group' in r && r.group === group && (r.on ?? 'mix') === 'mix';
  const rules = mix.problem.rules;
  const free = min === undefined && max === undefined;
  if (free) return withProblem(mix, { rules: rules.filter((r) => !isIt(r)) });
  const changed = rules.some(isIt)
    ? rules.map((r) => (isIt(r) ? { ...r, min, max } : r))
    : [...rules, { group, min, max }];
  return withProblem(mix, { rules: changed });
}

/** The problem with every held food's bounds drawn together on its share. */
export function withHolds(mix: Mix): Problem {
  const held = new Set(mix.held);
  const fixed = (f: Ingredient) => ({ ...f, min: mix.shares[f.id] ?? 0, max: mix.shares[f.id] ?? 0 });
  return {
    ...mix.problem,
    foods: mix.problem.foods.map((f) => (held.has(f.id) && !f.refused ? fixed(f) : f)),
  };
}

/** Leaves one rule out, by its place in the list: one that the keeper asked, and no limit of the animal's target. */
export function withoutRule(mix: Mix, index: number): Mix {
  return withProblem(mix, { rules: mix.problem.rules.filter((_, i) => i !== index) });
}

export function heldShares(mix: Mix): Record<string, number> {
  return Object.fromEntries(mix.held.map((id) => [id, mix.shares[id] ?? 0]));
}

/** A mix stays as far from the bounds as a confidence of this, where its foods allow (common practice, no source). */
export const MARGIN = 0.9;

export function ingredientFromReference(food: Pick<ReferenceFood, 'ref' | 'name' | 'group'>): Ingredient {
  return { id: food.ref.replace(/[^A-Za-z0-9]+/g, '-'), name: food.name, ref: food.ref, group: food.group };
}

export function ingredientFromOwn(food: OwnFood): Ingredient {
  return { id: food.id, ...figuresIn(food), group: food.group, price_per_kg: food.pricePerKg };
}

export function besideFromOwn(food: OwnFood, share: number): Beside {
  return { id: food.id, ...figuresIn(food), share_of_ration: share };
}

/** What a mix copies of a food of the keeper's own. */
function figuresIn(
  food: OwnFood,
): Pick<Ingredient, 'name' | 'composition' | 'sd' | 'low' | 'high' | 'borrowed' | 'ingredients'> {
  const { name, composition, sd, low, high } = food;
  const borrowed = lenders(food);
  const ingredients = printedTexts(food.evidence);
  return {
    name,
    composition,
    sd,
    low,
    high,
    borrowed: Object.keys(borrowed).length > 0 ? borrowed : undefined,
    ingredients: ingredients.length > 0 ? ingredients : undefined,
  };
}

/** Brings an edited food of the keeper's into a mix that uses it, as ingredient or as pellet. */
export function refreshOwnFood(mix: Mix, food: OwnFood): Mix {
  const figures = figuresIn(food);
  return withProblem(mix, {
    foods: mix.problem.foods.map((f) => (f.id === food.id ? { ...f, ...figures, group: food.group } : f)),
    beside: mix.problem.beside.map((b) => (b.id === food.id ? { ...b, ...figures } : b)),
  });
}

export function usesOwnFood(mix: Mix, id: string): boolean {
  return mix.problem.foods.some((f) => f.id === id) || mix.problem.beside.some((b) => b.id === id);
}

/** The mix without a food of the keeper's own, in it and beside it. */
export function withoutOwnFood(mix: Mix, id: string): Mix {
  const without = mix.problem.foods.some((f) => f.id === id) ? removeFood(mix, id) : mix;
  return withProblem(without, { beside: without.problem.beside.filter((b) => b.id !== id) });
}

/** The mix with such a food again, as it stood in `before`; what else was changed meanwhile stays. */
export function withOwnFoodAgain(mix: Mix, before: Mix, id: string): Mix {
  if (usesOwnFood(mix, id)) return mix;
  const { foods, rules, aims, beside } = before.problem;
  const about = <T extends object>(list: readonly T[]) => list.filter((x) => 'food' in x && x.food === id);
  const wishes = about(aims ?? []);
  return {
    ...withProblem(mix, {
      foods: putBack(mix.problem.foods, foods, id),
      beside: putBack(mix.problem.beside, beside, id),
      rules: [...mix.problem.rules, ...about(rules)],
      ...(wishes.length > 0 && { aims: [...(mix.problem.aims ?? []), ...wishes] }),
    }),
    shares: id in before.shares ? { ...mix.shares, [id]: before.shares[id] ?? 0 } : mix.shares,
    held: before.held.includes(id) ? [...mix.held, id] : mix.held,
  };
}

/** A list with the one that was there before, at its place. */
function putBack<F extends { readonly id: string }>(
  now: readonly F[],
  before: readonly F[],
  id: string,
): F[] {
  const at = before.findIndex((f) => f.id === id);
  const food = before[at];
  return food ? [...now.slice(0, at), food, ...now.slice(at)] : [...now];
}

export function groupName(group: string): string {
  return FOOD_GROUPS[group as FoodGroup] ?? (group === OTHER ? words().foods.groups.other : group);
}
export const OTHER = 'other';

/** Foods by group, groups in their usual order, foods as added. */
export function foodsByGroup(foods: readonly Ingredient[]): [string, Ingredient[]][] {
  const groups = new Map<string, Ingredient[]>(Object.keys(FOOD_GROUPS).map((g) => [g, []]));
  for (const food of foods) {
    const group = food.group ?? OTHER;
    const members = groups.get(group);
    if (members) members.push(food);
    else groups.set(group, [food]);
  }
  return [...groups].filter(([, list]) => list.length > 0);
}

/**
 * An empty mix to begin with: no foods, the profile's rules, nothing fed beside it.
 * @param p.at the moment at which it is made
 */
export function newMix(p: {
  readonly id: string;
  readonly name: string;
  readonly profile: TargetProfile;
  readonly at: Moment;
}): Mix {
  const { id, name, profile, at } = p;
  return {
    id,
    name,
    animalIds: [],
    profileId: profile.id,
    problem: {
      foods: [],
      rules: rulesFrom(profile) as Rule[],
      beside: [],
      objective: 'nearest',
      confidence: 0,
      margin: MARGIN,
      variation: 'published',
      cautions: 'apply',
      species: profile.species,
      batch_grams: 300,
      scale_step_grams: 1,
    },
    shares: {},
    held: [],
    updatedAt: at,
  };
}

/** One base mix for several animals, as the keeper weighs it. */

import type { SharedMix } from '../../../formulation/advice/shared-base.ts';
import { type Eater, forOneOf } from '../../../formulation/problem/for-animals.ts';
import type { Problem } from '../../../formulation/problem/problem.ts';
import { largestRemainder } from '../../../formulation/solve/largest-remainder.ts';
import { withoutFloatNoise } from '../../../kitchen/rounding.ts';
import type { Animal, Mix } from '../../model.ts';

/**
 * The eaters of a mix with the rules that each has of its own. An animal with the mix's own target brings the nutrient
 * rules as they stand in the mix, loosened ones too; without them they would be taken for rules of the others alone.
 * @param eaters as `eatersOf` gives them: without rules for such an animal
 */
export function sharingEaters(mix: Mix, eaters: readonly Eater[], animals: readonly Animal[]): Eater[] {
  const own = mix.problem.rules.filter((r) => 'nutrient' in r || 'ratio' in r);
  const hasMixTarget = (id: string) => animals.find((a) => a.id === id)?.profileId === mix.profileId;
  return eaters.map((e) => (hasMixTarget(e.id) ? { ...e, rules: own } : e));
}

/** One thing to add for one animal. */
interface WeighedAddition {
  /** Id of the food. */
  readonly food: string;
  /** Grams to 100 g of base. */
  readonly per100: number;
  /** Grams to the whole batch of base. */
  readonly inBatch: number;
  /** The same in whole steps of the scale, one step at least. */
  readonly weighed: number;
}

export interface WeighedPortion {
  readonly id: string;
  readonly name: string;
  readonly additions: readonly WeighedAddition[];
  /** Whether a weight had to be rounded to the scale. */
  readonly rounded: boolean;
  /** Percent by food id of base and additions as weighed, 100 in all. */
  readonly sharesAsWeighed: Readonly<Record<string, number>>;
}

interface WeighedSharing {
  /** Grams of each food in the batch of base, whole steps of the scale; foods that weigh something. */
  readonly base: Readonly<Record<string, number>>;
  readonly portions: readonly WeighedPortion[];
}

/** What to weigh: the batch of base, and for each animal what is added to such a batch. */
export function weighSharing(shared: SharedMix, problem: Problem): WeighedSharing {
  const base = inSteps(shared.base, problem.batch_grams, problem.scale_step_grams);
  return { base, portions: shared.animals.map((animal) => portionAt(animal, problem, base, [])) };
}

/** Most further tries for an animal: each is one question to the worker. */
const TRIES = 80;

/** Most steps of the scale that an addition may be off what was worked out. */
const OFF = [0, 1, -1, 2, -2, 3];

/**
 * The portion of one animal in steps near the additions worked out, the nearest first: one of them may keep a rule that
 * rounding to the nearest steps breaks.
 * @param animal its place among the animals of the shared mix
 * @throws RangeError where there is no such animal
 */
export function portionsNear(shared: SharedMix, problem: Problem, animal: number): WeighedPortion[] {
  const base = inSteps(shared.base, problem.batch_grams, problem.scale_step_grams);
  const eater = shared.animals[animal];
  if (!eater) throw new RangeError(`no animal ${animal} shares this mix`);
  const { length } = Object.keys(eater.additions);
  let offs: readonly (readonly number[])[] = [[]];
  const far = (off: readonly number[]) => off.reduce((sum, v) => sum + Math.abs(v), 0);
  for (let n = 0; n < length; n++)
    offs = offs
      .flatMap((off) => OFF.map((o) => [...off, o]))
      .sort((a, b) => far(a) - far(b))
      .slice(0, TRIES);
  return offs.map((off) => portionAt(eater, problem, base, off));
}

/** @param off steps of the scale that each addition is away from its nearest step; 0 where none is given */
function portionAt(
  { id, name, additions }: SharedMix['animals'][number],
  { batch_grams: batch, scale_step_grams: step }: Problem,
  base: WeighedSharing['base'],
  off: readonly number[],
): WeighedPortion {
  const rows = Object.entries(additions).map(([food, per100], k): WeighedAddition => {
    const inBatch = (per100 * batch) / 100;
    return {
      food,
      per100,
      inBatch,
      weighed: withoutFloatNoise(Math.max(1, Math.round(inBatch / step) + (off[k] ?? 0)) * step),
    };
  });
  const grams: Record<string, number> = { ...base };
  for (const { food, weighed } of rows) grams[food] = (grams[food] ?? 0) + weighed;
  const total = Object.values(grams).reduce((sum, g) => sum + g, 0);
  return {
    id,
    name,
    additions: rows,
    rounded: rows.some((r) => Math.abs(r.weighed - r.inBatch) > 1e-6),
    sharesAsWeighed: Object.fromEntries(Object.entries(grams).map(([food, g]) => [food, (100 * g) / total])),
  };
}

/** The problem of each animal by itself, in the order of the eaters. */
export function problemsApart(problem: Problem, eaters: readonly Eater[]): Problem[] {
  return eaters.map((e) => forOneOf(problem, e, eaters));
}

/** Whole steps by largest remainder: together as many as the batch holds. */
function inSteps(
  shares: Readonly<Record<string, number>>,
  batch: number,
  step: number,
): Record<string, number> {
  const total = Math.round(batch / step);
  const parts = Object.values(shares).map((share) => (share / 100) * total);
  const steps = largestRemainder(parts, total);
  return Object.fromEntries(
    Object.keys(shares).flatMap((id, k) => {
      const held = steps[k];
      return held !== undefined && held > 0 ? [[id, withoutFloatNoise(held * step)]] : [];
    }),
  );
}

/** One base mix for several animals, as the keeper reads and weighs it. */

import type { SharedMix, SharingCost } from '../../../../formulation/advice/shared-base.ts';
import { type Eater, forOneOf } from '../../../../formulation/problem/for-animals.ts';
import type { Problem } from '../../../../formulation/problem/problem.ts';
import { largestRemainder } from '../../../../formulation/solve/largest-remainder.ts';
import type { Animal, Mix } from '../../../../household/model.ts';

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
export interface AdditionRow {
  /** Id of the food. */
  readonly food: string;
  /** Grams to 100 g of base. */
  readonly per100: number;
  /** Grams to the whole batch of base. */
  readonly inBatch: number;
  /** The same in whole steps of the scale, one step at least. */
  readonly weighed: number;
}

export interface PortionView {
  readonly id: string;
  readonly name: string;
  readonly additions: readonly AdditionRow[];
  /** Whether a weight had to be rounded to the scale. */
  readonly rounded: boolean;
  /** Percent by food id of base and additions as weighed, 100 in all. */
  readonly sharesAsWeighed: Readonly<Record<string, number>>;
}

export interface SharingView {
  /** Grams of each food in the batch of base, whole steps of the scale; foods that weigh something. */
  readonly base: Readonly<Record<string, number>>;
  readonly portions: readonly PortionView[];
}

/** What to weigh: the batch of base, and for each animal what is added to such a batch. */
export function sharingView(shared: SharedMix, problem: Problem): SharingView {
  const base = inSteps(shared.base, problem.batch_grams, problem.scale_step_grams);
  return { base, portions: shared.animals.map((_, k) => portionAt(shared, problem, base, k, [])) };
}

/** Most further tries for an animal: each is one question to the worker. */
const TRIES = 80;
/** Most steps of the scale that an addition may be off what was worked out. */
const OFF = [0, 1, -1, 2, -2, 3];

/** The portion of one animal in steps near the additions worked out: the nearest first, where rounding breaks a rule. */
export function portionsNear(shared: SharedMix, problem: Problem, animal: number): PortionView[] {
  const base = inSteps(shared.base, problem.batch_grams, problem.scale_step_grams);
  const { length } = Object.keys(shared.animals[animal]!.additions);
  let offs: readonly (readonly number[])[] = [[]];
  const far = (off: readonly number[]) => off.reduce((sum, v) => sum + Math.abs(v), 0);
  for (let n = 0; n < length; n++)
    offs = offs
      .flatMap((off) => OFF.map((o) => [...off, o]))
      .sort((a, b) => far(a) - far(b))
      .slice(0, TRIES);
  return offs.map((off) => portionAt(shared, problem, base, animal, off));
}

/** @param off steps of the scale that each addition is away from its nearest step; 0 where none is given */
function portionAt(
  shared: SharedMix,
  { batch_grams: batch, scale_step_grams: step }: Problem,
  base: SharingView['base'],
  animal: number,
  off: readonly number[],
): PortionView {
  const { id, name, additions } = shared.animals[animal]!;

  const rows = Object.entries(additions).map(([food, per100], k): AdditionRow => {
    const inBatch = (per100 * batch) / 100;
    return {
      food,
      per100,
      inBatch,
      weighed: tidy(Math.max(1, Math.round(inBatch / step) + (off[k] ?? 0)) * step),
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

/** What sharing costs an animal, in a sentence. */
export function costWords({ different, dearer }: SharingCost): string {
  const price =
    dearer === undefined || Math.abs(dearer) < 0.005
      ? ''
      : `, and it is ${Math.abs(dearer).toFixed(2)} ${dearer > 0 ? 'dearer' : 'cheaper'} per kg`;
  if (different < 0.05) return `Its mix is as the best mix of its own would be${price}.`;
  return `${figure(different)} % of its mix is other food than in the best mix of its own${price}.`;
}

/** Whole steps by largest remainder: together as many as the batch holds. */
function inSteps(
  shares: Readonly<Record<string, number>>,
  batch: number,
  step: number,
): Record<string, number> {
  const total = Math.round(batch / step);
  const ids = Object.keys(shares);
  const parts = Object.values(shares).map((share) => (share / 100) * total);
  return Object.fromEntries(
    largestRemainder(parts, total).flatMap((steps, k) => (steps > 0 ? [[ids[k]!, tidy(steps * step)]] : [])),
  );
}

/** Without the dust of binary fractions: 3 steps of 0.1 g are 0.3 g. */
const tidy = (grams: number) => Number(grams.toPrecision(12));

/** Two decimals where they say something. */
export function figure(value: number): string {
  return String(Number(value.toFixed(value < 1 ? 2 : 1)));
}

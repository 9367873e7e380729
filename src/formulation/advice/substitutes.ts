/**
 * Foods that may take another's place with every rule kept, and how much of each.
 *
 * A swap takes out all of one food and gives another the share s, on top of what it has; the other foods keep their
 * proportions to each other and together take what is left of 100. The shares that keep everything are one span; the share proposed is the one in the span nearest to what was taken out.
 *
 * Counting rules (`count`) are not looked at.
 */

import type { Reference } from '../../foods/reference.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { isWhole } from '../explain/in-range.ts';
import type { Problem, Shares } from '../problem/problem.ts';
import type { Ration } from '../solve/bounds.ts';
import { NO_SHARE, SOLVER_TOLERANCE } from '../solve/tolerances.ts';
import { elementAt } from '../solve/vectors.ts';
import { ruledTags, type SwapModel, swapModelOf } from './swap-model.ts';
import { swapSentence } from './swap-sentence.ts';
import { spanOf } from './swap-span.ts';

/** Less than this of a food, percent, is neither swapped nor proposed. */
const SMALLEST = 0.005;
const PER_FOOD = 5;

export interface SubstituteQuestion {
  /** Most swaps named for a food: so many of the keeper's own foods, and as many of the tables. 5 unless given. */
  readonly perFood?: number;
  /** Ids of the foods to replace; all foods of the mix unless given. */
  readonly foods?: readonly string[];
}

interface SubstituteParts {
  readonly reference: Reference;
  /** What is fed beside the mix. */
  readonly beside: Ration['beside'];
}

/** One food in another's place. */
export interface Swap {
  /** Id of one of the problem's own foods; or else `ref`. */
  readonly id?: string;
  /** Reference number of a food of the tables. */
  readonly ref?: string;
  readonly name: string;
  readonly group?: string;
  /** Whether the mix holds it already; `share` then comes on top. */
  readonly inMix: boolean;
  /** What it takes, percent of the mix: the share in the span nearest to the one taken out. */
  readonly share: number;
  /** The span: with every share in it, and with none outside, all rules and bounds are kept. */
  readonly low: number;
  readonly high: number;
  /** Its share in the mix after the swap, percent. */
  readonly becomes: number;
  /** Ruled nutrients of it that nobody knows (own foods only): they count as the least they can be. */
  readonly unsure: readonly Tag[];
  readonly sentence: string;
}

export interface Substitutable {
  /** Id of the food. */
  readonly food: string;
  /** Its share, percent of the mix. */
  readonly share: number;
  /** Own foods first, then foods of the tables; the share nearest to the one taken out first. */
  readonly swaps: readonly Swap[];
  readonly sentence: string;
}

/**
 * What can replace each food of a mix.
 *
 * Candidates are the problem's own foods that are neither refused nor blocked by a caution, and the plain foods of the
 * tables that are dry enough, of which every ruled amount is known, and that the caution list neither blocks nor caps.
 * Where a confidence is asked, swapped mixes keep it.
 * @param shares percent by food id, 100 in all; a food that is not named counts as 0
 * @throws RangeError where the shares of foods that may be fed are not 100 in all, or a food asked for is none of them
 */
export function substitutes(
  problem: Problem,
  { reference, beside }: SubstituteParts,
  shares: Shares,
  { perFood = PER_FOOD, foods }: SubstituteQuestion = {},
): Substitutable[] {
  const model = swapModelOf(problem, reference, beside);
  const x = Float64Array.from(model.foods, (f, k) => (model.refs[k] ? 0 : (shares[f.id] ?? 0)));
  const total = x.reduce((sum, v) => sum + v, 0);
  if (!isWhole(total)) {
    throw new RangeError(
      `shares: the foods that may be fed add up to ${Number(total.toFixed(4))} %, not 100 %; balance the mix first`,
    );
  }
  for (const id of foods ?? []) {
    if (!model.foods.some((f, k) => f.id === id && !model.refs[k]))
      throw new RangeError(`foods: "${id}" is no food of the problem that may be fed; give one that is`);
  }
  const ruled = ruledTags(problem);
  const mix = [...x.keys()].filter((k) => elementAt(x, k) > NO_SHARE);
  // Foods that must be in and are not: no swap keeps the rules, unless it brings in the only one.
  const missing = [...x.keys()].filter(
    (k) => elementAt(x, k) <= NO_SHARE && elementAt(model.lower, k) > SOLVER_TOLERANCE,
  );
  return model.foods.flatMap((food, i): Substitutable[] => {
    const share = elementAt(x, i);
    if (model.refs[i] || share < SMALLEST || (foods && !foods.includes(food.id))) return [];
    const least = elementAt(model.lower, i);
    if (least > NO_SHARE) {
      const sentence = words().advice.swap.mustStay(food.name, least);
      return [{ food: food.id, share, swaps: [], sentence }];
    }
    const found = model.foods.flatMap((_, j): Found[] => {
      const barred = j === i || missing.some((k) => k !== j);
      const span = barred ? undefined : spanOf(model, x, mix, i, j);
      if (!span || span[1] < SMALLEST) return [];
      const proposed = Math.min(span[1], Math.max(span[0], share));
      return proposed < SMALLEST ? [] : [{ column: j, span, share: proposed }];
    });
    const first = (table: boolean) =>
      found
        .filter(({ column }) => (model.refs[column] !== undefined) === table)
        .sort((a, b) => nearer(model, i, share, a, b))
        .slice(0, perFood);
    const swaps = [...first(false), ...first(true)].map((f) => swapOf(model, x, i, f, ruled));
    const t = words().advice.swap;
    const sentence =
      swaps.length > 0
        ? t.can(
            food.name,
            share,
            swaps.slice(0, 3).map((s) => s.name),
          )
        : t.none(food.name);
    return [{ food: food.id, share, swaps, sentence }];
  });
}

/** Shares after a swap: all of `food` out, `share` percent more of `other`, the rest in their proportions. */
export function swapped(shares: Shares, food: string, other: string, share: number): Record<string, number> {
  const before = shares[other] ?? 0;
  const rest = Object.entries(shares).reduce(
    (sum, [id, v]) => sum + (id === food || id === other ? 0 : v),
    0,
  );
  const scale = rest > NO_SHARE ? (100 - before - share) / rest : 0;
  const out = Object.fromEntries(Object.entries(shares).map(([id, v]) => [id, v * scale]));
  if (food in out) out[food] = 0;
  out[other] = before + share;
  return out;
}

interface Found {
  readonly column: number;
  readonly span: readonly [number, number];
  readonly share: number;
}

/** Nearest share first; among those as near, of the same group first, then the one with the most room. */
function nearer({ foods }: SwapModel, i: number, share: number, a: Found, b: Found): number {
  const off = (f: Found) => Math.abs(f.share - share);
  const apart = off(a) - off(b);
  if (Math.abs(apart) > 1e-9) return apart;
  const alien = (f: Found) => (elementAt(foods, f.column).group === elementAt(foods, i).group ? 0 : 1);
  return alien(a) - alien(b) || b.span[1] - b.span[0] - (a.span[1] - a.span[0]);
}

function swapOf(model: SwapModel, x: Float64Array, i: number, found: Found, ruled: readonly Tag[]): Swap {
  const { foods, refs } = model;
  const { column, share } = found;
  const [low, high] = found.span;
  const food = elementAt(foods, column);
  const had = elementAt(x, column);
  const inMix = had > NO_SHARE;
  const unsure = ruled.filter((tag) => food.amount(tag).status === 'unknown');
  return {
    ...(refs[column] ? { ref: refs[column] } : { id: food.id }),
    name: food.name,
    ...(food.group === undefined ? {} : { group: food.group }),
    inMix,
    share,
    low,
    high,
    becomes: had + share,
    unsure,
    sentence: swapSentence({
      out: elementAt(foods, i).name,
      taken: elementAt(x, i),
      name: food.name,
      had: inMix ? had : undefined,
      share,
      low,
      high,
      unsure,
    }),
  };
}

/** What would mend a problem that no mix can solve: the least loosening of one bound, or one further food. */

import { foodName } from '../../foods/food-name.ts';
import type { Reference, ReferenceFood } from '../../foods/reference.ts';
import { words } from '../../words/words.ts';
import { hasCaution } from '../amounts/apply-cautions.ts';
import { type Elastic, KEPT } from '../explain/elastic.ts';
import { outwards } from '../explain/outwards.ts';
import { boundsContent } from '../problem/at-pointer.ts';
import type { Problem } from '../problem/problem.ts';
import type { Addition, Loosening, LooseningTogether } from '../problem/result.ts';
import type { LinearBound } from '../solve/bounds.ts';
import { answered } from '../solve/highs.ts';
import { elementAt } from '../solve/vectors.ts';
import { dryFoods, mayBeOffered } from './dry-foods.ts';
import { leastShares } from './price-foods.ts';

/** Foods named that keepers really use, and further ones of the tables. */
const MOST_USUAL = 5;
const MOST_FURTHER = 3;

/** Every single bound of the conflict whose loosening suffices, least relative change first. */
export function loosenings(elastic: Elastic, conflict: readonly number[]): Loosening[] {
  return conflict
    .filter((k) => k !== elastic.demands.wish && !elementAt(elastic.bounds, k).because)
    .flatMap((k) => loosen(elastic, k) ?? [])
    .sort((a, b) => change(a) - change(b));
}

/** How far a bound is moved, relative to what it was. */
export const change = ({ from, to }: Loosening) =>
  Math.abs(Number(to) - Number(from)) / Math.max(1, Math.abs(Number(from)));

/** Smallest loosening of one bound with all others kept, rounded outwards to figures a person can type. */
function loosen(elastic: Elastic, k: number): Loosening | undefined {
  const bound = elementAt(elastic.bounds, k);
  const reached = answered(() => elastic.reach(k));
  if (reached === undefined) return undefined;
  try {
    // A little wider where rounding met the edge.
    for (let digits = 4; digits <= 9; digits++) {
      const to = outwards(reached, bound.side, digits);
      if (!allowed(bound, to)) continue;
      elastic.rebound(k, to);
      if (elastic.possible(elastic.all)) return loosening(bound, to);
    }
    return undefined;
  } finally {
    elastic.rebound(k, bound.bound);
  }
}

/**
 * The least total loosening: several bounds each give way a little, together by less (relative to what they are) than
 * one of them alone. Once of what the keeper asks for, with the target as it is, and once of the target and of splits.
 * A bound that a caution set never gives way.
 */
export function loosenTogether(elastic: Elastic, problem: Problem): LooseningTogether[] {
  const isTarget = ({ pointer }: LinearBound) => boundsContent(problem, pointer);
  return [
    ...together(elastic, (s) => !isTarget(s)),
    ...together(elastic, (s) => !s.pointer.startsWith('/foods/')),
  ];
}

function together(elastic: Elastic, mayGive: (bound: LinearBound) => boolean): LooseningTogether[] {
  const { bounds } = elastic;
  const { wish } = elastic.demands;
  const rigid = new Set(bounds.flatMap((s, k) => (s.because || !mayGive(s) ? [k] : [])));
  if (wish !== undefined) rigid.add(wish);
  const weight = (k: number) => elastic.scaleOf(k) / Math.max(1, Math.abs(elementAt(bounds, k).bound));
  const widened = new Map<number, { readonly bound: LinearBound; readonly to: number }>();
  try {
    for (let round = 0; round < 10; round++) {
      const answer = answered(() => elastic.solve(rigid, weight));
      if (!answer) return [];
      const missed = [...bounds.entries()].filter(([k]) => elementAt(answer.missed, k) > KEPT);
      if (missed.length === 0) break;
      for (const [k, bound] of missed) {
        const to = outwards(elastic.tightest(k, answer.x), bound.side, 4);
        // The ratio of a mix without the second nutrient is no number that could be written.
        if (!Number.isFinite(to)) return [];
        if (!allowed(bound, to)) return [];
        widened.set(k, { bound, to });
        elastic.rebound(k, to);
      }
    }
  } finally {
    for (const [k, { bound }] of widened) elastic.rebound(k, bound.bound);
  }
  // One bound alone stands among the single loosenings already.
  if (widened.size < 2) return [];
  const moved = [...widened.values()];
  const changes = moved.map(({ bound, to }) => ({ pointer: bound.pointer, from: bound.bound, to }));
  const parts = moved.map(({ bound, to }) => loosenPart(bound, to));
  return [{ kind: 'loosen-together', changes, sentence: words().advice.allow(parts) }];
}

/** Whether the loosened bound may be written in the problem: shares and grams end at 100. */
export function allowed(bound: LinearBound, to: number): boolean {
  return bound.unit.startsWith('%') ? to <= 100 : true;
}

/** The remedy that moves one bound. @param to in the bound's unit */
export function loosening(bound: LinearBound, to: number): Loosening {
  return {
    kind: 'loosen',
    pointer: bound.pointer,
    from: bound.bound,
    to,
    sentence: words().advice.allow([loosenPart(bound, to)]),
  };
}

function loosenPart({ side, subject, unit, bound }: LinearBound, to: number): string {
  const t = words().advice;
  return (side === 'max' ? t.most : t.least)(subject, to, bound, unit);
}

/**
 * Foods, one of which would make the problem solvable: the best of those that keepers really use, and then of the plain
 * rest of the tables, each least share needed first. Only foods that are fed dry, of which every ruled amount is known,
 * and of which the caution list says nothing.
 * @param tried told how many foods have been tried, where a confidence makes that slow
 */
export function additions(
  elastic: Elastic,
  problem: Problem,
  reference: Reference,
  leastShare: (added: Addition) => number | undefined,
  tried?: (done: number, of: number) => void,
): Addition[] {
  const taken = new Set(problem.foods.map((f) => f.ref));
  const ruled = problem.rules.flatMap((r) =>
    'nutrient' in r ? [r.nutrient] : 'ratio' in r ? [...r.ratio] : [],
  );
  const ids = new Set([...problem.foods, ...problem.beside].map((f) => f.id));
  const offered = mayBeOffered(problem);
  const candidates = dryFoods(reference, problem.variation)
    // Advice must not rest on a missing figure.
    .filter(
      ({ food, amounts }) =>
        !taken.has(food.ref) &&
        offered(food) &&
        ruled.every((tag) => amounts.amount(tag).status !== 'unknown'),
    )
    .map(({ food, amounts }) => ({ food, content: elastic.contentOf(amounts) }));
  const allowed = (food: ReferenceFood) => !hasCaution(food.ref, problem, reference);
  const price = dearest(problem);
  const alone = (food: ReferenceFood) => leastShare(addition(food, 0, ids, price));
  const plain = candidates.filter(({ food }) => food.plain);
  const usual = leastShares(elastic, plain, MOST_USUAL, allowed, alone, tried);
  // With cones each trial is slow: then the foods that keepers use are enough.
  const others = elastic.hasCones ? [] : candidates.filter(({ food }) => !food.plain);
  const further = leastShares(elastic, others, MOST_FURTHER, allowed, alone, tried);
  return [...usual, ...further].map(({ food, share }) => addition(food, share, ids, price));
}

/** Where the cheapest mix is asked every food needs a price; a food not bought yet counts like the dearest one. */
export function dearest(problem: Problem): number | undefined {
  if (problem.objective !== 'cheapest') return undefined;
  return Math.max(...problem.foods.map((f) => f.price_per_kg ?? 0));
}

export function addition(
  food: ReferenceFood,
  least: number,
  ids: ReadonlySet<string>,
  price: number | undefined,
): Addition {
  const share = Number((Math.ceil(least * 100 + 1e-6) / 100).toFixed(2));
  const t = words().advice;
  const name = foodName(food);
  const id = ids.has(food.ref) ? `${food.ref}+` : food.ref;
  return {
    kind: 'add',
    sentence: price === undefined ? t.add(name, food.ref, share) : t.addPriced(name, food.ref, share, price),
    food: {
      id,
      ref: food.ref,
      name,
      group: food.group,
      ...(price === undefined ? {} : { price_per_kg: price }),
    },
    share,
  };
}

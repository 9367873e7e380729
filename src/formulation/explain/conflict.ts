/**
 * Why no mix can keep the rules: a smallest set of demands that collide. It is found by hitting sets: any colliding
 * set must meet the complement of every set that can be kept, so the smallest hitting set that cannot be kept is
 * a smallest conflict, and dropping any one of its members frees the rest.
 */

import { answered } from '../solve/highs.ts';
import { type Elastic, KEPT } from './elastic.ts';
import { cheapestHit } from './hitting-set.ts';

/** Rounds of hitting sets; after them a conflict is taken that is minimal but may not be the smallest. */
const MOST_ROUNDS = 120;

/** @returns positions in `elastic.demands`; empty when all can be kept together */
export function smallestConflict(elastic: Elastic): number[] {
  const { all } = elastic.demands;
  if (elastic.possible(new Set(all))) return [];
  const first = minimal(elastic, all);
  if (first.length <= 1) return first;
  // Food bounds count a trifle more, so that rules are named where either would do.
  const trifle = 1 / (2 * all.length + 2);
  const cost = all.map((k) => (isFoodBound(elastic, k) ? 1 + trifle : 1));
  const mustMeet: number[][] = [];
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const hit = cheapestHit(mustMeet, cost, first.length);
    if (!hit) return first;
    // Where the solver cannot tell, the conflict that is known stands.
    const tried = answered(() => ({ kept: keptWith(elastic, new Set(hit)) }));
    if (!tried) return first;
    const { kept } = tried;
    if (!kept) return minimal(elastic, hit);
    mustMeet.push(all.filter((k) => !kept.has(k)));
  }
  return first;
}

function minimal(elastic: Elastic, bounds: readonly number[]): number[] {
  const order = [...bounds].sort((a, b) => Number(isFoodBound(elastic, b)) - Number(isFoodBound(elastic, a)));
  return deletionFilter(order, (kept) => elastic.possible(new Set(kept)));
}

/**
 * Drops every member without which the rest still collide: what is left collides, and no part of it does.
 * @param order members in the order in which one would rather be rid of them; food bounds first, so that rules remain
 */
export function deletionFilter(
  order: readonly number[],
  possible: (kept: readonly number[]) => boolean,
): number[] {
  let kept = [...order];
  for (const k of order) {
    const rest = kept.filter((other) => other !== k);
    if (!possible(rest)) kept = rest;
  }
  return kept;
}

/** A large set of bounds, holding `required`, that can be kept together; undefined when `required` cannot. */
function keptWith(elastic: Elastic, required: ReadonlySet<number>): Set<number> | undefined {
  const answer = elastic.solve(required);
  if (!answer) return undefined;
  const kept = new Set<number>(required);
  answer.missed.forEach((miss, k) => {
    if (miss <= KEPT) kept.add(k);
  });
  for (const k of elastic.demands.all) {
    if (!kept.has(k) && elastic.possible(new Set([...kept, k]))) kept.add(k);
  }
  return kept;
}

function isFoodBound(elastic: Elastic, k: number): boolean {
  return elastic.bounds[k]?.pointer.startsWith('/foods/') === true;
}

/** What the looks of trials say, counted: how often a food was eaten, how often it was left, and how often nobody can say. */
import type { Offering } from '../model.ts';

/** Numbers of looks; parts of one where the food was weighed, or where an older trial counts less. Each 0 or more. */
export interface Evidence {
  readonly eaten: number;
  readonly left: number;
  /** Carried off: it may have been eaten later, or lie in the hoard. Neither eaten nor refused. */
  readonly unknown: number;
  /** One look at least showed that it did not do well. */
  readonly upset: boolean;
}

export const NO_EVIDENCE: Evidence = { eaten: 0, left: 0, unknown: 0, upset: false };

/** Anything of `a` and `b`, those of `b` counting as so much of a look. @param weight 0 to 1 */
export function together(a: Evidence, b: Evidence, weight = 1): Evidence {
  return {
    eaten: a.eaten + weight * b.eaten,
    left: a.left + weight * b.left,
    unknown: a.unknown + weight * b.unknown,
    upset: a.upset || b.upset,
  };
}

/** All looks of one trial together; in which order they came says nothing. */
export function evidenceOf(offerings: readonly Offering[]): Evidence {
  return offerings.reduce((sum, o) => together(sum, ofOne(o)), NO_EVIDENCE);
}

/**
 * One look counts as one. Where the food was weighed it counts by what was left: of 2 g of which 1.5 g lay there in the
 * morning, three quarters of a look say "left". What was carried off and is not there again is unknown, and an upset says
 * nothing of whether it likes the food.
 */
function ofOne({ seen, grams, left }: Offering): Evidence {
  if (seen === 'upset') return { ...NO_EVIDENCE, upset: true };
  const weighed = grams !== undefined && grams > 0 && left !== undefined;
  const there = weighed ? Math.min(1, Math.max(0, left / grams)) : seen === 'left' ? 1 : 0;
  const gone = 1 - there;
  return seen === 'hoarded'
    ? { ...NO_EVIDENCE, left: there, unknown: gone }
    : { ...NO_EVIDENCE, left: there, eaten: gone };
}

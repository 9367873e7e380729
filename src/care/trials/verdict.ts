/**
 * What trials say of a food, and how sure that is.
 *
 * How often an animal eats a food is a chance p that nobody knows. Before the first look every p counts alike (a uniform
 * prior, Beta(1, 1): nothing is taken for granted of the animal or the food). After `e` looks at which it was eaten and
 * `l` at which it was left, p follows Beta(1 + e, 1 + l). "Likes it" means that p is one half or more: it eats it at least
 * every second time. A verdict falls once that is 90 % sure, one way or the other (common practice, no source): never
 * after one look, and not before three looks that agree.
 *
 * Of what was carried off nobody knows whether it was eaten. Everything is therefore worked out twice, once with all of
 * it left and once with all of it eaten, and a verdict must hold both ways.
 */
import { betaBelow, betaQuantile } from './beta.ts';
import type { Evidence } from './evidence.ts';

/** How sure a verdict has to be (common practice, no source). */
export const SURE = 0.9;
/** Eaten at least so often is liked. */
const HALF = 0.5;
/** More further offers than this are not counted. */
const MOST_MORE = 50;

export type VerdictIs = 'liked' | 'refused' | 'undecided' | 'upset';

/** A value if what was carried off was all left, and if it was all eaten. */
export type Between = readonly [low: number, high: number];

export interface Verdict {
  readonly is: VerdictIs;
  /** Chance that it eats the food at least every second time, 0 to 1. */
  readonly chance: Between;
  /** How often it eats the food, in the mean, 0 to 1. */
  readonly mean: Between;
  /** 95 % span of how often it eats the food, 0 to 1: it holds both ways. */
  readonly span: Between;
  /** Least number of further offers that would settle it, if all of them are eaten, and if all are left. */
  readonly more: { readonly eaten: number; readonly left: number };
  readonly evidence: Evidence;
}

/** The verdict alone. */
export function verdictIs(evidence: Evidence): VerdictIs {
  return evidence.upset ? 'upset' : settled(chanceOf(evidence));
}

/** The verdict, how sure it is, and what more would settle it. */
export function verdictOn(evidence: Evidence): Verdict {
  const { eaten: e, left: l, unknown: u } = evidence;
  return {
    is: verdictIs(evidence),
    chance: chanceOf(evidence),
    mean: [(1 + e) / (2 + e + l + u), (1 + e + u) / (2 + e + l + u)],
    span: [betaQuantile(0.025, 1 + e, 1 + l + u), betaQuantile(0.975, 1 + e + u, 1 + l)],
    more: {
      eaten: least((k) => settled([likes(e + k, l + u), 1]) === 'liked'),
      left: least((k) => settled([0, likes(e + u, l + k)]) === 'refused'),
    },
    evidence,
  };
}

/** That it eats the food at least every second time. */
function chanceOf({ eaten, left, unknown }: Evidence): Between {
  return [likes(eaten, left + unknown), likes(eaten + unknown, left)];
}

/** Chance that it eats the food at least every second time. */
function likes(eaten: number, left: number): number {
  return 1 - betaBelow(HALF, 1 + eaten, 1 + left);
}

function settled([low, high]: Between): Exclude<VerdictIs, 'upset'> {
  if (low >= SURE) return 'liked';
  return high <= 1 - SURE ? 'refused' : 'undecided';
}

function least(enough: (more: number) => boolean): number {
  for (let k = 0; k < MOST_MORE; k++) if (enough(k)) return k;
  return MOST_MORE;
}

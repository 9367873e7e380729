/**
 * All mixes of a problem, asked for the best, the nearest and the spans: see {@link ContinuousMixSolver} and
 * {@link IntegerMixSolver}.
 */

import type { Objective } from '../problem/problem.ts';
import type { Tell } from '../problem/progress.ts';
import type { IntegerQuestion } from './integer-question.ts';
import type { Prices } from './polytope.ts';
import { elementAt } from './vectors.ts';

/** What is asked for, and how the best is judged. Food bounds belong in `lower` and `upper`, not in `bounds`. */
export interface MixQuestion extends IntegerQuestion {
  readonly objective: Objective;
  readonly wants: Float64Array;
  /** Price per kg of each food; 0 where it is not known. */
  readonly prices: Float64Array;
}

export interface Found {
  readonly x: Float64Array;
  readonly objective: number;
  /** How far below `objective` the best may lie; 0 where it is proven. */
  readonly gap: number;
  /** What a bound costs, where no food is counted: see {@link Prices}. */
  readonly prices?: Prices;
}

export type Span = readonly [number, number];
/** Shares held, percent, by column. */
export type Pins = ReadonlyMap<number, number>;

export interface MixSolver {
  feasible(): boolean;
  /** The best mix; undefined where none keeps the rules. */
  best(tell?: Tell<Found>): Found | undefined;
  /** The mix nearest to `target` with some shares held. */
  nearest(target: Float64Array, pins: Pins): Found | undefined;
  /** Least share of one food; undefined where there is no mix. */
  least(i: number): number | undefined;
  /** How far each share may move while the pinned others stay; NaN where the pins leave no mix. */
  spans(pins: Pins, tell?: Tell<never>): readonly Span[];
  dispose(): void;
}

/** How much dearer, relatively, a mix may be that counts as equally cheap. */
export const BUDGET_SLACK = 1e-8;

/** A mix this near to the cheapest in every share, percent, is that mix: only {@link BUDGET_SLACK} set them apart. */
const SAME_MIX = 1e-3;

/** The mix to take among equally cheap ones: the one nearest to what is wanted, unless it is but the cheapest itself. */
export function tieBroken<T extends Pick<Found, 'x'>>(cheapest: T, nearest: T | undefined): T {
  const apart = nearest?.x.some((share, i) => Math.abs(share - elementAt(cheapest.x, i)) > SAME_MIX);
  return nearest && apart ? nearest : cheapest;
}

/** Shares cleaned of the solver's last digits: within their bounds, and 100 in all. */
export function exact(raw: Float64Array, lower: Float64Array, upper: Float64Array): Float64Array {
  const x = raw.map((v, i) => {
    const share = Math.min(elementAt(upper, i), Math.max(elementAt(lower, i), v));
    return share < 1e-10 ? 0 : share;
  });
  const missing = 100 - x.reduce((a, b) => a + b, 0);
  const rooms = x.map((share, i) => Math.min(share - elementAt(lower, i), elementAt(upper, i) - share));
  let roomiest = 0;
  for (const [i, room] of rooms.entries()) if (room > elementAt(rooms, roomiest)) roomiest = i;
  x[roomiest] = elementAt(x, roomiest) + missing;
  return x;
}

/** Bounds with some shares held. */
export function pinned(bounds: Float64Array, pins: Pins): Float64Array {
  return bounds.map((v, i) => pins.get(i) ?? v);
}

export function without(pins: Pins, i: number): Pins {
  return new Map([...pins].filter(([other]) => other !== i));
}

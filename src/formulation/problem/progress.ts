/**
 * How a long answer can be followed. Whoever asks hands a function along, which is called between the steps of the
 * work, never by the clock, and blocks the work while it runs:
 *
 * ```ts
 * formulation.solve((p) => postMessage(p));          // Progress<SolvedSoFar>: counting rules, aims, spans, remedies
 * formulation.best((p) => postMessage(p));           // Progress<Best>
 * formulation.frontier(a, b, (p) => postMessage(p)); // Progress<{ a; b; shares }[]>: the points so far
 * shareMix(problem, eaters, options, (p) => postMessage(p)); // Progress<SharedMix>, `proved` false
 * ```
 *
 * What it is told can be sent out of a worker as it is. The answer is the same with and without such a function. To
 * stop the work, end its worker: what was told last is the answer so far. It may be kept waiting where it tells, and where
 * the solver looks at the clock: no answer rests on the time that it took. A function that is told may ask `evaluate` of
 * a formulation, but nothing of the solver, which is in the middle of its work.
 */
import type { Best, Collision } from './result.ts';

/**
 * What is being done: the mix that meets the wishes, one after the other; the best mix; how far each share may move;
 * what collides; what would mend it; the points of two goals; every animal's own mix; one mix for all; the fewest
 * additions; the lightest.
 */
export type Doing =
  | 'aims'
  | 'best'
  | 'spans'
  | 'conflict'
  | 'remedies'
  | 'points'
  | 'alone'
  | 'together'
  | 'fewest'
  | 'lightest';

export interface Progress<T> {
  readonly doing: Doing;
  /** What is found so far, every rule kept, though it may not be the best; left out while there is nothing. */
  readonly found?: T;
  /**
   * The number that is made least, of `found`, and one below which it cannot come: the nearer they are, the less is
   * left to gain. In the unit of the objective: squares of percent, price, number or weight of additions. Left out
   * where there is none yet.
   */
  readonly value?: number;
  readonly bound?: number;
  /** Steps done, of so many at the most. */
  readonly done?: number;
  readonly of?: number;
}

export type Tell<T> = (progress: Progress<T>) => void;

/** The best mix so far, `gap` saying how far from proven, or what collides with the remedies verified so far. */
export type SolvedSoFar = ({ readonly status: 'optimal' } & Best) | Collision;

/** Tells what was found in another shape; nothing where nobody listens. */
export function retold<A, B>(tell: Tell<B> | undefined, as: (found: A) => B): Tell<A> | undefined {
  if (!tell) return undefined;
  return ({ found, ...rest }) => tell(found === undefined ? rest : { ...rest, found: as(found) });
}

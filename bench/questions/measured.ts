/** One question about mixes of one size, asked of the program and of others in turn. */
import type { Effort } from '../lib/paired.ts';
import type { Stage } from '../lib/stage.ts';

/** Who is asked. */
export type Asked =
  /** The program, from a problem that it has not met before, to the answer as it is given out. */
  | 'ours'
  /** The program's solver alone: spans without the mix and all that is told of it. */
  | 'solver'
  /** HiGHS, each question written as LP text for a solver of its own. */
  | 'text'
  /** HiGHS, each question a new model made of ready arrays, run, read and put away. */
  | 'model'
  /** HiGHS, the run of such a model alone. */
  | 'run'
  | 'glpk'
  | 'yalps';

export interface Size {
  readonly foods: number;
  readonly rules: number;
}

export interface Measured {
  /** ms of each round, in the same order for all. */
  readonly times: Partial<Readonly<Record<Asked, readonly number[]>>>;
  /** How far the answers were apart. */
  readonly agreed: string;
}

export type Question = (
  at: Stage,
  size: Size,
  effort: Effort,
  /** Whether the others are asked too; else the program and the bare run alone. */
  beside: boolean,
) => Promise<Measured>;

/** As many different problems as there are rounds at most, up to this. */
export const problemsFor = ({ most }: Effort) => Math.min(most, 40);

/** What a calendar rests on beside the household: the day, and what is looked up or worked out elsewhere. */
import type { Problem } from '../../../formulation/problem/problem.ts';
import type { FreshFood } from '../../../kitchen/drying/yields.ts';
import type { ChosenShares } from '../../../kitchen/feeding/chosen-shares.ts';
import type { Day, Moment } from '../../../kitchen/model.ts';

/**
 * Foods of the tables by reference number: those of the mix, which may be fresh themselves, and the fresh ones that
 * others are dried from; without an entry nobody knows what they come to once dried.
 */
export type FreshTable = ReadonlyMap<string, FreshFood>;

export interface Circumstances {
  readonly today: Day;
  /** The day on which a moment falls where the keeper is. */
  dayAt(moment: Moment): Day;
  readonly table: FreshTable;
  /** Shares of what is fed beside the mix of a problem, where they are chosen; undefined where they stand as written. */
  chosenFor(problem: Problem): ChosenShares | undefined;
}

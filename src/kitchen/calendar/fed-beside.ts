/** What is fed from packs beside the mix, on the days of a calendar. */
import type { Day } from '../model.ts';

export interface FedBeside {
  /** Id of the food. */
  readonly food: string;
  readonly name: string;
  /** g left in packs that may be fed, and whether that is an estimate. */
  readonly left: number;
  readonly estimated: boolean;
  /** g fed in a day, all animals together. */
  readonly gramsADay: number;
  /** The first day on which what is left is not enough, and the day by which more is to be bought. */
  readonly runsOut: Day;
  readonly buyBy: Day;
}

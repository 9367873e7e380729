/** What {@link OuterApproximation} and its master problem are asked. */
import type { AimLine } from './aims.ts';
import type { LinearBound } from './bounds.ts';
import type { CountBound } from './counting.ts';
import type { Highs } from './highs.ts';

/** Which mixes there are, foods counted, and what is preferred among them. */
export interface IntegerQuestion {
  readonly highs: Highs;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  /** Linear bounds of the rules, and any other half-space that must hold. */
  readonly bounds: readonly LinearBound[];
  readonly counts: readonly CountBound[];
  readonly aims: readonly AimLine[];
  /** What the cupboard holds, percent of the batch. */
  readonly onHand: Float64Array;
}

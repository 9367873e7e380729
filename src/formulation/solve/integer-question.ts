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
  /** Columns whose sum the least shares of `counts` are percent of; all of them, 100 in all, unless given. */
  readonly mix?: readonly number[];
  /** Linear bounds of the rules, and any other half-space that must hold. */
  readonly bounds: readonly LinearBound[];
  readonly counts: readonly CountBound[];
  readonly aims: readonly AimLine[];
  /** What the cupboard holds, percent of the batch. */
  readonly onHand: Float64Array;
}

/** Everything that is asked of a mix, each bound to be kept or given up: why there is no mix is told of it. */
export interface RuleSet extends Pick<IntegerQuestion, 'lower' | 'upper' | 'mix' | 'bounds' | 'counts'> {
  /** What no mix can do without; never given up. */
  readonly given: readonly LinearBound[];
}

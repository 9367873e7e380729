/** What stands beside the scale at any moment of a weigh-out: plain data that the screen shows. */
import type { Evaluation, Statement } from '../../formulation/problem/result.ts';
import type { CorrectionStatus } from './correction.ts';

/** Grams to pour between which the batch can still be ended in range, in whole steps of the scale. */
export interface Tolerance {
  readonly low: number;
  readonly high: number;
}

/** The food to pour now, and how much of it. */
export interface NextPour {
  readonly food: string;
  readonly name: string;
  /** g to pour now: what a tared scale will show. */
  readonly target: number;
  /** What a scale that is not tared will show, g. */
  readonly reading: number;
  /** More of a food that was poured before. */
  readonly again: boolean;
  /** With the batch as large as planned; absent where that cannot be. */
  readonly asPlanned?: Tolerance;
  /** With a batch of another weight, which `total` g would be at the upper end; absent where it is no wider. */
  readonly grown?: Tolerance & { readonly total: number };
  /** g in the bowl, and g still to come with this food. */
  readonly poured: number;
  readonly remaining: number;
}

/** A food whose target is another than before the pour, g in the end. */
export interface ChangedTarget {
  readonly food: string;
  readonly from: number;
  readonly to: number;
  /** It was poured before and gets more. */
  readonly again: boolean;
  readonly sentence: string;
}

/** One way in which the batch would be in range, that it takes only when the keeper says so. */
export interface Way {
  /** g that it comes to. */
  readonly total: number;
  /** Foods that are left out, by id. */
  readonly without: readonly string[];
  readonly names: readonly string[];
}

/** As planned the batch cannot be in range any more: what the keeper is asked before it becomes another. */
export interface Asked {
  readonly ways: readonly Way[];
  /** What is missed where it keeps its size and its foods. */
  readonly missed: readonly Statement[];
}

/** Nothing that is allowed brings the batch into range: what will be missed, and what would mend it. */
export interface Lost {
  readonly missed: readonly Statement[];
  readonly sentence: string;
  /** The smallest batch that would be in range, and what is needed beyond the lots, g by food id. */
  readonly larger?: {
    readonly total: number;
    readonly needed: Readonly<Record<string, number>>;
    readonly sentence: string;
  };
}

/** Some of the food poured last is taken out; noted as a pour of minus so many grams. */
export interface SpoonBack {
  readonly food: string;
  readonly grams: number;
  readonly sentence: string;
}

/** Where the batch stands. */
export interface WeighState {
  /** "as planned": nothing changes. "corrected": other targets. "grown": other targets, larger batch. "out": not in range. "asked": the keeper chooses. */
  readonly status: CorrectionStatus | 'asked';
  /** g by food id in the end, poured and to be poured. */
  readonly targets: Readonly<Record<string, number>>;
  /** g in the end. */
  readonly total: number;
  /** All is poured that should be. */
  readonly done: boolean;
  readonly asked?: Asked;
  readonly lost?: Lost;
}

/** Where it stands after a pour, and what the pour changed. */
export interface Poured extends WeighState {
  readonly changed: readonly ChangedTarget[];
  readonly spoonBack?: SpoonBack;
  readonly sentence: string;
}

/** What lies in the bowl against the rules. */
export interface Finished {
  readonly inRange: boolean;
  readonly evaluation: Evaluation;
  /** g by food id. */
  readonly grams: Readonly<Record<string, number>>;
  readonly total: number;
}

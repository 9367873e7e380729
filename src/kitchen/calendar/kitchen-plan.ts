/** A kitchen plan as data: what is to be prepared, and when each step of it is done. */

import type { RunsOut } from '../feeding/runs-out.ts';
import type { Day } from '../model.ts';
import { FREEZE_ROUNDS, SHORTEST_DAYS, STEP_DAYS, type StepDays, type StepKind } from './step-days.ts';

/** A food of a supply. */
export interface SupplyFood {
  /** Id of the food, as mixes name it. */
  readonly food: string;
  readonly name: string;
  /** Id of the lot it comes from, once it is bought. */
  readonly lot?: string;
}

/** From when to when a step was done; without an end it has begun and goes on. */
export interface Progress {
  readonly from: Day;
  readonly to?: Day;
}

/** Goods that go the same way together. */
export interface Supply {
  /** Kept from plan to plan: steps, and entries in other calendars, are known by it. */
  readonly id: string;
  readonly goods: readonly SupplyFood[];
  /** "freeze": freeze and thaw against insects; "dry": fresh goods to be dried; "ready": to be weighed as bought. */
  readonly route: 'freeze' | 'dry' | 'ready';
  /** Absent: still to be bought. */
  readonly boughtOn?: Day;
  /**
   * Freeze and thaw in order, for a supply with its own rounds; {@link FREEZE_ROUNDS} unless given. `on`: the day that
   * is set down with its lots, where the freezer's room was looked at; the plan keeps to it.
   */
  readonly rounds?: readonly {
    readonly kind: 'freeze' | 'thaw';
    readonly days?: number;
    readonly on?: Day;
  }[];
  /** What was done after buying, in order; only the last may go on. */
  readonly progress?: readonly Progress[];
}

/** What a plan is made of. */
export interface KitchenInput {
  /** Kept from plan to plan. */
  readonly id: string;
  /** "batch 4": what is being made. */
  readonly name: string;
  readonly supplies: readonly Supply[];
  /** Where they differ from {@link STEP_DAYS}. */
  readonly days?: Partial<StepDays>;
  /** Whether the animals have to get used to the new batch; true unless given. */
  readonly changeOver?: boolean;
  readonly weighed?: Progress;
  readonly changed?: Progress;
  /** The batch that is being fed, and when it runs out. */
  readonly present?: {
    readonly name: string;
    readonly runsOut: RunsOut;
    /** A lot that is not used any more may be in it. */
    readonly doubt?: true;
  };
  /** Batches with a lot in them that is not used any more: no food in hand. */
  readonly stopped?: readonly string[];
}

/**
 * Forwards from a day (everything as early as can be), or backwards from the day on which all has to be done
 * (everything as late as can be); with both, backwards, and nothing before `from`.
 */
export type Frame =
  | { readonly from: Day; readonly until?: Day }
  | { readonly from?: Day; readonly until: Day };

/** One step of a plan, on its days. */
export interface PlannedStep {
  readonly id: string;
  readonly kind: StepKind;
  /** 1 or 2 for freezing and thawing, and how many there are. */
  readonly round?: { readonly number: number; readonly of: number };
  /** Id of the supply; absent for what is done with all of them. */
  readonly supply?: string;
  /** What it is done with. */
  readonly goods: readonly SupplyFood[];
  /** Ids of the steps that end before it begins. */
  readonly after: readonly string[];
  readonly days: number;
  /** As planned; ends on the day on which the next may begin. */
  readonly start: Day;
  readonly end: Day;
  readonly earliest: Day;
  /** Latest begin with which the end of the plan stays. */
  readonly latest: Day;
  /** Days between earliest and latest; below 0 where it is too late already. 0 for what is done. */
  readonly slack: number;
  /** Whether it has the least slack of all that is open: a day lost here is a day lost for all. */
  readonly critical: boolean;
  readonly state: 'done' | 'begun' | 'open';
  /** Open, on a day that is set down with its lots: it is moved there, not here. */
  readonly appointed: boolean;
}

/** The plan: every step on its days, and whether all is done in time. */
export interface KitchenPlan {
  readonly input: KitchenInput;
  readonly frame: Frame;
  /** Every step after those it waits for. */
  readonly steps: readonly PlannedStep[];
  readonly start: Day;
  /** The day from which only the new batch is fed. */
  readonly end: Day;
  /** Ids along one longest chain of what is not done. */
  readonly criticalPath: readonly string[];
  /** Days along it. */
  readonly criticalDays: number;
  /** By when all has to be done: `until`, else the day on which the present batch runs out. */
  readonly deadline?: Day;
  /** Whether the plan as it stands ends by the deadline; absent without one. */
  readonly fits?: boolean;
  /** Days from the earliest possible end to the deadline; below 0 where it cannot be kept. */
  readonly spare?: number;
  /** What is still possible with {@link SHORTEST_DAYS} where the deadline cannot be kept. */
  readonly shortest?: { readonly end: Day; readonly fits: boolean };
}

/** The formulation problem as a person or a program writes it (problem.json). See README, "Machine interface". */
import type { Composition } from '../foods/food.ts';
import type { Tag } from '../nutrition/nutrients.ts';

export type On = 'mix' | 'ration';
export type Objective = 'nearest' | 'cheapest' | 'varied';

export interface Ingredient {
  readonly id: string;
  readonly name?: string;
  /** Reference number; or give `composition`. With both, `composition` overrides single amounts. */
  readonly ref?: string;
  readonly composition?: Composition;
  readonly sd?: Composition;
  readonly group?: string;
  /** Share bounds and wanted share, percent of the mix as weighed. */
  readonly min?: number;
  readonly max?: number;
  readonly want?: number;
  readonly price_per_kg?: number;
  readonly refused?: boolean;
}

/** A complete food fed beside the mix; `share_of_ration` is percent of the ration as weighed. */
export interface Beside {
  readonly id: string;
  readonly name?: string;
  readonly share_of_ration: number;
  readonly ref?: string;
  readonly composition?: Composition;
  readonly sd?: Composition;
}

interface Bounds {
  readonly min?: number;
  readonly max?: number;
  /** Words for people: where the bound comes from. Not used in the arithmetic. */
  readonly source?: string;
}

/** Content per 100 g (of dry matter with basis "DM"), in the unit of the tagname. */
export interface NutrientRule extends Bounds {
  readonly nutrient: Tag;
  readonly on?: On;
  readonly basis?: 'as fed' | 'DM';
}
/** First over second, amounts as their units stand (both in mg for CA and P). */
export interface RatioRule extends Bounds {
  readonly ratio: readonly [Tag, Tag];
  readonly on?: On;
}
/** Sum of the shares of a group, percent of what `on` names. */
export interface GroupRule extends Bounds {
  readonly group: string;
  readonly on?: On;
}
/** Share of one food, percent of what `on` names. */
export interface ShareRule extends Bounds {
  readonly food: string;
  readonly on?: On;
}
export type Rule = NutrientRule | RatioRule | GroupRule | ShareRule;

export interface Problem {
  readonly foods: readonly Ingredient[];
  readonly rules: readonly Rule[];
  readonly beside: readonly Beside[];
  readonly objective: Objective;
  /** 0 to below 1. */
  readonly confidence: number;
  readonly batch_grams: number;
  readonly scale_step_grams: number;
}

/** Bad input: `field` is a JSON pointer ("/foods/3/min"); the message names field, value and way out. */
export class ProblemError extends Error {
  readonly field: string;
  constructor(field: string, message: string) {
    super(`${field || 'problem'}: ${message}`);
    this.name = 'ProblemError';
    this.field = field;
  }
}

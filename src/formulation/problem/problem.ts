/** The formulation problem as a person or a program writes it (problem.json). See README, "Machine interface". */
import type { Composition } from '../../foods/food.ts';
import type { Tag } from '../../nutrition/nutrients.ts';

export type On = 'mix' | 'ration';
/** Whether an amount without a standard deviation is exact, or spreads as published for its nutrient and group. */
export type Variation = 'given' | 'published';
export type Objective = 'nearest' | 'cheapest' | 'varied';

/** Where a food's amounts come from: a reference number, own figures per 100 g as fed, or both. */
interface Described {
  readonly id: string;
  readonly name?: string;
  /** Reference number; or give `composition`. With both, `composition` overrides single amounts. */
  readonly ref?: string;
  readonly composition?: Composition;
  readonly sd?: Composition;
  /** Guaranteed least and most, where a label gives a bound and no value. */
  readonly low?: Composition;
  readonly high?: Composition;
  /** Amounts in `composition` that were taken from another food, with its name: they count as estimates. */
  readonly borrowed?: Partial<Record<Tag, string>>;
}

/** A keeper's explicit choice to feed more of a food than its caution allows. */
export interface Override {
  /** Id of the caution. */
  readonly caution: string;
  /** Why, in the keeper's words. */
  readonly note: string;
  /** ISO 8601 date. */
  readonly on: string;
}

export interface Ingredient extends Described {
  readonly group?: string;
  /** Share bounds and wanted share, percent of the mix as weighed. */
  readonly min?: number;
  readonly max?: number;
  readonly want?: number;
  readonly price_per_kg?: number;
  readonly refused?: boolean;
  readonly override?: Override;
  /** Least share where the food is used at all, percent of the mix: its share is 0 or at least this. */
  readonly if_used?: number;
  /** The animal is fond of it; counts for the aim "liked". */
  readonly liked?: boolean;
  /** What the cupboard holds of it, g as mixed; counts for the aims "cupboard" and "few to buy". */
  readonly on_hand_grams?: number;
}

/** A food fed beside the mix (pellet, fresh food, treat); `share_of_ration` is percent of the ration as weighed. */
export interface Beside extends Described {
  readonly share_of_ration: number;
  /** Written instead of the share, where {@link Problem.daily_grams} says how much is fed in all; g as weighed. */
  readonly grams_a_day?: number;
  /** Bounds within which the share is chosen where no mix fits `share_of_ration` itself, percent of the ration. */
  readonly share_min?: number;
  readonly share_max?: number;
  /**
   * "air dry": a fresh food, counted without its water above that of air-dry food (`nutrition/air-dry.ts`). Ranges as fed are meant for dry
   * food; a slice of cucumber does not lower the protein that the animal gets.
   */
  readonly counts_as?: 'air dry';
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
/**
 * Number of foods in the mix: at least `min` of them with `at_least` percent each, at most `max` with any share.
 * `group` counts the foods of one group only.
 */
export interface CountRule extends Bounds {
  readonly count: { readonly group?: string; readonly at_least?: number };
  /** Foods are counted in the mix. */
  readonly on?: never;
}
export type Rule = NutrientRule | RatioRule | GroupRule | ShareRule | CountRule;

/** What an aim makes less or more of; content per 100 g of the mix or the ration, or share of the mix. */
export type Measured =
  | { readonly nutrient: Tag; readonly on?: On }
  | { readonly group: string }
  | { readonly food: string };

/**
 * A preference, met as far as the rules and the aims before it let it. `give` is how far from its best it may be
 * left for the sake of the next (in the unit of the aim; 0 unless written).
 *
 * - "liked": most of the liked foods, percent of the mix
 * - "cupboard": most of the batch from what the cupboard holds, percent of the mix
 * - "few": fewest foods; "few to buy": fewest foods of which the cupboard does not hold enough
 * - "cheap": least price, per kg of mix
 * - "less", "more": of a nutrient, a group or a food
 */
export type Aim = { readonly give?: number } & (
  | { readonly aim: 'liked' | 'cupboard' | 'few' | 'few to buy' | 'cheap' }
  | ({ readonly aim: 'less' | 'more' } & Measured)
);

export interface Problem {
  readonly foods: readonly Ingredient[];
  readonly rules: readonly Rule[];
  readonly beside: readonly Beside[];
  readonly objective: Objective;
  /** Preferences, first things first; `objective` decides among the mixes they leave. */
  readonly aims?: readonly Aim[];
  /** Least weight of any food that is used at all, g in the batch: what the scale can weigh. */
  readonly least_grams?: number;
  /** Every nutrient and ratio rule also holds for what is eaten when any one food of the mix is left. */
  readonly drop_one?: boolean;
  /** The whole ration of a day, g as weighed, fresh food left out. */
  readonly daily_grams?: number;
  /** 0 to below 1. */
  readonly confidence: number;
  /** Whether the confidence is asked for each rule by itself (the default), or for all of them at once. */
  readonly confidence_for?: 'each' | 'all';
  /** "given" unless written. */
  readonly variation?: Variation;
  /** Whether foods on the caution list are blocked or capped ("apply"), or only named ("report", the default). */
  readonly cautions?: 'apply' | 'report';
  /** The animal's species, in words: some cautions hold for dwarf hamsters alone. */
  readonly species?: string;
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

/** What a formulation answers. The JSON printed by `pouchful formulate` is a {@link Result}. */

import type { Tag } from '../../nutrition/nutrients.ts';
import type { Aim, On } from './problem.ts';

/** Content per 100 g as fed, in the unit of the tagname. */
export interface NutrientLine {
  /** Content of the mix and of the ration; an unknown amount counts as its lower bound. */
  readonly mix: number;
  readonly ration: number;
  /** Least and most the ration can hold, unknown amounts taken at both ends of what is possible. */
  readonly low: number;
  readonly high: number;
  /** Percent of the ration, by weight, for which the amount is known or estimated. */
  readonly coverage: number;
  /** The same three of the mix by itself. */
  readonly low_mix: number;
  readonly high_mix: number;
  readonly coverage_mix: number;
  /** Standard deviations, from the foods that give one; from all foods with `variation` "published". */
  readonly sd_mix: number;
  readonly sd_ration: number;
}

/** One rule or bound, named by JSON pointer into the problem, and said in plain words. */
export interface Statement {
  readonly pointer: string;
  readonly sentence: string;
}

/** A rule or a bound that does not hold for given shares. */
export interface Breach extends Statement {
  readonly actual: number;
  readonly bound: number;
  readonly side: 'min' | 'max';
}

/** Write the value `to` at the pointer into the problem; a number, but for the wish "drop_one". */
export interface Change {
  readonly pointer: string;
  readonly from: number | boolean;
  readonly to: number | boolean;
}

/** One bound, loosened as little as suffices. */
export interface Loosening extends Statement, Change {
  readonly kind: 'loosen';
}

/** Several bounds, each loosened a little: together by less than any one of them would need alone. */
export interface LooseningTogether {
  readonly kind: 'loosen-together';
  readonly sentence: string;
  readonly changes: readonly Change[];
}

export interface Addition {
  readonly kind: 'add';
  readonly sentence: string;
  /** Append this to `foods` and the problem can be solved. */
  readonly food: {
    readonly id: string;
    readonly ref: string;
    readonly name: string;
    readonly group?: string;
    readonly price_per_kg?: number;
  };
  /** Least share of it that suffices, percent of the mix. */
  readonly share: number;
}

export type Remedy = Loosening | LooseningTogether | Addition;

/** An amount that a rule rests on and nobody knows, or that is an estimate. */
export interface Doubt {
  readonly pointer: string;
  readonly nutrient: Tag;
  /** Ids of the foods (of the mix and beside it). */
  readonly foods: readonly string[];
  readonly sentence: string;
}

/** One figure that nobody knows and that may carry a rule past its bound. */
export interface OpenFigure {
  /** Id and name of the food. */
  readonly food: string;
  readonly name: string;
  /** Whether it is fed beside the mix. */
  readonly beside: boolean;
  readonly nutrient: Tag;
  /** Which end of it is open: the most it may hold, or the least. */
  readonly end: 'most' | 'least';
  /** What its label guarantees at the other end ("at least 4"), per 100 g as fed; absent where it says nothing. */
  readonly guaranteed?: number;
  /**
   * A guarantee at the open end that would settle the rule by itself, others staying as open as they are; absent where
   * none would.
   */
  readonly enough?: number;
}

/** A bound that figures which nobody knows, wherever they lie, can carry the mix past. */
export interface Unproven {
  /** Of the rule. */
  readonly pointer: string;
  readonly on: On;
  /** What the rule bounds: one nutrient, or the two of a ratio. */
  readonly nutrients: readonly Tag[];
  readonly side: 'min' | 'max';
  readonly bound: number;
  /** The figures it rests on, the weightiest first. */
  readonly figures: readonly OpenFigure[];
}

/** What keeps a mix that breaks no rule from being surely in range. */
export interface Reservations {
  /** Chance that all rules hold at once, foods being as varied as they are; absent where it is high enough. */
  readonly chance?: number;
  /** How much the figures vary is known of nothing that a rule rests on, so no chance can be told. */
  readonly no_spread: boolean;
  readonly unproven: readonly Unproven[];
}

/** A caution on a food of the mix, why, and what was made of it. */
export interface CautionNote {
  readonly pointer: string;
  /** Id of the food. */
  readonly food: string;
  /** Id of the caution. */
  readonly caution: string;
  readonly severity: 'never' | 'limit' | 'prepare';
  readonly title: string;
  /** The words or the reference number that matched. */
  readonly found: string;
  /** True where the words stand on the food's list of ingredients: the keeper may go ahead, on record. */
  readonly listed?: true;
  readonly reason: string;
  /** How to prepare it, or what to take instead. */
  readonly way: string;
  readonly source: string;
  /** Most of it in the mix, percent. */
  readonly max_share?: number;
  readonly applied: 'blocked' | 'capped' | 'overridden' | 'noted';
}

/** How given shares stand against the rules; shares need not add up to 100. */
export interface Evaluation {
  readonly total: number;
  readonly nutrients: Readonly<Partial<Record<Tag, NutrientLine>>>;
  readonly in_range_chance: Readonly<Partial<Record<Tag, number>>>;
  /** Chance that every ruled nutrient is in range at once; amounts of different nutrients taken as independent. */
  readonly all_in_range_chance: number;
  /**
   * "surely" where no rule is broken, all hold at once with a chance of at least 80 %, and no missing figure can break
   * one; "not surely" where no rule is broken on the average; "no" where one is, or shares are not 100 in all.
   */
  readonly in_range: 'surely' | 'not surely' | 'no';
  /** What is said against it; only where it is "not surely" in range. */
  readonly reservations?: Reservations;
  /** The nutrients that rules are on, by what they are counted in. */
  readonly ruled: readonly { readonly on: On; readonly nutrients: readonly Tag[] }[];
  readonly breaches: readonly Breach[];
  readonly binding: readonly Statement[];
  readonly estimated: readonly Doubt[];
  readonly unsure: readonly Doubt[];
  readonly cautions: readonly CautionNote[];
  /** The verdict as one text: fit to feed or not, and why; in parts by `verdictOf`. */
  readonly verdict: string;
  readonly beside?: BesideShares;
}

/** Share of the ration and its span, percent, by id of what is fed beside the mix; only where one may be chosen. */
export type BesideShares = Readonly<
  Record<string, { readonly share: number; readonly span?: readonly [number, number] }>
>;

/** The best mix and how good it is. */
export interface Best {
  readonly objective: number;
  /** How far, at most, the best mix may lie below `objective`; absent where it is proven best. */
  readonly gap?: number;
  /** What each aim came to, in its own unit: percent of the mix, number of foods, price per kg, or content. */
  readonly aims?: readonly (Aim & { readonly value: number })[];
  /** Percent of the mix by food id; adds up to 100. */
  readonly shares: Readonly<Record<string, number>>;
}

/**
 * A mix that keeps every rule, with what an {@link Evaluation} says of it: `total` would be 100 and `breaches` empty.
 */
export interface Mixed extends Best, Omit<Evaluation, 'total' | 'breaches'> {
  readonly status: 'optimal';
  /** What is odd in the problem, and counts as it stands: figures that hardly agree, rules that ask for nothing. */
  readonly questions: readonly Statement[];
  /** Pointers of fields that no rule of the format knows; they were not read. */
  readonly ignored: readonly string[];
}

/** A mix with how far each share may move, not yet in grams. */
export interface Following extends Mixed {
  readonly spans: Readonly<Record<string, readonly [number, number]>>;
}

/** A bound at which the best mix stands, and what it costs. */
export interface Reason extends Statement {
  readonly from: number;
  /** What the objective gains for each unit by which the bound gives way, at first; from the solver's duals. */
  readonly price?: number;
  /** The bound let go to here... */
  readonly to?: number;
  /** ...brings the objective to this, by solving again, better by `gain`. */
  readonly objective?: number;
  readonly gain: number;
  /** Where the content would come to rest if the bound were not there. */
  readonly free?: number;
}

/** How sure it is that no whole grams are nearer to the shares, or that there are none. */
export interface GramsProof {
  /** With grams: none that keep the rules are nearer. Without: there are none; false where none were found. */
  readonly proven: boolean;
  /** Sum of the squared distances of the grams from share x batch, g squared. */
  readonly squares?: number;
  /** No whole grams that keep the rules have a lower sum; equals `squares` where that is proven nearest. */
  readonly least?: number;
}

export interface WholeGrams {
  /** Whole steps of the scale by food id, the batch in all; null where no such grams keep the rules, or none were found. */
  readonly grams: Readonly<Record<string, number>> | null;
  readonly grams_proof: GramsProof;
  readonly grams_conflict?: string;
}

export interface Balanced extends Following, WholeGrams {}

export interface Collision {
  readonly status: 'infeasible';
  readonly conflict: readonly Statement[];
  readonly remedies: readonly Remedy[];
  readonly estimated: readonly Doubt[];
  readonly unsure: readonly Doubt[];
  readonly cautions: readonly CautionNote[];
  readonly verdict: string;
  readonly questions: readonly Statement[];
  readonly ignored: readonly string[];
}

export type Result = Balanced | Collision;

/** What a moved slider answers: grams are worked out once it rests. */
export type MoveResult = Following | Collision;

/**
 * What a slider under the thumb answers: a {@link MoveResult} found without a search for which foods are in. `spans` are
 * as if no foods were counted.
 */
export type Dragged =
  | (Following & {
      /** Rules that count foods which this mix does not keep; absent where it keeps every rule. */
      readonly breaches?: readonly Breach[];
    })
  | Collision;

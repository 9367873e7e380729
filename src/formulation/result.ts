/** What a formulation answers. The JSON printed by `pouchful formulate` is a {@link Result}. */
import type { Tag } from '../nutrition/nutrients.ts';

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

export interface Loosening extends Statement {
  readonly kind: 'loosen';
  readonly from: number;
  /** Write this value at the pointer and the problem can be solved. */
  readonly to: number;
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

export type Remedy = Loosening | Addition;

/** An amount that a rule rests on and nobody knows, or that is an estimate. */
export interface Doubt {
  readonly pointer: string;
  readonly nutrient: Tag;
  /** Ids of the foods (of the mix and beside it). */
  readonly foods: readonly string[];
  readonly sentence: string;
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
  readonly breaches: readonly Breach[];
  readonly binding: readonly Statement[];
  readonly estimated: readonly Doubt[];
  readonly unsure: readonly Doubt[];
  readonly cautions: readonly CautionNote[];
  /** One sentence: fit to feed or not, and why. */
  readonly verdict: string;
}

/** A mix that keeps every rule, not yet in grams. */
export interface Following {
  readonly status: 'optimal';
  readonly objective: number;
  /** Percent of the mix by food id; adds up to 100. */
  readonly shares: Readonly<Record<string, number>>;
  readonly spans: Readonly<Record<string, readonly [number, number]>>;
  readonly nutrients: Evaluation['nutrients'];
  readonly in_range_chance: Evaluation['in_range_chance'];
  readonly all_in_range_chance: number;
  readonly binding: readonly Statement[];
  readonly estimated: readonly Doubt[];
  readonly unsure: readonly Doubt[];
  readonly cautions: readonly CautionNote[];
  readonly verdict: string;
  /** Pointers of fields that no rule of the format knows; they were not read. */
  readonly ignored: readonly string[];
}

export interface Weighable {
  /** Whole steps of the scale by food id, the batch in all; null where no such grams keep the rules. */
  readonly grams: Readonly<Record<string, number>> | null;
  readonly grams_conflict?: string;
}

export interface Balanced extends Following, Weighable {}

export interface Collision {
  readonly status: 'infeasible';
  readonly conflict: readonly Statement[];
  readonly remedies: readonly Remedy[];
  readonly estimated: readonly Doubt[];
  readonly unsure: readonly Doubt[];
  readonly cautions: readonly CautionNote[];
  readonly verdict: string;
  readonly ignored: readonly string[];
}

export type Result = Balanced | Collision;

/** What a moved slider answers: grams are worked out once it rests. */
export type MoveResult = Following | Collision;

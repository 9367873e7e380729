/**
 * The formulation problem as a person or a program writes it (problem.json). See README, "Machine interface". Its shape
 * stands in `schema.ts`; here the parts get their names. What each field means is said there.
 */
import type { z } from 'zod';
import type {
  aimSchema,
  besideSchema,
  countRuleSchema,
  groupRuleSchema,
  ingredientSchema,
  nutrientRuleSchema,
  objectiveSchema,
  onSchema,
  overrideSchema,
  ownLimitSchema,
  problemSchema,
  ratioRuleSchema,
  shareRuleSchema,
  variationSchema,
} from './schema.ts';

/** What a schema lets through, not to be written to. */
type Read<S extends z.ZodType> = DeepReadonly<z.infer<S>>;
type DeepReadonly<T> = T extends object ? { readonly [K in keyof T]: DeepReadonly<T[K]> } : T;

export type On = z.infer<typeof onSchema>;
/** Whether an amount without a standard deviation is exact, or spreads as published for its nutrient and group. */
export type Variation = z.infer<typeof variationSchema>;
export type Objective = z.infer<typeof objectiveSchema>;

/** A keeper's explicit choice to feed more of a food than its caution allows. */
export interface Override extends Read<typeof overrideSchema> {}

/** A food that the mix may be made of. */
export interface Ingredient extends Read<typeof ingredientSchema> {}

/** A food fed beside the mix (pellet, fresh food, treat); `share_of_ration` is percent of the ration as weighed. */
export interface Beside extends Read<typeof besideSchema> {}

/** How a fresh food beside the mix may count, as it is written in a problem. */
export const AIR_DRY = 'air dry' satisfies Beside['counts_as'];

/** Content per 100 g (of dry matter with basis "DM"), in the unit of the tagname. */
export interface NutrientRule extends Read<typeof nutrientRuleSchema> {}
/** First over second, amounts as their units stand (both in mg for CA and P). */
export interface RatioRule extends Read<typeof ratioRuleSchema> {}
/** Sum of the shares of a group, percent of what `on` names. */
export interface GroupRule extends Read<typeof groupRuleSchema> {}
/** Share of one food, percent of what `on` names. */
interface ShareRule extends Read<typeof shareRuleSchema> {}
/**
 * Number of foods in the mix: at least `min` of them with `at_least` percent each, at most `max` with any share.
 * `group` counts the foods of one group only.
 */
export interface CountRule extends Read<typeof countRuleSchema> {
  /** Foods are counted in the mix. */
  readonly on?: never;
}
export type Rule = NutrientRule | RatioRule | GroupRule | ShareRule | CountRule;

/** A limit of the animal's target that the keeper changed in this mix. */
export interface OwnLimit extends Read<typeof ownLimitSchema> {}

/** What an aim makes less or more of; content per 100 g of the mix or the ration, or share of the mix. */
export type Measured =
  | Pick<NutrientRule, 'nutrient' | 'on'>
  | Pick<GroupRule, 'group'>
  | Pick<ShareRule, 'food'>;

/**
 * A preference, met as far as the rules and the aims before it let it. `give` is how far from its best it may be
 * left for the sake of the next (in the unit of the aim; 0 unless written).
 *
 * - "liked": most of the liked foods, percent of the mix
 * - "cupboard": most of the batch from what the cupboard holds, percent of the mix
 * - "few": fewest foods; "few to buy": fewest foods of which the cupboard does not hold enough
 * - "cheap": least price, per kg of mix
 * - "less", "more": of a nutrient, a group or a food (see {@link Measured})
 */
export type Aim = Read<typeof aimSchema>;
/** As it is written in a problem. */
export const FEW_TO_BUY = 'few to buy' satisfies Aim['aim'];

export interface Problem extends Read<typeof problemSchema> {
  readonly foods: readonly Ingredient[];
  readonly rules: readonly Rule[];
  readonly beside: readonly Beside[];
  readonly aims?: readonly Aim[];
  readonly own_limits?: readonly OwnLimit[];
}

/** Shares in percent of the mix by food id. */
export type Shares = Readonly<Record<string, number>>;

/** Bad input: `field` is a JSON pointer ("/foods/3/min"); the message names field, value and way out. */
export class ProblemError extends Error {
  readonly field: string;
  constructor(field: string, message: string) {
    super(`${field || 'problem'}: ${message}`);
    this.name = 'ProblemError';
    this.field = field;
  }
}

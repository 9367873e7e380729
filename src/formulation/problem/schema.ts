/**
 * The shape of problem.json, written once: the server checks what it is sent by it, and the types of `problem.ts`
 * follow from it. Only the server loads this file when it runs; everything else takes no more than types from it, so
 * neither the browser nor a cold command line waits for zod.
 *
 * It knows shapes and ranges alone. `parse.ts` checks a problem.json by hand all the same: its complaints name the
 * field, the value and the way out, it fills in defaults, lists fields that it does not know instead of refusing them,
 * and looks at several fields together.
 */
import { z } from '@hono/zod-openapi';
import { LEAST_PROTEIN_FACTOR, MOST_PROTEIN_FACTOR } from '../../nutrition/energy.ts';
import {
  amount,
  composition,
  dailyGrams,
  day,
  grams,
  id,
  money,
  name,
  once,
  pasted,
  percent,
  probability,
  tag,
  weight,
  words,
} from './fields.ts';

const basis = z.enum(['as fed', 'DM']);
/** First over second. */
export const ratio = z.tuple([tag, tag]).readonly();

/** Where a food's amounts come from: a reference number, own figures per 100 g as fed, or both. */
const described = {
  id,
  name: name.optional(),
  /** Reference number; or give `composition`. With both, `composition` overrides single amounts. */
  ref: id.optional(),
  composition: composition.optional(),
  sd: composition.optional(),
  /** Guaranteed least and most, where a label gives a bound and no value. */
  low: composition.optional(),
  high: composition.optional(),
  /** Nitrogen factor that the protein was counted with: of `composition`, `low`, `high`, `sd`; 6.25 unless written. */
  protein_factor: z.number().min(LEAST_PROTEIN_FACTOR).max(MOST_PROTEIN_FACTOR).optional(),
  /** Amounts in `composition` that were taken from another food, with its name: they count as estimates. */
  borrowed: z.partialRecord(tag, name).optional(),
  /** What its pack prints, as pasted: each text is read for what must not be fed. */
  ingredients: z.array(pasted).max(60).optional(),
};

export const overrideSchema = z.strictObject({
  /** Id of the caution. */
  caution: id,
  /** Ids of further cautions that the same choice lifts. */
  also: z.array(id).max(60).optional(),
  /** Why, in the keeper's words. */
  note: words.min(1),
  /** ISO 8601 date. */
  on: day,
});

export const ingredientSchema = z.strictObject({
  ...described,
  group: name.optional(),
  /** Share bounds and wanted share, percent of the mix as weighed. */
  min: percent.optional(),
  max: percent.optional(),
  want: percent.optional(),
  price_per_kg: money.optional(),
  refused: z.boolean().optional(),
  override: overrideSchema.optional(),
  /** Least share where the food is used at all, percent of the mix: its share is 0 or at least this. */
  if_used: percent.optional(),
  /** The animal is fond of it; counts for the aim "liked". */
  liked: z.boolean().optional(),
  /** What the cupboard holds of it, g as mixed; counts for the aims "cupboard" and "few to buy". */
  on_hand_grams: grams.optional(),
});

export const besideSchema = z.strictObject({
  ...described,
  share_of_ration: percent,
  /** Written instead of the share, where `daily_grams` says how much is fed in all; g as weighed. */
  grams_a_day: grams.optional(),
  /** Bounds within which the share is chosen where no mix fits `share_of_ration` itself, percent of the ration. */
  share_min: percent.optional(),
  share_max: percent.optional(),
  /**
   * "air dry": a fresh food, counted without its water above that of air-dry food. Ranges as fed are meant for dry
   * food; a slice of cucumber does not lower the protein that the animal gets.
   */
  counts_as: z.literal('air dry').optional(),
});

const bounds = {
  min: amount.optional(),
  max: amount.optional(),
  /** Words for people: where the bound comes from. Not used in the arithmetic. */
  source: words.optional(),
};
export const onSchema = z.enum(['mix', 'ration']);
const on = onSchema.optional();

export const nutrientRuleSchema = z.strictObject({ nutrient: tag, ...bounds, on, basis: basis.optional() });
export const ratioRuleSchema = z.strictObject({ ratio, ...bounds, on });
export const groupRuleSchema = z.strictObject({ group: name, ...bounds, on });
export const shareRuleSchema = z.strictObject({ food: id, ...bounds, on });
export const countRuleSchema = z.strictObject({
  count: z.strictObject({ group: name.optional(), at_least: percent.optional() }),
  ...bounds,
});

/** A limit of the animal's target that the keeper changed in this mix: a record for people, not read by the arithmetic. */
export const ownLimitSchema = z.strictObject({
  /** The rule as the target has it. */
  was: z.union([nutrientRuleSchema, ratioRuleSchema]),
  /** As it stands among the rules; absent where it is left out. */
  now: z.union([nutrientRuleSchema, ratioRuleSchema]).optional(),
  /** ISO 8601 date of the last change. */
  on: day,
});

const give = amount.optional();
const moreOrLess = z.enum(['less', 'more']);
export const aimSchema = z.union([
  z.strictObject({ aim: z.enum(['liked', 'cupboard', 'few', 'few to buy', 'cheap']), give }),
  z.strictObject({ aim: moreOrLess, nutrient: tag, on, give }),
  z.strictObject({ aim: moreOrLess, group: name, give }),
  z.strictObject({ aim: moreOrLess, food: id, give }),
]);

export const objectiveSchema = z.enum(['nearest', 'cheapest', 'varied']);
export const variationSchema = z.enum(['given', 'published']);

export const problemSchema = z
  .strictObject({
    foods: z
      .array(ingredientSchema)
      .max(500)
      .superRefine(once((f) => f.id, 'id')),
    rules: z
      .array(
        z.union([nutrientRuleSchema, ratioRuleSchema, groupRuleSchema, shareRuleSchema, countRuleSchema]),
      )
      .max(500),
    /** Limits of the target that the keeper made their own. */
    own_limits: z.array(ownLimitSchema).max(500).optional(),
    beside: z
      .array(besideSchema)
      .max(50)
      .superRefine(once((f) => f.id, 'id')),
    objective: objectiveSchema,
    /** Preferences, first things first; `objective` decides among the mixes they leave. */
    aims: z.array(aimSchema).max(20).optional(),
    /** Least weight of any food that is used at all, g in the batch: what the scale can weigh. */
    least_grams: weight.optional(),
    /** Every nutrient and ratio rule also holds for what is eaten when any one food of the mix is left. */
    drop_one: z.boolean().optional(),
    /** The whole ration of a day, g as weighed, fresh food left out. */
    daily_grams: dailyGrams.optional(),
    /** 0 to below 1. */
    confidence: probability,
    /** Whether the confidence is asked for each rule by itself (the default), or for all of them at once. */
    confidence_for: z.enum(['each', 'all']).optional(),
    /**
     * Without a confidence, the best mix keeps as far from the bounds of nutrient rules as any mix can, up to this
     * confidence for all rules at once; 0 to below 1, none unless written. Not for "cheapest", nor with aims.
     */
    margin: probability.optional(),
    /** "given" unless written. */
    variation: variationSchema.optional(),
    /** Whether foods on the caution list are blocked or capped ("apply"), or only named ("report", the default). */
    cautions: z.enum(['apply', 'report']).optional(),
    /** The animal's species, in words: some cautions hold for dwarf hamsters alone. */
    species: name.optional(),
    /** Foods of the tables that advice leaves out, by number or name: an animal refuses them, or was upset by them. */
    not_offered: z.array(name).max(2000).optional(),
    batch_grams: weight,
    scale_step_grams: weight,
  })
  .openapi('Problem');

/**
 * What the server takes and gives, as zod schemas: the shapes of `household/model.ts` checked at the door.
 * A mix may be unfinished (shares off 100, rules that collide): its shape is checked here, its sense by the formulation.
 */
import { z } from '@hono/zod-openapi';
import { CONDITIONS } from '../../care/model.ts';
import { FOOD_GROUPS, type FoodGroup } from '../../foods/food.ts';
import {
  amount,
  bodyWeight,
  byId,
  composition,
  dailyGrams,
  day,
  id,
  moment,
  money,
  name,
  once,
  pasted,
  share,
  tag,
  weight,
  words,
} from '../../formulation/problem/fields.ts';
import { problemSchema, ratio } from '../../formulation/problem/schema.ts';
import { LIFE_STAGES, type LifeStage } from '../../targets/life-stage.ts';
import { words as said } from '../../words/words.ts';

const STAGES = Object.keys(LIFE_STAGES) as [LifeStage, ...LifeStage[]];
const GROUPS = Object.keys(FOOD_GROUPS) as [FoodGroup, ...FoodGroup[]];

const evidence = z.strictObject({
  sources: z
    .array(
      z.strictObject({
        id,
        name,
        ref: id.optional(),
        date: day.optional(),
        basis: z.enum(['as fed', 'dry matter']),
        n: z.number().int().min(1).max(1_000_000).optional(),
        composition,
        sd: composition,
        low: composition.optional(),
        high: composition.optional(),
        proteinFactor: z.number().min(4).max(8).optional(),
        printed: pasted.optional(),
      }),
    )
    .max(50)
    .superRefine(once((s) => s.id, 'id'))
    .optional(),
  choices: z.partialRecord(tag, id).optional(),
  borrowed: z
    .partialRecord(tag, z.strictObject({ from: id, name, value: amount, sd: amount, source: words }))
    .optional(),
  ingredients: pasted.optional(),
});

export const foodSchema = z
  .strictObject({
    id,
    name,
    kind: z.enum(['mix', 'pellet']),
    group: z.enum(GROUPS).optional(),
    composition,
    sd: composition,
    low: composition.optional(),
    high: composition.optional(),
    evidence: evidence.optional(),
    pricePerKg: money.optional(),
    source: words,
    invented: z.boolean(),
  })
  .openapi('OwnFood');

/** A bound is of a nutrient or of a ratio, and its least does not lie above its most. */
function aboutOneThing(
  bound: { nutrient?: unknown; ratio?: unknown; min?: number; max?: number },
  context: z.RefinementCtx,
): void {
  if ((bound.nutrient === undefined) === (bound.ratio === undefined))
    context.addIssue({ code: 'custom', path: [], message: said().household.fault.nutrientOrRatio });
  if (bound.min !== undefined && bound.max !== undefined && bound.min > bound.max)
    context.addIssue({ code: 'custom', path: ['min'], message: said().household.fault.aboveMost(bound.max) });
}

export const profileSchema = z
  .strictObject({
    id,
    name,
    species: name,
    lifeStage: name,
    fibre: z.enum(['FIBTG', 'FIBC', 'none']),
    about: words,
    bounds: z
      .array(
        z
          .strictObject({
            nutrient: tag.optional(),
            ratio: ratio.optional(),
            min: amount.optional(),
            max: amount.optional(),
            basis: z.enum(['as fed', 'DM', 'per 1000 kcal']),
            source: words,
            confirmed: z.strictObject({ against: words.min(1), on: day }).optional(),
          })
          .superRefine(aboutOneThing),
      )
      .max(200),
  })
  .openapi('TargetProfile');

export const animalSchema = z
  .strictObject({
    id,
    name,
    species: name,
    lifeStage: z.enum(STAGES),
    profileId: id,
    refuses: z.array(id).max(500),
    dailyGrams: dailyGrams.optional(),
    born: z.strictObject({ on: day, about: z.literal(true).optional() }).optional(),
    sex: z.enum(['female', 'male']).optional(),
    conditions: z
      .array(
        z.strictObject({
          what: z.enum(CONDITIONS),
          since: day,
          until: day.optional(),
          young: z.number().int().min(0).max(50).optional(),
          vet: z.literal(true).optional(),
          note: words.optional(),
        }),
      )
      .max(200)
      .superRefine(once((c) => `${c.what} ${c.since}`, 'since'))
      .optional(),
    wheel: z.boolean().optional(),
    room: z.number().min(-30).max(60).optional(),
    daylight: z.boolean().optional(),
    tub: weight.optional(),
    usualGrams: bodyWeight.optional(),
    knows: z
      .array(id)
      .max(2000)
      .superRefine(once((food) => food))
      .optional(),
    notes: words.optional(),
    gone: z.strictObject({ how: z.enum(['died', 'given away']), on: day }).optional(),
    invented: z.boolean(),
  })
  .openapi('Animal');

const shares = byId(share);

export const mixSchema = z
  .strictObject({
    id,
    name,
    animalIds: z
      .array(id)
      .max(100)
      .superRefine(once((animal) => animal)),
    profileId: id,
    problem: problemSchema,
    shares,
    held: z.array(id).max(500),
    updatedAt: moment,
  })
  .openapi('Mix');

export const versionSchema = z
  .strictObject({ id, mixId: id, name, problem: problemSchema, shares, keptAt: moment })
  .openapi('MixVersion');

export const errorSchema = z
  .object({
    field: z.string().openapi({ description: 'JSON pointer to what is wrong; empty for the whole' }),
    message: z.string(),
  })
  .openapi('Error');

export const idParams = z.object({ id });

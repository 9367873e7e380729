/**
 * What the server takes and gives, as zod schemas: the shapes of `household/model.ts` checked at the door.
 * A mix may be unfinished (shares off 100, rules that collide): its shape is checked here, its sense by the formulation.
 */
import { z } from '@hono/zod-openapi';
import { FOOD_GROUPS, type FoodGroup } from '../../foods/food.ts';
import {
  amount,
  composition,
  id,
  name,
  problemSchema,
  ratio,
  tag,
  words,
} from '../../formulation/problem/schema.ts';
import { LIFE_STAGES, type LifeStage } from '../../targets/life-stage.ts';

const STAGES = Object.keys(LIFE_STAGES) as [LifeStage, ...LifeStage[]];
const GROUPS = Object.keys(FOOD_GROUPS) as [FoodGroup, ...FoodGroup[]];

const evidence = z.strictObject({
  sources: z
    .array(
      z.strictObject({
        id,
        name,
        ref: id.optional(),
        date: z.iso.date().optional(),
        basis: z.enum(['as fed', 'dry matter']),
        n: z.number().int().min(1).optional(),
        composition,
        sd: composition,
        low: composition.optional(),
        high: composition.optional(),
        proteinFactor: z.number().min(4).max(8).optional(),
        printed: words.optional(),
      }),
    )
    .max(50)
    .optional(),
  choices: z.partialRecord(tag, id).optional(),
  borrowed: z
    .partialRecord(tag, z.strictObject({ from: id, name, value: amount, sd: amount, source: words }))
    .optional(),
  ingredients: words.optional(),
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
    pricePerKg: amount.optional(),
    source: words,
    invented: z.boolean(),
  })
  .openapi('OwnFood');

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
        z.strictObject({
          nutrient: tag.optional(),
          ratio: ratio.optional(),
          min: amount.optional(),
          max: amount.optional(),
          basis: z.enum(['as fed', 'DM', 'per 1000 kcal']),
          source: words,
          confirmed: z.strictObject({ against: words.min(1), on: z.iso.date() }).optional(),
        }),
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
    dailyGrams: z.number().gt(0).optional(),
    invented: z.boolean(),
  })
  .openapi('Animal');

const shares = z.record(z.string().max(100), z.number().min(0));

export const mixSchema = z
  .strictObject({
    id,
    name,
    animalIds: z.array(id).max(100),
    profileId: id,
    problem: problemSchema,
    shares,
    held: z.array(id).max(500),
    updatedAt: z.iso.datetime(),
  })
  .openapi('Mix');

export const versionSchema = z
  .strictObject({ id, mixId: id, name, problem: problemSchema, shares, keptAt: z.iso.datetime() })
  .openapi('MixVersion');

export const errorSchema = z
  .object({
    field: z.string().openapi({ description: 'JSON pointer to what is wrong; empty for the whole' }),
    message: z.string(),
  })
  .openapi('Error');

export const idParams = z.object({ id });

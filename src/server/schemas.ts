/**
 * What the server takes and gives, as zod schemas: the shapes of `household/model.ts` checked at the door.
 * A mix may be unfinished (shares off 100, rules that collide): its shape is checked here, its sense by the formulation.
 */
import { z } from '@hono/zod-openapi';
import { FOOD_GROUPS, type FoodGroup } from '../foods/food.ts';
import { isTag, NUTRIENTS, nutrient, type Tag } from '../nutrition/nutrients.ts';
import { LIFE_STAGES, type LifeStage } from '../targets/life-stage.ts';

const STAGES = Object.keys(LIFE_STAGES) as [LifeStage, ...LifeStage[]];
const TAGS = NUTRIENTS.map((n) => n.tag) as [Tag, ...Tag[]];
const GROUPS = Object.keys(FOOD_GROUPS) as [FoodGroup, ...FoodGroup[]];

export const id = z.string().trim().min(1).max(100);
export const name = z.string().trim().min(1).max(200);
export const words = z.string().max(4000);
export const amount = z.number().min(0);
export const percent = z.number().min(0).max(100);
const tag = z.enum(TAGS);

const composition = z
  .partialRecord(tag, amount)
  .superRefine((amounts, context) => {
    for (const [key, value] of Object.entries(amounts)) {
      if (isTag(key) && nutrient(key).unit === 'g' && value! > 100) {
        context.addIssue({
          code: 'custom',
          path: [key],
          message: '100 g of food holds 100 g at most; check the unit',
        });
      }
    }
  })
  .openapi('Composition', {
    type: 'object',
    description: 'Amounts per 100 g as fed by INFOODS tagname; absent means unknown.',
  });

const described = {
  id,
  name: name.optional(),
  ref: id.optional(),
  composition: composition.optional(),
  sd: composition.optional(),
  low: composition.optional(),
  high: composition.optional(),
  borrowed: z.partialRecord(tag, name).optional(),
};

const bounds = { min: amount.optional(), max: amount.optional(), source: words.optional() };
const on = z.enum(['mix', 'ration']).optional();
const basis = z.enum(['as fed', 'DM']);
const ratio = z.tuple([tag, tag]).readonly();

const rule = z.union([
  z.strictObject({ nutrient: tag, ...bounds, on, basis: basis.optional() }),
  z.strictObject({ ratio, ...bounds, on }),
  z.strictObject({ group: name, ...bounds, on }),
  z.strictObject({ food: id, ...bounds, on }),
  z.strictObject({
    count: z.strictObject({ group: name.optional(), at_least: percent.optional() }),
    ...bounds,
  }),
]);

const give = amount.optional();
const moreOrLess = z.enum(['less', 'more']);
const aim = z.union([
  z.strictObject({ aim: z.enum(['liked', 'cupboard', 'few', 'few to buy', 'cheap']), give }),
  z.strictObject({ aim: moreOrLess, nutrient: tag, on, give }),
  z.strictObject({ aim: moreOrLess, group: name, give }),
  z.strictObject({ aim: moreOrLess, food: id, give }),
]);

const ingredient = z.strictObject({
  ...described,
  group: name.optional(),
  min: percent.optional(),
  max: percent.optional(),
  want: percent.optional(),
  price_per_kg: amount.optional(),
  refused: z.boolean().optional(),
  override: z.strictObject({ caution: id, note: words.min(1), on: z.iso.date() }).optional(),
  if_used: percent.optional(),
  liked: z.boolean().optional(),
  on_hand_grams: amount.optional(),
});

const beside = z.strictObject({
  ...described,
  share_of_ration: percent,
  grams_a_day: amount.optional(),
  share_min: percent.optional(),
  share_max: percent.optional(),
  counts_as: z.literal('air dry').optional(),
});

export const problemSchema = z
  .strictObject({
    foods: z.array(ingredient).max(500),
    rules: z.array(rule).max(500),
    beside: z.array(beside).max(50),
    objective: z.enum(['nearest', 'cheapest', 'varied']),
    aims: z.array(aim).max(20).optional(),
    least_grams: z.number().gt(0).optional(),
    drop_one: z.boolean().optional(),
    daily_grams: z.number().gt(0).optional(),
    confidence: z.number().min(0).lt(1),
    confidence_for: z.enum(['each', 'all']).optional(),
    variation: z.enum(['given', 'published']).optional(),
    cautions: z.enum(['apply', 'report']).optional(),
    species: name.optional(),
    batch_grams: z.number().gt(0),
    scale_step_grams: z.number().gt(0),
  })
  .openapi('Problem');

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
          basis,
          source: words,
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

/** What the server takes and gives of the kitchen: the shapes of `kitchen/model.ts` checked at the door. */
import { z } from '@hono/zod-openapi';
import { amount, id, name, percent, problemSchema, words } from '../../formulation/problem/schema.ts';
import { MOST_POURS } from '../batch-store.ts';
import type { KitchenKind } from '../kitchen-store.ts';
import { errorSchema } from './schemas.ts';

/** What a batch's tag is, for whoever reads the interface's description. */
export const TAG =
  'FNV-1a (64 bits, 16 hexadecimal digits) of the JSON of [[food, grams, at] of each pour, finishedAt or null, scale_step_grams, stock as pairs sorted by food]';

const day = z.iso.date();
const moment = z.iso.datetime();
const positive = z.number().gt(0);
const celsius = z.number().min(-60).max(250);
const device = z.enum(['oven', 'dehydrator']);

const overruled = z.strictObject({ note: words.min(1), on: day });

const lotSchema = z
  .strictObject({
    id,
    food: id,
    name,
    grams: positive,
    form: z.enum(['dry', 'fresh', 'dried']),
    boughtOn: day,
    openedOn: day.optional(),
    bestBefore: day.optional(),
    frozen: z.boolean(),
    seller: name.optional(),
    price: amount.optional(),
    cold: z
      .array(z.strictObject({ kind: z.enum(['freeze', 'thaw']), from: day, to: day, doneOn: day.optional() }))
      .max(20),
    overruled: overruled.optional(),
    barred: z.strictObject({ why: words.min(1), on: day }).optional(),
    driedIn: id.optional(),
    moisture: percent.optional(),
  })
  .openapi('Lot');

const offerSchema = z
  .strictObject({
    id,
    food: id,
    seller: name,
    packGrams: positive,
    price: amount,
    form: z.enum(['dry', 'fresh']),
  })
  .openapi('Offer');

const dryingRunSchema = z
  .strictObject({
    id,
    lot: id,
    device,
    celsius,
    startedAt: moment,
    trays: z.number().int().min(1).max(100),
    gramsTaken: positive.optional(),
    gramsBefore: positive,
    checks: z
      .array(z.strictObject({ at: moment, grams: amount.optional(), note: words.optional() }))
      .max(200),
    kind: z.enum(['vegetable', 'leaf', 'herb', 'fruit']).optional(),
    hours: positive.max(1000).optional(),
    load: z.strictObject({ n: z.number().int().min(1), of: z.number().int().min(1) }).optional(),
    sample: z
      .strictObject({
        before: positive,
        dry: positive,
        of: positive.optional(),
        step: positive.optional(),
      })
      .optional(),
    gramsAfter: positive.optional(),
    endedAt: moment.optional(),
    accepted: overruled.optional(),
  })
  .openapi('DryingRun');

const pour = z
  .strictObject({
    food: id,
    // Below 0 for what went back to the lot.
    lots: z.array(z.strictObject({ lot: id, grams: z.number() })).max(50),
    target: amount,
    grams: z.number(),
    at: moment,
  })
  .openapi('Pour');

const stock = z.record(z.string().max(100), amount);

/** One entry at the scale. */
export const pourEntrySchema = z
  .strictObject({
    pours: z.array(pour).min(1).max(MOST_POURS),
    stock: stock.optional().openapi({
      description:
        'g that there are of each food from now on, where there is no more of one; as before if left out',
    }),
    seen: z
      .string()
      .min(1)
      .max(100)
      .optional()
      .openapi({
        description: `Tag of the batch as the sender last saw it: ${TAG}. Where it stands otherwise, nothing is added. Left out, it is not compared.`,
      }),
  })
  .openapi('PourEntry');

const batchSchema = z
  .strictObject({
    id,
    mixId: id.optional(),
    name,
    problem: problemSchema,
    shares: z.record(z.string().max(100), z.number().min(0)),
    order: z.array(id).max(500),
    grams: positive,
    pours: z.array(pour).max(MOST_POURS),
    animalIds: z.array(id).max(100),
    madeBy: name.optional(),
    stock: stock.optional(),
    accepted: overruled.optional(),
    givenUp: overruled.optional(),
    left: z.strictObject({ grams: amount, on: day }).optional(),
    startedAt: moment,
    finishedAt: moment.optional(),
  })
  .openapi('Batch');

const wholeDays = z.number().int().min(0).max(366).optional();

const nextBatchSchema = z.strictObject({
  mixId: id,
  grams: positive.optional(),
  days: z.number().int().min(1).max(3660).optional(),
  from: day.optional(),
  until: day.optional(),
  untilRunsOut: z.literal(true).optional(),
  pins: z.array(z.strictObject({ step: z.string().min(1).max(300), day })).max(500),
});

const kitchenSchema = z
  .strictObject({
    id: z.literal('kitchen'),
    driedAtHome: z
      .array(z.strictObject({ food: id, fresh: id, moisture: percent, trimLoss: percent.optional() }))
      .max(500)
      .optional(),
    sellers: z
      .array(z.strictObject({ seller: name, delivery: amount.optional(), minimumOrder: amount.optional() }))
      .max(200)
      .optional(),
    stepDays: z
      .strictObject({
        buy: wholeDays,
        freeze: wholeDays,
        thaw: wholeDays,
        dry: wholeDays,
        weigh: wholeDays,
        'change-over': wholeDays,
      })
      .optional(),
    next: nextBatchSchema.optional(),
    freezer: z.strictObject({ grams: positive, celsius }).optional(),
    dryer: z
      .strictObject({
        device,
        trays: z.number().int().min(1).max(100),
        trayArea: positive,
        celsius,
      })
      .optional(),
  })
  .openapi('Kitchen');

/** What became of an entry at the scale. */
export const pourAnswerSchema = z
  .object({
    added: z.boolean().openapi({
      description: 'Whether the pours are in the batch; not where another device went on with it first',
    }),
    batch: batchSchema.openapi({ description: 'The batch as it stands' }),
  })
  .openapi('PourAnswer');

/** A batch that another device went on with. */
export const overtakenSchema = errorSchema
  .extend({ batch: batchSchema.openapi({ description: 'The batch as it stands' }) })
  .openapi('Overtaken');

/** By the name of each kind's list in a household. */
export const KITCHEN_SCHEMAS = {
  lots: lotSchema,
  offers: offerSchema,
  dryingRuns: dryingRunSchema,
  batches: batchSchema,
  kitchen: kitchenSchema,
} satisfies Record<KitchenKind, z.ZodType>;

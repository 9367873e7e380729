/** What the server takes and gives of the kitchen: the shapes of `kitchen/model.ts` checked at the door. */
import { z } from '@hono/zod-openapi';
import {
  byId,
  day,
  grams,
  id,
  moment,
  money,
  name,
  once,
  percent,
  share,
  weight,
  words,
} from '../../formulation/problem/fields.ts';
import { problemSchema } from '../../formulation/problem/schema.ts';
import { words as said } from '../../words/words.ts';

/** Most pours of one batch. */
export const MOST_POURS = 1000;

const celsius = z.number().min(-60).max(250);
const device = z.enum(['oven', 'dehydrator']);

const overruled = z.strictObject({ note: words.min(1), on: day });

const lotSchema = z
  .strictObject({
    id,
    food: id,
    name,
    grams: weight,
    form: z.enum(['dry', 'fresh', 'dried']),
    boughtOn: day,
    openedOn: day.optional(),
    bestBefore: day.optional(),
    frozen: z.boolean(),
    seller: name.optional(),
    price: money.optional(),
    cold: z
      .array(z.strictObject({ kind: z.enum(['freeze', 'thaw']), from: day, to: day, doneOn: day.optional() }))
      .max(20),
    overruled: overruled.optional(),
    barred: z.strictObject({ why: words.min(1), on: day }).optional(),
    driedIn: id.optional(),
    moisture: percent.optional(),
    left: z.strictObject({ grams, on: day }).optional(),
  })
  .openapi('Lot');

const offerSchema = z
  .strictObject({
    id,
    food: id,
    seller: name,
    packGrams: weight,
    price: money,
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
    gramsTaken: weight.optional(),
    gramsBefore: weight,
    checks: z.array(z.strictObject({ at: moment, grams: grams.optional(), note: words.optional() })).max(200),
    kind: z.enum(['vegetable', 'leaf', 'herb', 'fruit']).optional(),
    hours: z.number().min(0.01).max(1000).optional(),
    load: z
      .strictObject({ n: z.number().int().min(1).max(1000), of: z.number().int().min(1).max(1000) })
      .refine(({ n, of }) => n <= of, { path: ['n'], error: () => said().household.fault.loads })
      .optional(),
    sample: z
      .strictObject({
        before: weight,
        dry: weight,
        of: weight.optional(),
        step: weight.optional(),
      })
      .optional(),
    gramsAfter: weight.optional(),
    endedAt: moment.optional(),
    accepted: overruled.optional(),
  })
  .openapi('DryingRun');

/** g, below 0 for what was taken back. */
const poured = z.number().min(-100_000).max(100_000);

const pour = z
  .strictObject({
    food: id,
    // Below 0 for what went back to the lot.
    lots: z.array(z.strictObject({ lot: id, grams: poured })).max(50),
    target: grams,
    grams: poured,
    at: moment,
  })
  .openapi('Pour');

const stock = byId(grams);

/** One entry at the scale. */
export const pourEntrySchema = z
  .strictObject({
    pours: z.array(pour).min(1).max(MOST_POURS),
    stock: stock.optional().openapi({
      description:
        'g that there are of each food from now on, where there is no more of one; as before if left out',
    }),
  })
  .openapi('PourEntry');

/** What was taken back may be off by what a scale cannot read, g. */
const UNREAD = 0.01;

/** Of no food can more be taken out of the bowl than was poured into it. */
function noLessThanNothing(
  { pours }: { pours: readonly { food: string; grams: number }[] },
  context: z.RefinementCtx,
): void {
  const inBowl = new Map<string, number>();
  for (const { food, grams } of pours) inBowl.set(food, (inBowl.get(food) ?? 0) + grams);
  const i = pours.findLastIndex(({ food }) => (inBowl.get(food) ?? 0) < -UNREAD);
  if (i < 0) return;
  const message = said().household.fault.outOfBowl;
  context.addIssue({ code: 'custom', path: ['pours', i, 'grams'], message });
}

const batchSchema = z
  .strictObject({
    id,
    mixId: id.optional(),
    name,
    problem: problemSchema,
    shares: byId(share),
    order: z.array(id).max(500),
    grams: weight,
    pours: z.array(pour).max(MOST_POURS),
    animalIds: z
      .array(id)
      .max(100)
      .superRefine(once((id) => id)),
    madeBy: name.optional(),
    stock: stock.optional(),
    agreed: z
      .strictObject({
        grams: weight.optional(),
        without: z.array(id).max(500).optional(),
        keep: z.literal(true).optional(),
      })
      .optional(),
    accepted: overruled.optional(),
    givenUp: overruled.optional(),
    left: z.strictObject({ grams, on: day }).optional(),
    startedAt: moment,
    finishedAt: moment.optional(),
  })
  .superRefine(noLessThanNothing)
  .openapi('Batch');

const wholeDays = z.number().int().min(0).max(366).optional();

const nextBatchSchema = z.strictObject({
  mixId: id,
  grams: weight.optional(),
  days: z.number().int().min(1).max(3660).optional(),
  from: day.optional(),
  until: day.optional(),
  untilRunsOut: z.literal(true).optional(),
  pins: z.array(z.strictObject({ step: words.min(1).max(300), day })).max(500),
});

const kitchenSchema = z
  .strictObject({
    id: z.literal('kitchen'),
    driedAtHome: z
      .array(z.strictObject({ food: id, fresh: id, moisture: percent, trimLoss: percent.optional() }))
      .max(500)
      .superRefine(once((d) => d.food, 'food'))
      .optional(),
    sellers: z
      .array(z.strictObject({ seller: name, delivery: money.optional(), minimumOrder: money.optional() }))
      .max(200)
      .superRefine(once((s) => s.seller, 'seller'))
      .optional(),
    basket: byId(
      z.strictObject({ on: day, home: z.literal(true).optional(), grams: weight.optional() }),
    ).optional(),
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
    freezer: z.strictObject({ grams: weight, celsius }).optional(),
    dryer: z
      .strictObject({
        device,
        trays: z.number().int().min(1).max(100),
        trayArea: z.number().min(0.01).max(10_000),
        celsius,
      })
      .optional(),
  })
  .openapi('Kitchen');

/** By the name of each kind's list in a household. */
export const KITCHEN_SCHEMAS = {
  lots: lotSchema,
  offers: offerSchema,
  dryingRuns: dryingRunSchema,
  batches: batchSchema,
  kitchen: kitchenSchema,
};

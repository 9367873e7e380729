/** What the server takes and gives of the animals' lives: the shapes of `care/model.ts` checked at the door. */
import { z } from '@hono/zod-openapi';
import { ALLERGENS, SEEN } from '../../care/model.ts';
import {
  bodyWeight,
  byId,
  day,
  grams,
  id,
  moment,
  name,
  once,
  weight,
  words,
} from '../../formulation/problem/fields.ts';

/** Letters of a picture in base64: some 80 kB of JPEG. */
const MOST_PHOTO = 110_000;

const weighingSchema = z
  .strictObject({
    id,
    animalId: id,
    at: moment,
    grams: bodyWeight,
    tub: weight.optional(),
    sure: z.literal(true).optional(),
    note: words.optional(),
  })
  .openapi('Weighing');

const remains = z.strictObject({
  grams: grams.optional(),
  parts: byId(grams).optional(),
  sorted: z.literal(true).optional(),
  mostly: z
    .array(id)
    .max(500)
    .superRefine(once((food) => food))
    .optional(),
});

const feedingSchema = z
  .strictObject({
    id,
    animalId: id,
    on: day,
    at: moment.optional(),
    mix: z.strictObject({ batchId: id.optional(), grams }).optional(),
    beside: z.array(z.strictObject({ food: id, lot: id.optional(), grams })).max(100),
    left: z
      .strictObject({
        on: day,
        since: day.optional(),
        bowl: remains.optional(),
        hoard: remains.optional(),
        note: words.optional(),
      })
      .optional(),
  })
  .openapi('Feeding');

const trialSchema = z
  .strictObject({
    id,
    animalId: id,
    food: id,
    name,
    beside: z.strictObject({ food: id, name }).optional(),
    grams: weight.optional(),
    days: z.array(day).max(100),
    offerings: z
      .array(
        z.strictObject({
          on: day,
          seen: z.enum(SEEN),
          grams: weight.optional(),
          left: grams.optional(),
          note: words.optional(),
        }),
      )
      .max(500)
      .superRefine(once((o) => o.on, 'on')),
    endedOn: day.optional(),
    others: z.strictObject({ note: words.min(1), on: day }).optional(),
  })
  .openapi('Trial');

const noteSchema = z
  .strictObject({ id, animalId: id, on: day, kind: z.enum(['seen', 'vet']), text: words.min(1) })
  .openapi('Note');

const photoSchema = z
  .strictObject({
    id,
    jpeg: z
      .string()
      .max(MOST_PHOTO)
      .regex(/^\/9j\/[A-Za-z0-9+/]+={0,2}$/),
  })
  .openapi('Photo');

const phone = z
  .string()
  .trim()
  .max(60)
  .regex(/^[\d+()/.\- ]*$/);

const keeperSchema = z
  .strictObject({
    id: z.literal('keeper'),
    vet: z
      .strictObject({ name: name.optional(), phone: phone.optional(), emergency: phone.optional() })
      .optional(),
    allergies: z
      .array(z.enum(ALLERGENS))
      .max(ALLERGENS.length)
      .superRefine(once((a) => a))
      .optional(),
    south: z.literal(true).optional(),
    forSitter: words.optional(),
  })
  .openapi('Keeper');

/** By the name of each kind's list in a household. */
export const CARE_SCHEMAS = {
  weighings: weighingSchema,
  feedings: feedingSchema,
  trials: trialSchema,
  notes: noteSchema,
  photos: photoSchema,
  keeper: keeperSchema,
};

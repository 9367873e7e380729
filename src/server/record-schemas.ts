/** Records as the server gives them. */
import { z } from '@hono/zod-openapi';
import { errorSchema } from '../household/shape/schemas.ts';

const recordSchema = z
  .object({
    kind: z.string(),
    id: z.string(),
    version: z.number().int(),
    seq: z.number().int(),
    place: z.number().int(),
    body: z.looseObject({ id: z.string() }).nullable().openapi({ description: 'null where it is deleted' }),
    unreadable: z.object({ raw: z.string(), why: z.string() }).optional(),
  })
  .openapi('KeptRecord');

const cutsSchema = z.array(z.number().int());

export const recordsPageSchema = z
  .object({
    records: z.array(recordSchema),
    seq: z.number().int().openapi({ description: 'Ask for what comes after this next' }),
    more: z.boolean(),
    newest: z.number().int().openapi({
      description:
        'Number of the newest change of the household; with `upTo` of its changes up to that one, so that a range tells of itself alone',
    }),
    epoch: z.string().openapi({ description: 'Where it changes, numbers seen before mean nothing' }),
    cuts: z.object({ rest: cutsSchema, feedings: cutsSchema, weighings: cutsSchema }).optional().openapi({
      description:
        'In the first answer (`after=0`) of a household that has more: for each section the numbers of changes at which to cut it into ranges (`after`, `upTo`) of which each fits one answer, where it is asked for with `brief`. They stay while the household grows',
    }),
  })
  .openapi('RecordsPage');

export const writtenSchema = z
  .object({ record: recordSchema, along: z.array(recordSchema) })
  .openapi('Written');

export const overtakenSchema = errorSchema.extend({ stands: recordSchema.optional() }).openapi('Overtaken');

const changeFields = {
  seq: z.number().int(),
  kind: z.string(),
  id: z.string(),
  version: z.number().int(),
  what: z.enum(['made', 'changed', 'deleted', 'brought back']),
  name: z.string(),
  at: z.string(),
  device: z.string(),
  together: z.number().int(),
  newest: z.boolean(),
};

export const historySchema = z
  .object({ changes: z.array(z.object(changeFields)), more: z.boolean() })
  .openapi('HistoryPage');

export const changeSchema = z
  .object({ ...changeFields, before: z.unknown(), after: z.unknown() })
  .openapi('ChangeDetail');

/** Reading and writing the household, record by record. */
import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import { type Kept, KINDS, type Kind } from '../household/model.ts';
import { type By, SECTIONS } from '../household/records.ts';
import { SCHEMAS } from '../household/shape/check-record.ts';
import { pourEntrySchema } from '../household/shape/kitchen-schemas.ts';
import { errorSchema, idParams } from '../household/shape/schemas.ts';
import { words } from '../words/words.ts';
import type { Caller, CallerEnv } from './caller.ts';
import { json } from './json.ts';
import { basedOn, writeHeaders } from './preconditions.ts';
import { overtakenSchema, recordsPageSchema, writtenSchema } from './record-schemas.ts';
import { SentParts } from './sent-parts.ts';

/** The device of a caller, at this moment. */
export function byCaller({ device }: Caller): By {
  return { device, at: new Date().toISOString() };
}

const REFUSED = {
  400: json(errorSchema, 'Wrong input; the field says where'),
  404: json(errorSchema, 'Not there'),
  409: json(
    overtakenSchema,
    'It stands at another version (`stands`), is in use or finished, or there are too many',
  ),
  428: json(errorSchema, 'The version that it is based on is missing'),
};

const noVersion = () => ({ field: '', message: words().access.refusal.noVersion });

export function recordRoutes(app: OpenAPIHono<CallerEnv>): void {
  const sent = new SentParts();
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/records',
      request: {
        query: z.object({
          after: z.coerce.number().int().min(0).max(2_000_000_000).default(0).openapi({
            description: 'Number of the last change seen; 0 for everything that is there now',
          }),
          upTo: z.coerce.number().int().min(1).max(2_000_000_000).optional().openapi({
            description:
              'Only changes up to this number, and of these only what is there now; the answer is the same as long as none of these changes again',
          }),
          of: z.enum(SECTIONS).optional().openapi({
            description: 'Only records of this kind, of which there is one a day; or all but these kinds',
          }),
          brief: z.enum(['1']).optional().openapi({
            description:
              'Leaves out of each record with a body what follows from the rest: `id` (as in its body), `version` where it is 1, `place` where it is as `seq`',
          }),
        }),
      },
      responses: {
        200: json(recordsPageSchema, 'What changed since, at most about 190 kB'),
        400: json(errorSchema, 'Wrong input'),
      },
    }),
    async (c) => {
      const { brief, ...asked } = c.req.valid('query');
      const { store, household } = c.get('caller');
      const part = [household, asked.of, asked.after, brief].join(' ');
      return (await sent.answer(c, part, (known) =>
        store.recordsText({ ...asked, brief: brief !== undefined }, known),
      )) as never;
    },
  );
  for (const kind of KINDS) writeRoutes(app, kind);
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/batches/{id}/pours',
      description:
        'Adds pours to a batch, whoever else poured meanwhile. A pour that it has already (same food, grams and time) is not added again, so a request whose answer was lost may be sent anew.',
      request: {
        params: idParams,
        headers: writeHeaders.pick({ 'idempotency-key': true }),
        body: { required: true, content: { 'application/json': { schema: pourEntrySchema } } },
      },
      responses: { 200: json(writtenSchema, 'Added and on disk; the batch as it stands'), ...REFUSED },
    }),
    async (c) => {
      const caller = c.get('caller');
      const { id } = c.req.valid('param');
      const writeId = c.req.valid('header')['idempotency-key'];
      const answer = await caller.store.addPours(id, c.req.valid('json'), byCaller(caller), writeId);
      return c.json(answer as never, 200);
    },
  );
}

/** `PUT` and `DELETE` of one kind of record. */
function writeRoutes(app: OpenAPIHono<CallerEnv>, kind: Kind): void {
  const path = `/api/${kind}/{id}` as const;
  const responses = { 200: json(writtenSchema, 'Written and on disk'), ...REFUSED };
  app.openapi(
    createRoute({
      method: 'put',
      path,
      request: {
        params: idParams,
        headers: writeHeaders,
        body: { required: true, content: { 'application/json': { schema: SCHEMAS[kind] as z.ZodType } } },
      },
      responses,
    }),
    async (c) => {
      const body = c.req.valid('json') as Kept<Kind>;
      const { id } = c.req.valid('param');
      if (body.id !== id)
        return c.json({ field: '/id', message: words().access.refusal.otherAddress(body.id, id) }, 400);
      const { status, answer } = await write(c.get('caller'), c.req.valid('header'), { kind, id, body });
      return c.json(answer as never, status);
    },
  );
  app.openapi(
    createRoute({ method: 'delete', path, request: { params: idParams, headers: writeHeaders }, responses }),
    async (c) => {
      const { id } = c.req.valid('param');
      const { status, answer } = await write(c.get('caller'), c.req.valid('header'), {
        kind,
        id,
        body: null,
      });
      return c.json(answer as never, status);
    },
  );
}

async function write(
  caller: Caller,
  headers: z.infer<typeof writeHeaders>,
  what: { readonly kind: Kind; readonly id: string; readonly body: Kept<Kind> | null },
) {
  const version = basedOn(headers);
  if (version === undefined) return { status: 428, answer: noVersion() } as const;
  const writeId = headers['idempotency-key'];
  const answer = await caller.store.write(
    { ...what, basedOn: version, ...(writeId !== undefined && { writeId }) },
    byCaller(caller),
  );
  return { status: 200, answer } as const;
}

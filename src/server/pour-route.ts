/** What is weighed, as one request: pours go onto a batch without the rest of it being sent. */
import { createRoute, type OpenAPIHono, type z } from '@hono/zod-openapi';
import type { Store } from '../household/store.ts';
import { ifMatchHeaders, tagSeen } from './if-match.ts';
import { json } from './json.ts';
import { KITCHEN_SCHEMAS, overtakenSchema, pourEntrySchema } from './kitchen-schemas.ts';
import { errorSchema, idParams } from './schemas.ts';

/** `POST /api/batches/{id}/pours`. */
export function pourRoute(app: OpenAPIHono, store: Pick<Store, 'addPours'>): void {
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/batches/{id}/pours',
      description:
        'Adds pours to a batch. A pour that it has already (same food, grams and time) is not added again, so a request whose answer was lost may be sent anew.',
      request: {
        params: idParams,
        headers: ifMatchHeaders,
        body: { required: true, content: { 'application/json': { schema: pourEntrySchema } } },
      },
      responses: {
        200: json(KITCHEN_SCHEMAS.batches, 'Written; the batch as it stands'),
        400: json(errorSchema, 'Wrong input; the field says where'),
        404: json(errorSchema, 'No such batch'),
        409: json(overtakenSchema, 'The batch is finished'),
        412: json(overtakenSchema, 'The batch stands otherwise than its sender saw it'),
      },
    }),
    async (c) => {
      const { id } = c.req.valid('param');
      const seen = tagSeen(c.req.valid('header')['if-match']);
      const batch = await store.addPours(id, c.req.valid('json'), seen);
      // The store gives read-only lists, zod's types are writable; the JSON is the same.
      return c.json(batch as z.infer<typeof KITCHEN_SCHEMAS.batches>, 200);
    },
  );
}

/** What is weighed, as one request: pours go onto a batch without the rest of it being sent. */
import { createRoute, type OpenAPIHono, type z } from '@hono/zod-openapi';
import { pourAnswerSchema, pourEntrySchema } from '../household/shape/kitchen-schemas.ts';
import { errorSchema, idParams } from '../household/shape/schemas.ts';
import type { Store } from '../household/store.ts';
import { json } from './json.ts';

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
        body: { required: true, content: { 'application/json': { schema: pourEntrySchema } } },
      },
      responses: {
        200: json(pourAnswerSchema, 'Added and on disk, or another device went on; the batch as it stands'),
        400: json(errorSchema, 'Wrong input; the field says where'),
        404: json(errorSchema, 'No such batch'),
        409: json(errorSchema, 'The batch is finished'),
      },
    }),
    async (c) => {
      const answer = await store.addPours(c.req.valid('param').id, c.req.valid('json'));
      // The store gives read-only lists, zod's types are writable; the JSON is the same.
      return c.json(answer as z.infer<typeof pourAnswerSchema>, 200);
    },
  );
}

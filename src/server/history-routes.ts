/** What was changed in the household, and taking it back. */

import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import { KINDS } from '../household/model.ts';
import { errorSchema } from '../household/shape/schemas.ts';
import type { CallerEnv } from './caller.ts';
import { json } from './json.ts';
import { byCaller } from './record-routes.ts';
import { changeSchema, historySchema, writtenSchema } from './record-schemas.ts';

const number = z.coerce.number().int().min(1).max(2_000_000_000);
const seqParams = z.object({ seq: number });

export function historyRoutes(app: OpenAPIHono<CallerEnv>): void {
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/history',
      request: {
        query: z.object({
          kind: z.enum(KINDS).optional(),
          id: z.string().max(100).optional(),
          before: number.optional().openapi({ description: 'Only changes before this number' }),
          deleted: z.literal('1').optional().openapi({ description: 'Only what is deleted now' }),
        }),
      },
      responses: {
        200: json(historySchema, 'Changes, newest first, 50 at most'),
        400: json(errorSchema, 'Wrong input'),
      },
    }),
    async (c) => {
      const { deleted, ...query } = c.req.valid('query');
      const page = await c.get('caller').store.history({ ...query, ...(deleted && { deleted: true }) });
      return c.json(page as never, 200);
    },
  );
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/history/{seq}',
      request: { params: seqParams },
      responses: {
        200: json(changeSchema, 'One change, with what stood before and after it'),
        404: json(errorSchema, 'No such change'),
      },
    }),
    async (c) => c.json((await c.get('caller').store.change(c.req.valid('param').seq)) as never, 200),
  );
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/history/{seq}/take-back',
      request: { params: seqParams },
      responses: {
        200: json(
          z.object({ written: z.array(writtenSchema) }),
          'Undone, with all that was made together with it',
        ),
        404: json(errorSchema, 'No such change'),
        409: json(errorSchema, 'A later change touches the same'),
      },
    }),
    async (c) => {
      const caller = c.get('caller');
      const written = await caller.store.takeBack(c.req.valid('param').seq, byCaller(caller));
      return c.json({ written } as never, 200);
    },
  );
}

/** Taking the household out as files, and bringing files in: checked and shown first, written by a second request. */
import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import type { MiddlewareHandler } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { csvOf, TABLES, type TableName } from '../household/exchange/csv-tables.ts';
import { MOST_FILE_BYTES } from '../household/exchange/format.ts';
import { householdFile } from '../household/exchange/household-file.ts';
import { foodPart, mixPart, type Part, partFile } from '../household/exchange/part-file.ts';
import type { Household } from '../household/model.ts';
import { errorSchema } from '../household/shape/schemas.ts';
import { words } from '../words/words.ts';
import type { CallerEnv } from './caller.ts';
import { importRoutes } from './import-routes.ts';
import { json } from './json.ts';

/** Where files come in: they may be larger than other bodies. */
const IMPORTS = '/api/import';

/** For all routes but those that take files: a body may have so many bytes. */
export function smallBodies(maxSize: number): MiddlewareHandler {
  const small = limitedTo(maxSize, () => words().access.refusal.bodyTooLarge(maxSize / 1024 / 1024));
  const large = limitedTo(MOST_FILE_BYTES, () =>
    words().access.refusal.fileTooLarge(MOST_FILE_BYTES / 1_000_000),
  );
  return (c, next) => {
    // It has no body; to ask whether it has one costs as much as all else here.
    if (c.req.method === 'GET') return next();
    return c.req.path === IMPORTS || c.req.path.startsWith(`${IMPORTS}/`) ? large(c, next) : small(c, next);
  };
}

function limitedTo(maxSize: number, message: () => string): MiddlewareHandler {
  return bodyLimit({ maxSize, onError: (c) => c.json({ field: '', message: message() }, 413) });
}

export function exchangeRoutes(app: OpenAPIHono<CallerEnv>): void {
  importRoutes(app);
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/export',
      responses: {
        200: {
          description: 'Everything, as one file; its shape is docs/export.schema.json',
          content: { 'application/json': { schema: z.any() } },
        },
      },
    }),
    async (c) => {
      const records = await c.get('caller').store.everything();
      return sent(streamOf(householdFile(records)), 'pouchful-household.json', 'application/json');
    },
  );
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/export/{table}',
      request: {
        params: z.object({ table: z.enum(TABLES.map((t) => `${t}.csv` as const)) }),
        query: z.object({
          decimal: z
            .enum(['point', 'comma'])
            .default('point')
            .openapi({ description: 'Decimal mark; with a comma, semicolons part the columns' }),
          mark: z.enum(['0', '1']).default('1').openapi({
            description: 'Whether a byte order mark comes first, by which spreadsheet programs know UTF-8',
          }),
        }),
      },
      responses: {
        200: { description: 'One table as CSV', content: { 'text/csv': { schema: z.string() } } },
        400: json(errorSchema, 'No such table'),
      },
    }),
    async (c) => {
      const { table } = c.req.valid('param');
      const { decimal, mark } = c.req.valid('query');
      const name = table.slice(0, -'.csv'.length) as TableName;
      const text = csvOf(name, await c.get('caller').store.household(), {
        decimal: decimal === 'comma' ? ',' : '.',
        mark: mark === '1',
      });
      return sent(text, `pouchful-${table}`, 'text/csv');
    },
  );
  partRoute(app, 'mix', mixPart);
  partRoute(app, 'food', foodPart);
}

function partRoute(
  app: OpenAPIHono<CallerEnv>,
  what: 'mix' | 'food',
  of: (household: Household, id: string) => Part,
): void {
  app.openapi(
    createRoute({
      method: 'get',
      path: `/api/export/${what}/{id}`,
      request: { params: z.object({ id: z.string().min(1).max(100) }) },
      responses: {
        200: {
          description: `One ${what} for another keeper`,
          content: { 'application/json': { schema: z.any() } },
        },
        404: json(errorSchema, 'Not there'),
      },
    }),
    async (c) => {
      const household = await c.get('caller').store.household();
      try {
        const text = partFile(of(household, c.req.valid('param').id));
        return sent(text, `pouchful-${what}.json`, 'application/json');
      } catch (error) {
        if (error instanceof RangeError) return c.json({ field: '/id', message: error.message }, 404);
        throw error;
      }
    },
  );
}

/** A file to be saved. Routes are typed by what they answer as JSON, which a file is not. */
function sent(body: string | ReadableStream<Uint8Array>, name: string, type: string): never {
  const headers = {
    'Content-Type': `${type}; charset=utf-8`,
    'Content-Disposition': `attachment; filename="${name}"`,
    'Cache-Control': 'no-store',
  };
  return new Response(body, { headers }) as never;
}

/** Characters that are sent in one piece. */
const PIECE = 65_536;

function streamOf(pieces: Iterator<string>): ReadableStream<Uint8Array> {
  const encoder = new TextEncoder();
  return new ReadableStream({
    pull(controller) {
      let text = '';
      while (text.length < PIECE) {
        const { value, done } = pieces.next();
        if (done) {
          if (text) controller.enqueue(encoder.encode(text));
          controller.close();
          return;
        }
        text += value;
      }
      controller.enqueue(encoder.encode(text));
    },
  });
}

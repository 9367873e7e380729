import type { z } from '@hono/zod-openapi';

/** One answer of a route, as OpenAPI describes it. */
export function json<S extends z.ZodType>(schema: S, description: string) {
  return { description, content: { 'application/json': { schema } } };
}

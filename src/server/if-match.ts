/** The HTTP header by which the sender of a batch says how it last saw it (RFC 9110, 13.1.1). */
import { z } from '@hono/zod-openapi';
import { TAG } from '../household/shape/kitchen-schemas.ts';

export const ifMatchHeaders = z.object({
  'if-match': z
    .string()
    .regex(/^"[^"]+"$/, 'write one entity tag in double quotes, or leave it out')
    .optional()
    .openapi({
      description: `Tag of the batch as the sender last saw it, in double quotes: ${TAG}. Where the batch stands otherwise, nothing is written. Left out, it is not compared.`,
    }),
});

/** The tag that the sender saw, without its quotes; undefined where none was sent. */
export function tagSeen(header: string | undefined): string | undefined {
  return header?.slice(1, -1);
}

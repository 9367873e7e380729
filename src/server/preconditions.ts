/** The headers by which a write says what it is based on (RFC 9110, 13.1) and which write it is. */
import { z } from '@hono/zod-openapi';

export const writeHeaders = z.object({
  'if-match': z
    .string()
    .regex(/^"\d{1,9}"$/, 'write the version that you saw in double quotes, such as "3"')
    .optional()
    .openapi({ description: 'The version that the sender saw, in double quotes.' }),
  'if-none-match': z
    .literal('*')
    .optional()
    .openapi({ description: '"*" for a record that is new: nothing with its id was ever kept.' }),
  'idempotency-key': z
    .string()
    .regex(/^[\w:.-]{1,100}$/, 'write up to 100 letters, digits and - _ : .')
    .optional()
    .openapi({ description: 'The same for every try at one write: a repeat is not a second write.' }),
});

/** The version that a write is based on; 0 where it is new, undefined where the sender says neither. */
export function basedOn(headers: z.infer<typeof writeHeaders>): number | undefined {
  const seen = headers['if-match'];
  if (seen !== undefined) return Number(seen.slice(1, -1));
  return headers['if-none-match'] === '*' ? 0 : undefined;
}

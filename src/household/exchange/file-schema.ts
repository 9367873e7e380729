/** The shape of a household file for other programs, as JSON Schema; docs/export.schema.json is this. */

import { z } from '@hono/zod-openapi';
import { KINDS } from '../model.ts';
import { SCHEMAS } from '../shape/check-record.ts';
import { FORMAT_VERSION, HOUSEHOLD_FORMAT } from './format.ts';

export function fileSchema(): object {
  const id = z.string().min(1);
  const records = KINDS.map((kind) => z.strictObject({ kind: z.literal(kind), id, body: SCHEMAS[kind] }));
  const unreadable = z.strictObject({ kind: z.enum(KINDS), id, unreadable: z.string() });
  const file = z.object({
    format: z.literal(HOUSEHOLD_FORMAT),
    version: z.literal(FORMAT_VERSION),
    gone: z.array(z.object({ kind: z.string(), id: z.string() })).optional(),
    records: z.array(z.union([...records, unreadable])),
  });
  return z.toJSONSchema(file, { unrepresentable: 'any', io: 'input', reused: 'ref' });
}

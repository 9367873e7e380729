/** Whether a record is one that every screen can show: asked when it is written, read from a file, or brought in. */
import type { z } from '@hono/zod-openapi';
import type { Kind } from '../model.ts';
import { CARE_SCHEMAS } from './care-schemas.ts';
import { type Fault, faultOf } from './fault-words.ts';
import { KITCHEN_SCHEMAS } from './kitchen-schemas.ts';
import { plainFault } from './plain-json.ts';
import { tooLarge } from './quotas.ts';
import { animalSchema, foodSchema, mixSchema, profileSchema, versionSchema } from './schemas.ts';

/** The shape of each kind, by the name of its list in a household. */
export const SCHEMAS = {
  foods: foodSchema,
  profiles: profileSchema,
  animals: animalSchema,
  mixes: mixSchema,
  versions: versionSchema,
  ...KITCHEN_SCHEMAS,
  ...CARE_SCHEMAS,
} satisfies Record<Kind, z.ZodType>;

/** What is wrong with a record of a kind, with the field and the way out; undefined where it can be kept and shown. */
export function checkRecord(kind: Kind, body: unknown): Fault | undefined {
  const unplain = plainFault(body);
  if (unplain) return unplain;
  const read = SCHEMAS[kind].safeParse(body);
  if (!read.success) return faultOf(read.error, body);
  return tooLarge(JSON.stringify(body));
}

/** Everything the household keeps, as the server gives it. */
import { z } from '@hono/zod-openapi';
import { KITCHEN_SCHEMAS } from './kitchen-schemas.ts';
import { animalSchema, foodSchema, mixSchema, profileSchema, versionSchema } from './schemas.ts';

export const householdSchema = z
  .object({
    foods: z.array(foodSchema),
    profiles: z.array(profileSchema),
    animals: z.array(animalSchema),
    mixes: z.array(mixSchema),
    versions: z.array(versionSchema),
    lots: z.array(KITCHEN_SCHEMAS.lots),
    offers: z.array(KITCHEN_SCHEMAS.offers),
    dryingRuns: z.array(KITCHEN_SCHEMAS.dryingRuns),
    batches: z.array(KITCHEN_SCHEMAS.batches),
    kitchen: z.array(KITCHEN_SCHEMAS.kitchen).max(1),
  })
  .openapi('Household');

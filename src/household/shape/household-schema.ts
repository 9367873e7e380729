/** Everything the household keeps, as the server gives it. */
import { z } from '@hono/zod-openapi';
import { CARE_SCHEMAS } from './care-schemas.ts';
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
    weighings: z.array(CARE_SCHEMAS.weighings),
    feedings: z.array(CARE_SCHEMAS.feedings),
    trials: z.array(CARE_SCHEMAS.trials),
    notes: z.array(CARE_SCHEMAS.notes),
    photos: z.array(CARE_SCHEMAS.photos),
    keeper: z.array(CARE_SCHEMAS.keeper).max(1),
  })
  .openapi('Household');

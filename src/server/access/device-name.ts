import { z } from '@hono/zod-openapi';
import { words } from '../../words/words.ts';

export const LONGEST_NAME = 40;

/** What a keeper calls a device: "Kitchen phone". */
export const deviceName = z
  .string()
  .trim()
  .min(1)
  .max(LONGEST_NAME)
  .regex(/^[^\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]*$/u, {
    error: () => words().access.refusal.deviceName,
  })
  .openapi({ description: 'What the keeper calls the device', example: 'Kitchen phone' });

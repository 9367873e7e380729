import { z } from '@hono/zod-openapi';

/** What a keeper calls a device: "Kitchen phone". */
export const deviceName = z
  .string()
  .trim()
  .min(1)
  .max(40)
  .regex(/^[^\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]*$/u, 'write letters and numbers, in one line')
  .openapi({ description: 'What the keeper calls the device', example: 'Kitchen phone' });

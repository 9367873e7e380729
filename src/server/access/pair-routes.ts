/** What may be asked without a token: whether one is needed, and to be let in with a code. */
import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import { type Device, TooManyDevices } from '../../household/access/devices.ts';
import { errorSchema } from '../../household/shape/schemas.ts';
import { words } from '../../words/words.ts';
import type { CallerEnv } from '../caller.ts';
import { json } from '../json.ts';
import { addressOf, schemeOf } from '../served.ts';
import type { AccessOptions } from './access-options.ts';
import { whoAsks } from './check-caller.ts';
import { deviceName } from './device-name.ts';
import type { Pairing } from './pairing.ts';
import { setToken } from './token.ts';

const accessSchema = z
  .object({
    tokenNeeded: z.boolean().openapi({ description: 'Whether other devices may come in, each by its token' }),
    paired: z.boolean().openapi({ description: 'Whether this request carries the token of a paired device' }),
    device: z.string().nullable().openapi({ description: 'Name of that device' }),
  })
  .openapi('Access');

const pairSchema = z
  .strictObject({
    code: z.string().min(1).max(64).openapi({ description: 'The code as shown, or the secret of the link' }),
    name: deviceName,
    bearer: z.boolean().optional().openapi({
      description: 'true: the token comes in the answer, for an Authorization header, and not as a cookie',
    }),
  })
  .openapi('Pair');

const pairedSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    token: z
      .string()
      .optional()
      .openapi({ description: 'Only where it was asked for; it cannot be read again' }),
  })
  .openapi('Paired');

export function pairRoutes(app: OpenAPIHono<CallerEnv>, options: AccessOptions, pairing: Pairing): void {
  const { tokens, devices, served } = options;
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/pair',
      description: 'Needs no token.',
      responses: { 200: json(accessSchema, 'Whether a token is needed, and whether this one is known') },
    }),
    async (c) => {
      const known = tokens ? await whoAsks(c, devices) : undefined;
      return c.json(
        { tokenNeeded: tokens, paired: known !== undefined, device: known?.device.name ?? null },
        200,
      );
    },
  );
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/pair',
      description: 'Lets a device in. Needs no token. A code is good for one device.',
      request: { body: { required: true, content: { 'application/json': { schema: pairSchema } } } },
      responses: {
        200: json(pairedSchema, 'Let in; the token is set as a cookie, or comes in the answer'),
        400: json(errorSchema, 'Wrong input; the field says where'),
        403: json(errorSchema, 'No such code, or no longer'),
        409: json(errorSchema, 'Nothing to pair here, or too many devices'),
        429: json(errorSchema, 'Too many wrong codes; Retry-After says how long to wait, in seconds'),
      },
    }),
    async (c) => {
      if (!tokens) return c.json({ field: '', message: words().access.refusal.nothingToPair }, 409);
      const { code, name, bearer } = c.req.valid('json');
      const letIn = ({ device, token }: { device: Device; token: string }) => {
        options.paired?.(device);
        if (!bearer) setToken(c, token, schemeOf(c, served) === 'https');
        return c.json({ id: device.id, name: device.name, ...(bearer && { token }) }, 200);
      };
      const invited = await devices.accept(code, name);
      if (invited) return letIn(invited);
      const from = addressOf(c, served);
      const waiting = pairing.waitOf(from);
      const taken = pairing.take(code, from);
      if (!('offer' in taken)) {
        const seconds = Math.ceil(taken.wait / 1000);
        if (seconds > 0) c.header('Retry-After', String(seconds));
        if (waiting > 0)
          return c.json(
            {
              field: '/code',
              message: words().access.refusal.tooManyTries(inWords(seconds)),
            },
            429,
          );
        return c.json(
          {
            field: '/code',
            message:
              seconds > 0
                ? words().access.refusal.noCodeWait(inWords(seconds))
                : words().access.refusal.noCode,
          },
          403,
        );
      }
      try {
        return letIn(await devices.add(taken.offer.household, name));
      } catch (error) {
        pairing.giveBack(taken.offer);
        if (error instanceof TooManyDevices) return c.json({ field: '', message: error.message }, 409);
        throw error;
      }
    },
  );
}

function inWords(seconds: number): string {
  const t = words().access.refusal;
  return seconds < 120 ? t.seconds(seconds) : t.minutes(Math.ceil(seconds / 60));
}

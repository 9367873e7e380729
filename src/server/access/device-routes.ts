/** The devices of a household: list, name, put out, and let another one in. */
import { createRoute, type OpenAPIHono, z } from '@hono/zod-openapi';
import type { Device } from '../../household/access/devices.ts';
import { errorSchema, idParams } from '../../household/shape/schemas.ts';
import { words } from '../../words/words.ts';
import type { CallerEnv } from '../caller.ts';
import { json } from '../json.ts';
import { schemeOf } from '../served.ts';
import type { AccessOptions } from './access-options.ts';
import { deviceName } from './device-name.ts';
import { pairingLinks } from './links.ts';
import type { Pairing } from './pairing.ts';
import type { OpenStreams } from './streams.ts';

const deviceSchema = z
  .object({
    id: z.string(),
    name: z.string(),
    pairedAt: z.string().openapi({ description: 'ISO 8601 time, UTC' }),
    seenAt: z.string().openapi({ description: 'ISO 8601 time, UTC; known to the hour' }),
    thisOne: z.boolean().openapi({ description: 'Whether it is the one that asks' }),
  })
  .openapi('Device');

const devicesSchema = z
  .object({
    devices: z.array(deviceSchema),
    open: z.boolean().openapi({ description: 'Whether other devices may come in' }),
    secure: z.boolean().openapi({ description: 'Whether by HTTPS' }),
  })
  .openapi('Devices');

const offerSchema = z
  .object({
    code: z.string().openapi({ description: 'To be typed', example: 'K7QM-3FXA' }),
    links: z
      .array(z.string())
      .openapi({ description: 'To be opened on the device, for the QR code; the best first' }),
    goodUntil: z.string().openapi({ description: 'ISO 8601 time, UTC' }),
  })
  .openapi('PairingOffer');

const missing = () => ({ field: '/id', message: words().access.refusal.noDevice });

export function deviceRoutes(
  app: OpenAPIHono<CallerEnv>,
  { devices, tokens, served, origins }: AccessOptions,
  pairing: Pairing,
  streams: OpenStreams,
): void {
  const shown = ({ id, name, pairedAt, seenAt }: Device, own: string | undefined) => ({
    id,
    name,
    pairedAt,
    seenAt,
    thisOne: id === own,
  });
  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/devices',
      responses: { 200: json(devicesSchema, 'The paired devices, oldest first') },
    }),
    async (c) => {
      const { household, deviceId } = c.get('caller');
      const list = await devices.list(household);
      const secure = schemeOf(c, served) === 'https';
      return c.json({ devices: list.map((d) => shown(d, deviceId)), open: tokens, secure }, 200);
    },
  );
  app.openapi(
    createRoute({
      method: 'post',
      path: '/api/devices/code',
      description: 'Makes a code for one more device; the code before it is void.',
      responses: {
        200: json(offerSchema, 'Good for ten minutes and one device'),
        409: json(errorSchema, 'The server is open to its own machine alone'),
      },
    }),
    (c) => {
      if (!tokens) return c.json({ field: '', message: words().access.refusal.onlyThisMachine }, 409);
      const offer = pairing.offer(c.get('caller').household);
      return c.json(
        {
          code: offer.code,
          links: pairingLinks(offer, origins()),
          goodUntil: new Date(offer.goodUntil).toISOString(),
        },
        200,
      );
    },
  );
  app.openapi(
    createRoute({
      method: 'patch',
      path: '/api/devices/{id}',
      request: {
        params: idParams,
        body: {
          required: true,
          content: { 'application/json': { schema: z.strictObject({ name: deviceName }) } },
        },
      },
      responses: {
        200: json(deviceSchema, 'Under its new name'),
        400: json(errorSchema, 'Wrong input; the field says where'),
        404: json(errorSchema, 'Not there'),
      },
    }),
    async (c) => {
      const { household, deviceId } = c.get('caller');
      const renamed = await devices.rename(household, c.req.valid('param').id, c.req.valid('json').name);
      return renamed ? c.json(shown(renamed, deviceId), 200) : c.json(missing(), 404);
    },
  );
  app.openapi(
    createRoute({
      method: 'delete',
      path: '/api/devices/{id}',
      description: 'Puts a device out at once: its token is good for nothing, its open streams end.',
      request: { params: idParams },
      responses: { 204: { description: 'Put out' }, 404: json(errorSchema, 'Not there') },
    }),
    async (c) => {
      const { id } = c.req.valid('param');
      if (!(await devices.revoke(c.get('caller').household, id))) return c.json(missing(), 404);
      streams.endOf(id);
      return c.body(null, 204);
    },
  );
}

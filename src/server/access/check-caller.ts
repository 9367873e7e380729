/** Says of every request whose it is, and refuses those of nobody. */
import type { Context, MiddlewareHandler } from 'hono';
import type { Device, Devices } from '../../household/access/devices.ts';
import { HOME } from '../../household/store/tables.ts';
import { words } from '../../words/words.ts';
import type { CallerEnv } from '../caller.ts';
import { schemeOf } from '../served.ts';
import type { AccessOptions } from './access-options.ts';
import { deviceName, LONGEST_NAME } from './device-name.ts';
import type { OpenStreams } from './streams.ts';
import { setToken, tokensOf } from './token.ts';

export function checkCaller(
  { tokens, devices, storeOf, served }: AccessOptions,
  streams: OpenStreams,
): MiddlewareHandler<CallerEnv> {
  return async (c, next) => {
    if (!tokens) {
      if (c.req.header('x-forwarded-for') ?? c.req.header('forwarded'))
        return c.json(
          {
            field: '',
            message: words().access.refusal.throughProxy,
          },
          403,
        );
      c.set('caller', { store: storeOf(HOME), household: HOME, device: saidName(c) });
      return next();
    }
    const known = await whoAsks(c, devices);
    if (!known) {
      c.header('WWW-Authenticate', 'Bearer');
      return c.json({ field: '', message: words().access.refusal.notPaired }, 401);
    }
    const { device, token } = known;
    c.set('caller', {
      store: storeOf(device.household),
      household: device.household,
      device: device.name,
      deviceId: device.id,
    });
    // Not worth a refusal where it cannot be written.
    const written = await devices.saw(device).catch(() => false);
    await next();
    if (written && c.req.header('authorization') === undefined)
      setToken(c, token, schemeOf(c, served) === 'https');
    // Put out while its request was answered: then nobody has ended the stream that began meanwhile.
    const stream = c.res.headers.get('content-type')?.startsWith('text/event-stream');
    if (stream && !(await devices.byToken(token))) streams.endOf(device.id);
    return undefined;
  };
}

/** The device whose token a request carries, with that token. */
export async function whoAsks(
  c: Context,
  devices: Devices,
): Promise<{ device: Device; token: string } | undefined> {
  for (const token of tokensOf(c)) {
    const device = await devices.byToken(token);
    if (device) return { device, token };
  }
  return undefined;
}

const NAMELESS = 'this computer';

/** What a device that needs no token calls itself, for the history. */
function saidName(c: Context): string {
  const said = c.req.header('pouchful-device');
  if (said === undefined) return NAMELESS;
  try {
    return deviceName.parse(decodeURIComponent(said).trim().slice(0, LONGEST_NAME));
  } catch {
    return NAMELESS;
  }
}

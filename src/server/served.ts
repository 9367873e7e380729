/** How the server is reached: by which names and scheme, from where. A proxy's word counts only where one was announced. */
import { getConnInfo } from '@hono/node-server/conninfo';
import type { Context } from 'hono';

export interface Served {
  /** Whether a host name is this server's: in small letters, without a port, IPv6 in brackets. */
  isOwn(name: string): boolean;
  readonly scheme: 'http' | 'https';
  /** Whether every request comes through a proxy that says by `X-Forwarded-*` how it was asked. */
  readonly behindProxy?: boolean;
}

/** The scheme by which the browser asked. */
export function schemeOf(c: Context, { scheme, behindProxy }: Served): 'http' | 'https' {
  if (!behindProxy) return scheme;
  return forwarded(c, 'x-forwarded-proto') === 'https' ? 'https' : 'http';
}

/** The host with its port, as the browser asked for it. */
export function hostOf(c: Context, { behindProxy }: Served): string {
  const asked = behindProxy ? forwarded(c, 'x-forwarded-host') : undefined;
  return asked ?? c.req.header('host') ?? new URL(c.req.url).host;
}

/** Address that a request came from; "unknown" where it came over no network, as in tests. */
export function addressOf(c: Context, { behindProxy }: Served): string {
  const said = behindProxy ? forwarded(c, 'x-forwarded-for') : undefined;
  const env = c.env as { incoming?: unknown } | undefined;
  return said ?? (env?.incoming ? getConnInfo(c).remote.address : undefined) ?? 'unknown';
}

/** What the nearest proxy added: those before it were sent by anybody. */
function forwarded(c: Context, header: string): string | undefined {
  return c.req.header(header)?.split(',').at(-1)?.trim() || undefined;
}

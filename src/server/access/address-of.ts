import { getConnInfo } from '@hono/node-server/conninfo';
import type { Context } from 'hono';

/** Address that a request came from; "unknown" where it came over no network, as in tests. */
export function addressOf(c: Context): string {
  const env = c.env as { incoming?: unknown } | undefined;
  return (env?.incoming ? getConnInfo(c).remote.address : undefined) ?? 'unknown';
}

/** Keeps strangers out: foreign host names (DNS rebinding), foreign pages, and what a page may load. */
import type { Context, MiddlewareHandler } from 'hono';
import { words } from '../words/words.ts';
import { hostOf, type Served, schemeOf } from './served.ts';

const POLICY = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "worker-src 'self' blob:",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "frame-ancestors 'none'",
  "form-action 'self'",
].join('; ');

/**
 * Refuses requests that name another host than this server, and those that a page of another origin made. Another port
 * of the same machine is another origin. What a command-line client sends has neither `Origin` nor `Sec-Fetch-Site`.
 */
export function guard(served: Served): MiddlewareHandler {
  return async (c, next) => {
    const host = hostOf(c, served);
    const name = host.toLowerCase().replace(/:\d+$/, '').replace(/\.$/, '');
    if (!served.isOwn(name)) return refused(c, words().access.refusal.foreignHost(name));
    const origin = c.req.header('origin');
    if (origin !== undefined && !sameOrigin(origin, `${schemeOf(c, served)}://${host}`))
      return refused(c, words().access.refusal.foreignPage(origin));
    const site = c.req.header('sec-fetch-site');
    const reads = c.req.method === 'GET' || c.req.method === 'HEAD';
    if (!reads && origin === undefined && site !== undefined)
      return refused(c, words().access.refusal.noOrigin);
    const fromElsewhere = site !== undefined && site !== 'same-origin' && site !== 'none';
    // A link on another page may lead here; what it leads to reads the household by requests of its own.
    const follows = reads && c.req.header('sec-fetch-mode') === 'navigate' && !c.req.path.startsWith('/api');
    if (fromElsewhere && !follows) return refused(c, words().access.refusal.fromElsewhere);
    return next();
  };
}

/** Headers that bind what the pages may load, who may frame them, and that nothing of the household is cached. */
export function securityHeaders(): MiddlewareHandler {
  return async (c, next) => {
    await next();
    // Not by `c.header`, which makes the answer anew, as a stream, at each of them.
    const { headers } = c.res;
    headers.set('Content-Security-Policy', POLICY);
    headers.set('X-Content-Type-Options', 'nosniff');
    headers.set('Referrer-Policy', 'no-referrer');
    headers.set('Cross-Origin-Resource-Policy', 'same-origin');
    // A page apart from all others may share memory with its workers, whose scripts must say so too.
    headers.set('Cross-Origin-Embedder-Policy', 'require-corp');
    // Browsers keep a page apart over HTTPS or on this machine only, and complain of being asked elsewhere. They say where
    // a request leads only there.
    if (c.req.header('sec-fetch-dest') === 'document')
      headers.set('Cross-Origin-Opener-Policy', 'same-origin');
    // What is kept belongs in the household, not in the caches of browsers and proxies.
    if (c.req.path.startsWith('/api') && !headers.has('Cache-Control'))
      headers.set('Cache-Control', 'no-store');
  };
}

function refused(c: Context, message: string) {
  return c.json({ field: '', message }, 403);
}

/** Whether two origins are one; the usual port of a scheme may be written or left out. */
function sameOrigin(a: string, b: string): boolean {
  const [left, right] = [a, b].map((origin) => (URL.canParse(origin) ? new URL(origin) : undefined));
  return left !== undefined && left.origin !== 'null' && left.origin === right?.origin;
}

/** Keeps strangers out: foreign host names (DNS rebinding), foreign pages, and what a page may load. */
import type { MiddlewareHandler } from 'hono';

const LOCAL = ['localhost', '127.0.0.1', '[::1]'];

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
 * Refuses requests that name another host than this machine.
 * @param host the host that the server was told to listen on, also allowed
 */
export function hostGuard(host?: string): MiddlewareHandler {
  const everywhere = host === '0.0.0.0' || host === '::';
  const allowed = new Set(host ? [...LOCAL, host, `[${host}]`] : LOCAL);
  return async (c, next) => {
    const name = hostName(c.req.header('host') ?? new URL(c.req.url).host);
    const ip = /^[\d.]+$|^\[/.test(name);
    if (!allowed.has(name) && !(everywhere && ip)) {
      const message = `host "${name}" is not served here; use http://localhost, or start with --host ${name}`;
      return c.json({ field: '', message }, 403);
    }
    const origin = c.req.header('origin');
    if (
      origin !== undefined &&
      c.req.method !== 'GET' &&
      hostName(origin.replace(/^\w+:\/\//, '')) !== name
    ) {
      return c.json({ field: '', message: `pages from ${origin} may not write here` }, 403);
    }
    return next();
  };
}

/** Headers that bind what the pages may load and who may frame them. */
export function securityHeaders(): MiddlewareHandler {
  return async (c, next) => {
    await next();
    c.header('Content-Security-Policy', POLICY);
    c.header('X-Content-Type-Options', 'nosniff');
    c.header('Referrer-Policy', 'no-referrer');
    c.header('Cross-Origin-Resource-Policy', 'same-origin');
  };
}

/** "localhost:4173" to "localhost"; "[::1]:4173" to "[::1]". */
function hostName(host: string): string {
  return host.toLowerCase().replace(/:\d+$/, '');
}

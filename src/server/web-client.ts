/** The built browser client, compressed when it was built; any address that is no file is a screen of it. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { serveStatic } from '@hono/node-server/serve-static';
import type { Env, Hono } from 'hono';
import { etag } from 'hono/etag';

/** Vite writes a hash of the content into the names of these: what one of them holds never changes. */
const ASSETS = '/assets/';
const FOR_EVER = 'public, max-age=31536000, immutable';
/** Asked for anew each time: after an update the old page must not come out of a browser's cache. It is sent where it is another. */
const ANEW = 'no-cache';

/** @param webDir folder of the built client */
export function webClient<E extends Env>(app: Hono<E>, webDir: string): void {
  const index = join(webDir, 'index.html');
  if (existsSync(webDir)) {
    app.use('*', async (c, next) => {
      await next();
      const { headers, status } = c.res;
      if (c.req.path.startsWith(ASSETS) && status === 200) headers.set('Cache-Control', FOR_EVER);
      else if (!headers.has('Cache-Control')) headers.set('Cache-Control', ANEW);
    });
    const known = etag();
    app.use('*', (c, next) => (c.req.path.startsWith(ASSETS) ? next() : known(c, next)));
    app.use('*', serveStatic({ root: webDir, precompressed: true }));
  }
  app.get('*', (c) => {
    if (/\.\w+$/.test(c.req.path)) return c.text('There is no such file.', 404);
    if (!existsSync(index)) return c.text('The browser client is not built yet. Run: npm start', 503);
    return c.html(readFileSync(index, 'utf8'));
  });
}

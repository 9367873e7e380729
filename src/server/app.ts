/** The HTTP interface: the household as JSON, the reference foods, and the browser client. Thin: no rule of the trade is here. */
import { OpenAPIHono } from '@hono/zod-openapi';
import { HTTPException } from 'hono/http-exception';
import type { Backups } from '../household/backup/backups.ts';
import { type FileStore, StoreError } from '../household/store.ts';
import { words } from '../words/words.ts';
import { type Access, onlyThisMachine } from './access/access.ts';
import { backupRoutes } from './backup-routes.ts';
import { buildIdOf } from './build-id.ts';
import type { CallerEnv } from './caller.ts';
import { compressedJson } from './compressed.ts';
import { eventsRoute } from './events-route.ts';
import { exchangeRoutes, smallBodies } from './exchange-routes.ts';
import { securityHeaders } from './guard.ts';
import { historyRoutes } from './history-routes.ts';
import { plainJsonBody } from './json-body.ts';
import { recordRoutes } from './record-routes.ts';
import { referenceRoute } from './reference-route.ts';
import { refusal, refusalOfInput, refusalOfStore } from './refusal.ts';
import { inTheirLanguage } from './spoken.ts';
import { webClient } from './web-client.ts';

const MEGABYTE = 1024 * 1024;

export type AppOptions = AppParts &
  (
    | { readonly access: Access }
    /** This machine alone is served. The store is lent, not owned: whoever opened it closes it. */
    | { readonly store: FileStore }
  );

interface AppParts {
  /** Backups of its file; absent where it is kept elsewhere. */
  readonly backups?: Backups;
  /** Folder of the built browser client. */
  readonly webDir: string;
  readonly referenceFile: URL | string;
}

/** The server's answers, ready for `serve` or for `app.request()` in tests. */
export function createApp({ webDir, referenceFile, backups, ...who }: AppOptions): OpenAPIHono<CallerEnv> {
  const access = 'access' in who ? who.access : onlyThisMachine(who.store);
  const app = new OpenAPIHono<CallerEnv>({
    defaultHook: (result, c) => {
      if (result.success) return undefined;
      const { status, body } = refusalOfInput(result.error, (result as { data?: unknown }).data);
      return c.json(body, status);
    },
  });
  app.use(inTheirLanguage(), securityHeaders(), access.guard);
  const bodies = [smallBodies(MEGABYTE), plainJsonBody()] as const;
  app.onError((error, c) => {
    if (error instanceof StoreError) {
      const { status, body } = refusalOfStore(error);
      return c.json(body, status);
    }
    if (error instanceof HTTPException && error.status < 500) {
      return c.json({ field: '', message: words().access.refusal.sendJson(error.message) }, error.status);
    }
    console.error(error);
    return c.json({ field: '', message: words().access.refusal.serverFailed }, 500);
  });

  app.use('/api/*', compressedJson());
  app.use('/api/pair', ...bodies);
  access.addPublicRoutes(app);
  // Of who may not come in, nothing more is read.
  app.use('/api/*', access.check, ...bodies);
  access.addRoutes(app);
  recordRoutes(app);
  historyRoutes(app);
  exchangeRoutes(app);
  backupRoutes(app, backups);
  eventsRoute(app, { build: buildIdOf(webDir), untilEnded: access.streams.untilEnded });

  app.doc31('/api/openapi.json', { openapi: '3.1.0', info: { title: 'Pouchful', version: '1' } });
  app.all('/api/*', (c) => {
    const { status, body } = refusal(
      404,
      '',
      words().access.refusal.unknownAddress(`${c.req.method} ${c.req.path}`),
    );
    return c.json(body, status);
  });
  app.get('/reference.bin', referenceRoute(referenceFile));
  webClient(app, webDir);
  return app;
}

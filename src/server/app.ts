/** The HTTP interface: the household as JSON, the reference foods, and the browser client. Thin: no rule of the trade is here. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { serveStatic } from '@hono/node-server/serve-static';
import { createRoute, OpenAPIHono, type z } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import { HTTPException } from 'hono/http-exception';
import { KITCHEN_KINDS } from '../household/kitchen-store.ts';
import type { Kept } from '../household/model.ts';
import { householdSchema } from '../household/shape/household-schema.ts';
import { KITCHEN_SCHEMAS, overtakenSchema } from '../household/shape/kitchen-schemas.ts';
import {
  animalSchema,
  errorSchema,
  foodSchema,
  idParams,
  mixSchema,
  profileSchema,
  versionSchema,
} from '../household/shape/schemas.ts';
import { type Store, StoreError } from '../household/store.ts';
import type { Batch } from '../kitchen/model.ts';
import { ownNames } from './access/own-names.ts';
import { guard, type Served, securityHeaders } from './guard.ts';
import { ifMatchHeaders, tagSeen } from './if-match.ts';
import { json } from './json.ts';
import { pourRoute } from './pour-route.ts';
import { referenceRoute } from './reference-route.ts';
import { refusal, refusalOfInput, refusalOfStore } from './refusal.ts';

const MEGABYTE = 1024 * 1024;

export interface AppOptions {
  /** Lent, not owned: whoever opened the store closes it. */
  readonly store: Store;
  /** Folder of the built browser client. */
  readonly webDir: string;
  readonly referenceFile: URL | string;
  /** How the server is reached; this machine alone where it is left out. */
  readonly served?: Served;
}

/** The server's answers, ready for `serve` or for `app.request()` in tests. */
export function createApp({
  store,
  webDir,
  referenceFile,
  served = { scheme: 'http', isOwn: ownNames(false) },
}: AppOptions): OpenAPIHono {
  const app = new OpenAPIHono({
    defaultHook: (result, c) => {
      if (result.success) return undefined;
      const { status, body } = refusalOfInput(result.error, (result as { data?: unknown }).data);
      return c.json(body, status);
    },
  });
  app.use(securityHeaders(), guard(served));
  app.use(
    '/api/*',
    bodyLimit({
      maxSize: MEGABYTE,
      onError: (c) => c.json({ field: '', message: 'the body is over 1 MB; send less' }, 413),
    }),
  );
  app.onError((error, c) => {
    if (error instanceof StoreError) {
      const { status, body } = refusalOfStore(error);
      return c.json(body, status);
    }
    if (error instanceof HTTPException && error.status < 500) {
      return c.json({ field: '', message: `${error.message}; send JSON` }, error.status);
    }
    console.error(error);
    return c.json(
      { field: '', message: 'something failed on the server and nothing was written; its log says more' },
      500,
    );
  });

  app.openapi(
    createRoute({
      method: 'get',
      path: '/api/household',
      responses: { 200: json(householdSchema, 'Everything the household keeps') },
    }),
    // The store gives read-only lists, zod's types are writable; the JSON is the same.
    async (c) => c.json((await store.household()) as z.infer<typeof householdSchema>, 200),
  );
  objectRoutes(app, 'foods', foodSchema, store.putFood, store.deleteFood);
  objectRoutes(app, 'profiles', profileSchema, store.putProfile, store.deleteProfile);
  objectRoutes(app, 'animals', animalSchema, store.putAnimal, store.deleteAnimal);
  objectRoutes(app, 'mixes', mixSchema, store.putMix, store.deleteMix);
  objectRoutes(app, 'versions', versionSchema, store.putVersion, store.deleteVersion);
  for (const kind of KITCHEN_KINDS) {
    objectRoutes<Kept<typeof kind>>(
      app,
      kind,
      KITCHEN_SCHEMAS[kind] as z.ZodType<Kept<typeof kind>>,
      (object, seen) =>
        seen === undefined
          ? store.putKitchen(kind, object)
          : store.putBatchUnlessOvertaken(object as Batch, seen),
      (id) => store.deleteKitchen(kind, id),
    );
  }
  pourRoute(app, store);

  app.doc31('/api/openapi.json', { openapi: '3.1.0', info: { title: 'Pouchful', version: '1' } });
  app.all('/api/*', (c) => {
    const { status, body } = refusal(
      404,
      '',
      `${c.req.method} ${c.req.path} is not known; see /api/openapi.json`,
    );
    return c.json(body, status);
  });
  app.get('/reference.bin', referenceRoute(referenceFile));
  client(app, webDir);
  return app;
}

/**
 * `PUT` and `DELETE` of one kind of object.
 * @param put its second argument is the tag that the sender of a batch last saw
 */
function objectRoutes<T extends { id: string }>(
  app: OpenAPIHono,
  kind: string,
  schema: z.ZodType<T>,
  put: (object: T, seen?: string) => Promise<void>,
  remove: (id: string) => Promise<void>,
): void {
  const path = `/api/${kind}/{id}` as const;
  const mayBeOvertaken = kind === 'batches';
  const refused = {
    400: json(errorSchema, 'Wrong input; the field says where'),
    404: json(errorSchema, 'Not there'),
    409: json(errorSchema, 'In use elsewhere'),
  };
  app.openapi(
    createRoute({
      method: 'put',
      path,
      request: {
        params: idParams,
        body: { required: true, content: { 'application/json': { schema } } },
        ...(mayBeOvertaken && { headers: ifMatchHeaders }),
      },
      responses: {
        204: { description: 'Written' },
        ...refused,
        ...(mayBeOvertaken && { 412: json(overtakenSchema, 'It stands otherwise than its sender saw it') }),
      },
    }),
    async (c) => {
      const object = c.req.valid('json') as T;
      const id = c.req.param('id')!;
      if (object.id !== id) {
        return c.json(
          { field: '/id', message: `/id is "${object.id}" but the address says "${id}"; make them the same` },
          400,
        );
      }
      await put(object, mayBeOvertaken ? tagSeen(c.req.header('if-match')) : undefined);
      return c.body(null, 204);
    },
  );
  app.openapi(
    createRoute({
      method: 'delete',
      path,
      request: { params: idParams },
      responses: { 204: { description: 'Deleted' }, ...refused },
    }),
    async (c) => {
      await remove(c.req.param('id')!);
      return c.body(null, 204);
    },
  );
}

/** The built browser client; any address that is no file is a screen of it. */
function client(app: OpenAPIHono, webDir: string): void {
  const index = join(webDir, 'index.html');
  if (existsSync(webDir)) {
    app.use('/assets/*', async (c, next) => {
      await next();
      // Vite writes a hash of the content into these names.
      if (c.res.status === 200) c.header('Cache-Control', 'public, max-age=31536000, immutable');
    });
    app.use('*', serveStatic({ root: webDir }));
  }
  app.get('*', (c) => {
    if (/\.\w+$/.test(c.req.path)) return c.text('There is no such file.', 404);
    if (!existsSync(index)) return c.text('The browser client is not built yet. Run: npm start', 503);
    return c.html(readFileSync(index, 'utf8'), 200, { 'Cache-Control': 'no-cache' });
  });
}
